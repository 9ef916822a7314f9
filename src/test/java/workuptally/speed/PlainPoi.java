package workuptally.speed;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * What the spreadsheet library alone takes to bring a workbook to the state that a review leaves it in: it loads, puts the same fills,
 * comments and result cells in, and saves; nothing is computed. Without annotations it only loads.
 */
public final class PlainPoi {
    private final XSSFWorkbook workbook;
    private final Map<XSSFCellStyle, XSSFCellStyle> marked = new HashMap<>();
    private final Map<XSSFSheet, XSSFDrawing> drawings = new HashMap<>();

    private PlainPoi(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /** Arguments: the book; then, to annotate and save, the {@link Annotations} and the target. */
    public static void main(String[] args) throws Exception {
        OPCPackage book = OPCPackage.open(new File(args[0]), PackageAccess.READ_WRITE);
        XSSFWorkbook workbook = new XSSFWorkbook(book);
        if (args.length == 1) {
            System.out.println(workbook.getNumberOfSheets() + " sheets");
        } else {
            new PlainPoi(workbook).annotate(Path.of(args[1]));
            try (OutputStream out = Files.newOutputStream(Path.of(args[2]))) {
                workbook.write(out);
            }
        }
        book.revert(); // closing would save over the book
    }

    private void annotate(Path annotations) throws IOException {
        try (BufferedReader in = Files.newBufferedReader(annotations, StandardCharsets.UTF_8)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                annotate(Annotations.Step.read(line));
            }
        }
    }

    private void annotate(Annotations.Step step) {
        XSSFCell cell = cell(step);
        switch (step.kind()) {
            case NAME -> {
                String[] parts = step.text().split("\t", 2);
                Name name = workbook.createName();
                name.setNameName(parts[0]);
                name.setRefersToFormula(parts[1]);
            }
            case MARK -> cell.setCellStyle(marked.computeIfAbsent(cell.getCellStyle(), this::mark));
            case COMMENT -> comment(cell, step.text());
            case NUMBER -> cell.setCellValue(Double.parseDouble(step.text()));
            case FORMULA -> {
                String[] parts = step.text().split("\t", 2);
                cell.setCellFormula(parts[1]);
                cell.setCellValue(Double.parseDouble(parts[0]));
            }
            case TEXT -> cell.setCellValue(step.text());
        }
    }

    private XSSFCell cell(Annotations.Step step) {
        XSSFSheet sheet = workbook.getSheet(step.sheet());
        XSSFSheet there = sheet == null ? workbook.createSheet(step.sheet()) : sheet;
        XSSFRow row = there.getRow(step.row()) == null ? there.createRow(step.row()) : there.getRow(step.row());
        return row.getCell(step.column()) == null ? row.createCell(step.column()) : row.getCell(step.column());
    }

    private XSSFCellStyle mark(XSSFCellStyle style) {
        XSSFCellStyle copy = workbook.createCellStyle();
        copy.cloneStyleFrom(style);
        copy.setFillForegroundColor(IndexedColors.LIGHT_YELLOW.getIndex());
        copy.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        return copy;
    }

    private void comment(XSSFCell cell, String text) {
        XSSFDrawing drawing = drawings.computeIfAbsent(cell.getSheet(), XSSFSheet::createDrawingPatriarch);
        cell.removeCellComment(); // a help of the template's own, to which the review adds
        int column = cell.getColumnIndex();
        int row = cell.getRowIndex();
        XSSFComment comment =
                drawing.createCellComment(new XSSFClientAnchor(0, 0, 0, 0, column + 1, row, column + 5, row + 6));
        comment.setString(new XSSFRichTextString(text));
        cell.setCellComment(comment);
    }
}
