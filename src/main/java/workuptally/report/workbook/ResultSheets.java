package workuptally.report.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFCell;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumns;
import workuptally.model.Severity;
import workuptally.report.view.Cell;
import workuptally.report.view.Column;
import workuptally.report.view.Live;
import workuptally.report.view.TableView;

/** Writes tables as sheets, each a spreadsheet table with named columns, a filter, a frozen heading and print settings. */
final class ResultSheets {
    private static final int WIDEST_CHARACTERS = 60;
    private static final int NARROWEST_CHARACTERS = 8;
    private static final int WIDTH_UNITS_PER_CHARACTER = 256;
    private static final int ROWS_MEASURED = 500;
    private static final int CHART_LINK_COLUMN = 2;
    private static final int TAB_COLOUR = 0x0072B2;
    private static final int MARGIN_CHARACTERS = 1;
    private static final float POINTS_PER_LINE = 15;
    private static final float TALLEST_POINTS = 400;
    private static final int LONGEST_FORMULA = 8000;
    private static final int LONGEST_TEXT = SpreadsheetVersion.EXCEL2007.getMaxTextLength();

    private final SXSSFWorkbook workbook;
    private final ResultStyles styles;
    private final Entries entries;
    private final Map<String, String> userSheets = new HashMap<>();
    private final Set<String> takenNames = new HashSet<>();
    private final Map<String, ResultSheet> places = new HashMap<>();

