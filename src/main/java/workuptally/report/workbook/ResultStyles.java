package workuptally.report.workbook;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import workuptally.model.Severity;

/** The styles of the result sheets, each made once. */
final class ResultStyles {
    private static final int LINK_BLUE = 0x0072B2;

    private final XSSFWorkbook workbook;
    private final MarkPalette marks;
    private final XSSFCellStyle title;
    private final XSSFCellStyle shortLink;
    private final XSSFCellStyle note;
    private final XSSFCellStyle headingOfTexts;
    private final XSSFCellStyle headingOfNumbers;
    private final Map<Boolean, XSSFCellStyle> texts = new HashMap<>();
    private final Map<Integer, XSSFCellStyle> numbers = new HashMap<>();
    private Optional<XSSFCellStyle> link = Optional.empty();

    ResultStyles(XSSFWorkbook workbook, MarkPalette marks) {
        this.workbook = workbook;
        this.marks = marks;
        title = workbook.createCellStyle();
        title.setFont(font(true, 14));
        shortLink = link(false);
        note = workbook.createCellStyle();
        headingOfTexts = heading(HorizontalAlignment.LEFT);
        headingOfNumbers = heading(HorizontalAlignment.RIGHT);
    }

    private XSSFCellStyle heading(HorizontalAlignment side) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setAlignment(side);
        style.setIndention((short) (side == HorizontalAlignment.LEFT ? 1 : 0));
        style.setFont(font(true, 11));
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setBorderBottom(org.apache.poi.ss.usermodel.BorderStyle.THIN);
        return style;
    }

    /** The title of a sheet. */
    XSSFCellStyle title() {
        return title;
    }

    /** The notes above a table. */
    XSSFCellStyle note() {
        return note;
    }

    /** A heading, on the side where its values stand. */
    XSSFCellStyle heading(boolean ofNumbers) {
        return ofNumbers ? headingOfNumbers : headingOfTexts;
    }

    /** A text; one that a spreadsheet could take for a formula is flagged as text. */
    XSSFCellStyle text(String text, Optional<Severity> severity) {
        boolean quoted = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
        XSSFCellStyle style = texts.get(quoted);
        if (style == null) {
            style = top();
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention((short) 1);
            style.setWrapText(true);
            style.setQuotePrefixed(quoted);
            texts.put(quoted, style);
        }
        return marked(style, severity);
    }

    /** A number with fixed decimals. */
    XSSFCellStyle number(int decimals, Optional<Severity> severity) {
        XSSFCellStyle style = numbers.get(decimals);
        if (style == null) {
            style = top();
            // Without an indent: a spreadsheet program was seen to drop it for some formulas, which moves their decimal
            // marks.
            style.setAlignment(HorizontalAlignment.RIGHT);
            style.setDataFormat(workbook.createDataFormat().getFormat(format(decimals)));
            numbers.put(decimals, style);
        }
        return marked(style, severity);
    }

    /** A link in a table. */
    XSSFCellStyle link() {
        link = link.or(() -> Optional.of(link(true)));
        return link.get();
    }

    /** A link above a table. */
    XSSFCellStyle shortLink() {
        return shortLink;
    }

    private XSSFCellStyle link(boolean inTable) {
        XSSFCellStyle created = top();
        created.setAlignment(HorizontalAlignment.LEFT);
        created.setIndention((short) 1);
        XSSFFont font = font(false, 11);
        font.setUnderline(org.apache.poi.ss.usermodel.FontUnderline.SINGLE);
        font.setColor(MarkPalette.color(LINK_BLUE));
        created.setFont(font);
        created.setWrapText(inTable);
        return created;
    }

    private XSSFCellStyle marked(XSSFCellStyle style, Optional<Severity> severity) {
        return severity.isEmpty() ? style : marks.marked(style.getIndex(), severity.get());
    }

    private XSSFCellStyle top() {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return style;
    }

    private XSSFFont font(boolean bold, int points) {
        XSSFFont font = workbook.createFont();
        font.setFontName(workbook.getFontAt(0).getFontName());
        font.setFontHeightInPoints((short) points);
        font.setBold(bold);
        return font;
    }

    private static String format(int decimals) {
        if (decimals == 0) {
            return "0";
        }
        char[] zeros = new char[decimals];
        Arrays.fill(zeros, '0');
        return "0." + new String(zeros);
    }
}
