package workuptally.report.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.Writer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBookViews;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumns;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook;
import workuptally.model.Severity;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;

/**
 * The sheets of the result tables, each a spreadsheet table with named columns, a filter, a frozen heading and print settings. The
 * spreadsheet library sees them without their rows, which are written behind its back: it would keep every cell as an object.
 */
final class ResultSheetWriting {
    private static final int MOST_ROWS_HELD = 9;

    private static final int WIDTH_UNITS_PER_CHARACTER = 256;
    private static final double SIDE_MARGIN_INCHES = 0.4;
    private static final int TAB_COLOUR = 0x0072B2;

    private final XSSFWorkbook workbook;
    private final Set<String> takenNames = new HashSet<>();
    private final Map<String, ResultSheet> tables = new LinkedHashMap<>();
    private final Map<String, ResultBook.Named> names = new HashMap<>();
    private final ResultBook book;

    /**
     * No result sheets yet.
     *
     * @param workbook the workbook that holds the user's sheets
     * @param styles styles
     * @param entries numbers in the user's sheets
     */
    ResultSheetWriting(XSSFWorkbook workbook, ResultStyles styles, EnteredNumbers entries) {
        this.workbook = workbook;
        Map<String, String> userSheets = new HashMap<>();
        for (Sheet sheet : workbook) {
            userSheets.put(SheetMarks.key(sheet.getSheetName()), sheet.getSheetName());
            ((XSSFSheet) sheet).getTables().forEach(table -> takenNames.add(SheetMarks.key(table.getName())));
        }
        takenNames.addAll(userSheets.keySet());
        workbook.getAllNames().forEach(name -> takenNames.add(SheetMarks.key(name.getNameName())));
        book = new ResultBook(styles, new ResultCells(styles, userSheets, tables), entries, userSheets, tables, names);
    }

    /**
     * Adds a sheet for each table behind the user's sheets, without its rows.
     *
     * @param views the tables in order
     * @return where they stand, in the same order
     */
    List<ResultSheet> add(List<TableView> views) {
        for (TableView view : views) {
            tables.put(view.title(), new ResultSheet(view, free(view.title())));
        }
        LookedAt lookedAt = new LookedAt();
        tables.values().forEach(table -> table.survey().ask(lookedAt));
        tables.values().forEach(table -> survey(table, lookedAt));
        tables.values().forEach(this::add);
        tables.values().forEach(this::name);
        return List.copyOf(tables.values());
    }

    /** Makes the workbook open on that sheet and on no other. */
    void open(ResultSheet first) {
        CTWorkbook definition = workbook.getCTWorkbook();
        CTBookViews views = definition.isSetBookViews() ? definition.getBookViews() : definition.addNewBookViews();
        if (views.sizeOfWorkbookViewArray() == 0) {
            views.addNewWorkbookView();
        }
        XSSFSheet sheet = workbook.getSheet(first.sheetName());
        workbook.setActiveSheet(workbook.getSheetIndex(sheet));
        sheet.setSelected(true);
    }

    /** The sheets by the names of their parts. */
    Map<String, ResultSheet> byPart() {
        Map<String, ResultSheet> parts = new HashMap<>();
        for (ResultSheet table : tables.values()) {
            PackagePart part = workbook.getSheet(table.sheetName()).getPackagePart();
            parts.put(part.getPartName().getName().substring(1), table);
        }
        return parts;
    }

    /**
     * Copies the part of a sheet with its rows put in.
     *
     * @param sheet the sheet
     * @param part the part as the library saved it
     * @param out where it goes, in UTF-8
     */
    void copy(ResultSheet sheet, InputStream part, Writer out) throws IOException {
        try (Reader text = PartText.open(part)) {
            Markup markup = new Markup(text, out);
            while (markup.next()) {
                if (markup.is("sheetData")) {
                    new ResultRows(sheet, book, out).write();
                } else {
                    markup.keep();
                }
            }
        }
    }

    private String free(String title) {
        String name = title;
        for (int i = 1; !takenNames.add(SheetMarks.key(name)); i++) {
            name = title + (i == 1 ? " (review)" : " (review " + i + ")");
        }
        return name;
    }

    /** Goes through the rows once, and makes the styles of their cells. */
    private void survey(ResultSheet sheet, LookedAt lookedAt) {
        List<Column> columns = sheet.view().columns();
        sheet.survey().take(lookedAt).forEachOrdered(row -> {
            int marked = ResultCells.markedColumn(row);
            for (int i = 0; i < columns.size(); i++) {
                Optional<Severity> severity = i == marked ? row.severity() : Optional.empty();
                if (ResultCells.isWritten(row.cells().get(i), severity)) {
                    book.cells().style(columns.get(i), row.cells().get(i), severity);
                }
            }
        });
        if (sheet.survey().rows() == 0) {
            book.styles().text(ResultRows.NONE, Optional.empty());
        }
    }

    private void add(ResultSheet place) {
        XSSFSheet sheet = workbook.createSheet(place.sheetName());
        SheetLayout layout = new SheetLayout(place);
        int columns = place.view().columns().size();
        for (int i = 0; i < columns; i++) {
            sheet.setColumnWidth(i, layout.widthCharacters(i) * WIDTH_UNITS_PER_CHARACTER);
        }
        sheet.getCTWorksheet()
                .getDimension()
                .setRef(new CellRangeAddress(0, place.lastRow(), 0, columns - 1).formatAsString());
        table(sheet, place);
        print(sheet, place);
    }

    /** Names the numbers that the tables name; a name that the user has taken gets a number behind it. */
    private void name(ResultSheet sheet) {
        for (TableView.Name wanted : sheet.view().names()) {
            int column = sheet.column(wanted.column());
            OptionalDouble number = sheet.survey().number(wanted.row(), column);
            if (number.isPresent()) {
                String shown = free(wanted.name(), "_");
                Name name = workbook.createName();
                name.setNameName(shown);
                name.setRefersToFormula(ResultSheet.quoted(sheet.sheetName()) + "!"
                        + new CellReference(sheet.firstRow() + wanted.row(), column, true, true).formatAsString());
                names.put(wanted.name(), new ResultBook.Named(shown, number.getAsDouble()));
            }
        }
    }

    /** The library does not see the headings: the names of the columns are set here. */
    private void table(XSSFSheet sheet, ResultSheet place) {
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
        return free("Tally_" + title.replaceAll("[^A-Za-z0-9]+", "_"), "_");
    }

    private String free(String stem, String between) {
        String name = stem;
        for (int i = 2; !takenNames.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = stem + between + i;
        }
        return name;
    }

    private static void print(XSSFSheet sheet, ResultSheet place) {
        // many lines of notes that stay in view would leave no room to scroll
        sheet.createFreezePane(1, place.firstRow() <= MOST_ROWS_HELD ? place.firstRow() : 0);
        sheet.setRepeatingRows(new CellRangeAddress(place.headingRow(), place.headingRow(), -1, -1));
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        for (PageMargin side : List.of(PageMargin.LEFT, PageMargin.RIGHT)) {
            sheet.setMargin(side, SIDE_MARGIN_INCHES);
        }
        sheet.getHeader().setLeft("&A");
        sheet.getFooter().setRight("&P of &N");
        sheet.setTabColor(MarkPalette.color(TAB_COLOUR));
        sheet.setSelected(false);
    }
}
