package workuptally.report.pdf;

/**
 * One column of a table.
 *
 * @param heading heading with unit
 * @param kind how its cells are set
 */
record TableColumn(String heading, Kind kind) {
    /** Text that may break over lines. */
    static TableColumn text(String heading) {
        return new TableColumn(heading, Kind.TEXT);
    }

    /** Short text kept on one line where the page allows. */
    static TableColumn word(String heading) {
        return new TableColumn(heading, Kind.WORD);
    }

    /** Numbers set one under the other by their decimal marks. */
    static TableColumn number(String heading) {
        return new TableColumn(heading, Kind.NUMBER);
    }

    /** How cells are set. */
    enum Kind {
        TEXT,
        WORD,
        NUMBER
    }
}
