package workuptally.speed;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What a review put into a workbook, as lines of text for {@link PlainPoi}. Charts, links and column widths are left out. */
public final class Annotations {
    private Annotations() {}

    /** Kinds of steps. */
    enum Kind {
        NAME,
        MARK,
        COMMENT,
        NUMBER,
        FORMULA,
        TEXT
    }

    /**
     * One thing to put into a cell.
     *
     * @param row from 0
     * @param column from 0
     * @param text what; for a formula its value, a tab and the formula; for a name of one cell the name, a tab and what it refers to
     */
    record Step(Kind kind, String sheet, int row, int column, String text) {
        static Step read(String line) {
            String[] parts = line.split("\t", 5);
            return new Step(
                    Kind.valueOf(parts[0]),
                    parts[1],
                    Integer.parseInt(parts[2]),
                    Integer.parseInt(parts[3]),
                    parts[4].replace("\\n", "\n"));
        }

        @Override
        public String toString() {
            return kind + "\t" + sheet + "\t" + row + "\t" + column + "\t" + text.replace("\n", "\\n");
        }
    }

    /** Arguments: the book, the workbook of its review, the target. */
    public static void main(String[] args) throws IOException, InvalidFormatException {
        write(Path.of(args[0]), Path.of(args[1]), Path.of(args[2]));
    }

    /** Compares a reviewed workbook with the book it was made from. */
    private static void write(Path book, Path reviewed, Path target) throws IOException, InvalidFormatException {
        try (XSSFWorkbook before = open(book);
                XSSFWorkbook after = open(reviewed);
                PrintWriter out = new PrintWriter(Files.newBufferedWriter(target, StandardCharsets.UTF_8))) {
            Set<String> userSheets = new HashSet<>();
            before.sheetIterator().forEachRemaining(sheet -> userSheets.add(sheet.getSheetName()));
            names(before, after, out);
            for (int i = 0; i < after.getNumberOfSheets(); i++) {
                XSSFSheet sheet = after.getSheetAt(i);
                if (userSheets.contains(sheet.getSheetName())) {
                    marks(before.getSheet(sheet.getSheetName()), sheet, out);
                } else {
                    cells(sheet, out);
                }
            }
        }
    }

    private static XSSFWorkbook open(Path file) throws IOException, InvalidFormatException {
        return new XSSFWorkbook(OPCPackage.open(new File(file.toString()), PackageAccess.READ));
    }

    /** Formulas refer to the names, so these come first. */
    private static void names(XSSFWorkbook before, XSSFWorkbook after, PrintWriter out) {
        for (Name name : after.getAllNames()) {
            if (!name.isFunctionName() && before.getName(name.getNameName()) == null) {
                CellReference cell = new CellReference(name.getRefersToFormula());
                out.println(new Step(
                        Kind.NAME,
                        name.getSheetName(),
                        cell.getRow(),
                        cell.getCol(),
                        name.getNameName() + "\t" + name.getRefersToFormula()));
            }
        }
    }

    private static void marks(XSSFSheet before, XSSFSheet after, PrintWriter out) {
        for (Row row : after) {
            for (Cell cell : row) {
                Row old = before.getRow(row.getRowNum());
                Cell there = old == null ? null : old.getCell(cell.getColumnIndex());
                if (there == null
                        || there.getCellStyle().getIndex()
                                != cell.getCellStyle().getIndex()) {
                    out.println(step(Kind.MARK, cell, ""));
                }
            }
        }
        after.getCellComments().forEach((address, comment) -> {
            XSSFComment old = before.getCellComment(address);
            if (old == null || !text(old).equals(text(comment))) {
                out.println(new Step(
                        Kind.COMMENT, after.getSheetName(), address.getRow(), address.getColumn(), text(comment)));
            }
        });
    }

    private static String text(XSSFComment comment) {
        return comment.getString().getString();
    }

    private static void cells(XSSFSheet sheet, PrintWriter out) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.NUMERIC) {
                    out.println(step(Kind.NUMBER, cell, Double.toString(cell.getNumericCellValue())));
                } else if (cell.getCellType() == CellType.FORMULA) {
                    out.println(step(Kind.FORMULA, cell, cell.getNumericCellValue() + "\t" + cell.getCellFormula()));
                } else {
                    out.println(step(Kind.TEXT, cell, cell.getStringCellValue()));
                }
            }
        }
    }

    private static Step step(Kind kind, Cell cell, String text) {
        return new Step(kind, cell.getSheet().getSheetName(), cell.getRowIndex(), cell.getColumnIndex(), text);
    }
}
