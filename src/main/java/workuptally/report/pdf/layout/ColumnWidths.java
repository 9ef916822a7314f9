package workuptally.report.pdf.layout;

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

    /** Short columns keep their natural width; the long ones share what is left by the root of their length, none below its least. */
    private static void narrow(float[] widths, float[] least, float total) {
        float[] natural = widths.clone();
        boolean[] settled = new boolean[widths.length];
        float left = total;
        int open = widths.length;
        for (int i = next(natural, least, settled, left / open);
                i >= 0;
                i = next(natural, least, settled, left / open)) {
            settled[i] = true;
            widths[i] = natural[i] <= left / open ? natural[i] : least[i];
            left -= widths[i];
            open--;
        }
        float wanted = 0;
        for (int i = 0; i < widths.length; i++) {
            wanted += settled[i] ? 0 : (float) Math.sqrt(natural[i]);
        }
        for (int i = 0; i < widths.length; i++) {
            if (!settled[i]) {
                widths[i] = left * (float) Math.sqrt(natural[i]) / wanted;
            }
        }
        raise(widths, least, settled);
        if (open == 0) {
            spread(widths, natural, left);
        }
        shrink(widths, least, total);
    }

    /** Takes back what columns settled at their least have left too little for, from those that can do with less. */
    private static void shrink(float[] widths, float[] least, float total) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], least[i]);
        }
        float excess = sum(widths) - total;
        float slack = 0;
        for (int i = 0; i < widths.length; i++) {
            slack += Math.max(0, widths[i] - least[i]);
        }
        if (excess > 0 && slack > 0) {
            float part = Math.min(1, excess / slack);
            for (int i = 0; i < widths.length; i++) {
                widths[i] -= part * Math.max(0, widths[i] - least[i]);
            }
        }
    }

    /** The next column to settle: first one that is content with a fair part, then one that cannot do with it; -1 if there is none. */
    private static int next(float[] natural, float[] least, boolean[] settled, float fair) {
        int demanding = -1;
        for (int i = 0; i < natural.length; i++) {
            if (!settled[i] && natural[i] <= fair) {
                return i;
            }
            if (!settled[i] && least[i] > fair) {
                demanding = i;
            }
        }
        return demanding;
    }

    /** Gives what is left to the columns that lack most. */
    private static void spread(float[] widths, float[] natural, float left) {
        float lacking = 0;
        for (int i = 0; i < widths.length; i++) {
            lacking += natural[i] - widths[i];
        }
        if (lacking > 0) {
            float part = Math.min(1, left / lacking);
            for (int i = 0; i < widths.length; i++) {
                widths[i] += (natural[i] - widths[i]) * part;
            }
        }
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
