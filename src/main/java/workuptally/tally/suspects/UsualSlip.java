package workuptally.tally.suspects;

/**
 * A usual slip of the pen, with how far it stands behind the commonest one where two explain a run alike (common practice; the order is that
 * in which a laboratory would look).
 */
public enum UsualSlip {
    DECIMAL_POINT("decimal point", 0),
    MILLIGRAMS_FOR_GRAMS("mg for g or mL for L", 0.5),
    MILLILITRES_FOR_GRAMS("mL for g", 1),
    DIGITS_SWAPPED("digits swapped", 1),
    TARE_OF_ANOTHER_VESSEL("tare of another vessel", 0),
    NEIGHBOURING_ROW("figure of a neighbouring row", 1.5),
    GROSS_FOR_NET("gross for net", 0.5),
    CELLS_SWAPPED("two cells swapped", 3),
    LABELS_SWAPPED("labels of two layers swapped", 0),
    COUNTED_TWICE("counted twice", 0.5),
    SALT_FOR_BASE("molar mass of another form", 0),
    MISSING_ENTRY("missing entry", 0);

    private final String word;
    private final double handicap;

    UsualSlip(String word, double handicap) {
        this.word = word;
        this.handicap = handicap;
    }

    /** The words in reports and JSON. */
    public String word() {
        return word;
    }

    /** What is added to chi-square before slips are ranked, in the same unit: twice the logarithm of how much rarer it is; 0 or more. */
    double handicap() {
        return handicap;
    }
}
