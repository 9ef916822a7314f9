package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.model.Book;
import workuptally.model.FindingCode;

/** The run of a row that does not repeat it. Layouts are common practice. */
class RunColumnTest {
    @TempDir
    private Path folder;

    /** Charges of two runs; each row is named by its run cell, {@code _} for blank. */
    private Book book(String cells) throws IOException, UnreadableBookException {
        Files.writeString(folder.resolve("runs.csv"), "Run,Date\nR-1,2026-03-02\nR-2,2026-03-03\nR-3,2026-03-04\n");
        Files.writeString(folder.resolve("products.csv"), "Run,Product,Molar mass\nR-1,P,200\nR-2,P,200\nR-3,P,200\n");
        Files.writeString(folder.resolve("isolated.csv"), "Run,Lot,Product,Net\nR-1,C1,P,1\n");
        StringBuilder charges = new StringBuilder("Run,Material,Actual amount,Actual unit\n");
        int row = 0;
        for (String cell : cells.split(" ")) {
            row++;
            charges.append(cell.equals("_") ? "" : cell.replace('~', ' '))
                    .append(",M")
                    .append(row)
                    .append(",1,g\n");
        }
        Files.writeString(folder.resolve("charges.csv"), charges);
        return new BookReader().read(folder);
    }

    private static String charges(Book book) {
        return book.runs().stream().map(run -> run.charges().size() + "").collect(Collectors.joining(" "));
    }

    private static String told(Book book) {
        return book.findings().stream()
                .filter(f -> List.of(FindingCode.RUN_MISSING, FindingCode.RUN_UNKNOWN, FindingCode.MERGED_CELLS)
                        .contains(f.code()))
                .map(f -> f.code().word() + " " + f.severity().word())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource({
        "R-1 R-1 R-2 R-2 R-3,2 2 1,''",
        "R-1 _ _ R-2 _ R-3,3 2 1,run-missing check",
        "R-1 – – R-2 – R-3,3 2 1,run-missing check",
        "R-1 ditto dito R-2 〃 R-3,3 2 1,''",
        "R-1 R-1 ditto R-2 R-2 R-3,3 2 1,''",
        "R-1 as~above wie~oben R-2 s.~o. ci-dessus,3 3 0,''",
        // a slip among runs that are repeated, a single blank, and a table whose first row has none
        "R-1 _ R-1 R-2 _ R-3,-,run-missing stop",
        "R-1 R-2 _,-,run-missing stop",
        "_ _ R-1 _ R-2,-,run-missing stop",
        "ditto R-1 R-1,-,run-unknown stop"
    })
    void rowsBelongToTheRunOfTheirBlock(String cells, String charges, String told)
            throws IOException, UnreadableBookException {
        Book book = book(cells);
        assertEquals(told, told(book));
        if (!told.endsWith("stop")) {
            assertEquals(charges, charges(book));
        }
    }

    /** A run merged over its rows is what the sheet shows for each; an amount merged over rows is nobody's. */
    @Test
    void aRunMergedOverItsRowsIsTheRunOfEach() throws IOException, UnreadableBookException {
        Path file = folder.resolve("week.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            sheet(workbook, "Runs", "Run,Date", "R-1,2026-03-02", "R-2,2026-03-03");
            sheet(workbook, "Products", "Run,Product,Molar mass", "R-1,P,200", "R-2,P,200");
            sheet(workbook, "Isolated", "Run,Lot,Product,Net", "R-1,C1,P,1");
            XSSFSheet charges = sheet(
                    workbook,
                    "Charges",
                    "Run,Material,Actual amount,Actual unit",
                    "R-1,M1,1,g",
                    ",M2,1,g",
                    ",M3,1,g",
                    "R-2,M4,1,g",
                    ",M5,,g");
            charges.addMergedRegion(new CellRangeAddress(1, 3, 0, 0));
            charges.addMergedRegion(new CellRangeAddress(4, 5, 0, 0));
            charges.addMergedRegion(new CellRangeAddress(4, 5, 2, 2));
            workbook.write(out);
        }
        Book book = new BookReader().read(file);
        assertEquals("3 2", charges(book));
        assertEquals("merged-cells stop", told(book));
        assertEquals(
                List.of("C5"),
                book.findings().stream()
                        .filter(f -> f.code() == FindingCode.MERGED_CELLS)
                        .map(f -> f.place().cell())
                        .distinct()
                        .toList());
    }

    /** What is struck out names no run for the rows below it, and takes none from above. */
    @Test
    void aRunThatIsStruckOutIsNoneForTheRowsBelow() throws IOException, UnreadableBookException {
        Path file = folder.resolve("struck.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            sheet(workbook, "Runs", "Run,Date", "R-1,2026-03-02", "R-2,2026-03-03");
            sheet(workbook, "Products", "Run,Product,Molar mass", "R-1,P,200", "R-2,P,200");
            sheet(workbook, "Isolated", "Run,Lot,Product,Net", "R-1,C1,P,1");
            XSSFSheet charges = sheet(
                    workbook,
                    "Charges",
                    "Run,Material,Actual amount,Actual unit",
                    "R-1,M1,1,g",
                    ",M2,1,g",
                    "R-2,M3,1,g",
                    ",M4,1,g",
                    ",M5,1,g");
            XSSFFont struck = workbook.createFont();
            struck.setStrikeout(true);
            XSSFCellStyle style = workbook.createCellStyle();
            style.setFont(struck);
            charges.getRow(3).getCell(0).setCellStyle(style);
            workbook.write(out);
        }
        assertEquals("run-missing stop", told(new BookReader().read(file)));
    }

    private static XSSFSheet sheet(XSSFWorkbook workbook, String name, String... lines) {
        XSSFSheet sheet = workbook.createSheet(name);
        for (int i = 0; i < lines.length; i++) {
            XSSFRow row = sheet.createRow(i);
            String[] cells = lines[i].split(",");
            for (int j = 0; j < cells.length; j++) {
                if (!cells[j].isEmpty()) {
                    row.createCell(j).setCellValue(cells[j]);
                }
            }
        }
        return sheet;
    }
}
