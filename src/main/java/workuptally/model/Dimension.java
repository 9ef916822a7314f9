package workuptally.model;

/** What kind of quantity a charge was entered as. */
public enum Dimension {
    /** Mass in g. */
    MASS("g"),
    /** Volume in mL. */
    VOLUME("mL"),
    /** Amount of substance in mmol. */
    AMOUNT("mmol"),
    /** Moles per mole of the substrate. */
    EQUIVALENTS("equiv");

    private final String unit;

    Dimension(String unit) {
        this.unit = unit;
    }

    /** The unit of its numbers, {@code g}. */
    public String unit() {
        return unit;
    }
}
