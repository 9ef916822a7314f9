package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read or makes no sense: one sentence, exit code 2, nothing written. */
class WrongUseTest {
    @TempDir
    private Path folder;

    private void isRefused(Path book) throws IOException {
        Map<String, String> before = Folder.content(folder);
        for (String command : new String[] {"review", "check"}) {
            Call call = Call.of(command, book);
            assertEquals(2, call.code(), call::err);
            assertEquals("", call.out());
            assertEquals(1, call.err().lines().count(), call::err);
            assertTrue(call.err().contains(book.getFileName().toString()), call::err);
            assertFalse(call.err().contains("Exception"), call::err);
            assertEquals(before, Folder.content(folder));
        }
    }

    @Test
    void missingFileIsRefused() throws IOException {
        isRefused(folder.resolve("week.xlsx"));
    }

    @Test
    void emptyFileIsRefused() throws IOException {
        isRefused(Files.createFile(folder.resolve("week.xlsx")));
    }

    @Test
    void textNamedLikeAWorkbookIsRefused() throws IOException {
        isRefused(Files.writeString(folder.resolve("week.xlsx"), "Run,Date\nR1,2026-03-02\n"));
    }

    @Test
    void folderWithoutRunsIsRefused() throws IOException {
        Path book = Files.createDirectory(folder.resolve("week"));
        Files.writeString(book.resolve("charges.csv"), "Run,Material\nR1,benzoic acid\n");
        Call call = Call.of("check", book);
        assertEquals(2, call.code());
        assertTrue(call.err().contains("Runs"), call::err);
        assertEquals(1, call.err().lines().count(), call::err);
    }

    @Test
    void wordThatIsNoCommandIsNamedWithTheCommands() {
        Call call = Call.of("chek", folder);
        assertEquals(2, call.code());
        assertTrue(call.err().startsWith("'chek' is no command. Name a command: review, check"), call::err);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-3-6", "06.03.2026", "Friday"})
    void dayInAnotherFormIsAnsweredWithTheFormWanted(String day) {
        Call call = Call.of("period", folder, "--from", day, "--to", "2026-03-08");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("'" + day + "' is no day; write it as 2026-03-06"), call::err);
        assertFalse(call.err().contains("java"), call::err);
    }

    @Test
    void noCommandIsWrongUse() {
        assertEquals(2, Call.of().code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"revue", "review", "check", "template", "--unknown"})
    void incompleteOrUnknownWordsAreWrongUseWithAHint(String word) {
        Call call = Call.of(word);
        assertEquals(2, call.code());
        assertTrue(call.err().contains("--help"), call::err);
        assertEquals("", call.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--paper=A3", "--locale=dot", "--as-of=6.3.2026"})
    void unknownOptionValuesAreWrongUse(String option) {
        Call call = Call.of("review", Path.of("input-templates", "demo-week"), "--out", folder, option);
        assertEquals(2, call.code());
        assertFalse(call.err().isBlank());
    }

    @Test
    void referenceFolderWithABrokenTableIsRefusedInOneSentence() throws IOException {
        Files.writeString(folder.resolve("solvents.csv"), "key,name\nx,y\n");
        Path out = folder.resolve("out");
        Call call = Call.of("review", Path.of("input-templates", "demo-week"), "--out", out, "--reference", folder);
        assertEquals(2, call.code());
        assertTrue(call.err().contains("solvents.csv"), call::err);
        assertEquals(1, call.err().lines().count(), call::err);
        assertFalse(Files.exists(out));
    }

    @Test
    void helpAndVersionEndWithZero() {
        Call help = Call.of("--help");
        assertEquals(0, help.code());
        assertTrue(help.out().contains("review") && help.out().contains("Exit codes"), help::out);
        Call version = Call.of("--version");
        assertEquals(0, version.code());
        assertTrue(version.out().matches("workup-tally \\d+\\.\\d+\\.\\d+\\R"), version::out);
        assertEquals(0, Call.of("review", "--help").code());
    }
}
