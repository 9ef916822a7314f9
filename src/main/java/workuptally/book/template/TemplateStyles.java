package workuptally.book.template;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;

/** The cell styles of a book that is written, each made once. */
final class TemplateStyles {
    private final Workbook workbook;
    private final Map<Integer, CellStyle> numbers = new HashMap<>();
    private final CellStyle title;
    private final CellStyle paragraph;
    private final CellStyle heading;
    private final CellStyle neededHeading;
    private final CellStyle text;
    private final CellStyle date;
    private final CellStyle grey;

    TemplateStyles(Workbook workbook) {
        this.workbook = workbook;
        Font bold = workbook.createFont();
        bold.setBold(true);
        Font large = workbook.createFont();
        large.setBold(true);
        large.setFontHeightInPoints((short) 16);
        Font faint = workbook.createFont();
        faint.setColor(IndexedColors.GREY_50_PERCENT.getIndex());
        title = workbook.createCellStyle();
        title.setFont(large);
        paragraph = workbook.createCellStyle();
        paragraph.setWrapText(true);
        paragraph.setVerticalAlignment(VerticalAlignment.TOP);
        heading = heading(bold, IndexedColors.GREY_25_PERCENT);
        neededHeading = heading(bold, IndexedColors.LIGHT_TURQUOISE);
        text = workbook.createCellStyle();
        text.setDataFormat(workbook.createDataFormat().getFormat("@"));
        date = workbook.createCellStyle();
        date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
        grey = workbook.createCellStyle();
        grey.setFont(faint);
    }

    private CellStyle heading(Font font, IndexedColors fill) {
        CellStyle style = workbook.createCellStyle();
        style.setFont(font);
        style.setFillForegroundColor(fill.getIndex());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderBottom(BorderStyle.THIN);
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return style;
    }

    CellStyle title() {
        return title;
    }

    CellStyle paragraph() {
        return paragraph;
    }

    /** Style of a heading; one whose cells must be filled is marked. */
    CellStyle heading(boolean needed) {
        return needed ? neededHeading : heading;
    }

    /** Keeps what is typed as text, so that a label like 3-1 does not become a date. */
    CellStyle text() {
        return text;
    }

    CellStyle date() {
        return date;
    }

    CellStyle grey() {
        return grey;
    }

    /** Shows a number with that many decimals, so that trailing zeros of a balance stay visible. */
    CellStyle number(int decimals) {
        return numbers.computeIfAbsent(decimals, count -> {
            CellStyle style = workbook.createCellStyle();
            String format = count == 0 ? "0" : "0." + "0".repeat(count);
            style.setDataFormat(workbook.createDataFormat().getFormat(format));
            return style;
        });
    }
}
