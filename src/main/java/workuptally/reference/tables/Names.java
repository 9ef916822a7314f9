package workuptally.reference.tables;

import java.text.Normalizer;
import java.util.Locale;

/** Names as people type them, brought to one form for comparison. */
public final class Names {
    private Names() {}

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
