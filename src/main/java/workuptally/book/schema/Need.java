package workuptally.book.schema;

import workuptally.model.Severity;

/** How much depends on a column. */
public enum Need {
    /** Without it the row cannot be placed; the row is left out. */
    KEY(Severity.STOP),
    /** A theory or a yield cannot be stated without it. */
    FIGURE(Severity.STOP),
    /** Results go on without it; what depends on it is named as not computed. */
    DETAIL(Severity.CHECK);

    private final Severity severity;

    Need(Severity severity) {
        this.severity = severity;
    }

    /** Severity of a cell of such a column that cannot be understood. */
    public Severity severity() {
        return severity;
    }
}
