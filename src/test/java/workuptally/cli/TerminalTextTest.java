package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What reaches the terminal, and what is said where the world fails. */
class TerminalTextTest {
    private static final String ACTED_ON = "\u001b[2J\u009b1m\u0007\u202e";

    @TempDir
    private Path folder;

    private Path book() throws IOException {
        Path book = Files.createDirectories(folder.resolve("week"));
        Files.writeString(
                book.resolve("runs.csv"),
                "Run,Date,Reaction\n\"R1" + ACTED_ON + "\",2026-03-02,\"x" + ACTED_ON + "y\"\n");
        Files.writeString(
                book.resolve("charges.csv"),
                "Run,Material,Own " + ACTED_ON + "\nR9" + ACTED_ON + ",\"a" + ACTED_ON + "\",1\n");
        return book;
    }

    private static void isPlain(Call call) {
        String all = call.out() + call.err();
        assertFalse(all.isBlank());
        assertEquals(
                "",
                all.replaceAll("[^\\p{IsCc}\\u2028-\\u202e]", "").replaceAll("[\\n\\r\\t]", ""),
                () -> "a terminal would act on: " + all);
    }

    @Test
    void noCommandPrintsWhatATerminalWouldActOn() throws IOException {
        Path book = book();
        isPlain(Call.of("check", book));
        isPlain(Call.of("explain", book, "R1" + ACTED_ON));
        isPlain(Call.of("explain", book, "R2" + ACTED_ON));
        isPlain(Call.of("review", book, "--all", "--out", folder.resolve("out" + ACTED_ON), "--reports", "json"));
        isPlain(Call.of("headings", book, "--out", folder.resolve("h" + ACTED_ON)));
        isPlain(Call.of("reference", "solvents" + ACTED_ON));
        isPlain(Call.of("template", folder.resolve("t" + ACTED_ON)));
        isPlain(Call.of(ACTED_ON));
        isPlain(Call.of("review", "--paper=" + ACTED_ON, book));
    }

    @Test
    void lettersOfEveryScriptAndLineFeedsStay() {
        assertEquals("Ωλ 水\n\tд̈ 🧪", TerminalText.plain("Ωλ 水\n\tд̈ 🧪"));
        assertEquals("a?b?c", TerminalText.plain("a\rb\u001bc"));
    }

    @Test
    void tooLittleMemorySaysWhichOptionHelpsAndIsNoFaultOfTheProgram() {
        StringWriter said = new StringWriter();
        ExitCode code = Failure.report(Path.of("week.xlsx"), new OutOfMemoryError(), new PrintWriter(said, true));
        assertEquals(ExitCode.UNUSABLE, code);
        assertTrue(said.toString().startsWith("week.xlsx: ") && said.toString().contains("-Xmx4g"), said::toString);
    }

    @Test
    void aFullDiskIsNamedWithItsPlace() throws IOException {
        try (StagedFiles files = new StagedFiles(folder, "week-review")) {
            String said =
                    files.unwritten(new IOException("No space left on device")).getMessage();
            assertTrue(said.contains(folder.toString()) && said.contains("No space left on device."), said);
        }
    }

    @Test
    void whatFollowsTheObjectOfAHeadingsFileIsRefused() throws IOException {
        for (String after : List.of("garbage", "{}", "]")) {
            Path headings = Files.writeString(folder.resolve("own.json"), "{\"words\": {}}\n" + after);
            Call call = Call.of("check", "input-templates/demo-week", "--headings", headings);
            assertEquals(2, call.code(), call::err);
            assertTrue(call.err().contains("own.json") && call.err().contains("line 2"), call::err);
        }
    }

    @Test
    void aReferenceFolderWithoutTablesIsRefused() {
        Call call = Call.of("reference", "--reference", folder);
        assertEquals(2, call.code());
        assertTrue(call.err().contains("holds no table") && call.err().contains("solvents.csv"), call::err);
    }

    @Test
    void aFolderAsHeadingsFileIsRefusedInOneSentence() {
        Call call = Call.of("check", "input-templates/demo-week", "--headings", "/");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("is a folder"), call::err);
    }

    @Test
    void daysOutsideTheYearsOfABookAreRefused() {
        Call call = Call.of("period", folder, "--from=-999999999-01-01", "--to", "2026-03-31");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("outside the years 1950 to 2150"), call::err);
    }
}
