package workuptally.report.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.security.SecureRandom;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The two fonts of one document, their measures, line breaking, and a guard against characters that they lack.
 *
 * <p>A character without a glyph would vanish without a trace; it is shown as a replacement sign and counted instead.
 */
final class Typeface {
    /** Shown for a character that the fonts lack. */
    static final char REPLACEMENT = '\uFFFD';

    private final BaseFont regular;
    private final BaseFont bold;
    private int replaced;

    /**
     * Loads the fonts for one document; they are never shared, since a document subsets them.
     *
     * @throws IOException if the packed fonts cannot be read
     */
    Typeface() throws IOException {
        regular = load("DejaVuSansCondensed.ttf");
        bold = load("DejaVuSansCondensed-Bold.ttf");
    }

    private static BaseFont load(String name) throws IOException {
        try (InputStream in = Typeface.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IOException("font " + name + " is missing from the program");
            }
            BaseFont font = BaseFont.createFont(name, BaseFont.IDENTITY_H, true, false, in.readAllBytes(), null);
            font.setIncludeCidSet(false);
            font.setSecureRandom(new FixedPrefix());
            return font;
        }
    }

    BaseFont font(TextStyle style) {
        return style.bold() ? bold : regular;
    }

    /** Width in points of a text that {@link #line} or {@link #wrap} gave. */
    float width(String text, TextStyle style) {
        return font(style).getWidthPoint(text, style.size());
    }

    /** Number of characters replaced so far. */
    int replaced() {
        return replaced;
    }

    /** The text on one line, with every character shown or visibly replaced. */
    String line(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == '\n' || c == '\r' || c == '\t' || Character.isISOControl(c) || c == 0x2028 || c == 0x2029) {
                out.append(' ');
            } else if (Character.getType(c) == Character.FORMAT) {
                // joiners, direction marks and byte order marks have no shape of their own
                return;
            } else if (c <= 0xFFFF && regular.charExists(c) && bold.charExists(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(REPLACEMENT);
                replaced++;
            }
        });
        return out.toString();
    }

    /**
     * Breaks a text into lines no wider than asked; a word that is wider is broken inside. Line feeds break too.
     *
     * @return at least one line
     */
    List<String> wrap(String text, TextStyle style, float widthPoints) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\r\n|[\n\r]", -1)) {
            wrapParagraph(line(paragraph).strip(), style, widthPoints, lines);
        }
        return lines;
    }

    private void wrapParagraph(String text, TextStyle style, float widthPoints, List<String> lines) {
        BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
        breaks.setText(text);
        StringBuilder current = new StringBuilder();
        int start = breaks.first();
        for (int end = breaks.next(); end != BreakIterator.DONE; start = end, end = breaks.next()) {
            String word = text.substring(start, end);
            if (current.length() > 0 && width((current + word).stripTrailing(), style) > widthPoints) {
                lines.add(current.toString().stripTrailing());
                current.setLength(0);
            }
            current.append(word);
            while (width(current.toString().stripTrailing(), style) > widthPoints && current.length() > 1) {
                int fitting = fitting(current, style, widthPoints);
                lines.add(current.substring(0, fitting));
                current.delete(0, fitting);
            }
        }
        lines.add(current.toString().stripTrailing());
    }

    private int fitting(CharSequence word, TextStyle style, float widthPoints) {
        int fitting = 1;
        while (fitting + 1 < word.length()
                && width(word.subSequence(0, fitting + 1).toString(), style) <= widthPoints) {
            fitting++;
        }
        return fitting;
    }

    /** One line no wider than asked; where it is cut it ends with an ellipsis, and the whole text must stand elsewhere. */
    String fit(String text, TextStyle style, float widthPoints) {
        String whole = line(text);
        if (width(whole, style) <= widthPoints) {
            return whole;
        }
        int end = whole.length();
        while (end > 0 && width(whole.substring(0, end) + "…", style) > widthPoints) {
            end--;
        }
        return whole.substring(0, end).stripTrailing() + "…";
    }

    /** At most so many lines; where the text is cut the last one ends with an ellipsis, and the whole text must stand elsewhere. */
    List<String> brief(String text, TextStyle style, float widthPoints, int most) {
        List<String> lines = wrap(text, style, widthPoints);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, most - 1));
        shown.add(fit(String.join(" ", lines.subList(most - 1, lines.size())), style, widthPoints));
        return shown;
    }

    /** Width of the widest unbreakable part, at most {@code cap}. */
    float widestWord(String text, TextStyle style, float cap) {
        BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
        String shown = line(text);
        breaks.setText(shown);
        float widest = 0;
        int start = breaks.first();
        for (int end = breaks.next(); end != BreakIterator.DONE; start = end, end = breaks.next()) {
            widest = Math.max(widest, width(shown.substring(start, end).stripTrailing(), style));
        }
        return Math.min(widest, cap);
    }

    /** Gives the subset's name always the same letters, so that equal reviews have equal bytes. Guards nothing secret. */
    private static final class FixedPrefix extends SecureRandom {
        private static final long serialVersionUID = 1L;

        @Override
        public double nextDouble() {
            return 0.5;
        }

        @Override
        public int nextInt(int bound) {
            return bound / 2;
        }
    }
}
