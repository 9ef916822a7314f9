package workuptally.report.workbook;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import workuptally.model.Finding;

/**
 * Comments at marked cells. A comment that is there is added to; a thread of comments is left alone.
 *
 * <p>A comment names the line of the Findings sheet that it belongs to, and that line has a link to the cell. The way back is told in words
 * and is no link on the cell: a click on a linked cell leaves it, in the very cell that the finding asks to correct, and some programs turn
 * the text of a linked cell into a field, which would change what the user entered.
 */
final class FindingComments {
    /** Comments of one sheet: tens of thousands make any program crawl. The fill still marks every cell, and the Findings sheet lists all. */
    static final int MOST = 500;

    private static final String AUTHOR = "Workup Tally";
    private static final String SEPARATOR = "\n--- Workup Tally ---\n";
    private static final int LONGEST = 4000;
    private static final int CHARACTERS_PER_LINE = 42;

    private FindingComments() {}

    /**
     * Writes the comments of a sheet.
     *
     * @param sheet the sheet, without its cells
     * @param marks marks of the sheet
     * @param threaded cells with a thread of comments
     * @param lines lines of the findings
     */
    static void write(XSSFSheet sheet, SheetMarks marks, Set<String> threaded, FindingLines lines) {
        List<CellMark> chosen = marks.worstFirst().stream()
                .filter(mark -> !threaded.contains(mark.reference()))
                .limit(MOST)
                .toList();
        if (chosen.isEmpty()) {
            return;
        }
        boolean hadDrawing = sheet.getCTWorksheet().isSetDrawing();
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        for (CellMark mark : chosen) {
            write(sheet, drawing, mark, lines);
        }
        if (!hadDrawing) {
            remove(sheet, drawing);
        }
    }

    /** The library ties comments to a drawing that they do not need; an empty one is not left in the user's sheet. */
    private static void remove(XSSFSheet sheet, XSSFDrawing drawing) {
        PackagePart part = drawing.getPackagePart();
        sheet.getPackagePart().removeRelationship(sheet.getRelationId(drawing));
        sheet.getPackagePart().getPackage().removePart(part.getPartName());
        sheet.getCTWorksheet().unsetDrawing();
    }

    private static void write(XSSFSheet sheet, XSSFDrawing drawing, CellMark mark, FindingLines findings) {
        String text = text(mark, findings);
        CellAddress address = new CellAddress(mark.row() - 1, mark.column());
        XSSFComment existing = sheet.getCellComment(address);
        if (existing != null) {
            existing.getString().append(SEPARATOR + text);
            return;
        }
        int lines = text.lines()
                .mapToInt(line -> 1 + line.length() / CHARACTERS_PER_LINE)
                .sum();
        // The library first puts the comment at the corner of its box, where another one must not be.
        int left = mark.column() + 1;
        while (sheet.getCellComment(new CellAddress(mark.row() - 1, left)) != null) {
            left++;
        }
        XSSFClientAnchor anchor =
                drawing.createAnchor(0, 0, 0, 0, left, mark.row() - 1, left + 4, mark.row() + Math.min(20, lines + 1));
        XSSFComment comment = drawing.createCellComment(anchor);
        comment.setAddress(address);
        comment.setAuthor(AUTHOR);
        comment.setString(new XSSFRichTextString(text));
    }

    private static String text(CellMark mark, FindingLines lines) {
        String text = mark.findings().stream().map(f -> text(f, lines)).collect(Collectors.joining("\n\n"));
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + " …";
    }

    private static String text(Finding finding, FindingLines lines) {
        StringBuilder text = new StringBuilder(finding.severity().word())
                .append(" · ")
                .append(finding.code().word());
        if (!finding.seen().isEmpty()) {
            text.append("\nRead ").append(lines.wording().of(finding.seen()));
        }
        if (!finding.expected().isEmpty()) {
            text.append(finding.seen().isEmpty() ? "\nExpected " : "; expected ")
                    .append(lines.wording().of(finding.expected()));
        }
        if (!finding.action().isEmpty()) {
            text.append("\n").append(lines.wording().of(finding.action()));
        }
        lines.of(finding).ifPresent(line -> text.append("\n").append(line));
        return text.toString();
    }
}
