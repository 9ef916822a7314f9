package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.template.Template;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;

/** The formulas of the result sheets, computed by a program that shares no code with this one, against our own results. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("slow")
class LiveFormulasTest {
    /** Sheets whose formulas rest on entries; those of the solvents also rest on estimates of the tool. */
    private static final List<String> FROM_ENTRIES = List.of(
            "Summary",
            "Yields",
            "Amounts",
            "Lots",
            "Closures",
            "Layer balance",
            "Mass balance",
            "Waste",
            "Waste totals");

    private Path folder;
    private Path demo;
    private Path annotated;

    /** What the program of its own made of the three workbooks; null until a test asks. */
    private Path recalculated;

    @BeforeAll
    void annotatesTheDemo(@TempDir Path shared) throws Exception {
        folder = shared;
        demo = folder.resolve("demo.xlsx");
        new Template().writeExample(demo);
        annotated = annotate(demo, "demo-review.xlsx");
    }

    /** A workbook computed anew; all of them with one start of the program. */
    private Path recalculated(String name) throws Exception {
        if (recalculated == null) {
            Path into = folder.resolve("recalculated");
            Path changed = folder.resolve("changed-review.xlsx");
            change(annotated, changed);
            Path corrected = edited(
                    annotate(withoutFormula(), "plain-review.xlsx"),
                    folder.resolve("corrected-review.xlsx"),
                    LiveFormulasTest::correct);
            LibreOffice.resave(List.of(annotated, changed, corrected), into, LibreOffice.Recalculation.ALWAYS);
            recalculated = into;
        }
        return recalculated.resolve(name);
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

    /**
     * Two sets of numbers agree where both have them, but for expanded uncertainties: an entry with more digits counts as a finer reading, and
     * they keep the relative uncertainty of the review.
     */
    private void assertAgreeAfterChanges(Map<String, Double> fresh, Map<String, Double> changed) throws IOException {
        try (XSSFWorkbook formulas = new XSSFWorkbook(Files.newInputStream(annotated))) {
            changed.forEach((cell, value) -> {
                if (fresh.containsKey(cell)) {
                    CellReference place = new CellReference("'" + cell.replace("!", "'!"));
                    XSSFSheet sheet = formulas.getSheet(place.getSheetName());
                    String formula =
                            sheet.getRow(place.getRow()).getCell(place.getCol()).toString();
                    String heading = sheet.getRow(sheet.getTables().get(0).getStartRowIndex())
                            .getCell(place.getCol())
                            .getStringCellValue();
                    boolean uncertain = formula.contains("Limit_Coverage_factor") || heading.startsWith("U of ");
                    if (!uncertain) {
                        assertEquals(fresh.get(cell), value, 1e-9 * Math.max(1e-6, Math.abs(value)), cell);
                    }
                }
            });
        }
    }

    private static double number(Path workbook, String sheet, String run, String heading) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
            XSSFSheet found = book.getSheet(sheet);
            int headings = found.getTables().get(0).getStartRowIndex();
            for (int row = headings + 1; row <= found.getLastRowNum(); row++) {
                if (found.getRow(row).getCell(0).getStringCellValue().equals(run)) {
                    for (Cell cell : found.getRow(headings)) {
                        if (cell.getStringCellValue().equals(heading)) {
                            return found.getRow(row)
                                    .getCell(cell.getColumnIndex())
                                    .getNumericCellValue();
                        }
                    }
                }
            }
        }
        throw new IllegalArgumentException(sheet + ": no " + heading + " of " + run);
    }

    /** A cell of Charges: the molar mass of a material. */
    private static Cell molarMass(XSSFWorkbook workbook, String run, String material) {
        for (Row row : workbook.getSheet("Charges")) {
            if (row.getCell(0) != null
                    && row.getCell(0).toString().equals(run)
                    && row.getCell(1).toString().equals(material)) {
                return row.getCell(4);
            }
        }
        throw new IllegalArgumentException(run + " " + material);
    }

    private static Path edited(Path from, Path to, Consumer<XSSFWorkbook> edit) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(from));
                OutputStream out = Files.newOutputStream(to)) {
            edit.accept(workbook);
            workbook.write(out);
        }
        return to;
    }

    /** The demo week in which the bromide of R26-048 has no formula, so that its molar mass counts. */
    private Path withoutFormula() throws IOException {
        return edited(
                demo,
                folder.resolve("plain.xlsx"),
                book -> molarMass(book, "R26-048", "4-bromoacetophenone")
                        .getRow()
                        .getCell(3)
                        .setBlank());
    }

    private static void correct(XSSFWorkbook book) {
        molarMass(book, "R26-044", "benzylamine hydrochloride").setCellValue(143.61);
        Cell bromide = molarMass(book, "R26-048", "4-bromoacetophenone");
        bromide.setCellValue(bromide.getNumericCellValue() * 1.02);
    }

    /**
     * The amine of R26-044 with the molar mass of its hydrochloride (143.61, from the atomic weights of C7H10ClN): theory and yield as
     * typed become those of the formula.
     */
    @Test
    void correctedMolarMassMovesWhatRestsOnIt() throws Exception {
        Path after = recalculated("corrected-review.xlsx");
        Path before = folder.resolve("plain-review.xlsx");
        assertEquals(73.1, number(before, "Yields", "R26-044", "Yield as typed (%)"), 0.05);
        assertEquals(89.8, number(after, "Yields", "R26-044", "Yield as typed (%)"), 0.05);
        assertEquals(
                number(after, "Yields", "R26-044", "Theory (g)"),
                number(after, "Yields", "R26-044", "Theory as typed (g)"),
                5e-4);
        Path fresh = annotate(
                edited(folder.resolve("plain.xlsx"), folder.resolve("corrected.xlsx"), LiveFormulasTest::correct),
                "corrected-fresh.xlsx");
        for (String heading : List.of("Theory (g)", "Yield (%)")) {
            assertEquals(
                    number(fresh, "Yields", "R26-048", heading), number(after, "Yields", "R26-048", heading), 1e-9);
        }
        assertEquals(
                number(fresh, "Closures", "R26-048", "Closure (%)"),
                number(after, "Closures", "R26-048", "Closure (%)"),
                1e-9);
        for (String heading : List.of("Theory (g)", "Yield (%)", "Closure (%)")) {
            assertEquals(
                    number(after, heading.startsWith("Clos") ? "Closures" : "Yields", "R26-048", heading),
                    number(after, "Summary", "R26-048", heading),
                    1e-9,
                    "the summary follows: " + heading);
        }
        assertNotEquals(
                number(before, "Closures", "R26-048", "Closure (%)"),
                number(after, "Closures", "R26-048", "Closure (%)"),
                0.5);
    }

    /** Formulas read the cells that a user corrects: an amount charged, a gross weight of a lot and of a layer, a molar mass, an assay. */
    @Test
    void formulasReferToTheCellsOfTheUser() throws IOException {
        Set<String> read = new TreeSet<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(annotated))) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            Matcher name = Pattern.compile(
                                            "'?(Charges|Isolated|Layers|Products)'?!\\$?([A-Z]+)\\$?\\d+")
                                    .matcher(cell.getCellFormula());
                            while (name.find()) {
                                int column = CellReference.convertColStringToIndex(name.group(2));
                                read.add(name.group(1) + " "
                                        + book.getSheet(name.group(1)).getRow(0).getCell(column));
                            }
                        }
                    }
                }
            }
        }
        for (String cell : List.of(
                "Charges Actual amount",
                "Charges Molar mass (g/mol)",
                "Isolated Gross (g)",
                "Isolated Tare (g)",
                "Layers Gross (g)")) {
            assertTrue(read.contains(cell), cell + " in " + read);
        }
    }

    @Test
    void limitsHaveNamesThatFormulasUse() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(annotated))) {
            AreaReference factor = new AreaReference(
                    book.getName("Limit_Coverage_factor").getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
            Cell cell = book.getSheet("Basis")
                    .getRow(factor.getFirstCell().getRow())
                    .getCell(factor.getFirstCell().getCol());
            assertEquals(2, cell.getNumericCellValue(), 0);
            assertTrue(book.getName("Limit_Container_fill").getRefersToFormula().startsWith("'Basis'!$C$"));
        }
    }

    /** Three lines of 15 points; a text that needs more than three lines of its column stands on the sheets of findings and basis only. */
    @Test
    void noRowOfAResultSheetIsHigherThanThreeLines() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(annotated))) {
            for (Sheet sheet : book) {
                if (((XSSFSheet) sheet).getTables().isEmpty()
                        || !((XSSFSheet) sheet).getTables().get(0).getName().startsWith("Tally_")) {
                    continue;
                }
                int headings = ((XSSFSheet) sheet).getTables().get(0).getStartRowIndex();
                for (Row row : sheet) {
                    String place = sheet.getSheetName() + " row " + (row.getRowNum() + 1);
                    assertTrue(row.getHeightInPoints() <= 45, place + ": " + row.getHeightInPoints());
                    for (Cell cell : row.getRowNum() > headings ? row : List.<Cell>of()) {
                        boolean long_ = cell.getCellType() == CellType.STRING
                                && cell.getStringCellValue().length()
                                        > 3 * 1.1 * sheet.getColumnWidth(cell.getColumnIndex()) / 256;
                        assertFalse(
                                long_ && !List.of("Findings", "Basis").contains(sheet.getSheetName()),
                                place + ": " + cell);
                    }
                }
            }
        }
    }

    @Test
    void recalculationGivesOurResults() throws Exception {
        Map<String, Double> ours = numbers(annotated, annotated, List.of());
        assertTrue(ours.size() > 500, ours.size() + " formulas");
        assertAgree(ours, numbers(annotated, recalculated("demo-review.xlsx"), List.of()));
    }

    @Test
    void changedEntriesChangeTheResultsAsANewReviewDoes() throws Exception {
        Path changedBook = folder.resolve("changed.xlsx");
        change(demo, changedBook);
        Path fresh = annotate(changedBook, "fresh-review.xlsx");
        Map<String, Double> before = numbers(annotated, annotated, FROM_ENTRIES);
        Map<String, Double> after = numbers(annotated, recalculated("changed-review.xlsx"), FROM_ENTRIES);
        assertAgreeAfterChanges(numbers(annotated, fresh, FROM_ENTRIES), after);
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
