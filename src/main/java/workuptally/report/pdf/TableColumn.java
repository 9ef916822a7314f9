package workuptally.report.pdf;

import java.util.Optional;

/**
 * One column of a table.
 *
 * @param heading heading with unit; line feeds break lines
 * @param kind how its cells are set
 * @param scale picture in the head of a chart column
 */
record TableColumn(String heading, Kind kind, Optional<CellDrawing> scale) {
    /** Text that may break over lines. */
    static TableColumn text(String heading) {
        return new TableColumn(heading, Kind.TEXT, Optional.empty());
    }

    /** Text of at most two lines; what is longer ends with an ellipsis and must stand in full elsewhere. */
    static TableColumn brief(String heading) {
        return new TableColumn(heading, Kind.BRIEF, Optional.empty());
    }

    /** Short text kept on one line where the page allows. */
    static TableColumn word(String heading) {
        return new TableColumn(heading, Kind.WORD, Optional.empty());
    }

    /** Numbers set one under the other by their decimal marks. */
    static TableColumn number(String heading) {
        return new TableColumn(heading, Kind.NUMBER, Optional.empty());
    }

    /** A box to write in. */
    static TableColumn box(String heading) {
        return new TableColumn(heading, Kind.BOX, Optional.empty());
    }

    /** A chart with a row of its own in each row of the table. */
    static TableColumn chart(CellDrawing scale) {
        return new TableColumn("", Kind.CHART, Optional.of(scale));
    }

    /** How cells are set. */
    enum Kind {
        TEXT,
        BRIEF,
        WORD,
        NUMBER,
        BOX,
        CHART
    }
}
