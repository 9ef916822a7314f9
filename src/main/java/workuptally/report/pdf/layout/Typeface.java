package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.security.SecureRandom;
import java.text.BreakIterator;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The two fonts of one document, their measures, line breaking, and a guard against characters that they lack.
 *
 * <p>A character without a glyph would vanish without a trace; it is shown as a replacement sign and counted instead.
 */
public final class Typeface {
    /** Shown for a character that the fonts lack. */
    static final char REPLACEMENT = '\uFFFD';

    private static final String ELLIPSIS = "…";

    private final BaseFont regular;
    private final BaseFont bold;
    private static final String CLOSING = ")]";

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    /** What the fonts say of a character, kept once asked: their own tables are slow. */
    private final Glyph[] glyphs = new Glyph[Character.MAX_VALUE + 1];

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
    public float width(String text, TextStyle style) {
        return points(advance(text, style), style);
    }

    /** Width in points of as many thousandths of the font size. */
    static float points(int thousandths, TextStyle style) {
        return thousandths * 0.001f * style.size();
    }

    private int advance(String text, TextStyle style) {
        int advance = 0;
        for (int i = 0; i < text.length(); i++) {
            advance += glyph(text.charAt(i)).advance(style);
        }
        return advance;
    }

    /** Widths from the start of a text up to each of its characters and to its end, thousandths of the font size. */
    int[] advances(String text, TextStyle style) {
        int[] advances = new int[text.length() + 1];
        for (int i = 0; i < text.length(); i++) {
            advances[i + 1] = advances[i] + glyph(text.charAt(i)).advance(style);
        }
        return advances;
    }

    /** Ends of the parts of a text between which a line may break, in order; the last is its length. */
    int[] breaks(String text) {
        breaks.setText(text);
        int[] ends = new int[text.length()];
        int count = 0;
        for (int end = breaks.next(); end != BreakIterator.DONE; end = breaks.next()) {
            if (!isInsideName(text, end) && !KeptTogether.at(text, end)) {
                ends[count++] = end;
            }
        }
        return Arrays.copyOf(ends, count);
    }

    /** A name like R-26 or 2-propanol is not parted behind its hyphen, a formula not before the count of its bracket. */
    private static boolean isInsideName(String text, int end) {
        if (end < text.length() && CLOSING.indexOf(text.charAt(end - 1)) >= 0) {
            return Character.isDigit(text.charAt(end));
        }
        return end < text.length()
                && text.charAt(end - 1) == '-'
                && (Character.isDigit(text.charAt(end)) || end > 1 && Character.isDigit(text.charAt(end - 2)));
    }

    /** Number of characters replaced so far. */
    int replaced() {
        return replaced;
    }

    /** The text on one line, with every character shown or visibly replaced. */
    public String line(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!glyph(text.charAt(i)).shown()) {
                return shown(text);
            }
        }
        return text;
    }

    private String shown(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (isSpace(c)) {
                out.append(' ');
            } else if (Character.getType(c) == Character.FORMAT) {
                // joiners, direction marks and byte order marks have no shape of their own
                return;
            } else if (c <= Character.MAX_VALUE && glyph((char) c).shown()) {
                out.appendCodePoint(c);
            } else {
                out.append(REPLACEMENT);
                replaced++;
            }
        });
        return out.toString();
    }

    private static boolean isSpace(int c) {
        return Character.isISOControl(c) || c == 0x2028 || c == 0x2029;
    }

    private Glyph glyph(char c) {
        Glyph glyph = glyphs[c];
        if (glyph == null) {
            boolean visible = !isSpace(c) && Character.getType(c) != Character.FORMAT;
            glyph = new Glyph(
                    visible && regular.charExists(c) && bold.charExists(c), regular.getWidth(c), bold.getWidth(c));
            glyphs[c] = glyph;
        }
        return glyph;
    }

    /**
     * Breaks a text into lines no wider than asked; a word that is wider is broken inside. Line feeds break too.
     *
     * @return at least one line
     */
    public List<String> wrap(String text, TextStyle style, float widthPoints) {
        return new MeasuredText(this, text, style).wrap(widthPoints);
    }

    /** One line no wider than asked; where it is cut it ends with an ellipsis, and the whole text must stand elsewhere. */
    public String fit(String text, TextStyle style, float widthPoints) {
        String whole = line(text);
        if (width(whole, style) <= widthPoints) {
            return whole;
        }
        int[] advances = advances(whole, style);
        int ellipsis = advance(ELLIPSIS, style);
        int end = whole.length();
        while (end > 0 && points(advances[end] + ellipsis, style) > widthPoints) {
            end--;
        }
        return whole.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    /** One line no wider than asked; where it is cut its end stays, in which names of one kind differ: {@code Wasch…ase-2}. */
    public String fitEnds(String text, TextStyle style, float widthPoints) {
        String whole = line(text);
        String fitted = whole;
        int kept = whole.length();
        while (kept > 2 && width(fitted, style) > widthPoints) {
            kept--;
            int behind = kept / 2;
            fitted = whole.substring(0, kept - behind).stripTrailing()
                    + ELLIPSIS
                    + whole.substring(whole.length() - behind).stripLeading();
        }
        return fitted;
    }

    /**
     * A character in both fonts.
     *
     * @param shown false for one that they lack or that has no shape
     * @param regular width in the regular font, thousandths of its size
     * @param bold width in the bold font
     */
    private record Glyph(boolean shown, int regular, int bold) {
        int advance(TextStyle style) {
            return style.bold() ? bold : regular;
        }
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
