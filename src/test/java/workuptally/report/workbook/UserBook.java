package workuptally.report.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A user's workbook as its parts, to be bent by a test and written to a file. */
final class UserBook {
    /** Part of the sheet Runs. */
    static final String RUNS = "xl/worksheets/sheet1.xml";

    /** Part of the sheet Layers. */
    static final String LAYERS = "xl/worksheets/sheet2.xml";

    private final Map<String, byte[]> parts;

    private UserBook(Map<String, byte[]> parts) {
        this.parts = parts;
    }

    /** Two sheets with styles, validation, a conditional format, a comment at Runs!B2 and a name. */
    static UserBook plain() {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            XSSFCellStyle percent = workbook.createCellStyle();
            percent.setDataFormat(workbook.createDataFormat().getFormat("0.00%"));
            percent.setFillForegroundColor(IndexedColors.LIGHT_GREEN.getIndex());
            XSSFSheet runs = workbook.createSheet("Runs");
            for (int r = 0; r < 4; r++) {
                XSSFRow row = runs.createRow(r);
                row.createCell(0).setCellValue(r == 0 ? "Run" : "R-00" + r);
                row.createCell(1).setCellValue(r == 0 ? "Notes" : "a < b & c");
                row.createCell(3).setCellValue(0.1 + r);
                row.getCell(3).setCellStyle(percent);
            }
            runs.getRow(3).createCell(4).setCellFormula("SUM(D2:D4)");
            runs.addValidationData(runs.getDataValidationHelper()
                    .createValidation(
                            runs.getDataValidationHelper().createExplicitListConstraint(new String[] {"a", "b"}),
                            new CellRangeAddressList(1, 20, 2, 2)));
            XSSFConditionalFormattingRule rule =
                    runs.getSheetConditionalFormatting().createConditionalFormattingRule(ComparisonOperator.GT, "0");
            rule.createPatternFormatting().setFillBackgroundColor(IndexedColors.RED.getIndex());
            runs.getSheetConditionalFormatting()
                    .addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf("D2:D4")}, rule);
            XSSFDrawing drawing = runs.createDrawingPatriarch();
            XSSFComment comment = drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 1, 1, 4, 4));
            comment.setString("the user's own words");
            comment.setAuthor("A. N. Other");
            XSSFSheet layers = workbook.createSheet("Layers");
            layers.createRow(0).createCell(0).setCellValue("Layer");
            layers.createRow(4).createCell(2).setCellValue(12.5);
            workbook.createName().setNameName("First_run");
            workbook.getName("First_run").setRefersToFormula("Runs!$A$2");
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            workbook.write(bytes);
            return new UserBook(unpack(new ByteArrayInputStream(bytes.toByteArray())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Changes the text of a part. */
    UserBook with(String part, UnaryOperator<String> change) {
        return with(part, change.apply(text(part)), StandardCharsets.UTF_8);
    }

    /** Sets the text of a part. */
    UserBook with(String part, String text, Charset charset) {
        Map<String, byte[]> changed = new LinkedHashMap<>(parts);
        changed.put(part, text.getBytes(charset));
        return new UserBook(changed);
    }

    /** Text of a part. */
    String text(String part) {
        return new String(parts.get(part), StandardCharsets.UTF_8);
    }

    /** Names of all parts with their bytes. */
    Map<String, byte[]> parts() {
        return parts;
    }

    /** Writes the workbook. */
    Path writeTo(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }

    /** Reads the parts of a workbook. */
    static UserBook read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new UserBook(unpack(in));
        }
    }

    private static Map<String, byte[]> unpack(InputStream in) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }
}
