package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.model.Book;

/** Every way of filling a cell that {@code bench-entries.csv} holds is read right, or refused with a finding of the severity given. */
@Tag("slow")
class BenchEntriesTest {
    /** Names and formulas are understood behind the reading, by the reference tables. */
    private static final Set<String> JUDGED_LATER = Set.of("Material", "Formula");

    @TempDir
    private Path folder;

    @Test
    void bookWithoutAnEntryHasNoFinding() throws Exception {
        BenchEntry blank = new BenchEntry(0, "Runs", "Notes", "text", "", "", "", "blank", "", "none", "", Map.of());
        Book book = new BookReader().read(new BenchBook(List.of(blank)).workbook(folder.resolve("book.xlsx")));
        assertEquals(List.of(), book.findings());
    }

    @Test
    void everyEntryOfAWorkbookIsReadRightOrRefused() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (List<BenchEntry> entries : books(BenchEntry.all(), e -> e.writes().isEmpty())) {
            BenchBook bench = new BenchBook(entries);
            wrong.addAll(wrong(bench, entries, new BookReader().read(bench.workbook(folder.resolve("book.xlsx")))));
        }
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void everyTypedEntryOfACsvIsReadRightOrRefused() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (List<BenchEntry> entries : books(BenchEntry.all(), e -> e.stored().equals("text"))) {
            BenchBook bench = new BenchBook(entries);
            Files.createDirectories(folder.resolve("csv"));
            wrong.addAll(wrong(bench, entries, new BookReader().read(bench.csv(folder.resolve("csv")))));
        }
        assertEquals("", String.join("\n", wrong));
    }

    private static List<String> wrong(BenchBook bench, List<BenchEntry> entries, Book book) {
        BenchReading.Index index = BenchReading.Index.of(book);
        return entries.stream()
                .flatMap(entry -> new BenchReading(entry, index, bench.row(entry))
                        .wrong().map(w -> entry.said() + ": " + w).stream())
                .toList();
    }

    /** Entries that do not touch each other share a book, each in a run of its own; those that name a run or a limit, or need another decimal mark, have one alone. */
    private static List<List<BenchEntry>> books(List<BenchEntry> all, Predicate<BenchEntry> wanted) {
        List<BenchEntry> together = new ArrayList<>();
        List<List<BenchEntry>> books = new ArrayList<>();
        for (BenchEntry entry : all) {
            boolean alone = !entry.writes().isEmpty()
                    || entry.typed().matches("\\d+,\\d{3}")
                    || entry.heading().equals("Run")
                    || entry.sheet().equals("Limits");
            boolean later = JUDGED_LATER.contains(entry.heading())
                    || entry.heading().equals("From") && entry.kind().equals("refuse");
            if (wanted.test(entry) && !later) {
                if (alone) {
                    books.add(List.of(entry));
                } else {
                    together.add(entry);
                }
            }
        }
        books.add(together);
        return books;
    }
}
