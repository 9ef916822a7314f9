package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class OtherCommandsTest {
    private static final Path DEMO = Path.of("input-templates", "demo-week");

    @TempDir
    private Path folder;

    @Test
    void checkShowsTheMostUrgentRunsFirstAndWritesNothing() throws IOException {
        Map<String, String> before = Folder.content(DEMO.getParent());
        Call call = Call.of("check", DEMO);
        assertEquals(1, call.code(), call::err);
        assertTrue(call.out().indexOf("\nR26-047") < call.out().indexOf("\nR26-042"), call::out);
        assertTrue(call.out().contains("[tare-missing]"), call::out);
        assertEquals(before, Folder.content(DEMO.getParent()));
    }

    @Test
    void checkSaysForEachLayerWhatIsMissingAndThatAPersonDecides() {
        Call call = Call.of("check", DEMO);
        assertTrue(call.out().contains("missing: R2 "), call::out);
        assertTrue(
                call.out()
                        .replaceAll("\\s+", " ")
                        .contains("is decided by the responsible person under the local waste rules"),
                call::out);
    }

    @Test
    void benchWritesASheetForThePlannedRunsAndLeavesTheBookAlone() throws IOException {
        Map<String, String> before = Folder.content(DEMO.getParent());
        Call call = Call.of("bench", DEMO, "--out", folder);
        assertEquals(0, call.code(), call::err);
        assertTrue(Files.size(folder.resolve("demo-week-bench.pdf")) > 1000);
        assertTrue(call.out().contains("demo-week-bench.pdf (2 runs)"), call::out);
        assertEquals(before, Folder.content(DEMO.getParent()));
    }

    @Test
    void benchWithoutPlannedRunsWritesNothingAndSaysSo() throws IOException {
        Path book = folder.resolve("empty");
        assertEquals(0, Call.of("template", book).code());
        Call call = Call.of("bench", book);
        assertEquals(0, call.code(), call::err);
        assertTrue(call.out().contains("no planned run"), call::out);
        assertFalse(Files.exists(folder.resolve("empty-bench.pdf")));
    }

    @Test
    void explainShowsTheEquationsOfARunAndTheReadingsBehindThem() {
        Call call = Call.of("explain", DEMO, "r26-042", "closures");
        assertEquals(0, call.code(), call::err);
        assertTrue(call.out().contains("Closure on methyl benzoate"), call::out);
        assertTrue(call.out().contains("= (97.5 ± 2.0) %, k = 2"), call::out);
        assertTrue(call.out().contains("isolated.csv line 5, Assay"), call::out);
        assertFalse(call.out().contains("Theory of"), call::out);
    }

    @Test
    void explainSaysWhatWasNotComputedAndWhatWouldUnlockIt() {
        Call call = Call.of("explain", DEMO, "R26-047", "yield");
        assertEquals(0, call.code(), call::err);
        assertTrue(call.out().contains("This run has no such figure."), call::out);
        assertTrue(call.out().contains("tare not recorded"), call::out);
    }

    @Test
    void explainRefusesUnknownRunsAndFiguresWithTheNamesThatExist() {
        Call run = Call.of("explain", DEMO, "R26-999");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("R26-041, R26-042"), run::err);
        Call figure = Call.of("explain", DEMO, "R26-042", "unicorn");
        assertEquals(2, figure.code());
        assertTrue(figure.err().contains("amounts, theory, lots"), figure::err);
        assertEquals("", figure.out());
    }

    @Test
    void explainRefusesABookThatIsNotThere() {
        assertEquals(2, Call.of("explain", folder.resolve("none.xlsx"), "R1").code());
    }

    @Test
    void aBookWithoutStopsOrHoldsChecksWithZero() {
        Path book = folder.resolve("empty.xlsx");
        Call.of("template", book);
        Call call = Call.of("check", book);
        assertEquals(0, call.code(), () -> call.out() + call.err());
    }

    @Test
    void templateWritesAWorkbookOrAFolderAndNeverReplacesOne() throws IOException {
        for (String name : new String[] {"book.xlsx", "book"}) {
            Path target = folder.resolve(name);
            assertEquals(0, Call.of("template", target).code());
            Map<String, String> written = Folder.content(folder);
            Call again = Call.of("template", target, "--example");
            assertEquals(2, again.code());
            assertTrue(again.err().contains(name), again::err);
            assertEquals(written, Folder.content(folder));
        }
    }

    @Test
    void exampleFolderIsTheDemoWeek() throws IOException {
        Path target = folder.resolve("example");
        assertEquals(0, Call.of("template", target, "--example").code());
        assertEquals(Folder.content(DEMO), Folder.content(target));
    }

    @Test
    void templateOfAnUnknownKindIsRefused() {
        Call call = Call.of("template", folder.resolve("book.ods"));
        assertEquals(2, call.code());
        assertTrue(call.err().contains(".xlsx"), call::err);
    }

    @Test
    void referenceListsTablesAndShowsOneWithItsSources() {
        assertTrue(Call.of("reference").out().contains("solvents"));
        Call solvents = Call.of("reference", "solvents");
        assertEquals(0, solvents.code());
        assertTrue(solvents.out().contains("Ethyl acetate"), solvents::out);
        assertTrue(solvents.out().contains("crc-organic: "), solvents::out);
    }

    @Test
    void referenceShowsTheRowsOfTheLaboratoryInstead() throws IOException {
        Path own = folder.resolve("bench-rules.csv");
        String rows = Files.readString(Path.of("reference", "bench-rules.csv"));
        String first =
                rows.lines().filter(l -> !l.startsWith("#")).skip(1).findFirst().orElseThrow();
        Files.writeString(own, rows.replace(first, first.replace("common practice", "local")));
        Call call = Call.of("reference", "bench-rules", "--reference", folder);
        assertEquals(0, call.code(), call::err);
        assertTrue(call.out().contains("local"), call::out);
    }

    @Test
    void unknownReferenceTableIsRefusedWithTheNamesThatExist() {
        Call call = Call.of("reference", "unicorns");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("solvents"), call::err);
    }

    @Test
    void aTurnLeftBehindByAProgramThatDiedIsTaken() throws IOException {
        Path left = Files.createFile(folder.resolve(".workup-tally-placing"));
        PlacingTurn turn = PlacingTurn.take(folder);
        assertTrue(Files.exists(left));
        turn.end();
        assertTrue(Files.notExists(left));
    }
}
