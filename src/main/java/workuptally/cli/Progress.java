package workuptally.cli;

import java.io.PrintWriter;
import java.util.Optional;

/** Shows on the terminal how many runs of a large book, or books of a period, are done: a bar that grows on one line. */
final class Progress implements AutoCloseable {
    private static final int FEW_RUNS = 200;
    private static final int RUNS_PER_STEP = 50;
    private static final int FEW_BOOKS = 10;
    private static final int BAR = 30;

    private final Optional<PrintWriter> terminal;
    private final int all;
    private final String what;
    private final int step;

    /**
     * Shown only where a person watches and the book is large.
     *
     * @param watched the terminal of that person, as it is: the bar goes back to the start of its line
     * @param runs runs of the book
     */
    Progress(Optional<PrintWriter> watched, int runs) {
        this(watched.filter(w -> runs > FEW_RUNS), runs, "runs", RUNS_PER_STEP);
    }

    private Progress(Optional<PrintWriter> terminal, int all, String what, int step) {
        this.terminal = terminal;
        this.all = all;
        this.what = what;
        this.step = step;
    }

    /** Counts books instead of runs. */
    static Progress ofBooks(Optional<PrintWriter> watched, int books) {
        return new Progress(watched.filter(w -> books > FEW_BOOKS), books, "books", 1);
    }

    void done(int count) {
        if (terminal.isPresent() && (count % step == 0 || count == all)) {
            int filled = (int) ((long) BAR * count / all);
            PrintWriter line = terminal.get();
            line.print(
                    "\r[" + "#".repeat(filled) + ".".repeat(BAR - filled) + "] " + count + " of " + all + " " + what);
            line.flush();
        }
    }

    @Override
    public void close() {
        terminal.ifPresent(PrintWriter::println);
    }
}
