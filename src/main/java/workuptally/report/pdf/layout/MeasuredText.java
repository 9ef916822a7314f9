package workuptally.report.pdf.layout;

import java.util.ArrayList;
import java.util.List;

/** A text measured once, so that it can be broken into lines for many widths. Line feeds break too. */
final class MeasuredText {
    /** Of the width, what a line holds at least that ends inside a name. */
    private static final float LEAST_FILLED = 0.2f;
    /** Characters that go to the next line at least where a name has to be parted inside a syllable. */
    private static final int LEAST_LEFT = 4;
    /** Signs behind which a long name may be parted. */
    private static final String JOINTS = "-\u2010\u2011\u2013,)]}/+_";

    private final Typeface typeface;
    private final TextStyle style;
    private final List<Part> parts = new ArrayList<>();

    MeasuredText(Typeface typeface, String text, TextStyle style) {
        this.typeface = typeface;
        this.style = style;
        for (String part : text.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1)) {
            parts.add(part(typeface.line(part).strip()));
        }
    }

    private Part part(String text) {
        int[] breaks = typeface.breaks(text);
        int[] bare = new int[breaks.length];
        for (int i = 0; i < breaks.length; i++) {
            bare[i] = breaks[i];
            while (bare[i] > 0 && Character.isWhitespace(text.charAt(bare[i] - 1))) {
                bare[i]--;
            }
        }
        return new Part(text, typeface.advances(text, style), breaks, bare);
    }

    /** Width without breaking a line but at line feeds, points. */
    float widest() {
        float widest = 0;
        for (Part part : parts) {
            widest = Math.max(widest, width(part, 0, part.text().length()));
        }
        return widest;
    }

    /** Width of the widest unbreakable part, at most {@code cap}, points. */
    float widestWord(float cap) {
        float widest = 0;
        for (Part part : parts) {
            int from = 0;
            for (int i = 0; i < part.breaks().length; i++) {
                widest = Math.max(widest, bareWidth(part, from, i));
                from = part.breaks()[i];
            }
        }
        return Math.min(widest, cap);
    }

    /** Number of lines no wider than asked, points; for a text with a word wider than that a close estimate. */
    int lines(float widthPoints) {
        int lines = 0;
        for (Part part : parts) {
            float used = 0;
            int from = 0;
            lines++;
            for (int i = 0; i < part.breaks().length; i++) {
                float bare = bareWidth(part, from, i);
                if (used > 0 && used + bare > widthPoints) {
                    lines++;
                    used = 0;
                }
                used += width(part, from, part.breaks()[i]);
                // a word wider than a line is broken inside
                int full = widthPoints > 0 ? Math.max(0, (int) Math.ceil(bare / widthPoints) - 1) : 0;
                lines += full;
                used -= full * widthPoints;
                from = part.breaks()[i];
            }
        }
        return lines;
    }

    /**
     * Lines no wider than asked; a word that is wider is broken inside.
     *
     * @return at least one line
     */
    List<String> wrap(float widthPoints) {
        List<String> lines = new ArrayList<>();
        for (Part part : parts) {
            int from = 0;
            do {
                int next = next(part, from, widthPoints);
                lines.add(part.text().substring(from, next).stripTrailing());
                from = next;
            } while (from < part.text().length());
        }
        return lines;
    }

    /** At most so many lines; where the text is cut the last one ends with an ellipsis, and the whole text must stand elsewhere. */
    List<String> brief(float widthPoints, int most) {
        List<String> lines = wrap(widthPoints);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, most - 1));
        shown.add(typeface.fit(String.join(" ", lines.subList(most - 1, lines.size())), style, widthPoints));
        return shown;
    }

    /** Where the line ends that begins there, and the next one begins. */
    private int next(Part part, int from, float widthPoints) {
        int next = from;
        for (int i = 0; i < part.breaks().length; i++) {
            int end = part.breaks()[i];
            if (end <= from) {
                continue;
            }
            if (bareWidth(part, from, i) > widthPoints && end - from > 1) {
                return next > from ? next : inside(part, from, end, widthPoints);
            }
            next = end;
        }
        return next;
    }

    /** Where to break a word that is wider than a line: behind a hyphen, comma or bracket of a chemical name where there is one. */
    private int inside(Part part, int from, int end, float widthPoints) {
        int next = from + 1;
        while (next + 1 < end && width(part, from, next + 1) <= widthPoints) {
            next++;
        }
        for (int joint = next; joint > from + 1 && width(part, from, joint) >= LEAST_FILLED * widthPoints; joint--) {
            if (JOINTS.indexOf(part.text().charAt(joint - 1)) >= 0) {
                return joint;
            }
        }
        // not a single bracket or letter alone on the next line
        return end - next < LEAST_LEFT && next - LEAST_LEFT > from ? end - LEAST_LEFT : next;
    }

    private float width(Part part, int from, int end) {
        return Typeface.points(part.advances()[end] - part.advances()[from], style);
    }

    /** Width up to the break of that number, without white space at its end. */
    private float bareWidth(Part part, int from, int breakNumber) {
        return width(part, from, Math.max(from, part.bare()[breakNumber]));
    }

    /**
     * What stands between line feeds.
     *
     * @param text text without white space around it
     * @param advances widths from its start up to each character and to its end, thousandths of the font size
     * @param breaks ends of the pieces between which a line may break
     * @param bare the same ends before white space
     */
    private record Part(String text, int[] advances, int[] breaks, int[] bare) {}
}
