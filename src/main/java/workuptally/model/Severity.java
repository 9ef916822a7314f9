package workuptally.model;

/** How much a finding asks of the reader, the most urgent first. */
public enum Severity {
    /** The record contradicts itself, a needed figure is missing, or a proposal is hazardous. */
    STOP,
    /** A kept layer's evidence does not support letting it go. */
    HOLD,
    /** A number to settle before it is reported. */
    CHECK,
    /** For information. */
    NOTE;

    /** The word in reports: {@code stop}, {@code hold}, {@code check}, {@code note}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
