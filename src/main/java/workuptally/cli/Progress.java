package workuptally.cli;

import java.io.PrintWriter;

/** Shows on the terminal how many runs of a large book, or books of a period, are done: a bar that grows on one line. */
final class Progress implements AutoCloseable {
    private static final int FEW_RUNS = 200;
    private static final int RUNS_PER_STEP = 50;
    private static final int FEW_BOOKS = 10;
    private static final int BAR = 30;

    private final PrintWriter err;
    private final int all;
    private final String what;
    private final int step;
    private final boolean shown;

    /**
     * Shown only where a person watches and the book is large.
     *
     * @param runs runs of the book
     */
    Progress(PrintWriter err, int runs, boolean interactive) {
        this(err, runs, "runs", RUNS_PER_STEP, interactive && runs > FEW_RUNS);
    }

    private Progress(PrintWriter err, int all, String what, int step, boolean shown) {
        this.err = err;
        this.all = all;
        this.what = what;
        this.step = step;
        this.shown = shown;
    }

    /** Counts books instead of runs. */
    static Progress ofBooks(PrintWriter err, int books, boolean interactive) {
        return new Progress(err, books, "books", 1, interactive && books > FEW_BOOKS);
    }

    void done(int count) {
        if (shown && (count % step == 0 || count == all)) {
            int filled = (int) ((long) BAR * count / all);
            err.print("\r[" + "#".repeat(filled) + ".".repeat(BAR - filled) + "] " + count + " of " + all + " " + what);
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
