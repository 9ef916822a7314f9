package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.UnreadableBookException;
import workuptally.cli.WorkupTally;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.Reference;

/**
 * Damaged books by the thousand, the same ones each time: 20 000 of them, or as many as {@code -Dfuzz.books=} says, from the seed
 * {@code -Dfuzz.seed=}. A book that breaks a promise is kept in {@code target/broken-books} with its seed in the name.
 */
class DamagedBooksTest {
    private static final int BOOKS = Integer.getInteger("fuzz.books", 20_000);
    private static final long FIRST_SEED = Long.getLong("fuzz.seed", 1);
    private static final Path BROKEN = Path.of("target", "broken-books");

    /** Every book is read; of a thousand so many are reviewed too, some by the command {@code check}, a few by {@code review} with its files. */
    private static final int REVIEWED = Integer.getInteger("fuzz.reviewed", 250);

    private static final int CHECKED = 22;
    private static final int WRITTEN = 2;

    /** A turn at which a book is reviewed and no command called. */
    private static final int REVIEW_ONLY = -1;

    private static final int THREADS = 2;

    /** Of processor time; a machine that has more to do lets more of other time pass. */
    private static final long MOST_NANOSECONDS = 5_000_000_000L;

    private static final long MOST_BYTES = 1L << 30;
    private static final int MOST_MINUTES = 30;

    /** Tables whose rows belong to the one run named in the first cell. */
    private static final List<String> OF_ONE_RUN =
            List.of("products.csv", "charges.csv", "workup.csv", "layers.csv", "isolated.csv", "assays.csv");

    private static final List<String> NUMBERS = List.of("0", "0.0001", "", "1000000", "0");

    private static final ThreadMXBean MEASURE = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @TempDir
    private Path folder;

    private final Map<String, List<List<String>>> sound = SmallBook.tables();
    private final ReviewBuilder builder = new ReviewBuilder(Reference.load(), "test");

