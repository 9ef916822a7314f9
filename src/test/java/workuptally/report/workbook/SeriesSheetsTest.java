package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.book.template.Template;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.ExampleReview;
import workuptally.report.view.wording.Wording;
import workuptally.tally.series.SeriesTally;

/** Sheets of a repeated preparation: nine runs of one series after eight earlier results, one far off and one copied. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("slow")
class SeriesSheetsTest {
    private static final double[] EARLIER = {76.9, 78.4, 77.6, 79.0, 76.2, 78.1, 77.3, 79.3};
    private static final double[] NET = {5.31, 5.25, 5.18, 5.42, 5.27, 2.96, 5.33, 5.21, 5.18};

    private Path folder;
    private Path book;
    private Path annotated;
    private Review review;

    @BeforeAll
    void annotatesAClass(@TempDir Path shared) throws Exception {
        folder = shared;
        Path tables = Files.createDirectory(folder.resolve("tables"));
        for (Map.Entry<String, String> table : tables().entrySet()) {
            Files.writeString(tables.resolve(table.getKey() + ".csv"), table.getValue());
        }
        book = folder.resolve("class.xlsx");
        new Template().writeWorkbookFrom(tables, ReadingOptions.defaults(), book);
        review = review(book);
        annotated = annotate(book, "class-review.xlsx");
    }

    private static Map<String, String> tables() {
        StringBuilder runs = new StringBuilder("Run,Date,Reaction,Kind,Series,Status\n");
        StringBuilder products = new StringBuilder("Run,Product,Wanted,Formula,Coefficient,Skeleton\n");
        StringBuilder charges = new StringBuilder(
                "Run,Material,Role,Formula,Coefficient,Planned amount,Planned unit,Actual amount,Actual unit\n");
        StringBuilder isolated =
                new StringBuilder("Run,Lot,Product,Stage,Gross (g),Tare (g),Assay (% w/w),Identity by\n");
        StringBuilder history = new StringBuilder("Series,Date,Yield (%)\n");
        for (int i = 0; i < NET.length; i++) {
            String run = "R" + (i + 1);
            // The last row repeats the weighing of the third, tare and all.
            int vessel = i == 8 ? 2 : i;
            runs.append(run).append(",2026-03-02,acetylation,reaction,S-1,isolated\n");
            products.append(run).append(",acetanilide,yes,C8H9NO,1,aniline 1\n");
            charges.append(run).append(",aniline,substrate,C6H7N,1,4.66,g,4.66,g\n");
            isolated.append(String.format(
                    Locale.ROOT,
                    "%s,C1,acetanilide,crude,%.2f,%.2f,97.5,melting point%n",
                    run,
                    90 + vessel + NET[i],
                    90.0 + vessel));
        }
        for (int i = 0; i < EARLIER.length; i++) {
            history.append(String.format(Locale.ROOT, "S-1,2026-01-%02d,%.1f%n", i + 5, EARLIER[i]));
        }
        return Map.of(
                "runs", runs.toString(),
                "products", products.toString(),
                "charges", charges.toString(),
                "isolated", isolated.toString(),
                "history", history.toString());
    }

    private static Review review(Path book) throws Exception {
        return new ReviewBuilder(Reference.load(), "0.1.0").review(new BookReader().read(book));
    }

    private Path annotate(Path from, String name) throws Exception {
        Path output = folder.resolve(name);
        AnnotatedWorkbook.write(from, output, review(from), Wording.POINT);
        return output;
    }

    private static double number(XSSFWorkbook workbook, String sheet, int row, String heading) {
        return cell(workbook, sheet, row, heading).getNumericCellValue();
    }

    private static Cell cell(XSSFWorkbook workbook, String sheet, int row, String heading) {
        var table = workbook.getSheet(sheet).getTables().get(0);
        int column = table.findColumnIndex(heading);
        assertTrue(column >= 0, heading);
        return workbook.getSheet(sheet)
                .getRow(table.getStartRowIndex() + 1 + row)
                .getCell(column);
    }

    @Test
    void seriesShowsEveryPointWithMeanAndLimits() throws Exception {
        SeriesTally series = review.series().get(0);
        SeriesTally.Chart chart = series.chart().orElseThrow();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(annotated))) {
            assertEquals(chart.centrePercent(), number(workbook, "Series", 0, "Mean (%)"), 1e-9);
            assertEquals(chart.lowerLimitPercent(), number(workbook, "Series", 0, "Lower limit (%)"), 1e-9);
            assertEquals(chart.upperLimitPercent(), number(workbook, "Series", 16, "Upper limit (%)"), 1e-9);
            assertEquals(1.5, number(workbook, "Series", 1, "Moving range (%)"), 1e-9);
            assertEquals(series.results().get(5).yieldPercent(), number(workbook, "Series", 13, "Yield (%)"), 1e-9);
            assertTrue(
                    cell(workbook, "Series", 13, "Signals").getStringCellValue().contains("outside the limits"));
        }
    }

    @Test
    void classNamesWhatIsFarOffAndWhatDoesNotCount() throws Exception {
        SeriesTally.Together together = review.series().get(0).together().orElseThrow();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(annotated))) {
            assertEquals(together.medianPercent().orElseThrow(), number(workbook, "Class", 0, "Median (%)"), 1e-9);
            assertEquals(
                    together.robustSpreadPercent().orElseThrow(),
                    number(workbook, "Class", 8, "Robust spread (%)"),
                    1e-9);
            assertEquals(
                    "further than 3.5 robust spreads from the median",
                    cell(workbook, "Class", 5, "Remark").getStringCellValue());
            assertEquals(
                    "copied from an earlier run",
                    cell(workbook, "Class", 8, "Remark").getStringCellValue());
            assertNull(cell(workbook, "Class", 8, "Counted (%)"));
            assertEquals(100, number(workbook, "Class materials", 0, "Actual of planned (%)"), 1e-9);
        }
    }

    @Test
    void chartHasPointsMeanAndBothLimits() throws Exception {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(annotated))) {
            List<XSSFChart> charts =
                    workbook.getSheet("Series").getDrawingPatriarch().getCharts();
            assertEquals(1, charts.size());
            assertEquals(
                    4,
                    charts.get(0)
                            .getCTChart()
                            .getPlotArea()
                            .getLineChartArray(0)
                            .sizeOfSerArray());
        }
    }

    /** Both sheets are formulas throughout; a program that shares no code with this one gives what a new review of the changed book gives. */
    @Test
    void changedWeighingAndEarlierResultMoveTheSheetsAsANewReviewDoes() throws Exception {
        Path changedBook = change(book, "changed.xlsx");
        Path recalculated = LibreOffice.resave(
                change(annotated, "changed-review.xlsx"),
                folder.resolve("recalculated"),
                LibreOffice.Recalculation.ALWAYS);
        Path fresh = annotate(changedBook, "fresh-review.xlsx");
        int compared = 0;
        int moved = 0;
        try (XSSFWorkbook expected = new XSSFWorkbook(Files.newInputStream(fresh));
                XSSFWorkbook before = new XSSFWorkbook(Files.newInputStream(annotated));
                XSSFWorkbook actual = new XSSFWorkbook(Files.newInputStream(recalculated))) {
            for (String name : List.of("Series", "Class", "Class materials")) {
                for (Row row : before.getSheet(name)) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            double now = at(actual.getSheet(name), cell);
                            assertEquals(at(expected.getSheet(name), cell), now, 1e-7, name + cell.getAddress());
                            compared++;
                            moved += Math.abs(now - cell.getNumericCellValue()) > 1e-6 ? 1 : 0;
                        }
                    }
                }
            }
        }
        assertTrue(compared > 100, compared + " formulas");
        assertTrue(moved > 60, moved + " of them moved");
    }

    private static double at(Sheet sheet, Cell cell) {
        return sheet.getRow(cell.getRowIndex()).getCell(cell.getColumnIndex()).getNumericCellValue();
    }

    private Path change(Path from, String name) throws Exception {
        Path to = folder.resolve(name);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(from));
                OutputStream out = Files.newOutputStream(to)) {
            add(workbook.getSheet("Isolated"), "Gross", 1, 0.06);
            add(workbook.getSheet("History"), "Yield", 3, -1.7);
            workbook.write(out);
        }
        return to;
    }

    private static void add(Sheet sheet, String heading, int row, double difference) {
        for (Cell cell : sheet.getRow(0)) {
            if (cell.getStringCellValue().startsWith(heading)) {
                Cell entry = sheet.getRow(row).getCell(cell.getColumnIndex());
                entry.setCellValue(entry.getNumericCellValue() + difference);
                return;
            }
        }
        throw new IllegalArgumentException(heading);
    }

    @Test
    void bookWithoutARepeatedPreparationHasNoneOfTheseSheets() throws Exception {
        Path input = UserBook.plain().writeTo(folder.resolve("plain.xlsx"));
        Path output = folder.resolve("plain-review.xlsx");
        AnnotatedWorkbook.write(input, output, ExampleReview.of(3), Wording.POINT);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(output))) {
            for (String name : List.of("Series", "Class", "Class materials", "Regulatory facts")) {
                assertNull(workbook.getSheet(name), name);
            }
        }
    }
}