    /**
     * Prepares the result sheets.
     *
     * @param workbook the workbook that holds the user's sheets
     * @param styles styles
     * @param entries numbers in the user's sheets
     */
    ResultSheets(SXSSFWorkbook workbook, ResultStyles styles, Entries entries) {
        this.workbook = workbook;
        this.styles = styles;
        this.entries = entries;
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            String name = workbook.getSheetName(i);
            userSheets.put(SheetMarks.key(name), name);
            takenNames.add(SheetMarks.key(name));
        }
        workbook.getXSSFWorkbook().getAllNames().forEach(name -> takenNames.add(SheetMarks.key(name.getNameName())));
        for (XSSFSheet sheet : (Iterable<XSSFSheet>) () -> sheets(workbook)) {
            sheet.getTables().forEach(table -> takenNames.add(SheetMarks.key(table.getName())));
        }
    }

    private static java.util.Iterator<XSSFSheet> sheets(SXSSFWorkbook workbook) {
        return java.util.stream.IntStream.range(0, workbook.getNumberOfSheets())
                .mapToObj(i -> workbook.getXSSFWorkbook().getSheetAt(i))
                .iterator();
    }

    /**
     * Writes the tables, each on a sheet of its own, behind the user's sheets.
     *
     * @param views the tables in order
     * @return where they stand, in the same order
     */
    List<ResultSheet> write(List<TableView> views) {
        List<ResultSheet> sheets = new ArrayList<>();
        for (TableView view : views) {
            ResultSheet sheet = new ResultSheet(
                    view, free(view.title()), view.note().lines().toList().size() + 2);
            sheets.add(sheet);
            places.put(view.title(), sheet);
        }
        for (ResultSheet sheet : sheets) {
            write(sheet);
        }
        return sheets;
    }

    private String free(String title) {
        String name = title;
        for (int i = 1; !takenNames.add(SheetMarks.key(name)); i++) {
            name = title + (i == 1 ? " (review)" : " (review " + i + ")");
        }
        return name;
    }

    private void write(ResultSheet place) {
        SXSSFSheet sheet = workbook.createSheet(place.sheetName());
        TableView view = place.view();
        int row = 0;
        Row title = sheet.createRow(row++);
        text(title, view.title(), 0).setCellStyle(styles.title());
        if (ResultCharts.has(view.title(), places)) {
            SXSSFCell toChart = text(title, "Chart below the table", CHART_LINK_COLUMN);
            toChart.setCellStyle(styles.shortLink());
            link(
                    toChart,
                    ResultSheet.quoted(place.sheetName()) + "!"
                            + new CellAddress(ResultCharts.firstRow(place), 0).formatAsString());
        }
        for (String line : view.note().lines().toList()) {
            text(sheet.createRow(row++), line, 0).setCellStyle(styles.note());
        }
        int[] widths = widths(sheet, view);
        headings(sheet.createRow(place.headingRow()), view);
        int next = place.firstRow();
        for (TableView.Row values : view.rows()) {
            row(sheet, next, place, values);
            height(sheet.getRow(next++), values, widths);
        }
        if (view.rows().isEmpty()) {
            text(sheet.createRow(next), "none", 0).setCellStyle(styles.text("none", Optional.empty()));
        }
        table(place);
        print(sheet, place);
    }

    private void headings(Row row, TableView view) {
        for (int i = 0; i < view.columns().size(); i++) {
            Column column = view.columns().get(i);
            text(row, column.heading(), i).setCellStyle(styles.heading(column.isNumber()));
        }
    }

    private void row(SXSSFSheet sheet, int number, ResultSheet place, TableView.Row values) {
        Row row = sheet.createRow(number);
        int marked = markedColumn(values);
        for (int i = 0; i < values.cells().size(); i++) {
            Optional<Severity> severity = i == marked ? values.severity() : Optional.empty();
            cell(row, i, place.view().columns().get(i), values.cells().get(i), severity);
            if (values.cells().get(i) instanceof Cell.Number figure) {
                formula(row, i, figure, place);
            }
        }
    }

    /** Puts a formula behind a number where it gives that number, and nothing where it does not. */
    private void formula(Row row, int column, Cell.Number number, ResultSheet place) {
        if (number.live().isEmpty()) {
            return;
        }
        Live live = number.live().get();
        LiveRow sheets = new LiveRow(entries, userSheets, places, place, row.getRowNum() - place.firstRow());
        OptionalDouble value = live.value(sheets);
        if (value.isPresent() && Live.agree(value.getAsDouble(), number.value())) {
            String formula = live.formula(sheets);
            if (formula.length() <= LONGEST_FORMULA) {
                row.getCell(column).setCellFormula(formula);
                row.getCell(column).setCellValue(number.value());
            }
        }
    }

    /** The cell that names the severity; the first one where none does. */
    private static int markedColumn(TableView.Row row) {
        String word = row.severity().map(Severity::word).orElse("");
        for (int i = 0; i < row.cells().size(); i++) {
            if (row.cells().get(i).shown().equals(word)) {
                return i;
            }
        }
        return 0;
    }

    private void cell(Row row, int column, Column heading, Cell cell, Optional<Severity> severity) {
        if (cell instanceof Cell.Number number) {
            SXSSFCell written = (SXSSFCell) row.createCell(column);
            written.setCellValue(number.value());
            int decimals = number.decimals() == Cell.Number.AS_COLUMN ? heading.decimals() : number.decimals();
            written.setCellStyle(styles.number(Math.max(0, decimals), severity));
        } else if (!cell.shown().isEmpty() || severity.isPresent()) {
            SXSSFCell written = text(row, cell.shown(), column);
            Optional<String> target = target(cell);
            target.ifPresent(address -> link(written, address));
            written.setCellStyle(target.isPresent() ? styles.link() : styles.text(cell.shown(), severity));
        }
    }

    private Optional<String> target(Cell cell) {
        if (cell instanceof Cell.Link link) {
            String name = userSheets.get(SheetMarks.key(link.place().sheet()));
            if (name != null && link.place().row() >= 1) {
                CellAddress address = new CellAddress(
                        link.place().row() - 1, Math.max(0, link.place().column()));
                return Optional.of(ResultSheet.quoted(name) + "!" + address.formatAsString());
            }
        }
        if (cell instanceof Cell.Jump jump && places.containsKey(jump.title())) {
            ResultSheet other = places.get(jump.title());
            CellAddress address = new CellAddress(other.firstRow() + jump.row(), 0);
            return Optional.of(ResultSheet.quoted(other.sheetName()) + "!" + address.formatAsString());
        }
        return Optional.empty();
    }

    private void link(SXSSFCell cell, String address) {
        Hyperlink link = workbook.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
        link.setAddress(address);
        cell.setHyperlink(link);
    }

    private static SXSSFCell text(Row row, String text, int column) {
        SXSSFCell cell = (SXSSFCell) row.createCell(column);
        cell.setCellValue(text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT));
        return cell;
    }

    /** Sets the widths of the columns, in characters. */
    private static int[] widths(SXSSFSheet sheet, TableView view) {
        int[] widths = new int[view.columns().size()];
        for (int i = 0; i < view.columns().size(); i++) {
            Column column = view.columns().get(i);
            int longest = headingWidth(column.heading());
            for (TableView.Row row :
                    view.rows().subList(0, Math.min(ROWS_MEASURED, view.rows().size()))) {
                Cell cell = row.cells().get(i);
                int length = cell instanceof Cell.Number ? 0 : cell.shown().length() + 1;
                longest = Math.max(longest, Math.min(length, column.widthCharacters()));
            }
            int characters = Math.max(NARROWEST_CHARACTERS, Math.min(WIDEST_CHARACTERS, longest));
            widths[i] = characters;
            sheet.setColumnWidth(i, characters * WIDTH_UNITS_PER_CHARACTER);
        }
        return widths;
    }

    /** Height for the longest text of a row, since not every program finds it by itself. */
    private static void height(Row row, TableView.Row values, int[] widths) {
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            int room = Math.max(1, widths[i] - MARGIN_CHARACTERS);
            Cell cell = values.cells().get(i);
            if (!(cell instanceof Cell.Number)) {
                int needed = cell.shown()
                        .lines()
                        .mapToInt(line -> Math.max(1, (line.length() + room - 1) / room))
                        .sum();
                lines = Math.max(lines, needed);
            }
        }
        if (lines > 1) {
            row.setHeightInPoints(Math.min(TALLEST_POINTS, lines * POINTS_PER_LINE));
        }
    }

    /** Width of a heading that may wrap into two lines, beside its filter button. */
    private static int headingWidth(String heading) {
        int longestWord =
                Stream.of(heading.split(" ")).mapToInt(String::length).max().orElse(0);
        return Math.max(longestWord, heading.length() / 2 + 3) + 4;
    }

    /** The cells are streamed, so the library cannot read the headings back: the names of the columns are set here. */
    private void table(ResultSheet place) {
        XSSFSheet sheet = workbook.getXSSFWorkbook().getSheet(place.sheetName());
        int columns = place.view().columns().size();
        AreaReference area = new AreaReference(
                new CellReference(place.headingRow(), 0),
                new CellReference(place.lastRow(), columns - 1),
                SpreadsheetVersion.EXCEL2007);
        XSSFTable table = sheet.createTable(area);
        CTTable definition = table.getCTTable();
        String name = tableName(place.view().title());
        definition.setName(name);
        definition.setDisplayName(name);
        CTTableColumns names = definition.getTableColumns();
        for (int i = 0; i < columns; i++) {
            names.getTableColumnArray(i).setName(place.view().columns().get(i).heading());
        }
        definition.addNewAutoFilter().setRef(area.formatAsString());
        definition.addNewTableStyleInfo().setName("TableStyleLight1");
        definition.getTableStyleInfo().setShowRowStripes(true);
    }

    private String tableName(String title) {
        String stem = "Tally_" + title.replaceAll("[^A-Za-z0-9]+", "_");
        String name = stem;
        for (int i = 2; !takenNames.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = stem + "_" + i;
        }
        return name;
    }

    private void print(SXSSFSheet sheet, ResultSheet place) {
        sheet.createFreezePane(1, place.firstRow());
        sheet.setRepeatingRows(new CellRangeAddress(place.headingRow(), place.headingRow(), -1, -1));
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.getHeader().setLeft("&A");
        sheet.getFooter().setRight("&P of &N");
        sheet.setTabColor(MarkPalette.color(TAB_COLOUR));
        sheet.setSelected(false);
    }
}
