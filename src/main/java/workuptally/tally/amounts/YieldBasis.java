package workuptally.tally.amounts;

/** What a yield rests on. */
public enum YieldBasis {
    /** Net mass times an assay. */
    ASSAY("assay"),
    /** Net mass times a fraction from mole ratios: an upper bound, since it misses water, salts and whatever the spectrum does not show. */
    MOLE_RATIO_UPPER_BOUND("mole ratio upper bound"),
    /** Net mass of a purified lot or crop without an assay: an upper bound. */
    ASSAY_NOT_RECORDED("assay not recorded"),
    /** An assay given as an upper limit: an upper bound. */
    UPPER_LIMIT("assay is an upper limit"),
    /** A crude lot without assay: no yield. */
    NONE("none");

    private final String word;

    YieldBasis(String word) {
        this.word = word;
    }

    /** The words in reports. */
    public String word() {
        return word;
    }

    /** True where the yield is only an upper bound. */
    public boolean isUpperBound() {
        return this != ASSAY && this != NONE;
    }
}
