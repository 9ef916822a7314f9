package workuptally.report.pdf;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A text measured once, so that its lines can be counted for many widths. */
final class MeasuredText {
    private final List<float[]> pieces = new ArrayList<>();
    private final List<float[]> bare = new ArrayList<>();

    MeasuredText(Typeface typeface, String text, TextStyle style) {
        for (String paragraph : text.split("\r\n|[\n\r]", -1)) {
            measure(typeface, typeface.line(paragraph).strip(), style);
        }
    }

    private void measure(Typeface typeface, String paragraph, TextStyle style) {
        BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
        breaks.setText(paragraph);
        List<Float> whole = new ArrayList<>();
        List<Float> stripped = new ArrayList<>();
        int start = breaks.first();
        for (int end = breaks.next(); end != BreakIterator.DONE; start = end, end = breaks.next()) {
            String piece = paragraph.substring(start, end);
            whole.add(typeface.width(piece, style));
            stripped.add(typeface.width(piece.stripTrailing(), style));
        }
        pieces.add(array(whole));
        bare.add(array(stripped));
    }

    private static float[] array(List<Float> values) {
        float[] array = new float[values.size()];
        for (int i = 0; i < array.length; i++) {
            array[i] = values.get(i);
        }
        return array;
    }

    /** Number of lines no wider than asked, points; for a text with a word wider than that a close estimate. */
    int lines(float widthPoints) {
        int lines = 0;
        for (int p = 0; p < pieces.size(); p++) {
            float used = 0;
            lines++;
            for (int i = 0; i < pieces.get(p).length; i++) {
                if (used > 0 && used + bare.get(p)[i] > widthPoints) {
                    lines++;
                    used = 0;
                }
                used += pieces.get(p)[i];
                // a word wider than a line is broken inside
                int full = widthPoints > 0 ? Math.max(0, (int) Math.ceil(bare.get(p)[i] / widthPoints) - 1) : 0;
                lines += full;
                used -= full * widthPoints;
            }
        }
        return lines;
    }
}
