package workuptally.report.pdf.layout;

import java.util.ArrayList;
import java.util.List;

/** Moves width between the text columns of a table as long as that makes the table lower, or less of it cut. */
final class ColumnFit {
    private static final float[] MOVES = {48, 24, 12, 6};
    private static final int ROUNDS = 24;
    private static final int CUT_WEIGHS = 100;

    private final float[] widths;
    private final float[] least;
    private final List<Integer> open;
    private final List<List<MeasuredText>> columns;
    private final float inset;
    private final boolean brief;

    /**
     * A fit.
     *
     * @param widths widths to begin with; changed in place
     * @param least width that a column must keep
     * @param open columns that give and take
     * @param columns texts of those columns, by row
     * @param inset what a cell needs beside its text
     * @param brief true where cells are cut after {@link TableLayout#BRIEF_LINES} lines: then little is to be cut
     */
    ColumnFit(
            float[] widths,
            float[] least,
            List<Integer> open,
            List<List<MeasuredText>> columns,
            float inset,
            boolean brief) {
        this.brief = brief;
        this.widths = widths;
        this.least = least;
        this.open = List.copyOf(open);
        this.columns = List.copyOf(columns);
        this.inset = inset;
    }

    void improve() {
        if (open.size() < 2) {
            return;
        }
        List<int[]> lines = new ArrayList<>();
        for (int c = 0; c < open.size(); c++) {
            lines.add(lines(c, widths[open.get(c)]));
        }
        if (total(lines) == lines.get(0).length) {
            return; // one line a row already
        }
        for (float move : MOVES) {
            int rounds = 0;
            while (rounds < ROUNDS && step(move, lines)) {
                rounds++;
            }
        }
    }

    /** The move of that much width that saves most; false where none saves anything. */
    private boolean step(float move, List<int[]> lines) {
        int best = total(lines);
        int from = -1;
        int to = -1;
        List<int[]> wider = new ArrayList<>();
        for (int taker = 0; taker < open.size(); taker++) {
            wider.add(lines(taker, widths[open.get(taker)] + move));
        }
        for (int giver = 0; giver < open.size(); giver++) {
            if (widths[open.get(giver)] - move < least[open.get(giver)]) {
                continue;
            }
            int[] narrower = lines(giver, widths[open.get(giver)] - move);
            for (int taker = 0; taker < open.size(); taker++) {
                if (taker != giver) {
                    List<int[]> tried = new ArrayList<>(lines);
                    tried.set(giver, narrower);
                    tried.set(taker, wider.get(taker));
                    int total = total(tried);
                    if (total < best) {
                        best = total;
                        from = giver;
                        to = taker;
                    }
                }
            }
        }
        if (from < 0) {
            return false;
        }
        widths[open.get(from)] -= move;
        widths[open.get(to)] += move;
        lines.set(from, lines(from, widths[open.get(from)]));
        lines.set(to, lines(to, widths[open.get(to)]));
        return true;
    }

    private int[] lines(int column, float width) {
        List<MeasuredText> texts = columns.get(column);
        int[] lines = new int[texts.size()];
        for (int row = 0; row < lines.length; row++) {
            lines[row] = texts.get(row).lines(width - inset);
        }
        return lines;
    }

    private int total(List<int[]> lines) {
        int total = 0;
        for (int row = 0; row < lines.get(0).length; row++) {
            int most = 1;
            int cut = 0;
            for (int[] column : lines) {
                most = Math.max(most, column[row]);
                cut += Math.max(0, column[row] - TableLayout.BRIEF_LINES);
            }
            total += brief ? CUT_WEIGHS * cut + most : most;
        }
        return total;
    }
}
