package workuptally.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The number formats of a workbook, by the style number that cells carry. */
final class NumberFormats {
    private final List<ShownAs> byStyle;

    private NumberFormats(List<ShownAs> byStyle) {
        this.byStyle = byStyle;
    }

    /** Reads the styles part; without one every number is shown as it is. */
    static NumberFormats read(WorkbookPackage book, Optional<String> part, boolean from1904)
            throws UnreadableBookException, IOException {
        List<ShownAs> styles = new ArrayList<>();
        if (part.isEmpty() || !book.has(part.get())) {
            return new NumberFormats(styles);
        }
        Map<Integer, String> codes = new HashMap<>();
        try (XmlPart xml = book.open(part.get())) {
            boolean cellStyles = false;
            while (xml.next()) {
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
        return new NumberFormats(styles);
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

    /** Formats that the standard defines by number alone (ISO/IEC 29500-1, 18.8.30). */
    static ShownAs builtIn(int id, boolean from1904) {
        if (id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 47 || id >= 50 && id <= 58) {
            return date(from1904);
        }
        return switch (id) {
            case 1, 3, 5, 6, 37, 38, 41, 42 -> new ShownAs(ShownAs.Kind.PLAIN, 0, "");
            case 2, 4, 7, 8, 11, 39, 40, 43, 44 -> new ShownAs(ShownAs.Kind.PLAIN, 2, "");
            case 48 -> new ShownAs(ShownAs.Kind.PLAIN, 1, "");
            case 9 -> new ShownAs(ShownAs.Kind.PERCENT, 0, "");
            case 10 -> new ShownAs(ShownAs.Kind.PERCENT, 2, "");
            default -> ShownAs.GENERAL;
        };
    }

    private static ShownAs date(boolean from1904) {
        return new ShownAs(from1904 ? ShownAs.Kind.DATE_FROM_1904 : ShownAs.Kind.DATE_FROM_1900, 0, "");
    }

    /** What a format code shows: only its first section counts, which is that of positive numbers. */
    static ShownAs of(String code, boolean from1904) {
        if (code.equalsIgnoreCase("General")) {
            return ShownAs.GENERAL;
        }
        StringBuilder symbols = new StringBuilder();
        StringBuilder literal = new StringBuilder();
        boolean elapsed = split(code, symbols, literal);
        String plain = symbols.toString().toLowerCase(java.util.Locale.ROOT).replace("general", "");
        boolean scientific = plain.contains("e+") || plain.contains("e-");
        if (elapsed || !scientific && plain.matches(".*[ymdhs].*")) {
            return date(from1904);
        }
        if (plain.contains("%")) {
            return new ShownAs(ShownAs.Kind.PERCENT, decimals(plain), "");
        }
        String unit = literal.toString().strip();
        return new ShownAs(ShownAs.Kind.PLAIN, decimals(plain), Unit.named(unit).isPresent() ? unit : "");
    }

    /** Sorts a code's first section into symbols and literal text; true if it shows elapsed time, {@code [h]:mm}. */
    private static boolean split(String code, StringBuilder symbols, StringBuilder literal) {
        boolean elapsed = false;
        for (int i = 0; i < code.length() && code.charAt(i) != ';'; i++) {
            char c = code.charAt(i);
            if (c == '"') {
                int end = code.indexOf('"', i + 1);
                literal.append(code, i + 1, end < 0 ? code.length() : end);
                i = end < 0 ? code.length() : end;
            } else if (c == '\\' && i + 1 < code.length()) {
                literal.append(code.charAt(++i));
            } else if ((c == '_' || c == '*') && i + 1 < code.length()) {
                i++; // a space as wide as the next character, or that character repeated
            } else if (c == '[') {
                int end = code.indexOf(']', i);
                elapsed |= end > 0 && code.substring(i + 1, end).matches("[hHmMsS]+");
                i = end < 0 ? code.length() : end;
            } else {
                symbols.append(c);
            }
        }
        return elapsed;
    }

    /** Decimals that the code always shows. */
    private static int decimals(String symbols) {
        int point = symbols.indexOf('.');
        int count = 0;
        for (int i = point + 1; point >= 0 && i < symbols.length(); i++) {
            char c = symbols.charAt(i);
            if (c != '0' && c != '?') {
                break;
            }
            count++;
        }
        return count;
    }
}
