package workuptally.report.view.wording;

import java.util.regex.Pattern;

/**
 * Figures that stand in a text, with the reader's decimal mark. A figure is digits, a point and digits that no letter, sign or digit joins
 * on the left and no further point follows: 2.62 is one, the version 0.1.0 and the day 12.5.2026 are not, nor is what is quoted as typed.
 */
public final class FiguresInText {
    private static final Pattern FIGURE = Pattern.compile("(?<![\\p{L}\\p{N}._'])(\\d++)\\.(\\d++)(?!\\.\\d)");

    private FiguresInText() {}

    /** The text with that mark. */
    public static String with(char mark, String text) {
        return mark == '.' || text.indexOf('.') < 0
                ? text
                : FIGURE.matcher(text).replaceAll("$1" + mark + "$2");
    }
}
