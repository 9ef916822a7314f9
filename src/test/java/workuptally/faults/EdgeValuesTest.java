package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.cli.WorkupTally;
import workuptally.model.Limit;

/** Every limit, option and date at zero, negative, huge, blank and text: a finding or wrong use, never a fault of the program. */
@Tag("slow")
class EdgeValuesTest {
    private static final List<String> NUMBERS = List.of("0", "-273.15", "1e15", "1e-300", "", "text");
    private static final List<String> DATES = List.of(
            "0",
            "-1",
            "1e15",
            "",
            "text",
            "0001-01-01",
            "9999-12-31",
            "2026-02-30",
            "-999999999-01-01",
            "+999999999-12-31");
    private static final String LONG = "n".repeat(60_000);

    @TempDir
    private Path folder;

    private Path out;
    private final List<String> faults = new ArrayList<>();

    @BeforeEach
    void folderForReports() {
        out = folder.resolve("out");
    }

    private int call(String... args) {
        StringWriter said = new StringWriter();
        PrintWriter both = new PrintWriter(said);
        int code = WorkupTally.run(args, both, both);
        if (code > 2) {
            String shown = String.join(" ", args);
            String text = said.toString();
            faults.add(shown.substring(0, Math.min(shown.length(), 200)) + " gave " + code + ": "
                    + text.substring(Math.max(0, text.length() - 300)).strip());
        }
        return code;
    }

    private Path book(Map<String, List<List<String>>> tables, String name) throws IOException {
        return BookToDamage.write(tables, folder.resolve(name));
    }

    private Path bookWith(Map<Limit, String> limits, Map<String, List<List<String>>> tables) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Name", "Value"));
        limits.forEach((limit, value) -> rows.add(List.of(limit.title(), value)));
        tables.put("limits.csv", rows);
        return book(tables, "book");
    }

    private void none() {
        assertTrue(faults.isEmpty(), () -> faults.size() + " faults:\n" + String.join("\n", faults));
    }

    @Test
    void noLimitMakesAFault() throws IOException {
        for (Limit limit : Limit.values()) {
            for (String value : limit == Limit.AS_OF ? DATES : NUMBERS) {
                Map<String, List<List<String>>> tables = BookToDamage.oneRun(limit.ordinal() + value.length());
                call("check", bookWith(Map.of(limit, value), tables).toString());
            }
        }
        none();
    }

    @Test
    void noValueOfAllLimitsTogetherMakesAFaultInADocument() throws IOException {
        for (String value : NUMBERS) {
            Map<Limit, String> limits = new LinkedHashMap<>();
            for (Limit limit : Limit.values()) {
                limits.put(limit, value);
            }
            call("review", bookWith(limits, BookToDamage.oneRun(value.length())).toString(), "--out", out.toString());
        }
        none();
    }

    @Test
    void noDateOfATableMakesAFault() throws IOException {
        Map<String, List<List<String>>> small = BookToDamage.oneRun(0);
        for (Map.Entry<String, List<List<String>>> table : small.entrySet()) {
            List<String> headings = table.getValue().get(0);
            for (int column = 0; column < headings.size(); column++) {
                if (table.getValue().size() > 1
                        && headings.get(column)
                                .matches(
                                        "(?i).*\\b(date|made on|review by|opened|closed|day|on|calibrated|collected).*")) {
                    for (String value : DATES) {
                        Map<String, List<List<String>>> tables = BookToDamage.copy(small);
                        tables.get(table.getKey()).get(1).set(column, value);
                        call("check", book(tables, "book").toString());
                    }
                }
            }
        }
        none();
    }

    @Test
    void noOptionMakesAFault() throws IOException {
        String book = book(BookToDamage.oneRun(0), "book").toString();
        List<String> values = new ArrayList<>(NUMBERS);
        values.addAll(List.of("-999999999-01-01", "+999999999-12-31", "2026-02-30"));
        values.addAll(List.of("/", ".", LONG, "\u0000", "\u001b[2J", "a\nb", "//", ","));
        List<List<String>> commands = List.of(
                List.of("review", book, "--reports", "json", "--out", out.toString()),
                List.of("check", book),
                List.of("explain", book, "R26-042"),
                List.of("bench", book, "--out", out.toString()),
                List.of("period", folder.toString(), "--from=2026-03-01", "--to=2026-03-31", "--out", out.toString()),
                List.of("headings", book, "--out", folder.resolve("own.json").toString()),
                List.of("reference"));
        List<String> options = List.of(
                "--reference",
                "--headings",
                "--as-of",
                "--out",
                "--paper",
                "--locale",
                "--reports",
                "--from",
                "--to",
                "--experience");
        for (List<String> command : commands) {
            for (String option : options) {
                for (String value : values) {
                    if (option.equals("--experience") && List.of("/", "//", ".").contains(value)) {
                        continue; // read with all folders in it; EarlierReviewsTest has the root of a small disk
                    }
                    if (option.equals("--out") && !value.contains("\u0000") && !value.equals(LONG)) {
                        continue;
                    }
                    List<String> args = new ArrayList<>(command);
                    args.removeIf(given -> given.startsWith(option));
                    args.add(option + "=" + value);
                    call(args.toArray(String[]::new));
                }
            }
        }
        none();
    }

    @Test
    void noArgumentMakesAFault() throws IOException {
        String book = book(BookToDamage.tables(), "book").toString();
        List<String> values = List.of("", "/", LONG, "\u0000", "-1", "\u001b[2J", "a\nb", "@", "--");
        for (String value : values) {
            for (String command : List.of("review", "check", "bench", "reference", "explain", "period")) {
                call(command, value);
            }
            call("explain", book, value);
            call("explain", book, "R26-042", value);
        }
        none();
    }

    @Test
    void periodOverAllOfTimeMakesNoFault() throws IOException {
        book(BookToDamage.oneRun(0), "book");
        for (String from : DATES) {
            for (String to : DATES) {
                call("period", folder.toString(), "--from=" + from, "--to=" + to, "--out", out.toString());
            }
        }
        none();
    }

    @Test
    void aBadBookEndsNoOther() throws IOException {
        String book = book(BookToDamage.tables(), "book").toString();
        assertEquals(2, call("review", folder.resolve("missing").toString(), "/", LONG, book, "--out", out.toString()));
        assertTrue(Files.exists(out.resolve("book-review.json")));
        none();
    }
}
