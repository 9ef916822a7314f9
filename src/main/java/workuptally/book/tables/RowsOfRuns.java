package workuptally.book.tables;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;
import workuptally.book.words.BookWords;
import workuptally.model.LeftOutRow;

/**
 * Hands each row of a table to its run. A row that is left out is told to its run as well, by its id or by the row above it, since a figure of
 * the run may rest on it.
 */
final class RowsOfRuns {
    private final RunIndex runs;
    private final BiPredicate<TableRow, RunAssembly> reader;
    private final BiConsumer<TableRow, RunAssembly> leftOut;
    private Optional<RunAssembly> above = Optional.empty();

    private RowsOfRuns(
            RunIndex runs, BiPredicate<TableRow, RunAssembly> reader, BiConsumer<TableRow, RunAssembly> leftOut) {
        this.runs = runs;
        this.reader = reader;
        this.leftOut = leftOut;
    }

    /**
     * Reads them all.
     *
     * @param reader reads a row of a run; false where it left the row out
     * @param leftOut takes each row that was left out, with its run
     */
    static void read(
            TableRows rows,
            RunIndex runs,
            BiPredicate<TableRow, RunAssembly> reader,
            BiConsumer<TableRow, RunAssembly> leftOut) {
        RowsOfRuns ofRuns = new RowsOfRuns(runs, reader, leftOut);
        rows.forEach(ofRuns::read, ofRuns::leaveOut);
    }

    /**
     * The same of rows that stand with the run where they are left out.
     *
     * @param label heading of what labels such a row
     */
    static void read(
            TableRows rows, RunIndex runs, LeftOutRow.Of of, String label, BiPredicate<TableRow, RunAssembly> reader) {
        read(
                rows,
                runs,
                reader,
                (row, run) -> run.leftOut.add(new LeftOutRow(of, run.spelling(plain(row, label)), row.place())));
    }

    private void read(TableRow row) {
        Optional<RunAssembly> run = runs.of(row);
        if (run.isEmpty()) {
            above.filter(r -> row.isBlank("Run") && !row.holdsOnly("Run")).ifPresent(r -> leftOut.accept(row, r));
            return;
        }
        above = run;
        if (!reader.test(row, run.get()) && !row.holdsOnly("Run")) {
            leftOut.accept(row, run.get());
        }
    }

    private void leaveOut(TableRow row) {
        runs.find(plain(row, "Run")).or(() -> above).ifPresent(run -> leftOut.accept(row, run));
    }

    /** What stands under a heading, unjudged. */
    static String plain(TableRow row, String heading) {
        return row.cell(heading).map(cell -> BookWords.tidy(cell.text())).orElse("");
    }
}
