package workuptally.report.workbook;

import java.io.IOException;
import java.io.Writer;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.CellReference;

/** Writes rows and cells as the text of a sheet part: ECMA-376-1:2016, 18.3.1.4 (c), 18.3.1.73 (row), 18.18.11 (types of cells). */
final class CellText {
    private static final int LONGEST = SpreadsheetVersion.EXCEL2007.getMaxTextLength();

    private final Writer out;
    private final String[] letters;
    private String row = "";

    /**
     * A text.
     *
     * @param out where it goes
     * @param columns number of columns
     */
    CellText(Writer out, int columns) {
        this.out = out;
        letters = new String[columns];
        for (int i = 0; i < columns; i++) {
            letters[i] = CellReference.convertNumToColString(i);
        }
    }

    /**
     * Begins a row.
     *
     * @param number row from 0
     * @param heightPoints height; 0 for the usual one
     */
    void beginRow(int number, float heightPoints) throws IOException {
        row = Integer.toString(number + 1);
        out.write("<row r=\"");
        out.write(row);
        if (heightPoints > 0) {
            out.write("\" customHeight=\"1\" ht=\"");
            out.write(Float.toString(heightPoints));
        }
        out.write("\">\n");
    }

    /** Ends the row. */
    void endRow() throws IOException {
        out.write("</row>\n");
    }

    /** The cell of the row in a column from 0, {@code D7}. */
    String reference(int column) {
        return letters[column] + row;
    }

    /** A text, cut where a cell has no room for more. */
    void text(int column, int style, String text) throws IOException {
        String fitting = text.length() <= LONGEST ? text : text.substring(0, LONGEST);
        begin(column, style);
        out.write(" t=\"inlineStr\"><is><t");
        if (hasSpaceAtEnd(fitting)) {
            out.write(" xml:space=\"preserve\"");
        }
        out.write('>');
        out.write(XmlText.of(fitting));
        out.write("</t></is></c>");
    }

    /** A number; one that is not finite, which no cell can hold, becomes the error of a number. */
    void number(int column, int style, double value) throws IOException {
        begin(column, style);
        if (Double.isFinite(value)) {
            out.write(" t=\"n\"><v>");
            out.write(Double.toString(value));
        } else {
            out.write(" t=\"e\"><v>#NUM!");
        }
        out.write("</v></c>");
    }

    /** A formula with its value. */
    void formula(int column, int style, String formula, double value) throws IOException {
        begin(column, style);
        out.write(" t=\"n\"><f>");
        out.write(XmlText.of(formula));
        out.write("</f><v>");
        out.write(Double.toString(value));
        out.write("</v></c>");
    }

    private void begin(int column, int style) throws IOException {
        out.write("<c r=\"");
        out.write(letters[column]);
        out.write(row);
        out.write("\" s=\"");
        out.write(Integer.toString(style));
        out.write('"');
    }

    /** White space at an end is dropped by readers unless they are told to keep it. */
    private static boolean hasSpaceAtEnd(String text) {
        return !text.isEmpty()
                && (Character.isWhitespace(text.charAt(0)) || Character.isWhitespace(text.charAt(text.length() - 1)));
    }
}
