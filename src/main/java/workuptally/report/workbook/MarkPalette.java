package workuptally.report.workbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import workuptally.model.Severity;

/**
 * How marked cells look: a tint, and a left border that differs by severity, so that the marks can be told apart in grey and with any
 * colour vision; the two urgent ones are bold too. One clone per original style and severity, since a workbook has room for 64 000 styles.
 */
final class MarkPalette {
    private final XSSFWorkbook workbook;
    private final Map<Severity, Map<Integer, XSSFCellStyle>> clones = new EnumMap<>(Severity.class);

    MarkPalette(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /**
     * The style with a mark.
     *
     * @param original number of the style that the cell has; an unknown number counts as the plain one
     * @param severity severity of the mark
     */
    XSSFCellStyle marked(int original, Severity severity) {
        int known = original < workbook.getNumCellStyles() ? original : 0;
        return clones.computeIfAbsent(severity, s -> new HashMap<>())
                .computeIfAbsent(known, style -> create(workbook.getCellStyleAt(style), severity));
    }

    private XSSFCellStyle create(XSSFCellStyle original, Severity severity) {
        XSSFCellStyle style = workbook.createCellStyle();
        // The library's own clone would also write the original's named style over the last one of the book.
        style.getCoreXf().set(original.getCoreXf());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setFillForegroundColor(color(tint(severity)));
        style.setBorderLeft(border(severity));
        style.setLeftBorderColor(color(0x000000));
        if (severity == Severity.STOP || severity == Severity.HOLD) {
            style.setFont(bold(original.getFont()));
        }
        return style;
    }

    private XSSFFont bold(XSSFFont original) {
        if (original.getBold()) {
            return original;
        }
        XSSFFont font = workbook.createFont();
        font.getCTFont().set(original.getCTFont());
        font.setBold(true);
        return font;
    }

    /** Tints of the Okabe–Ito colours vermilion, orange, yellow and sky blue (Wong, Nature Methods 8 (2011) 441); the values are from memory. */
    private static int tint(Severity severity) {
        return switch (severity) {
            case STOP -> 0xEE9F73;
            case HOLD -> 0xF5CD73;
            case CHECK -> 0xF8F2A8;
            case NOTE -> 0xCFE8F7;
        };
    }

    private static BorderStyle border(Severity severity) {
        return switch (severity) {
            case STOP -> BorderStyle.THICK;
            case HOLD -> BorderStyle.DOUBLE;
            case CHECK -> BorderStyle.MEDIUM;
            case NOTE -> BorderStyle.DOTTED;
        };
    }

    static XSSFColor color(int rgb) {
        return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb}, null);
    }
}
