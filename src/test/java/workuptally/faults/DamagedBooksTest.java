package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.faults.BookPromises.Depth;
import workuptally.model.Book;

/**
 * Damaged books by the thousand, the same ones each time: 4000 of them, or as many as {@code -Dfuzz.books=} says, from the seed
 * {@code -Dfuzz.seed=}. A book that breaks a promise is kept in {@code target/broken-books} with its seed in the name.
 */
@Tag("slow")
class DamagedBooksTest {
    private static final int BOOKS = Integer.getInteger("fuzz.books", 4_000);
    private static final long FIRST_SEED = Long.getLong("fuzz.seed", 1);
    private static final Path BROKEN = Path.of("target", "broken-books");

    /** Every book is read; of a thousand so many are reviewed too, some by the command {@code check}, a few by {@code review} with its files. */
    private static final int REVIEWED = Integer.getInteger("fuzz.reviewed", 30);

    private static final int CHECKED = 16;
    private static final int WRITTEN = 2;

    private static final int THREADS = 2;
    private static final int MOST_BROKEN = 20;

    /** Of processor time; a machine that has more to do lets more of other time pass. */
    private static final long MOST_NANOSECONDS = 5_000_000_000L;

    private static final long MOST_BYTES = 1L << 30;

    /** For a hang, which no measure of a finished book shows. */
    private static final int MOST_MINUTES = 10 + BOOKS / 1_000;

    /** Tables whose rows belong to the one run named in the first cell. */
    private static final List<String> OF_ONE_RUN =
            List.of("products.csv", "charges.csv", "workup.csv", "layers.csv", "isolated.csv", "assays.csv");

    private static final List<String> NUMBERS = List.of("0", "0.0001", "", "1000000", "0");

    private static final ThreadMXBean MEASURE = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @TempDir
    private Path folder;

    private final BookPromises promises = new BookPromises();

    /**
     * A book to be damaged in both its forms.
     *
     * @param read what is read from it
     * @param parts of the workbook
     */
    private record Whole(Map<String, List<List<String>>> tables, Book read, Map<String, byte[]> parts) {
        static Whole of(Map<String, List<List<String>>> tables, Path scratch) throws Exception {
            Book read = new BookReader().read(BookToDamage.write(tables, scratch));
            byte[] workbook = Files.readAllBytes(BookToDamage.workbook(tables, scratch, scratch.resolve("whole.xlsx")));
            return new Whole(tables, read, BookDamage.parts(workbook));
        }
    }

    /** One piece of work, and the words for what it broke. */
    private interface Work {
        Optional<String> broken(int number, Path own) throws IOException;
    }

    @Test
    void everyDamagedBookKeepsThePromises() throws Exception {
        Whole small = Whole.of(BookToDamage.tables(), folder.resolve("small"));
        Whole week = Whole.of(BookToDamage.week(), folder.resolve("week"));
        assertEquals(List.of(), broken(BOOKS, (number, own) -> {
            long seed = FIRST_SEED + number;
            BookDamage damage = new BookDamage(seed);
            boolean csv = (seed - 1) % 10 < 6;
            Whole whole = csv && (seed - 1) % 40 == 0 ? week : small;
            Path book = own.resolve(csv ? whole == week ? "week" : "book" : "book.xlsx");
            Optional<String> fault = csv ? csv(damage, whole, book, own) : workbook(damage, whole, book, own);
            return fault.map(words -> "seed " + seed + ": " + words);
        }));
    }

    private Optional<String> workbook(BookDamage damage, Whole whole, Path book, Path own) throws IOException {
        Files.write(book, damage.workbook(whole.parts()));
        Optional<String> fault = promises.broken(book, depth(damage.next(1_000)), own);
        if (fault.isPresent()) {
            keep(book, damage.seed());
        }
        return fault;
    }

    /** Damages one file of the book, and mends it behind. */
    private Optional<String> csv(BookDamage damage, Whole whole, Path book, Path own) throws IOException {
        if (!Files.exists(book)) {
            BookToDamage.write(whole.tables(), book);
        }
        Map<String, List<List<String>>> tables = BookToDamage.copy(whole.tables());
        List<String> files = List.copyOf(tables.keySet());
        String file = files.get(damage.next(files.size()));
        Optional<BookDamage.HitCell> hit = Optional.empty();
        int kind = damage.next(4);
        if (kind < 2) {
            hit = Optional.of(damage.cell(tables, OF_ONE_RUN));
            file = hit.get().file();
        } else if (kind == 2) {
            damage.rows(tables.get(file));
        }
        byte[] text = BookToDamage.csv(tables.get(file)).getBytes(StandardCharsets.UTF_8);
        Files.write(book.resolve(file), kind == 3 ? damage.bytes(text) : text);
        Depth depth = depth(damage.next(1_000));
        Optional<String> fault = hit.isPresent()
                ? promises.broken(book, depth, own, hit.get(), whole.read())
                : promises.broken(book, depth, own);
        if (fault.isPresent()) {
            keep(book, damage.seed());
        }
        Files.writeString(book.resolve(file), BookToDamage.csv(whole.tables().get(file)));
        return fault;
    }

