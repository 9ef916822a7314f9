package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.Template;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.view.Wording;

/** The formulas of the result sheets, computed by a program that shares no code with this one, against our own results. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("slow")
class LiveFormulasTest {
    /** Sheets whose formulas rest on entries; those of the solvents also rest on estimates of the tool. */
    private static final List<String> FROM_ENTRIES =
            List.of("Summary", "Yields", "Lots", "Closures", "Layer balance", "Mass balance", "Waste", "Waste totals");

    private Path folder;
    private Path demo;
    private Path annotated;

    @BeforeAll
    void annotatesTheDemo(@TempDir Path shared) throws Exception {
        folder = shared;
        demo = folder.resolve("demo.xlsx");
        new Template().writeExample(demo);
        annotated = annotate(demo, "demo-review.xlsx");
    }

    private Path annotate(Path book, String name) throws Exception {
        Path output = folder.resolve(name);
        AnnotatedWorkbook.write(
                book,
                output,
                new ReviewBuilder(Reference.load(), "0.1.0").review(new BookReader().read(book)),
                Wording.POINT);
        return output;
    }

    /** Numbers of all cells that hold a formula in the first workbook, as they stand in the second. */
    private static Map<String, Double> numbers(Path formulas, Path values, List<String> only) throws IOException {
        Map<String, Double> found = new TreeMap<>();
        try (XSSFWorkbook first = new XSSFWorkbook(Files.newInputStream(formulas));
                XSSFWorkbook second = new XSSFWorkbook(Files.newInputStream(values))) {
            for (Sheet sheet : first) {
                for (Row row : only.isEmpty() || only.contains(sheet.getSheetName()) ? sheet : List.<Row>of()) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            found.put(
                                    sheet.getSheetName() + "!" + cell.getAddress(),
                                    second.getSheet(sheet.getSheetName())
                                            .getRow(cell.getRowIndex())
                                            .getCell(cell.getColumnIndex())
                                            .getNumericCellValue());
                        }
                    }
                }
            }
        }
        return found;
    }

    private static void assertAgree(Map<String, Double> expected, Map<String, Double> actual) {
        assertEquals(expected.keySet(), actual.keySet());
        expected.forEach(
                (cell, value) -> assertEquals(value, actual.get(cell), 1e-9 * Math.max(1e-6, Math.abs(value)), cell));
    }

    @Test
    void recalculationGivesOurResults() throws Exception {
        Path recalculated =
                LibreOffice.resave(annotated, folder.resolve("recalculated"), LibreOffice.Recalculation.ALWAYS);
        Map<String, Double> ours = numbers(annotated, annotated, List.of());
        assertTrue(ours.size() > 500, ours.size() + " formulas");
        assertAgree(ours, numbers(annotated, recalculated, List.of()));
    }

    @Test
    void changedEntriesChangeTheResultsAsANewReviewDoes() throws Exception {
        Path changedByHand = folder.resolve("changed-review.xlsx");
        Path changedBook = folder.resolve("changed.xlsx");
        change(annotated, changedByHand);
        change(demo, changedBook);
        Path recalculated =
                LibreOffice.resave(changedByHand, folder.resolve("changed"), LibreOffice.Recalculation.ALWAYS);
        Path fresh = annotate(changedBook, "fresh-review.xlsx");
        Map<String, Double> before = numbers(annotated, annotated, FROM_ENTRIES);
        Map<String, Double> after = numbers(annotated, recalculated, FROM_ENTRIES);
        assertAgree(numbers(annotated, fresh, FROM_ENTRIES), after);
        long moved = before.keySet().stream()
                .filter(cell -> Math.abs(before.get(cell) - after.get(cell)) > 1e-6)
                .count();
        assertTrue(moved >= 40, moved + " results moved");
        assertNotEquals(before, after);
    }

    /** Ten entries, each a little larger: weighings of lots and layers, an assay of a lot, amounts charged. */
    private static void change(Path from, Path to) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(from));
                OutputStream out = Files.newOutputStream(to)) {
            enlarge(workbook.getSheet("Isolated"), "gross", 1, 4);
            enlarge(workbook.getSheet("Isolated"), "assay", 1, 1);
            enlarge(workbook.getSheet("Layers"), "gross", 2, 3);
            enlarge(workbook.getSheet("Charges"), "actual amount", 1, 2);
            workbook.write(out);
        }
    }

    private static void enlarge(Sheet sheet, String heading, int skip, int count) {
        int column = -1;
        for (Cell cell : sheet.getRow(0)) {
            if (cell.getStringCellValue().toLowerCase(Locale.ROOT).startsWith(heading)) {
                column = cell.getColumnIndex();
                break;
            }
        }
        int seen = 0;
        for (Row row : sheet) {
            Cell cell = row.getCell(column);
            if (cell != null && cell.getCellType() == CellType.NUMERIC && seen++ >= skip && seen <= skip + count) {
                cell.setCellValue(cell.getNumericCellValue() * 1.0005);
            }
        }
        assertTrue(seen >= skip + count, heading + " in " + sheet.getSheetName());
    }
}
