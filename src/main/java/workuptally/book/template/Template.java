package workuptally.book.template;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import workuptally.book.files.CsvRows;
import workuptally.book.files.CsvText;
import workuptally.book.files.FileBytes;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.files.WholeFile;
import workuptally.book.lists.HeadingsFile;
import workuptally.book.lists.OwnListLayout;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Schema;
import workuptally.book.schema.Table;
import workuptally.book.sources.EmptyTables;
import workuptally.book.sources.OpenBook;
import workuptally.book.sources.TableSource;

/** Writes books: empty ones with lists, units and help, the example week, and a workbook from a folder of CSV files. */
public final class Template {
    private static final String EXAMPLE = "/workuptally/demo-week/";
    private static final int ROWS_IN_MEMORY = 200;

    /** Writes an empty workbook: all sheets with headings, lists to choose from and notes; Limits lists every setting with its default. */
    public void writeEmpty(Path target) throws IOException {
        List<RawTable> tables = Schema.TABLES.stream().map(EmptyTables::of).toList();
        write(List.of(), tables, HeadingAliases.NONE, true, target);
    }

    /** Writes the example week as a workbook, with the same help as the empty one. The example is invented. */
    public void writeExample(Path target) throws IOException {
        List<RawTable> tables = new ArrayList<>();
        for (Table table : Schema.TABLES) {
            tables.add(example(table).orElseGet(() -> EmptyTables.of(table)));
        }
        write(List.of(), tables, HeadingAliases.NONE, true, target);
    }

    /** Writes the tables of an empty book as CSV files in UTF-8 to a folder, which is made if it is not there. */
    public void writeEmptyCsv(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Table table : Schema.TABLES) {
            WholeFile.write(
                    csv(EmptyTables.of(table)).getBytes(StandardCharsets.UTF_8), folder.resolve(table.csvFileName()));
        }
    }

    /** Writes the example week as CSV files to a folder, which is made if it is not there. The example is invented. */
    public void writeExampleCsv(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Table table : Schema.TABLES) {
            try (InputStream in = Template.class.getResourceAsStream(EXAMPLE + table.csvFileName())) {
                byte[] bytes =
                        in == null ? csv(EmptyTables.of(table)).getBytes(StandardCharsets.UTF_8) : in.readAllBytes();
                WholeFile.write(bytes, folder.resolve(table.csvFileName()));
            }
        }
    }

    /**
     * Writes the tables of a CSV folder, or of one CSV file that is a list, as a workbook: each table a sheet under the name that the places of its findings carry, each record
     * on the row that they carry. Plain numbers become numbers with the decimals as typed, days become dates; all else stays text.
     *
     * @param folder folder of CSV files, or CSV file
     * @param options as for reading
     * @param target workbook to write
     * @throws UnreadableBookException if a file is no CSV text
     */
    public void writeWorkbookFrom(Path folder, ReadingOptions options, Path target)
            throws UnreadableBookException, IOException {
        Optional<HeadingsFile> headings = Optional.empty();
        if (options.headingsFile().isPresent()) {
            headings = Optional.of(HeadingsFile.read(options.headingsFile().get()));
        }
        HeadingAliases aliases = headings.map(HeadingsFile::aliases).orElse(HeadingAliases.NONE);
        List<OwnListLayout> lists = headings.map(HeadingsFile::lists).orElse(List.of());
        List<RawTable> own = new ArrayList<>();
        List<RawTable> tables = new ArrayList<>();
        try (OpenBook book = OpenBook.of(folder, aliases, !lists.isEmpty(), options.sizeCaps())) {
            TableSource source = book.tables();
            for (OwnListLayout list : lists) {
                for (String name : list.sheets().isEmpty()
                        ? source.names().stream().limit(1).toList()
                        : list.sheets()) {
                    source.sheet(name, new FindingLog())
                            .filter(raw -> own.stream()
                                    .noneMatch(known -> known.sheet().equals(raw.sheet())))
                            .ifPresent(own::add); // lists side by side are one sheet
                }
            }
            for (Table table : Schema.TABLES) {
                source.table(table, new FindingLog())
                        .filter(raw ->
                                own.stream().noneMatch(list -> list.sheet().equals(raw.sheet())))
                        .ifPresent(tables::add);
            }
        }
        write(own, tables, aliases, false, target);
    }

    private static void write(
            List<RawTable> own, List<RawTable> tables, HeadingAliases aliases, boolean withHelp, Path target)
            throws IOException {
        try (SXSSFWorkbook workbook = new SXSSFWorkbook(new XSSFWorkbook(), ROWS_IN_MEMORY, false, true)) {
            TemplateStyles styles = new TemplateStyles(workbook);
            if (withHelp) {
                SXSSFSheet sheet = workbook.createSheet(ReadMeSheet.NAME);
                ReadMeSheet.write(sheet, styles);
                sheet.flushRows();
            }
            for (RawTable raw : own) {
                SXSSFSheet sheet = workbook.createSheet(raw.sheet());
                TemplateSheet.writeOwn(sheet, styles, raw);
                sheet.flushRows();
            }
            for (RawTable raw : tables) {
                Table table = HeadingAliases.NONE.table(raw.sheet()).orElseThrow();
                SXSSFSheet sheet = workbook.createSheet(table.name());
                new TemplateSheet(sheet, styles, table).write(raw, aliases, withHelp);
                sheet.flushRows(); // left to the library, the sheets would add their texts in an order that changes
            }
            WholeFile.write(workbook, target);
        }
    }

    private static Optional<RawTable> example(Table table) throws IOException {
        try (InputStream in = Template.class.getResourceAsStream(EXAMPLE + table.csvFileName())) {
            if (in == null) {
                return Optional.empty();
            }
            FileBytes file = new FileBytes(table.csvFileName(), in.readAllBytes());
            List<RawRow> rows = CsvRows.of(file.name(), CsvText.of(file).text());
            return Optional.of(new RawTable(file.name(), table.name(), false, rows));
        } catch (UnreadableBookException damaged) {
            throw new IllegalStateException("the example that comes with the program is damaged", damaged);
        }
    }

    private static String csv(RawTable table) throws IOException {
        StringWriter out = new StringWriter();
        CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            int width = table.rows().get(0).cells().size();
            for (RawRow row : table.rows()) {
                for (int column = 0; column < width; column++) {
                    printer.print(row.cell(column).map(RawCell::text).orElse(""));
                }
                printer.println();
            }
        }
        return out.toString();
    }
}