    private static Depth depth(int turn) {
        return turn < WRITTEN
                ? Depth.WRITTEN
                : turn < CHECKED ? Depth.CHECKED : turn < REVIEWED ? Depth.REVIEWED : Depth.READ;
    }

    /** Does so many pieces of work on all processors, and stops where too many are broken or one does not end. */
    private List<String> broken(int count, Work work) throws Exception {
        Queue<String> broken = new ConcurrentLinkedQueue<>();
        AtomicInteger next = new AtomicInteger();
        AtomicIntegerArray current = new AtomicIntegerArray(THREADS);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                int thread = i;
                Path own = Files.createDirectories(folder.resolve("thread" + thread));
                all.add(threads.submit(() -> {
                    for (int number = next.getAndIncrement();
                            number < count && broken.size() < MOST_BROKEN;
                            number = next.getAndIncrement()) {
                        current.set(thread, number);
                        measured(work, number, own).ifPresent(broken::add);
                    }
                    return null;
                }));
            }
            for (Future<?> each : all) {
                each.get(MOST_MINUTES, TimeUnit.MINUTES);
            }
        } catch (TimeoutException hang) {
            broken.add("no end; at work are the numbers " + current);
        } finally {
            threads.shutdownNow();
        }
        return List.copyOf(broken);
    }

    private static Optional<String> measured(Work work, int number, Path own) throws IOException {
        long start = MEASURE.getCurrentThreadCpuTime();
        long allocated = MEASURE.getCurrentThreadAllocatedBytes();
        Optional<String> fault = work.broken(number, own);
        long bytes = MEASURE.getCurrentThreadAllocatedBytes() - allocated;
        long nanoseconds = MEASURE.getCurrentThreadCpuTime() - start;
        if (fault.isEmpty() && nanoseconds > MOST_NANOSECONDS) {
            return Optional.of("number " + number + " took " + nanoseconds / 1_000_000 + " ms");
        }
        if (fault.isEmpty() && bytes > MOST_BYTES) {
            return Optional.of("number " + number + " took " + bytes / 1_000_000 + " MB");
        }
        return fault;
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

    private record Cell(String file, int row, int column) {}

    /** By run, since what stands in one run touches no other; those of no run by themselves. */
    private static Map<String, List<Cell>> cellsByRun(Map<String, List<List<String>>> tables) {
        Map<String, List<Cell>> cells = new TreeMap<>();
        tables.forEach((file, rows) -> {
            for (int row = 1; row < rows.size(); row++) {
                String run = OF_ONE_RUN.contains(file) ? rows.get(row).get(0) : "";
                for (int column = 1; column < rows.get(row).size(); column++) {
                    cells.computeIfAbsent(run, r -> new ArrayList<>()).add(new Cell(file, row, column));
                }
            }
        });
        return cells;
    }

    /** The values at which a quotient or a logarithm ends, in each cell once: in one cell of each run at a time. */
    @Test
    void noCellStopsTheReviewWhateverNumberStandsInIt() throws Exception {
        Map<String, List<List<String>>> sound = BookToDamage.tables();
        Collection<List<Cell>> byRun = cellsByRun(sound).values();
        int most = byRun.stream().mapToInt(List::size).max().orElseThrow();
        assertEquals(List.of(), broken(most, (number, own) -> {
            String value = NUMBERS.get(number % NUMBERS.size());
            List<Cell> cells = byRun.stream()
                    .filter(ofRun -> number < ofRun.size())
                    .map(ofRun -> ofRun.get(number))
                    .toList();
            Map<String, List<List<String>>> tables = BookToDamage.copy(sound);
            cells.forEach(cell -> tables.get(cell.file()).get(cell.row()).set(cell.column(), value));
            Optional<String> fault =
                    promises.broken(BookToDamage.write(tables, own.resolve("numbers")), Depth.REVIEWED, own);
            return fault.map(words -> cells + " = " + value + ": " + words);
        }));
    }

    @Test
    void theSameSeedDoesTheSameDamage() {
        Map<String, List<List<String>>> first = BookToDamage.tables();
        Map<String, List<List<String>>> second = BookToDamage.tables();
        for (int seed = 0; seed < 50; seed++) {
            new BookDamage(seed).cell(first, OF_ONE_RUN);
            new BookDamage(seed).cell(second, OF_ONE_RUN);
        }
        assertEquals(first, second);
        assertNotEquals(BookToDamage.tables(), first);
    }
}
