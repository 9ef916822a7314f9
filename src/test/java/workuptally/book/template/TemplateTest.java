package workuptally.book.template;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.model.Book;
import workuptally.model.Limit;

@Tag("slow")
class TemplateTest {
    @TempDir
    private Path folder;

    @Test
    void emptyWorkbookIsReadAsABookWithoutRuns() throws Exception {
        Book book = new BookReader().read(empty());
        assertEquals(
                List.of("runs-empty"),
                book.findings().stream().map(f -> f.code().word()).toList());
        assertEquals(2, book.limits().value(Limit.COVERAGE_FACTOR), 0);
        assertFalse(book.limits().isSetByBook(Limit.COVERAGE_FACTOR));
    }

    @Test
    void emptyCsvSetIsReadAsABookWithoutRuns() throws Exception {
        Path csv = folder.resolve("csv");
        new Template().writeEmptyCsv(csv);
        Book book = new BookReader().read(csv);
        assertEquals(
                List.of("runs-empty"),
                book.findings().stream().map(f -> f.code().word()).toList());
        assertEquals(Schema.TABLES.size(), book.files().size());
    }

    @Test
    void eachTableHasItsSheetInOrderBehindTheReadMe() throws Exception {
        try (XSSFWorkbook workbook = open(empty())) {
            assertEquals("Read me", workbook.getSheetName(0));
            for (int i = 0; i < Schema.TABLES.size(); i++) {
                assertEquals(Schema.TABLES.get(i).name(), workbook.getSheetName(i + 1));
                Row headings = workbook.getSheetAt(i + 1).getRow(0);
                for (SchemaColumn column : Schema.TABLES.get(i).columns()) {
                    int at = Schema.TABLES.get(i).columns().indexOf(column);
                    assertEquals(column.headingWithUnit(), headings.getCell(at).getStringCellValue());
                }
                assertEquals(1, workbook.getSheetAt(i + 1).getPaneInformation().getHorizontalSplitPosition());
            }
        }
    }

    @Test
    void choicesAreLists() throws Exception {
        try (XSSFWorkbook workbook = open(empty())) {
            XSSFSheet layers = workbook.getSheet("Layers");
            List<String> lists = layers.getDataValidations().stream()
                    .map(list -> list.getValidationConstraint().getFormula1())
                    .toList();
            assertEquals(3, lists.size());
            assertTrue(lists.stream().anyMatch(list -> list.contains("mother liquor")));
            assertTrue(layers.getRow(0)
                    .getCell(6)
                    .getCellComment()
                    .getString()
                    .getString()
                    .contains("Unit: g"));
        }
    }

    @Test
    void limitsListEverySettingWithItsDefaultBesideABlankValue() throws Exception {
        try (XSSFWorkbook workbook = open(empty())) {
            XSSFSheet limits = workbook.getSheet("Limits");
            assertEquals(Limit.values().length, limits.getLastRowNum());
            Row first = limits.getRow(1);
            assertEquals("Coverage factor", first.getCell(0).getStringCellValue());
            assertTrue(first.getCell(1) == null || first.getCell(1).getCellType() == CellType.BLANK);
            assertEquals("2", first.getCell(4).getStringCellValue());
            assertEquals("JCGM 100:2008, 6.3", first.getCell(5).getStringCellValue());
        }
    }

    @Test
    void sameBytesEachTime() throws Exception {
        Path first = folder.resolve("first.xlsx");
        Path second = folder.resolve("second.xlsx");
        new Template().writeEmpty(first);
        Thread.sleep(2_100); // zip times count in steps of two seconds
        new Template().writeEmpty(second);
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
    }

    @Test
    void leavesNoUnfinishedFileBehind() throws Exception {
        empty();
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("empty.xlsx"),
                    files.map(file -> file.getFileName().toString()).toList());
        }
    }

    @Test
    void numbersOfACsvKeepTheirDecimalsAndTextsStayTexts() throws Exception {
        Path csv = folder.resolve("csv");
        new Template().writeEmptyCsv(csv);
        Files.writeString(
                csv.resolve("layers.csv"),
                "Run,Layer,Gross (g),Made on,Notes,Own\n007,3-1,12.500,2026-03-06,=1+1,1.50\n007,A2,\"12,5\",,,\n");
        Path target = folder.resolve("book.xlsx");
        new Template().writeWorkbookFrom(csv, ReadingOptions.defaults(), target);
        try (XSSFWorkbook workbook = open(target)) {
            Row row = workbook.getSheet("Layers").getRow(1);
            assertEquals("007", row.getCell(0).getStringCellValue());
            assertEquals("3-1", row.getCell(1).getStringCellValue());
            assertEquals(12.5, row.getCell(2).getNumericCellValue(), 0);
            assertEquals("0.000", row.getCell(2).getCellStyle().getDataFormatString());
            assertEquals(
                    "2026-03-06",
                    row.getCell(3).getLocalDateTimeCellValue().toLocalDate().toString());
            assertEquals(CellType.STRING, row.getCell(4).getCellType());
            assertEquals("=1+1", row.getCell(4).getStringCellValue());
            assertEquals("1.50", row.getCell(5).getStringCellValue());
            assertEquals(
                    "12,5", workbook.getSheet("Layers").getRow(2).getCell(2).getStringCellValue());
        }
    }

    private Path empty() throws Exception {
        Path target = folder.resolve("empty.xlsx");
        new Template().writeEmpty(target);
        return target;
    }

    private static XSSFWorkbook open(Path file) throws Exception {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }
}
