package workuptally.report.pdf.pictures;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.layers.LayerDecision.Outcome;

/**
 * A portion in a layer map.
 *
 * @param label label
 * @param lane lane it runs in
 * @param column number of the step that gives it, from 1; 0 for what the workup starts with
 * @param lastColumn number of the last step that takes from it; {@code column} if none does
 * @param terminal true where no step takes all of it
 * @param sharePercent share of the product, %, if known
 * @param outcome what was decided about it, if anything was
 */
record MapNode(
        String label,
        Lane lane,
        int column,
        int lastColumn,
        boolean terminal,
        OptionalDouble sharePercent,
        Optional<Outcome> outcome) {
    /** Stands for {@link Outcome#EVIDENCE_COMPLETE} where there is no room for two words. */
    static final String COMPLETE = "complete";

    boolean isComplete() {
        return outcome.filter(o -> o == Outcome.EVIDENCE_COMPLETE).isPresent();
    }

    /** The outcome as it stands in its box, empty if there is none. */
    String words() {
        return isComplete() ? COMPLETE : outcome.map(Outcome::word).orElse("");
    }

    /** The same portion in other columns. */
    MapNode at(int otherColumn, int otherLastColumn) {
        return new MapNode(
                label, lane, otherColumn, Math.max(otherColumn, otherLastColumn), terminal, sharePercent, outcome);
    }

    /** Lanes from top to bottom. */
    enum Lane {
        ORGANIC,
        AQUEOUS,
        OTHER,
        ISOLATED;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
