package workuptally.report.pdf.pictures;

import java.util.OptionalDouble;

/**
 * A portion in a layer map.
 *
 * @param label label
 * @param lane lane it runs in
 * @param column number of the step that gives it, from 1; 0 for what the workup starts with
 * @param lastColumn number of the last step that takes from it; {@code column} if none does
 * @param terminal true where no step takes all of it
 * @param sharePercent share of the product, %, if known
 * @param words outcome, empty if none
 */
record MapNode(
        String label,
        Lane lane,
        int column,
        int lastColumn,
        boolean terminal,
        OptionalDouble sharePercent,
        String words) {
    /** The same portion in other columns. */
    MapNode at(int otherColumn, int otherLastColumn) {
        return new MapNode(
                label, lane, otherColumn, Math.max(otherColumn, otherLastColumn), terminal, sharePercent, words);
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
