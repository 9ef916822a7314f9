package workuptally.model;

import java.util.Locale;

/** An answer to a limit that is a question, as understood when it was read. */
public enum LimitAnswer {
    YES,
    NO,
    /** The yield of the workup. */
    WORKUP,
    /** The purified yield. */
    PURIFIED;

    /** The word in books. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
