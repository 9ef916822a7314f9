package workuptally.tally.suspects;

/** Headings of the schema under which the numbers of runs, transfers and containers stand. */
final class EntryHeadings {
    static final String AMOUNT = "Amount";
    static final String GROSS_THEN = "Gross then";
    static final String CONTENTS_THEN = "Contents then";
    static final String VOLUME = "Volume";
    static final String MASS = "Mass";
    static final String GROSS = "Gross";
    static final String TARE = "Tare";
    static final String NET = "Net";
    static final String ASSAY = "Assay";
    static final String RESULT = "Result";
    static final String MOLAR_MASS = "Molar mass";
    static final String ACTUAL_AMOUNT = "Actual amount";
    static final String MOLARITY = "Molarity";
    static final String TITRE = "Titre";
    static final String DENSITY = "Density";
    static final String SECOND_WEIGHING = "Second weighing";

    private EntryHeadings() {}
}
