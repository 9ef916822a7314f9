package workuptally.cli;

import java.io.PrintWriter;

/** Shows on the terminal how many runs of a large book are done. */
final class Progress implements AutoCloseable {
    private static final int FEW_RUNS = 200;
    private static final int RUNS_PER_LINE = 50;

    private final PrintWriter err;
    private final int runs;
    private final boolean shown;

    /**
     * Shown only where a person watches and the book is large.
     *
     * @param runs runs of the book
     */
    Progress(PrintWriter err, int runs, boolean interactive) {
        this.err = err;
        this.runs = runs;
        this.shown = interactive && runs > FEW_RUNS;
    }

    void done(int count) {
        if (shown && (count % RUNS_PER_LINE == 0 || count == runs)) {
            err.print("\rreviewed " + count + " of " + runs + " runs");
            err.flush();
        }
    }

    @Override
    public void close() {
        if (shown) {
            err.println();
        }
    }
}
