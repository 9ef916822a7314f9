package workuptally.book.template;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import workuptally.book.cells.BookMarks;
import workuptally.book.cells.DateText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Need;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.Unit;

/** Writes one table as a sheet: rows where the table has them, with what helps to fill it in. */
final class TemplateSheet {
    /** Rows that get lists to choose from. */
    private static final int ROWS_WITH_LISTS = 5_000;

    /** Characters that a cell of a spreadsheet holds at most. */
    private static final int MOST_CHARACTERS = 32_767;

    private static final Pattern PLAIN_NUMBER = Pattern.compile("-?(0|[1-9]\\d{0,11})(\\.\\d{1,10})?");
    private static final Pattern PLAIN_DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final int STORED_DIGITS = 15;

    /** Three lines of a heading. */
    private static final float HEADING_HEIGHT_POINTS = 46;

    /** Columns whose texts tend to be long, with the characters they get. */
    private static final Map<String, Integer> WIDE = Map.ofEntries(
            Map.entry("Notes", 44),
            Map.entry("Meaning", 44),
            Map.entry("Reason", 40),
            Map.entry("Reaction", 40),
            Map.entry("Material", 30),
            Map.entry("Product", 26),
            Map.entry("Substance", 26),
            Map.entry("Name", 40),
            Map.entry("Record", 30),
            Map.entry("Value", 26),
            Map.entry("Waste stream", 28),
            Map.entry("Contents then", 60),
            Map.entry("Relative standard uncertainty", 19));

    private final Sheet sheet;
    private final TemplateStyles styles;
    private final Table table;

    TemplateSheet(Sheet sheet, TemplateStyles styles, Table table) {
        this.sheet = sheet;
        this.styles = styles;
        this.table = table;
    }

    /**
     * Writes rows, each at its own row number.
     *
     * @param raw the rows, the headings among them
     * @param aliases the laboratory's own headings
     * @param withHelp true for lists to choose from and notes at the headings
     */
    void write(RawTable raw, HeadingAliases aliases, boolean withHelp) {
        Optional<MatchedHeadings> headings =
                MatchedHeadings.find(raw, table, aliases, BookMarks.unknown(), new FindingLog());
        Map<Integer, SchemaColumn> byColumn = new java.util.HashMap<>();
        headings.ifPresent(found -> table.columns().stream()
                .filter(column -> found.has(column.heading()))
                .forEach(column -> byColumn.put(found.place().columns().get(column.heading()), column)));
        int headingRow = headings.map(MatchedHeadings::row).orElse(0);
        layOut(raw, headingRow, byColumn);
        for (RawRow row : raw.rows()) {
            Row target = sheet.createRow(row.row() - 1);
            if (row.row() == headingRow) {
                target.setHeightInPoints(HEADING_HEIGHT_POINTS);
            }
            for (RawCell cell : row.cells()) {
                Optional<SchemaColumn> column = Optional.ofNullable(byColumn.get(cell.column()));
                Cell written = target.createCell(cell.column());
                if (row.row() == headingRow) {
                    writeHeading(written, cell, column, withHelp);
                } else if (row.row() > headingRow) {
                    writeValue(written, cell.text(), column);
                } else {
                    written.setCellValue(cut(cell.text()));
                }
            }
        }
        if (withHelp && headingRow > 0) {
            byColumn.forEach((at, column) -> addList(column, at, headingRow));
        }
    }

    /** Writes a laboratory's own list: plain numbers become numbers with the decimals as typed, days become dates; all else stays text. */
    static void writeOwn(Sheet sheet, TemplateStyles styles, RawTable raw) {
        TemplateSheet own = new TemplateSheet(sheet, styles, Schema.RUNS);
        printOnPagesAsWide(sheet);
        for (RawRow row : raw.rows()) {
            Row target = sheet.createRow(row.row() - 1);
            for (RawCell cell : row.cells()) {
                Cell written = target.createCell(cell.column());
                String text = cell.text().strip();
                if (PLAIN_DATE.matcher(text).matches()) {
                    own.writeDate(written, text, cell.text());
                } else {
                    own.writeNumber(written, text, cell.text());
                }
            }
        }
    }

    private void layOut(RawTable raw, int headingRow, Map<Integer, SchemaColumn> byColumn) {
        printOnPagesAsWide(sheet);
        if (headingRow > 0) {
            sheet.createFreezePane(0, headingRow);
            sheet.setRepeatingRows(new CellRangeAddress(headingRow - 1, headingRow - 1, -1, -1));
        }
        raw.rows().stream()
                .filter(row -> row.row() == headingRow)
                .flatMap(row -> row.cells().stream())
                .forEach(cell -> {
                    Optional<SchemaColumn> column = Optional.ofNullable(byColumn.get(cell.column()));
                    sheet.setColumnWidth(cell.column(), 256 * widthInCharacters(cell.text(), column));
                    column.filter(TemplateSheet::isText)
                            .ifPresent(c -> sheet.setDefaultColumnStyle(cell.column(), styles.text()));
                });
    }

