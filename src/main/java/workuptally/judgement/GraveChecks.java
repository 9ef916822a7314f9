package workuptally.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.balance.Closure;

/**
 * The checks that deserve a look before any other: what can hurt somebody, what contradicts itself so far that no chemistry explains it, what
 * was not read. One of each run, the gravest; a run with an open stop is looked at anyhow.
 */
public final class GraveChecks {
    /** A yield as typed so far from the weighed one is no rounding and no correction by an assay; common practice. */
    private static final double FAR_PERCENT = 10;

    /** The gravest first. */
    private static final List<FindingCode> BY_GRAVITY = List.of(
            FindingCode.MATERIALS_MUST_NOT_MEET,
            FindingCode.GAS_EXPECTED,
            FindingCode.STATED_YIELD_DIFFERS,
            FindingCode.UNIT_SLIP,
            FindingCode.ASSAY_OVER_100,
            FindingCode.ASSAY_SUM_IMPOSSIBLE,
            FindingCode.PORTION_HELD_MORE,
            FindingCode.PURIFIED_EXCEEDS_SOURCE,
            FindingCode.MASS_GAP_NEGATIVE,
            FindingCode.ENTRY_SUSPECT,
            FindingCode.MASS_EQUALS_VOLUME,
            FindingCode.AMOUNT_FAR_FROM_PLAN,
            FindingCode.CONVERSION_BELOW_YIELD,
            FindingCode.ROUTES_DISAGREE,
            FindingCode.LAYER_VOLUME_IMPOSSIBLE,
            FindingCode.CHARGE_TWICE,
            FindingCode.TOTAL_ROW,
            FindingCode.THEORY_NOT_COMPUTED,
            FindingCode.NUMBER_UNREADABLE,
            FindingCode.SHEET_NEAR_MISS,
            FindingCode.HEADING_NEAR_MISS,
            FindingCode.CLOSURE_OPEN);

    private GraveChecks() {}

    /** Those of a review: of a run in order of their gravity, alike in order of the book; of no run behind them. */
    public static List<Finding> of(Review review) {
        List<Finding> grave = new ArrayList<>();
        for (RunReview run : review.runs()) {
            if (!run.has(Severity.STOP)) {
                run.findings().stream()
                        .filter(f -> isGrave(f) && isFarOff(run, f))
                        .min(Comparator.comparingInt(GraveChecks::gravity))
                        .ifPresent(grave::add);
            }
        }
        Stream<Finding> ofTheBook =
                review.findings().stream().filter(f -> f.run().isEmpty() && isGrave(f));
        return Stream.concat(grave.stream(), ofTheBook)
                .sorted(Comparator.comparingInt(GraveChecks::gravity))
                .toList();
    }

    private static boolean isGrave(Finding finding) {
        return finding.severity() == Severity.CHECK && BY_GRAVITY.contains(finding.code());
    }

    private static int gravity(Finding finding) {
        return BY_GRAVITY.indexOf(finding.code());
    }

    /** Where it is a matter of degree; a balance that is open is told with the measurement that settles it, where a layer waits for that. */
    private static boolean isFarOff(RunReview run, Finding finding) {
        return switch (finding.code()) {
            case STATED_YIELD_DIFFERS -> run.tally().lots().stream().anyMatch(GraveChecks::isTypedFarOff);
            case CLOSURE_OPEN ->
                !run.has(Severity.HOLD)
                        && Closure.worst(run.tally().closures())
                                .filter(c -> c.unaccountedPercent() > FAR_PERCENT)
                                .isPresent();
            default -> true;
        };
    }

    private static boolean isTypedFarOff(LotTally lot) {
        Optional<Entered> typed = lot.lot().statedYieldPercent().entered();
        return typed.isPresent()
                && lot.overTheoryPercent()
                        .filter(own -> Math.abs(own.value() - typed.get().value()) > FAR_PERCENT)
                        .isPresent();
    }
}
