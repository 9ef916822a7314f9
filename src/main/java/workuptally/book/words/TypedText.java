package workuptally.book.words;

import java.text.Normalizer;

/** A typed number in the characters of a plain keyboard: one kind of minus, of times, of "about", of space and of digit. */
public final class TypedText {
    private TypedText() {}

    /** The text with every sign folded to its plain form, spaces tidied. Superscript digits stay, they are no digits of the number. */
    public static String plain(String typed) {
        String text = BookWords.tidy(typed);
        if (isAscii(text)) {
            return withoutQuote(text);
        }
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            append(text.charAt(i), out);
        }
        return withoutQuote(BookWords.tidy(out.toString()));
    }

    private static void append(char c, StringBuilder out) {
        if (c >= '！' && c <= '～' || c >= '﹐' && c <= '﹫') {
            out.append(Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC));
            return;
        }
        switch (c) {
            case '−', '﹣', '⁃' -> out.append('-');
            case '×', '✕', '⨯' -> out.append('x');
            case '·', '⋅', '∙', '•' -> out.append('·');
            case '≈', '∼', '≃', '≅', '～', '˜' -> out.append('~');
            case '≤', '⩽', '≦' -> out.append("<=");
            case '≥', '⩾', '≧' -> out.append(">=");
            case '→', '⇒', '➔', '⟶' -> out.append("->");
            case '±' -> out.append("+/-");
            case '…' -> out.append("..");
            case '⁄', '∕' -> out.append('/');
            case '’', '‘', '´', '`', '＇' -> out.append('\'');
            case 'µ' -> out.append('μ');
            case '½' -> out.append("1/2");
            case '¼' -> out.append("1/4");
            case '¾' -> out.append("3/4");
            case '⅓' -> out.append("1/3");
            case '⅔' -> out.append("2/3");
            default -> out.append(Character.getType(c) == Character.DASH_PUNCTUATION ? '-' : c);
        }
    }

    /** A leading apostrophe tells a spreadsheet program to store a text; it is no part of it. */
    private static String withoutQuote(String text) {
        return text.length() > 1 && text.charAt(0) == '\'' ? text.substring(1).strip() : text;
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }
}
