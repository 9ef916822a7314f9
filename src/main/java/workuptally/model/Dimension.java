package workuptally.model;

/** What kind of quantity a charge was entered as. */
public enum Dimension {
    /** Mass in g. */
    MASS,
    /** Volume in mL. */
    VOLUME,
    /** Amount of substance in mmol. */
    AMOUNT,
    /** Moles per mole of the substrate. */
    EQUIVALENTS
}
