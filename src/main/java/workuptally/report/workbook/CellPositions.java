package workuptally.report.workbook;

import java.io.IOException;

/** Row and column numbers of tags; a row or cell without a reference follows the one before it. */
final class CellPositions {
    private CellPositions() {}

    /** Row number, from 1, of a row tag. */
    static int row(Markup markup, int before) throws IOException {
        String reference = markup.attribute("r").orElse("");
        try {
            return reference.isEmpty() ? before + 1 : Integer.parseInt(reference.trim());
        } catch (NumberFormatException e) {
            throw new IOException("a row of the workbook has the number '" + reference + "'", e);
        }
    }

    /** Column number, from 0, of a cell tag. */
    static int column(Markup markup, int before) {
        String reference = markup.attribute("r").orElse("");
        int column = 0;
        for (int i = 0; i < reference.length(); i++) {
            char c = Character.toUpperCase(reference.charAt(i));
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = 26 * column + c - 'A' + 1;
        }
        return column == 0 ? before + 1 : column - 1;
    }
}
