package workuptally.report.json;

import java.util.List;

/**
 * Arrays of many small records of one shape. Each record is written as a row of values; the names of the values stand once, in
 * {@code columns} in front of the document, since they would fill a third of it otherwise.
 */
enum Rows {
    /** Entered numbers on which results of a run depend. */
    READINGS("readings", "reading", "name", "place", "value", "unit", "standardUncertainty"),
    /** Readings a figure depends on. */
    DEPENDS_ON("dependsOn", "reading", "variancePercent"),
    /** Readings as the balances would have them. */
    RECONCILED("reconciled", "reading", "adjusted", "standardUncertainty", "standardisedAdjustment"),
    /** What went in and came out. */
    LINES("lines", "side", "label", "category", "massGrams"),
    /** Where units of a skeleton were found. */
    TERMS(
            "terms",
            "place",
            "substance",
            "unitsPerMolecule",
            "unitsMillimoles",
            "expandedUncertaintyUnitsMillimoles",
            "percent",
            "kind"),
    /** Share of a product in the portions of a workup. */
    PORTIONS("portions", "label", "foundPercent", "passingPercent"),
    /** What a layer is made of. */
    COMPONENTS("components", "substance", "massGrams"),
    /** What a container holds, and what a planned layer will. */
    COMPOSITION("composition", "substance", "massGrams", "massPercent");

    private final String array;
    private final List<String> columns;

    Rows(String array, String... columns) {
        this.array = array;
        this.columns = List.of(columns);
    }

    /** Name of the array. */
    String array() {
        return array;
    }

    /** Names of the values of a row, in order. */
    List<String> columns() {
        return columns;
    }
}
