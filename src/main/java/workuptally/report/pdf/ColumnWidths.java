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
            narrow(widths, least, total);
        } else if (naturalSum > NARROW * total) {
            stretch(widths, stretches, total - naturalSum);
        }
        return widths;
    }

    /** Short columns keep their width; the long ones share what is left, none below its least. */
    private static void narrow(float[] widths, float[] least, float total) {
        boolean[] settled = new boolean[widths.length];
        float left = total;
        int open = widths.length;
        for (boolean changed = true; changed && open > 0; ) {
            changed = false;
            float fair = left / open;
            for (int i = 0; i < widths.length; i++) {
                float kept = Math.max(widths[i] <= fair ? widths[i] : 0, least[i] > fair ? least[i] : 0);
                if (!settled[i] && kept > 0) {
                    widths[i] = kept;
                    settled[i] = true;
                    left -= kept;
                    open--;
                    changed = true;
                    break;
                }
            }
        }
        float wanted = 0;
        for (int i = 0; i < widths.length; i++) {
            wanted += settled[i] ? 0 : (float) Math.sqrt(widths[i]);
        }
        float shared = left;
        for (int i = 0; i < widths.length; i++) {
            if (!settled[i]) {
                widths[i] = shared * (float) Math.sqrt(widths[i]) / wanted;
            }
        }
        raise(widths, least, settled);
    }

    /** Takes from the widest open column what an open column lacks to its least. */
    private static void raise(float[] widths, float[] least, boolean[] settled) {
        for (int i = 0; i < widths.length; i++) {
            if (!settled[i] && widths[i] < least[i]) {
                int widest = i;
                for (int j = 0; j < widths.length; j++) {
                    if (!settled[j] && widths[j] - least[j] > widths[widest] - least[widest]) {
                        widest = j;
                    }
                }
                float lacking = least[i] - widths[i];
                widths[i] += lacking;
                widths[widest] -= lacking;
            }
        }
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
