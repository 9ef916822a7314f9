package workuptally.book.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How a workbook formats its cells, by the style number that they carry: the number formats, and the fonts that strike out. */
public final class NumberFormats {
    private final List<ShownAs> byStyle;
    private final StruckFonts struck;
    private final ConditionalLooks conditional;

    private NumberFormats(List<ShownAs> byStyle, StruckFonts struck, ConditionalLooks conditional) {
        this.byStyle = byStyle;
        this.struck = struck;
        this.conditional = conditional;
    }

    /** Reads the styles part; without one every number is shown as it is and nothing struck out. */
    public static NumberFormats read(WorkbookPackage book, Optional<String> part, boolean from1904)
            throws UnreadableBookException, IOException {
        List<ShownAs> styles = new ArrayList<>();
        StruckFonts struck = new StruckFonts();
        ConditionalLooks conditional = new ConditionalLooks();
        if (part.isEmpty() || !book.has(part.get())) {
            return new NumberFormats(styles, struck, conditional);
        }
        Map<Integer, String> codes = new HashMap<>();
        try (XmlPart xml = book.open(part.get())) {
            boolean cellStyles = false;
            while (xml.next()) {
                struck.take(xml);
                conditional.take(xml);
                if (xml.isStart("numFmt")) {
                    codes.put(
                            number(xml.attribute("numFmtId")),
                            xml.attribute("formatCode").orElse(""));
                } else if (xml.isStart("cellXfs")) {
                    cellStyles = true;
                } else if (xml.isEnd("cellXfs")) {
                    cellStyles = false;
                } else if (cellStyles && xml.isStart("xf")) {
                    int id = number(xml.attribute("numFmtId"));
                    styles.add(codes.containsKey(id) ? of(codes.get(id), from1904) : builtIn(id, from1904));
                }
            }
            book.finished(xml);
        }
        return new NumberFormats(styles, struck, conditional);
    }

    /** A count or index as an attribute has it; 0 where it is missing or no number. */
    static int number(Optional<String> text) {
        return text.map(NumberFormats::index).filter(number -> number > 0).orElse(0);
    }

    /** Digits as a number, or -1; written out because it runs for each cell of a book. */
    static int index(String text) {
        if (text.isEmpty() || text.length() > 9) {
            return -1;
        }
        int number = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            number = number * 10 + c - '0';
        }
        return number;
    }

    /** How a cell of a style shows its number. */
    ShownAs ofStyle(int style) {
        return style < byStyle.size() ? byStyle.get(style) : ShownAs.GENERAL;
    }

    /** True where cells of a style are struck out. */
    boolean strikesOut(int style) {
        return struck.ofStyle(style);
    }

    /** True where a look that a condition gives to cells strikes them out or shows another number. */
    boolean changesLook(int number) {
        return number >= 0 && conditional.changes(number);
    }

    /** Formats that the standard defines by number alone (ISO/IEC 29500-1, 18.8.30), in its English form. */
    static ShownAs builtIn(int id, boolean from1904) {
        if (id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 47 || id >= 50 && id <= 58) {
            return date(from1904);
        }
        return switch (id) {
            case 1, 3 -> new ShownAs(ShownAs.Kind.PLAIN, 0);
            case 2, 4 -> new ShownAs(ShownAs.Kind.PLAIN, 2);
            case 5, 6 -> of("\"$\"#,##0_);(\"$\"#,##0)", from1904);
            case 7, 8 -> of("\"$\"#,##0.00_);(\"$\"#,##0.00)", from1904);
            case 9 -> new ShownAs(ShownAs.Kind.PERCENT, 0);
            case 10 -> new ShownAs(ShownAs.Kind.PERCENT, 2);
            case 11 -> new ShownAs(ShownAs.Kind.PLAIN, 2);
            case 37, 38 -> of("#,##0_);(#,##0)", from1904);
            case 39, 40 -> of("#,##0.00_);(#,##0.00)", from1904);
            case 41 -> of("_(* #,##0_);_(* (#,##0);_(* \"-\"_)", from1904);
            case 42 -> of("_(\"$\"* #,##0_);_(\"$\"* (#,##0);_(\"$\"* \"-\"_)", from1904);
            case 43 -> of("_(* #,##0.00_);_(* (#,##0.00);_(* \"-\"??_)", from1904);
            case 44 -> of("_(\"$\"* #,##0.00_);_(\"$\"* (#,##0.00);_(\"$\"* \"-\"??_)", from1904);
            case 48 -> new ShownAs(ShownAs.Kind.PLAIN, 1);
            default -> ShownAs.GENERAL;
        };
    }

    private static ShownAs date(boolean from1904) {
        return new ShownAs(from1904 ? ShownAs.Kind.DATE_FROM_1904 : ShownAs.Kind.DATE_FROM_1900, 0);
    }

    /** What a format code shows. */
    public static ShownAs of(String code, boolean from1904) {
        if (code.equalsIgnoreCase("General") || code.isEmpty()) {
            return ShownAs.GENERAL;
        }
        NumberFormat format = NumberFormat.of(code);
        FormatSection first = format.sections().get(0);
        if (first.date()) {
            return date(from1904);
        }
        if (format.isPlain()) {
            return new ShownAs(first.percents() == 1 ? ShownAs.Kind.PERCENT : ShownAs.Kind.PLAIN, first.decimals());
        }
        return new ShownAs(ShownAs.Kind.DRESSED, first.decimals(), Optional.of(format));
    }
}
