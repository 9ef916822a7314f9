package workuptally.judgement;

/** The sentences that hand a decision to people. Each has its only home here; reports print them wherever such figures stand. */
public final class SafetyWording {
    /** Stands wherever hazard notes are printed. */
    public static final String DEFERS =
            "These notes are a reminder, not an assessment. The supplier's safety data sheet, the local rules and the people"
                    + " responsible for safety come first.";

    /** Stands wherever the contents of layers are printed. */
    public static final String A_PERSON_DECIDES =
            "Whether a layer may leave the bench is decided by the responsible person under the local waste rules.";

    /** What the figures about layers cannot show; stands with the basis. */
    public static final String LIMITS_OF_INFERENCE =
            "An assay finds what it was calibrated for: product that is there as an ester, an acid or a decomposition product is not"
                    + " seen. A plate without a spot bounds nothing without a spot of known amount beside it. An emulsion is not one"
                    + " layer. A balance that closes can hide two errors of opposite sign, and closes no better than the worst assay"
                    + " of its largest portion.";

    /** Stands wherever waste streams are printed. */
    public static final String WASTE_DETERMINATION =
            "The streams below follow from the recorded composition only. The waste determination is made by trained people under"
                    + " the local rules.";

    private SafetyWording() {}
}