    @Test
    void everyDamagedBookKeepsThePromises() throws Exception {
        byte[] workbook =
                Files.readAllBytes(SmallBook.workbook(folder.resolve("scratch"), folder.resolve("whole.xlsx")));
        Map<String, byte[]> parts = BookDamage.parts(workbook);
        Book whole = new BookReader().read(SmallBook.write(SmallBook.tables(), folder.resolve("whole")));
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<String>>> all = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                int first = thread;
                Callable<List<String>> work = () -> damage(first, whole, parts);
                all.add(threads.submit(work));
            }
            List<String> broken = new ArrayList<>();
            for (Future<List<String>> each : all) {
                broken.addAll(each.get(MOST_MINUTES, TimeUnit.MINUTES));
            }
            assertEquals(List.of(), broken);
        } finally {
            threads.shutdownNow();
        }
    }

    private List<String> damage(int first, Book whole, Map<String, byte[]> parts) throws Exception {
        List<String> broken = new ArrayList<>();
        Path own = Files.createDirectories(folder.resolve("thread" + first));
        Path csv = SmallBook.write(SmallBook.tables(), own.resolve("book"));
        for (int i = first; i < BOOKS && broken.size() < 20; i += THREADS) {
            long seed = FIRST_SEED + i;
            BookDamage damage = new BookDamage(seed);
            long start = MEASURE.getCurrentThreadCpuTime();
            long allocated = MEASURE.getCurrentThreadAllocatedBytes();
            Optional<String> fault = i % 10 < 6 ? csv(csv, damage, whole, i, own) : workbook(own, damage, parts, i);
            long bytes = MEASURE.getCurrentThreadAllocatedBytes() - allocated;
            long nanoseconds = MEASURE.getCurrentThreadCpuTime() - start;
            if (fault.isEmpty() && nanoseconds > MOST_NANOSECONDS) {
                fault = Optional.of("took " + nanoseconds / 1_000_000 + " ms");
            }
            if (fault.isEmpty() && bytes > MOST_BYTES) {
                fault = Optional.of("took " + bytes / 1_000_000 + " MB");
            }
            fault.ifPresent(words -> broken.add("seed " + seed + ": " + words));
        }
        return broken;
    }

    private Optional<String> csv(Path book, BookDamage damage, Book whole, int i, Path own) throws IOException {
        Map<String, List<List<String>>> tables = SmallBook.copy(sound);
        List<String> files = List.copyOf(tables.keySet());
        String file = files.get(damage.next(files.size()));
        Optional<BookDamage.HitCell> hit = Optional.empty();
        switch (damage.next(4)) {
            case 0, 1 -> {
                hit = Optional.of(damage.cell(tables, OF_ONE_RUN));
                file = hit.get().file();
                Files.writeString(book.resolve(file), SmallBook.csv(tables.get(file)));
            }
            case 2 -> {
                damage.rows(tables.get(file));
                Files.writeString(book.resolve(file), SmallBook.csv(tables.get(file)));
            }
            default -> Files.write(book.resolve(file), damage.bytes(Files.readAllBytes(book.resolve(file))));
        }
        Optional<String> fault = promises(book, hit, whole, damage.next(1_000), own);
        if (fault.isPresent()) {
            keep(book, FIRST_SEED + i);
        }
        Files.writeString(book.resolve(file), SmallBook.csv(sound.get(file)));
        return fault;
    }

    private Optional<String> workbook(Path own, BookDamage damage, Map<String, byte[]> parts, int i)
            throws IOException {
        Path book = own.resolve("book.xlsx");
        Files.write(book, damage.workbook(parts));
        Optional<String> fault = promises(book, Optional.empty(), null, damage.next(1_000), own);
        if (fault.isPresent()) {
            keep(book, FIRST_SEED + i);
        }
        return fault;
    }

    /** The first promise that is broken. */
    private Optional<String> promises(Path path, Optional<BookDamage.HitCell> hit, Book whole, int turn, Path own)
            throws IOException {
        int code;
        try {
            Book book = new BookReader().read(path);
            List<Finding> findings = turn < REVIEWED ? builder.review(book).findings() : book.findings();
            code = findings.stream().anyMatch(f -> f.severity().compareTo(Severity.HOLD) <= 0) ? 1 : 0;
            Optional<String> fault = twice(findings);
            if (fault.isEmpty() && hit.isPresent()) {
                fault = othersChanged(hit.get(), whole, book).or(() -> reportedWrongly(hit.get(), book));
            }
            if (fault.isPresent()) {
                return fault;
            }
        } catch (UnreadableBookException refused) {
            code = 2;
            if (!refused.getMessage().endsWith(".") || refused.getMessage().contains("xception")) {
                return Optional.of("refused with '" + refused.getMessage() + "'");
            }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            return Optional.of(fault + " at "
                    + Stream.of(fault.getStackTrace())
                            .filter(line -> line.getClassName().startsWith("workuptally."))
                            .limit(3)
                            .toList());
        }
        if (turn >= 0 && turn < WRITTEN) {
            return reviewed(path, code, own);
        }
        return turn >= 0 && turn < CHECKED ? checked(path, code) : Optional.empty();
    }

    private static Optional<String> checked(Path path, int code) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int ended =
                WorkupTally.run(new String[] {"check", path.toString()}, new PrintWriter(out), new PrintWriter(err));
        if (ended != code) {
            return Optional.of("check ended with " + ended + ", not " + code + ": " + err);
        }
        return terminal(out.toString(), err.toString(), code);
    }

    private static Optional<String> terminal(String out, String err, int code) {
        String all = out + err;
        if (err.lines().count() != (code == 2 ? 1 : 0)) {
            return Optional.of("the terminal shows '" + err + "'");
        }
        if (all.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r')) {
            return Optional.of("the terminal gets a control character");
        }
        return all.contains("Exception") ? Optional.of("the terminal shows an exception") : Optional.empty();
    }

    private static Optional<String> reviewed(Path path, int code, Path own) throws IOException {
        Path target = own.resolve("out");
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int ended = WorkupTally.run(
                new String[] {"review", path.toString(), "--out", target.toString(), "--strict"},
                new PrintWriter(out),
                new PrintWriter(err));
        long files = Files.exists(target) ? emptied(target) : 0;
        boolean refused = ended == 2 && files == 0;
        // What is read may be sound in a workbook that cannot be annotated.
        boolean notAnnotated = refused && err.toString().contains("cannot be annotated") && !Files.isDirectory(path);
        boolean right = code == 2 ? refused : notAnnotated || ended == code && files == 5;
        return right
                ? terminal(out.toString(), err.toString(), ended)
                : Optional.of("review ended with " + ended + " and " + files + " files, not " + code + ": " + err);
    }

    private static long emptied(Path folder) throws IOException {
        long count = 0;
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                count += Files.isRegularFile(file) ? 1 : 0;
                Files.delete(file);
            }
        }
        return count;
    }

    private static Optional<String> twice(List<Finding> findings) {
        Set<List<Object>> seen = new HashSet<>();
        for (Finding finding : findings) {
            if (!seen.add(List.of(finding.code(), finding.run(), finding.place(), finding.seen()))) {
                return Optional.of("reported twice: " + finding);
            }
        }
        return Optional.empty();
    }

    /** Runs other than the one that was hit are read as before. */
    private static Optional<String> othersChanged(BookDamage.HitCell hit, Book whole, Book book) {
        for (Run run : whole.runs()) {
            if (!run.id().equals(hit.run()) && !book.runs().contains(run)) {
                return Optional.of(run.id() + " changed by " + hit);
            }
        }
        return Optional.empty();
    }

    /** A number that nobody can read is one finding at its cell, or none where the cell holds no number. */
    private static Optional<String> reportedWrongly(BookDamage.HitCell hit, Book book) {
        long atCell = book.findings().stream()
                .filter(f -> f.place().file().equals(hit.file()))
                .filter(f -> f.place().row() == hit.row() + 1 && f.place().column() == hit.column())
                .count();
        return atCell > 1 ? Optional.of(atCell + " findings at " + hit) : Optional.empty();
    }

    private static void keep(Path book, long seed) throws IOException {
        Path target = BROKEN.resolve("seed-" + seed + (Files.isDirectory(book) ? "" : ".xlsx"));
        Files.createDirectories(BROKEN);
        if (Files.isDirectory(book)) {
            Files.createDirectories(target);
            try (Stream<Path> files = Files.list(book)) {
                for (Path file : files.toList()) {
                    Files.write(target.resolve(file.getFileName()), Files.readAllBytes(file));
                }
            }
        } else {
            Files.write(target, Files.readAllBytes(book));
        }
    }

    /** The values at which a quotient or a logarithm ends, in each cell once. */
    @Test
    void noCellStopsTheReviewWhateverNumberStandsInIt() throws Exception {
        List<String> broken = new ArrayList<>();
        Path book = SmallBook.write(sound, folder.resolve("numbers"));
        int turn = 0;
        for (String file : List.copyOf(sound.keySet())) {
            for (int row = 1; row < sound.get(file).size(); row++) {
                for (int column = 1; column < sound.get(file).get(row).size(); column++) {
                    Map<String, List<List<String>>> tables = SmallBook.copy(sound);
                    String number = NUMBERS.get(turn++ % NUMBERS.size());
                    tables.get(file).get(row).set(column, number);
                    Files.writeString(book.resolve(file), SmallBook.csv(tables.get(file)));
                    String where = file + " row " + row + " column " + column + " = " + number + ": ";
                    promises(book, Optional.empty(), null, REVIEW_ONLY, folder)
                            .ifPresent(words -> broken.add(where + words));
                }
            }
            Files.writeString(book.resolve(file), SmallBook.csv(sound.get(file)));
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void theSameSeedDoesTheSameDamage() {
        Map<String, List<List<String>>> first = SmallBook.tables();
        Map<String, List<List<String>>> second = SmallBook.tables();
        for (int seed = 0; seed < 50; seed++) {
            new BookDamage(seed).cell(first, OF_ONE_RUN);
            new BookDamage(seed).cell(second, OF_ONE_RUN);
        }
        assertEquals(first, second);
        assertTrue(!first.equals(SmallBook.tables()));
    }
}
