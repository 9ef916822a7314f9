package workuptally.tally.bench;

import java.util.OptionalDouble;
import workuptally.model.Step;

/**
 * One shake in a funnel.
 *
 * @param step the step
 * @param portion portion of the step, from 1
 * @param volumeMillilitres sum of the volumes before mixing, mL
 * @param funnelMillilitres nominal size of the funnel, recorded or the smallest that fits, mL
 * @param funnelRecorded true where the book names the funnel
 * @param fillPercent fill of one load, %
 * @param fillLimitPercent limit in force, %
 * @param loads loads recorded
 * @param loadsNeeded loads that keep the fill within the limit
 * @param gasExpected true where the contact gives off gas
 * @param gasLitresExpected gas expected over all loads, at room temperature and pressure, L
 * @param gasLitresWorst the same if nothing was consumed before, L
 */
public record Contact(
        Step step,
        int portion,
        double volumeMillilitres,
        double funnelMillilitres,
        boolean funnelRecorded,
        double fillPercent,
        double fillLimitPercent,
        int loads,
        int loadsNeeded,
        boolean gasExpected,
        OptionalDouble gasLitresExpected,
        OptionalDouble gasLitresWorst) {
    /** Decimals with which fill and limit are to be shown, so that two that differ do not read alike: 0, else 1. */
    public int percentDecimals() {
        boolean alike = Math.round(fillPercent()) == Math.round(fillLimitPercent());
        return alike && fillPercent() != fillLimitPercent() ? 1 : 0;
    }
}
