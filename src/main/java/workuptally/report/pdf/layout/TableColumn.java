package workuptally.report.pdf.layout;

import java.util.Optional;

/**
 * One column of a table.
 *
 * @param heading heading with unit; line feeds break lines
 * @param kind how its cells are set
 * @param scale picture in the head of a chart column
 */
public record TableColumn(String heading, Kind kind, Optional<CellDrawing> scale) {
    /** Text that may break over lines. */
    public static TableColumn text(String heading) {
        return new TableColumn(heading, Kind.TEXT, Optional.empty());
    }

    /** Text of at most two lines; what is longer ends with an ellipsis and must stand in full elsewhere. */
    public static TableColumn brief(String heading) {
        return new TableColumn(heading, Kind.BRIEF, Optional.empty());
    }

    /** Short text kept on one line where the page allows. */
    public static TableColumn word(String heading) {
        return new TableColumn(heading, Kind.WORD, Optional.empty());
    }

    /** Numbers set one under the other by their decimal marks. */
    public static TableColumn number(String heading) {
        return new TableColumn(heading, Kind.NUMBER, Optional.empty());
    }

    /** A box to write in. */
    public static TableColumn box(String heading) {
        return new TableColumn(heading, Kind.BOX, Optional.empty());
    }

    /** A chart with a row of its own in each row of the table. */
    public static TableColumn chart(CellDrawing scale) {
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
