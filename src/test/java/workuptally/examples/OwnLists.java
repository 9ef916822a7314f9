package workuptally.examples;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Invented lists with one row a run, each laid out as another laboratory might have it. */
public final class OwnLists {
    private OwnLists() {}

    /** The CSV file of the README, with amounts in mmol and products by formula. */
    public static Path csv(Path folder) throws IOException {
        return Files.copy(Path.of("input-templates", "own-list.csv"), folder.resolve("yields.csv"));
    }

    /** A German workbook with a title and a row of sums. */
    public static Path german(Path folder) throws IOException {
        return workbook(folder.resolve("ausbeuten.xlsx"), "Ausbeuten", text("ausbeuten"), List.of());
    }

    /** Headings over two lines, the upper ones merged over their columns. */
    public static Path grouped(Path folder) throws IOException {
        return workbook(
                folder.resolve("grouped.xlsx"),
                "Imines",
                text("grouped"),
                List.of("A1:A2", "B1:B2", "C1:E1", "F1:H1", "I1:J1", "K1:N1"));
    }

    /** A French workbook with equivalents and mol % instead of coefficients. */
    public static Path equivalents(Path folder) throws IOException {
        return workbook(folder.resolve("couplages.xlsx"), "Couplages", text("equivalents"), List.of());
    }

    /** A teaching laboratory's 300 rows over three years: a title before and a mean after each year, headings that stand twice. */
    public static Path threeYears(Path folder) throws IOException {
        StringBuilder text =
                new StringBuilder("No.,Date,Student,Starting material,FW,g,Product,FW,g crude,Yield (%)\n");
        for (int year = 2023; year <= 2025; year++) {
            text.append(year).append(",,,,,,,,,\n");
            for (int i = 0; i < 100; i++) {
                int n = (year - 2023) * 100 + i;
                text.append(String.format(
                        Locale.ROOT,
                        "T-%d,%s,S%d,salicylic acid,138.12,%.2f,acetylsalicylic acid,180.16,%.2f,%.0f%n",
                        n + 1,
                        LocalDate.of(year, 3, 1).plusDays(i / 10),
                        i % 24 + 1,
                        acidGrams(n),
                        crudeGrams(n),
                        100 * crudeGrams(n) / (acidGrams(n) * 180.16 / 138.12)));
            }
            text.append("Mean,,,,,2.03,,,1.85,70\n");
        }
        return workbook(folder.resolve("class.xlsx"), "Aspirin", text.toString().replace("\r", ""), List.of());
    }

    /** Acid weighed by student n, from 0, g. */
    public static double acidGrams(int n) {
        return 2.00 + 0.01 * (n % 7);
    }

    /** Crude product of student n, from 0, g. */
    public static double crudeGrams(int n) {
        return Math.round(100 * (1.60 + 0.005 * (n % 100))) / 100.0;
    }

    private static String text(String name) {
        try (InputStream in = OwnLists.class.getResourceAsStream("/workuptally/lists/" + name + ".csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A workbook of one sheet with the cells of a CSV text: numbers and days as such. */
    public static Path workbook(Path file, String sheetName, String csv, List<String> merged) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                CSVParser rows = CSVParser.parse(
                        new StringReader(csv),
                        CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get())) {
            XSSFSheet sheet = workbook.createSheet(sheetName);
            var day = workbook.createCellStyle();
            day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
            int at = 0;
            for (CSVRecord record : rows) {
                Row row = sheet.createRow(at++);
                for (int column = 0; column < record.size(); column++) {
                    String text = record.get(column);
                    if (text.isEmpty()) {
                        continue;
                    }
                    Cell cell = row.createCell(column);
                    if (text.matches("\\d{1,6}(\\.\\d+)?")) {
                        cell.setCellValue(Double.parseDouble(text));
                    } else if (text.matches("\\d{4}-\\d\\d-\\d\\d")) {
                        cell.setCellValue(LocalDate.parse(text));
                        cell.setCellStyle(day);
                    } else {
                        cell.setCellValue(text);
                    }
                }
            }
            merged.forEach(region -> sheet.addMergedRegion(CellRangeAddress.valueOf(region)));
            try (OutputStream out = Files.newOutputStream(file)) {
                workbook.write(out);
            }
        }
        return file;
    }
}
