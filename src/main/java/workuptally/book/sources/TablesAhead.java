package workuptally.book.sources;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.schema.Table;
import workuptally.threads.Awaited;

/** Reads the tables of a source on a thread of its own: the next one while the rows of the last are being understood. */
public final class TablesAhead implements AutoCloseable {
    private final TableSource source;
    private final Deque<Table> toRead;
    private final ExecutorService reader = Executors.newSingleThreadExecutor();
    private Future<Read> next;

    /** A table as it stands in the file, with the remarks on the reading. */
    private record Read(Optional<RawTable> table, FindingLog log) {}

    /**
     * Starts with the first table.
     *
     * @param tables in the order in which they will be asked for, at least one
     */
    public TablesAhead(TableSource source, List<Table> tables) {
        this.source = source;
        this.toRead = new ArrayDeque<>(tables);
        this.next = readNext();
    }

    private Future<Read> readNext() {
        Table table = toRead.remove();
        return reader.submit(() -> {
            FindingLog log = new FindingLog();
            return new Read(source.table(table, log), log);
        });
    }

    /**
     * The next table.
     *
     * @param log where remarks on the reading go
     * @throws UnreadableBookException if the file is damaged
     * @throws IOException if the file cannot be accessed
     */
    public Optional<RawTable> next(FindingLog log) throws UnreadableBookException, IOException {
        Read read = Awaited.result(next, UnreadableBookException.class);
        if (!toRead.isEmpty()) {
            next = readNext();
        }
        log.addAll(read.log());
        return read.table();
    }

    @Override
    public void close() {
        reader.shutdownNow();
    }
}
