package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import workuptally.book.WrittenReview;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.period.BookShare;
import workuptally.judgement.period.PeriodLedger;
import workuptally.judgement.period.PeriodReview.Standing;

/**
 * Reads and reviews many books, two at a time, and adds them to a ledger in the order of their paths. Of a book only what it adds stays in
 * memory.
 */
final class PeriodBooks {
    private static final int MOST_THREADS = 2;
    private static final int WAITING_PER_THREAD = 2;

    private final Path folder;
    private final BookOptions options;
    private final Supplier<ReviewBuilder> reviewer;
    private final PeriodLedger ledger;
    private final List<String> unreadable = new ArrayList<>();
    private ExitCode worst = ExitCode.DONE;

    PeriodBooks(Path folder, BookOptions options, PeriodLedger ledger) throws IOException {
        this.folder = folder;
        this.options = options;
        this.reviewer = options.reviewer();
        this.ledger = ledger;
    }

    /**
     * Adds books to the ledger.
     *
     * @param progress told the number of books done so far
     * @return what is to be said about each book that could not be read
     */
    List<String> add(List<Path> books, IntConsumer progress) throws IOException {
        int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            Queue<Work> waiting = new ArrayDeque<>();
            int done = 0;
            for (Path book : books) {
                waiting.add(new Work(book, workers.submit(() -> share(book))));
                if (waiting.size() > threads * WAITING_PER_THREAD) {
                    finish(waiting.remove());
                    progress.accept(++done);
                }
            }
            while (!waiting.isEmpty()) {
                finish(waiting.remove());
                progress.accept(++done);
            }
            return List.copyOf(unreadable);
        } finally {
            workers.shutdownNow();
        }
    }

    /** What the books that could not be taken tell the caller. */
    ExitCode code() {
        return unreadable.isEmpty() ? ExitCode.DONE : ExitCode.UNUSABLE.and(worst);
    }

    private record Work(Path book, Future<BookShare> share) {}

    /** What stands for a workbook that this program wrote. */
    private static final class PassedOver extends Exception {
        private static final long serialVersionUID = 1L;
    }

    private BookShare share(Path book) throws UnreadableBookException, IOException, PassedOver {
        if (Files.isRegularFile(book) && !BookEnding.CSV.isOf(book) && WrittenReview.is(book)) {
            throw new PassedOver();
        }
        return BookShare.of(name(book), reviewer.get().review(options.read(book)));
    }

    private void finish(Work work) throws IOException {
        String name = name(work.book());
        try {
            ledger.add(work.share().get());
        } catch (ExecutionException failed) {
            Throwable cause = failed.getCause();
            if (cause instanceof PassedOver) {
                ledger.leaveOut(name, Standing.PASSED_OVER, "a review that this program wrote");
            } else if (cause instanceof UnreadableBookException || cause instanceof IOException) {
                unreadable.add(name + ": " + Failure.sentence(cause));
                ledger.leaveOut(name, Standing.NOT_READ, Failure.sentence(cause));
            } else {
                StringWriter said = new StringWriter();
                worst = worst.and(Failure.report(work.book(), cause, new PrintWriter(said, true)));
                unreadable.add(said.toString().strip());
                ledger.leaveOut(name, Standing.NOT_READ, "a fault of the program stopped its review");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("The work was interrupted.", interrupted);
        }
    }

    /** Its path inside the folder, the same on every system; its own name where the folder is itself the book. */
    private String name(Path book) {
        String inside = folder.relativize(book).toString().replace('\\', '/');
        Path own = book.toAbsolutePath().normalize().getFileName();
        return inside.isEmpty() && own != null ? own.toString() : inside;
    }
}
