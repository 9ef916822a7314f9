package workuptally.report.pdf;

import java.util.List;

/** Shares the width of a table among its columns: numbers and words get what they need, texts share the rest by their length. */
final class ColumnWidths {
    /** A table that needs less than this share of the width keeps its natural width: far columns are hard to read across. */
    private static final float NARROW = 0.55f;

    private ColumnWidths() {}

    /**
     * Widths of columns.
     *
     * @param least width without breaking a word, per column
     * @param natural width without breaking a line, per column; at least {@code least}
     * @param stretches whether a column takes spare width
     * @param total width of the table, points
     * @return widths whose sum is at most {@code total}
     */
    static float[] share(float[] least, float[] natural, List<Boolean> stretches, float total) {
        float[] widths = natural.clone();
        float leastSum = sum(least);
        float naturalSum = sum(natural);
        if (leastSum >= total) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = least[i] * total / leastSum;
            }
        } else if (naturalSum > total) {
            float part = (total - leastSum) / (naturalSum - leastSum);
            for (int i = 0; i < widths.length; i++) {
                widths[i] = least[i] + (natural[i] - least[i]) * part;
            }
        } else if (naturalSum > NARROW * total) {
            stretch(widths, stretches, total - naturalSum);
        }
        return widths;
    }

    private static void stretch(float[] widths, List<Boolean> stretches, float spare) {
        float stretchable = 0;
        for (int i = 0; i < widths.length; i++) {
            stretchable += stretches.get(i) ? widths[i] : 0;
        }
        if (stretchable > 0) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] += stretches.get(i) ? spare * widths[i] / stretchable : 0;
            }
        }
    }

    private static float sum(float[] values) {
        float sum = 0;
        for (float value : values) {
            sum += value;
        }
        return sum;
    }
}
