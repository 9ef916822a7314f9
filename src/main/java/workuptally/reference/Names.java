package workuptally.reference;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Names as people type them, brought to one form for comparison. */
public final class Names {
    /** Words that say how a material was kept or made, not what it is. Dry ice is no water. */
    private static final Pattern STATE = Pattern.compile(
            "(?iu)(?<![\\p{L}\\p{N}])(?:ice[- ]?cold|eiskalt\\p{L}*|cold|kalt\\p{L}*|chilled|cooled|hot|warm"
                    + "|boiling|hei\u00df\\p{L}*|(?:freshly\\s+|re)?distilled|degassed|fresh|crushed|(?:extra\\s+)?dry(?!\\s*ice)|dried"
                    + "|anhydrous|anhyd\\.?|anh\\.?|wasserfrei\\p{L}*|trocken\\p{L}*|absolute?|abs\\.?|glacial"
                    + "|HPLC(?:[- ]grade)?|reagent[- ]grade|technical(?:[- ]grade)?|tech\\.|p\\.\\s?a\\.)(?![\\p{L}\\p{N}])");

    private static final Pattern LEFT_OVER = Pattern.compile("\\(\\s*\\)|^[\\s,-]+|[\\s,]+$");

    private Names() {}

    /** A name without words such as dry, cold, anhydrous or glacial; the name itself where nothing else is left. */
    static String withoutState(String name) {
        String bare = LEFT_OVER
                .matcher(STATE.matcher(name).replaceAll(" "))
                .replaceAll(" ")
                .strip();
        return bare.isEmpty() ? name : bare;
    }

    /** Lower case without spaces, hyphens, commas, brackets and full stops; subscripts as plain digits; one spelling of sulfur and aluminium. */
    public static String plain(String name) {
        String text =
                (isPlainAscii(name) ? name : Normalizer.normalize(name, Normalizer.Form.NFKC)).toLowerCase(Locale.ROOT);
        StringBuilder kept = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!isIgnored(c) && (c != '.' || isDigit(text, i + 1))) {
                kept.append(c);
            }
        }
        return kept.toString().replace("sulph", "sulf").replace("aluminum", "aluminium");
    }

    /** Most names are, and bringing them to a normal form would cost more than all the rest. */
    private static boolean isPlainAscii(String name) {
        for (int i = 0; i < name.length(); i++) {
            if (name.charAt(i) > 0x7F) {
                return false;
            }
        }
        return true;
    }

    private static boolean isIgnored(char c) {
        return switch (c) {
            case ' ', '\t', '\n', '\u000B', '\f', '\r', '-', '_', '\'', '"', ',', '(', ')' -> true;
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2015', '\u2019', '\u2212' -> true;
            default -> false;
        };
    }

    private static boolean isDigit(String text, int index) {
        return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }
}
