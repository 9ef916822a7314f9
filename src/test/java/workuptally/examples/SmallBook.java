package workuptally.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;

/**
 * An invented book of one run, X1, written as rows of headings and cells and read the way a user's book is.
 *
 * <p>Its substances S (100 g/mol) and P (200 g/mol) have round molar masses typed in, so that every expected figure can be worked out in
 * the head.
 */
public final class SmallBook {
    private static final Reference REFERENCE = Reference.load();

    /** Tables that no book can do without, with the headings that none of them can do without. */
    private static final Map<String, List<String>> NEEDED = Map.of(
            "runs", List.of("Run"),
            "products", List.of("Run", "Product"),
            "charges", List.of("Run", "Material"),
            "isolated", List.of("Run", "Lot", "Product"));

    private static final Set<String> OF_THE_BOOK = Set.of("limits", "containers", "vessels", "corrections", "history");

    private final Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();

    private SmallBook() {
        NEEDED.keySet().forEach(t -> tables.put(t, new ArrayList<>()));
    }

    /** A run without products or charges. */
    public static SmallBook empty() {
        return new SmallBook()
                .row(
                        "runs",
                        "Date",
                        "2026-03-02",
                        "Chemist",
                        "C1",
                        "Reaction",
                        "S to P",
                        "Kind",
                        "reaction",
                        "Status",
                        "isolated");
    }

    /** One wanted product P and 10.00 g S, 100 mmol, so that theory is 20.0 g. */
    public static SmallBook reaction() {
        return empty().row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row(
                        "charges",
                        "Material",
                        "S",
                        "Role",
                        "substrate",
                        "Molar mass",
                        "100",
                        "Coefficient",
                        "1",
                        "Actual amount",
                        "10.00",
                        "Actual unit",
                        "g");
    }

    /** The same with a row more; headings and cells by turns. The run's id is filled in. */
    public SmallBook row(String table, String... headingsAndCells) {
        Map<String, String> row = new LinkedHashMap<>();
        if (!OF_THE_BOOK.contains(table)) {
            row.put("Run", "X1");
        }
        for (int i = 0; i < headingsAndCells.length; i += 2) {
            row.put(headingsAndCells[i], headingsAndCells[i + 1]);
        }
        tables.computeIfAbsent(table, t -> new ArrayList<>()).add(row);
        return this;
    }

    /** The same with a cell of the last row of a table changed or added. */
    public SmallBook but(String table, String heading, String cell) {
        List<Map<String, String>> rows = tables.get(table);
        rows.get(rows.size() - 1).put(heading, cell);
        return this;
    }

    /** The same with a cell of the first row of a table changed or added. */
    public SmallBook first(String table, String heading, String cell) {
        tables.get(table).get(0).put(heading, cell);
        return this;
    }

    /** The same with a row of the History table; headings and cells by turns. */
    public SmallBook history(String... headingsAndCells) {
        return row("history", headingsAndCells);
    }

    /** The same with a number or text of the Limits table set. */
    public SmallBook limit(String name, String value) {
        return row("limits", "Name", name, "Value", value);
    }

    /** The book as read. */
    public Book book() {
        try {
            Path folder = Files.createTempDirectory("small-book");
            try {
                for (Map.Entry<String, List<Map<String, String>>> table : tables.entrySet()) {
                    Files.writeString(
                            folder.resolve(table.getKey() + ".csv"),
                            csv(NEEDED.getOrDefault(table.getKey(), List.of()), table.getValue()));
                }
                return new BookReader().read(folder);
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnreadableBookException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The run as read. */
    public Run run() {
        return book().runs().get(0);
    }

    /** The results of the run. */
    public RunTally tally() {
        Book book = book();
        return new RunTallying(book.limits(), substances()).tally(book.runs().get(0));
    }

    /** The review of the book. */
    public Review review() {
        return new ReviewBuilder(REFERENCE, "test").review(book());
    }

    /** The review of the run. */
    public RunReview reviewOfRun() {
        return review().runs().get(0);
    }

    /** Substances of the reference data. */
    public static Substances substances() {
        return new Substances(REFERENCE);
    }

    private static String csv(List<String> least, List<Map<String, String>> rows) {
        Set<String> headings = new LinkedHashSet<>(least);
        rows.forEach(r -> headings.addAll(r.keySet()));
        StringBuilder text = new StringBuilder(String.join(",", headings)).append('\n');
        for (Map<String, String> row : rows) {
            text.append(headings.stream()
                            .map(h -> quoted(row.getOrDefault(h, "")))
                            .collect(Collectors.joining(",")))
                    .append('\n');
        }
        return text.toString();
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    private static String quoted(String cell) {
        return cell.contains(",") && !cell.startsWith("\"") ? '"' + cell + '"' : cell;
    }
}
