package workuptally.book.template;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import workuptally.book.schema.Schema;
import workuptally.book.schema.Table;

/** The first sheet of a template: how to fill the book in. */
public final class ReadMeSheet {
    public static final String NAME = "Read me";

    private static final String[] PARAGRAPHS = {
        "One row for each run in Runs; everything else refers to its id. Runs, Products, Charges and Isolated are needed,"
                + " each further sheet lets more be computed.",
        "Blank is not zero: leave a cell empty where nothing was measured. '<0.10' is below that limit, 'n.d.' (assay results"
                + " only) below the method's limit, 'ca. 40' a rough value.",
        "A unit may stand in the heading, as in 'Gross (mg)', or in the cell, as in '12,5 mL'; else the unit of the heading"
                + " counts. Decimal point and decimal comma are both understood.",
        "Give a balance's reading the decimals it shows (format the cell): they tell how finely it was weighed.",
        "Join labels by +, as in O1+O2. RM is the reaction mixture. Columns and sheets of your own are left alone.",
        "The review sets out figures and evidence; it orders nothing. For hazards and waste the safety data sheet, local rules"
                + " and the responsible people decide."
    };

    private static final int WIDTH_CHARACTERS = 100;

    private ReadMeSheet() {}

    static void write(Sheet sheet, TemplateStyles styles) {
        sheet.setColumnWidth(0, 256 * 16);
        sheet.setColumnWidth(1, 256 * WIDTH_CHARACTERS);
        TemplateSheet.printOnPagesAsWide(sheet);
        int row = 0;
        Row title = sheet.createRow(row++);
        title.setHeightInPoints(24);
        write(title, 0, "Workup Tally: a book of workups", styles.title());
        for (String paragraph : PARAGRAPHS) {
            Row target = sheet.createRow(row++);
            target.setHeightInPoints(15f * (paragraph.length() / WIDTH_CHARACTERS + 1));
            write(target, 1, paragraph, styles.paragraph());
        }
        row++;
        Row headings = sheet.createRow(row++);
        write(headings, 0, "Sheet", styles.heading(false));
        write(headings, 1, "Holds", styles.heading(false));
        for (Table table : Schema.TABLES) {
            Row target = sheet.createRow(row++);
            write(target, 0, table.name(), styles.paragraph());
            write(target, 1, table.purpose() + (table.required() ? " (needed)" : ""), styles.paragraph());
        }
    }

    private static void write(Row row, int column, String text, CellStyle style) {
        Cell cell = row.createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(style);
    }
}