    /** Lays a sheet on pages across, as wide as it is and as long as it needs. */
    static void printOnPagesAsWide(Sheet sheet) {
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }

    private static int widthInCharacters(String heading, Optional<SchemaColumn> column) {
        int least = column.map(c -> WIDE.getOrDefault(
                        c.heading(),
                        switch (c.kind()) {
                            case NUMBER, NUMBER_WITH_UNIT -> 9;
                            case DATE, TEXT, CHOICE, LABELS, SETTING -> 12;
                            case PARTS -> 34;
                        }))
                .orElse(14);
        int longestWord =
                Arrays.stream(heading.split(" ")).mapToInt(String::length).max().orElse(0);
        return Math.min(60, Math.max(least, longestWord + 3));
    }

    private static boolean isText(SchemaColumn column) {
        return switch (column.kind()) {
            case TEXT, LABELS, PARTS -> true;
            default -> false;
        };
    }

    private void writeHeading(Cell cell, RawCell raw, Optional<SchemaColumn> column, boolean withHelp) {
        cell.setCellValue(cut(raw.text()));
        cell.setCellStyle(styles.heading(column.map(c -> c.need() == Need.KEY).orElse(false)));
        if (withHelp) {
            column.map(this::help).filter(help -> !help.isBlank()).ifPresent(help -> addNote(cell, help));
        }
    }

    private String help(SchemaColumn column) {
        String unit = column.unit()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .map(symbol -> "Unit: " + symbol + " unless the cell or the heading names another.")
                .orElse("");
        String need = column.need() == Need.KEY ? "Needed in each row." : "";
        String choices = column.choices().isEmpty() ? "" : "One of: " + String.join(", ", column.choices()) + ".";
        return List.of(column.help(), unit, choices, need).stream()
                .filter(line -> !line.isBlank())
                .reduce((first, second) -> first + "\n" + second)
                .orElse("");
    }

    private void addNote(Cell cell, String text) {
        CreationHelper helper = sheet.getWorkbook().getCreationHelper();
        Drawing<?> drawing = sheet.createDrawingPatriarch();
        ClientAnchor anchor = helper.createClientAnchor();
        anchor.setCol1(cell.getColumnIndex() + 1);
        anchor.setCol2(cell.getColumnIndex() + 4);
        anchor.setRow1(cell.getRowIndex());
        anchor.setRow2(cell.getRowIndex() + 5);
        Comment note = drawing.createCellComment(anchor);
        note.setString(helper.createRichTextString(text));
        note.setAuthor("Workup Tally");
        note.setAddress(cell.getAddress()); // else it would belong to the cell that its box covers
    }

    private void addList(SchemaColumn column, int at, int headingRow) {
        if (column.kind() != SchemaColumn.Kind.CHOICE) {
            return;
        }
        DataValidationHelper helper = sheet.getDataValidationHelper();
        DataValidation list = helper.createValidation(
                helper.createExplicitListConstraint(column.choices().toArray(String[]::new)),
                new CellRangeAddressList(headingRow, headingRow + ROWS_WITH_LISTS, at, at));
        list.setErrorStyle(DataValidation.ErrorStyle.WARNING);
        list.setShowErrorBox(true);
        list.createErrorBox(column.heading(), "Choose one of the list.");
        if (!column.help().isEmpty()) {
            list.createPromptBox(column.heading(), column.help());
            list.setShowPromptBox(true);
        }
        sheet.addValidationData(list);
    }

    private void writeValue(Cell cell, String typed, Optional<SchemaColumn> column) {
        if (column.isEmpty()) {
            cell.setCellValue(cut(typed));
            if (table == Schema.LIMITS) {
                cell.setCellStyle(styles.grey());
            }
            return;
        }
        String text = typed.strip();
        switch (column.get().kind()) {
            case NUMBER, NUMBER_WITH_UNIT, SETTING -> writeNumber(cell, text, typed);
            case DATE -> writeDate(cell, text, typed);
            case TEXT, CHOICE, LABELS, PARTS -> {
                cell.setCellValue(cut(typed));
                cell.setCellStyle(styles.text());
            }
        }
    }

    private void writeNumber(Cell cell, String text, String typed) {
        if (PLAIN_NUMBER.matcher(text).matches() && new BigDecimal(text).precision() <= STORED_DIGITS) {
            BigDecimal value = new BigDecimal(text);
            cell.setCellValue(value.doubleValue());
            cell.setCellStyle(styles.number(value.scale()));
        } else {
            cell.setCellValue(cut(typed));
        }
    }

    private void writeDate(Cell cell, String text, String typed) {
        if (PLAIN_DATE.matcher(text).matches() && DateText.parse(text) instanceof DateText.Day day) {
            LocalDate value = day.day();
            cell.setCellValue(value);
            cell.setCellStyle(styles.date());
        } else {
            cell.setCellValue(cut(typed));
        }
    }

    private static String cut(String text) {
        return text.length() <= MOST_CHARACTERS ? text : text.substring(0, MOST_CHARACTERS - 1) + "…";
    }
}
