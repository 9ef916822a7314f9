package workuptally.judgement;

/** The sentences that hand a decision to people. Each has its only home here; reports print them wherever such figures stand. */
public final class SafetyWording {
    /** Stands wherever hazard notes are printed. */
    public static final String DEFERS =
            "These notes are a reminder, not an assessment. The supplier's safety data sheet, the local rules and the people"
                    + " responsible for safety come first.";

    /** Stands wherever the contents of layers are printed. */
    public static final String A_PERSON_DECIDES =
            "Whether a layer may leave the bench is decided by the responsible person under the local rules.";

    /** Stands wherever waste streams are printed. */
    public static final String WASTE_DETERMINATION =
            "The streams below follow from the recorded composition only. The waste determination is made by trained people under"
                    + " the local rules.";

    private SafetyWording() {}
}
