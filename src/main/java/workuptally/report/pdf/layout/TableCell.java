package workuptally.report.pdf.layout;

import java.util.Optional;
import workuptally.model.Severity;

/**
 * One cell of a table.
 *
 * @param text text; line feeds break lines
 * @param bold true for a text that leads its row
 * @param mark severity whose symbol stands before the text
 * @param link name of the place it leads to
 * @param drawing picture instead of a text
 */
public record TableCell(
        String text, boolean bold, Optional<Severity> mark, Optional<String> link, Optional<CellDrawing> drawing) {
    public static TableCell of(String text) {
        return new TableCell(text, false, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static TableCell bold(String text) {
        return new TableCell(text, true, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Symbol and word of a severity. */
    public static TableCell of(Severity severity) {
        return new TableCell(severity.word(), false, Optional.of(severity), Optional.empty(), Optional.empty());
    }

    public static TableCell link(String text, String destination) {
        return new TableCell(text, true, Optional.empty(), Optional.of(destination), Optional.empty());
    }

    public static TableCell of(CellDrawing drawing) {
        return new TableCell("", false, Optional.empty(), Optional.empty(), Optional.of(drawing));
    }
}
