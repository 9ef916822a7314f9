package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class ReviewCommandTest {
    private static final Path DEMO = Path.of("input-templates", "demo-week");
    private static final Set<String> FILES = Set.of(
            "demo-week-review.xlsx",
            "demo-week-review.pdf",
            "demo-week-safety.pdf",
            "demo-week-labels.pdf",
            "demo-week-review.json",
            "demo-week-yields.csv",
            "demo-week-layers.csv",
            "demo-week-solvents.csv",
            "demo-week-waste.csv",
            "demo-week-containers.csv",
            "demo-week-transfers.csv");

    @TempDir
    private Path folder;

    private Path demoCopy() throws IOException {
        Path copy = Files.createDirectory(folder.resolve("demo-week"));
        for (Map.Entry<String, String> file : Folder.content(DEMO).entrySet()) {
            Files.copy(DEMO.resolve(file.getKey()), copy.resolve(file.getKey()));
        }
        return copy;
    }

    @Test
    void filesStandBesideTheFolderAndTheInputIsUntouched() throws IOException {
        Path book = demoCopy();
        Map<String, String> before = Folder.content(book);
        Call call = Call.of("review", book);
        assertEquals(0, call.code(), call::err);
        assertEquals("", call.err());
        assertEquals(before, Folder.content(book));
        for (String file : FILES) {
            assertTrue(Files.size(folder.resolve(file)) > 0, file);
            assertTrue(call.out().contains(file), call::out);
        }
        assertEquals(FILES.size() + before.size(), Folder.reports(folder).size());
    }

    @Test
    void allShowsYieldsClosuresAndWhatToSettle() {
        Call call = Call.of("review", DEMO, "--out", folder, "--all", "--reports", "json");
        String run42 = line(call.out(), "R26-042");
        assertTrue(run42.contains("66.9 ± ") && run42.contains(" open"), run42);
        assertTrue(line(call.out(), "R26-047").contains("not computed"), call::out);
        assertTrue(line(call.out(), "stop   R26-047").contains("tare"), call::out);
    }

    @Test
    void terminalShowsOneScreenOfLinesThatFitIt() {
        Call call = Call.of("review", DEMO, "--out", folder, "--reports", "json");
        List<String> lines = call.out().lines().toList();
        assertTrue(lines.size() <= 60, call::out);
        assertTrue(
                lines.stream().takeWhile(line -> !line.startsWith("Written")).allMatch(line -> line.length() <= 100),
                call::out);
        for (String part : List.of("To do", "Layers", "Product", "Solvent", "Written", "--all")) {
            assertTrue(lines.stream().anyMatch(line -> line.contains(part)), part);
        }
    }

    @Test
    void aThousandRunsPrintLessThanTwoHundredLines() throws IOException {
        StringBuilder rows = new StringBuilder("Run,SM,MW,mg,Product,MW,mg isolated,Yield (%)\n");
        for (int i = 0; i < 1000; i++) {
            rows.append("B-")
                    .append(i)
                    .append(",acid,100,500,ester,120,")
                    .append(300 + i % 7 * 50)
                    .append(",70\n");
        }
        Path list = Files.writeString(folder.resolve("many.csv"), rows);
        Path headings = folder.resolve("headings.json");
        assertEquals(0, Call.of("headings", list, "--out", headings).code());
        Call call = Call.of("review", list, "--headings", headings, "--out", folder, "--reports", "json");
        assertEquals(0, call.code(), call::err);
        assertTrue(call.out().contains("1000 runs"), call::out);
        assertTrue(call.out().lines().count() < 200, call::out);
    }

    @Test
    void onlyTheReportsAskedForAreWritten() throws IOException {
        Call call = Call.of("review", DEMO, "--out", folder, "--reports", "json,csv");
        assertEquals(0, call.code(), call::err);
        assertEquals(
                FILES.stream()
                        .filter(f -> f.endsWith(".json") || f.endsWith(".csv"))
                        .collect(Collectors.toSet()),
                Folder.reports(folder));
    }

    @Test
    void anUnknownReportIsWrongUse() throws IOException {
        Call call = Call.of("review", DEMO, "--out", folder, "--reports", "spreadsheet");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("--reports"), call::err);
        assertEquals(Set.of(), Folder.content(folder).keySet());
    }

    private static String line(String text, String start) {
        return text.lines().filter(l -> l.startsWith(start)).findFirst().orElse("no line starts with " + start);
    }

    @Test
    void strictEndsWithOneWhereStopsOrHoldsWereFoundAndStillWrites() throws IOException {
        Call call = Call.of("review", DEMO, "--out", folder, "--strict", "--reports", "json");
        assertEquals(1, call.code(), call::err);
        assertEquals(Set.of("demo-week-review.json"), Folder.reports(folder));
    }

    @Test
    void sameInputAndOptionsGiveSameBytesAndQuietPrintsNothing() throws IOException {
        assertEquals(new Call(0, "", ""), Call.of("review", DEMO, "--out", folder, "--quiet"));
        Map<String, String> first = Folder.content(folder);
        Call.of("review", DEMO, "--out", folder, "--quiet");
        assertEquals(FILES, Folder.reports(folder));
        for (String file : FILES) {
            assertEquals(
                    first.get(file).hashCode(), Folder.content(folder).get(file).hashCode(), file);
        }
    }

    @Test
    void paperAndDecimalMarkChangeThePdfAndTheTerminalButNotTheJson() throws IOException {
        call("a", "pdf,json");
        Call call = call("b", "pdf,json", "--paper", "letter", "--locale", "comma", "--all");
        assertTrue(call.out().contains("66,9 ± "), call::out);
        Map<String, String> a = Folder.content(folder.resolve("a"));
        Map<String, String> b = Folder.content(folder.resolve("b"));
        assertNotEquals(a.get("demo-week-review.pdf"), b.get("demo-week-review.pdf"));
        assertEquals(a.get("demo-week-review.json"), b.get("demo-week-review.json"));
    }

    /** A review of the demo week into a folder of its own, which ends well. */
    private Call call(String out, String reports, String... options) {
        List<Object> all = new ArrayList<>(List.of("review", DEMO, "--out", folder.resolve(out), "--reports", reports));
        all.addAll(List.of(options));
        Call call = Call.of(all.toArray());
        assertEquals(0, call.code(), call::err);
        return call;
    }

    @Test
    void figuresInSentencesHaveTheReadersMarkInWorkbookAndTerminalAndAPointInCsv() throws IOException {
        Call point = call("a", "workbook,json,csv", "--all");
        Call comma = call("b", "workbook,json,csv", "--locale", "comma", "--all");
        assertTrue(point.out().contains("net 3.824 g"), point::out);
        assertTrue(comma.out().contains("net 3,824 g"), comma::out);
        assertTrue(comma.out().contains("gross 87,9250 g"), comma::out);
        assertTrue(
                Folder.textOfWorkbook(folder.resolve("a/demo-week-review.xlsx")).contains("net 3.824 g"));
        String workbook = Folder.textOfWorkbook(folder.resolve("b/demo-week-review.xlsx"));
        assertTrue(workbook.contains("net 3,824 g"));
        assertFalse(workbook.contains("net 3.824 g"));
        Map<String, String> a = Folder.content(folder.resolve("a"));
        Map<String, String> b = Folder.content(folder.resolve("b"));
        for (String file : a.keySet()) {
            if (file.endsWith(".csv") || file.endsWith("-review.json")) {
                assertEquals(a.get(file), b.get(file), file);
            }
        }
    }

    @Test
    void dayGivenOnTheCommandLineWinsAndIsNamedInTheLimits() throws IOException {
        Call.of("review", DEMO, "--out", folder, "--as-of", "2026-03-13", "--reports", "json");
        String json = Folder.content(folder).get("demo-week-review.json");
        int at = json.indexOf("\"As of\"");
        assertTrue(json.substring(at, at + 200).contains("2026-03-13"), () -> json.substring(at, at + 200));
        assertTrue(json.substring(at, at + 300).contains("given for this review"), () -> json.substring(at, at + 300));
    }

    @Test
    void oneUnreadableBookDoesNotKeepTheOthersFromBeingReviewed() throws IOException {
        Call call = Call.of("review", folder.resolve("none.xlsx"), DEMO, "--out", folder, "--reports", "json");
        assertEquals(2, call.code());
        assertEquals(1, call.err().lines().count(), call::err);
        assertEquals(Set.of("demo-week-review.json"), Folder.reports(folder));
    }

    @Test
    void twoBooksOfOneNameDoNotReplaceEachOther() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        assertEquals(0, Call.of("template", other.resolve("demo-week.xlsx")).code());
        Path out = folder.resolve("out");
        Call call = Call.of("review", DEMO, other.resolve("demo-week.xlsx"), "--out", out, "--reports", "json");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("--out"), call::err);
        assertTrue(Folder.content(out).get("demo-week-review.json").contains("R26-041"));
    }

    @Test
    void anOutputFolderThatIsAFileIsRefusedInOneSentence() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "kept");
        Call call = Call.of("review", DEMO, "--out", file);
        assertEquals(2, call.code());
        assertEquals(1, call.err().lines().count(), call::err);
        assertFalse(call.err().contains("Exception"), call::err);
        assertEquals(Map.of("file", "kept"), Folder.content(folder));
    }

    @Test
    void whenOneFileCannotBePlacedTheFolderStaysAsItWas() throws IOException {
        Files.writeString(folder.resolve("demo-week-review.xlsx"), "of last week");
        Files.createDirectories(folder.resolve("demo-week-solvents.csv").resolve("in the way"));
        Call call = Call.of("review", DEMO, "--out", folder, "--reports", "workbook,json,csv");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("demo-week-solvents.csv"), call::err);
        assertEquals(Map.of("demo-week-review.xlsx", "of last week"), Folder.content(folder));
    }

    @Test
    void twoReviewsAtOnceDoNotMix() throws Exception {
        call("a", "json,csv", "--as-of", "2026-03-09");
        call("b", "json,csv", "--as-of", "2026-03-13");
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            Callable<Call> first = () -> call("shared", "json,csv", "--as-of", "2026-03-09", "--quiet");
            Callable<Call> second = () -> call("shared", "json,csv", "--as-of", "2026-03-13", "--quiet");
            for (Future<Call> call : threads.invokeAll(List.of(first, second))) {
                assertEquals(new Call(0, "", ""), call.get());
            }
        } finally {
            threads.shutdownNow();
        }
        Map<String, String> placed = Folder.content(folder.resolve("shared"));
        Map<String, String> alone = Folder.content(folder.resolve("a"));
        if (!alone.equals(placed)) {
            alone = Folder.content(folder.resolve("b"));
        }
        assertEquals(alone.keySet(), placed.keySet());
        for (Map.Entry<String, String> file : alone.entrySet()) {
            assertEquals(file.getValue(), placed.get(file.getKey()), file.getKey() + " is of another review");
        }
    }

    @Test
    void aWorkbookWithMacrosKeepsItsEnding() throws IOException {
        Path book = folder.resolve("week.xlsx");
        Call.of("template", book, "--example");
        Path macros = Files.move(book, folder.resolve("week.xlsm"));
        Path out = folder.resolve("out");
        Call call = Call.of("review", macros, "--out", out, "--reports", "workbook");
        assertEquals(0, call.code(), call::err);
        assertTrue(Files.exists(out.resolve("week-review.xlsm")));
    }

    @Test
    void workbookAndFolderGiveTheSameTerminalTable() {
        Path book = folder.resolve("demo-week.xlsx");
        Call.of("template", book, "--example");
        String fromFolder = call("a", "json", "--all").out();
        String fromWorkbook = Call.of("review", book, "--out", folder.resolve("b"), "--reports", "json", "--all")
                .out();
        assertEquals(table(fromFolder), table(fromWorkbook));
    }

    private static List<String> table(String text) {
        return text.lines().takeWhile(line -> !line.startsWith("stop")).toList();
    }
}
