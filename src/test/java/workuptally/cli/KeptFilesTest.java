package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No file of somebody's own is lost to a report of the same name, whatever links lead to it. */
@Tag("slow")
class KeptFilesTest {
    @TempDir
    private Path folder;

    private Path book;

    @BeforeEach
    void writeBook() throws IOException {
        book = Files.copy(Path.of("input-templates", "demo-week.xlsx"), folder.resolve("week.xlsx"));
    }

    @Test
    void aFileOfOnesOwnWithTheNameOfAReportIsKeptAsideAndSaid() throws IOException {
        Path own = Files.writeString(folder.resolve("week-waste.csv"), "my own list");
        Call call = review();
        assertEquals(0, call.code(), call::err);
        Path kept = folder.resolve("week-waste.kept.csv");
        assertEquals("my own list", Files.readString(kept));
        assertTrue(call.err().contains("Kept aside as " + kept), call::err);
        assertFalse(Files.readString(own).contains("my own list"));
    }

    @Test
    void anEditedReportIsKeptAside() throws IOException {
        assertEquals(0, review().code());
        Path report = folder.resolve("week-solvents.csv");
        Files.writeString(report, Files.readString(report) + "a remark\n");
        Files.writeString(folder.resolve("week-solvents.kept.csv"), "kept before");
        Call call = review();
        assertEquals(0, call.code(), call::err);
        assertTrue(Files.readString(folder.resolve("week-solvents.kept-2.csv")).endsWith("a remark\n"));
        assertEquals("kept before", Files.readString(folder.resolve("week-solvents.kept.csv")));
    }

    @Test
    void whatTheProgramWroteAndNobodyChangedIsReplacedWithoutAWord() throws IOException {
        assertEquals(0, review().code());
        Map<String, String> first = names();
        Call call = Call.of("review", book, "--quiet", "--reports", "csv,json", "--as-of", "2026-03-07");
        assertEquals(new Call(0, "", ""), call);
        assertEquals(first.keySet(), names().keySet());
    }

    @Test
    void aFileWrittenByAnEarlierCallWithOtherReportsIsStillKnown() throws IOException {
        assertEquals(0, review().code());
        assertEquals(0, Call.of("review", book, "--quiet", "--reports", "json").code());
        assertEquals(new Call(0, "", ""), review());
        assertTrue(names().keySet().stream().noneMatch(name -> name.contains(".kept")));
    }

    @Test
    void anInputThatIsALinkToTheNameOfItsReportIsRefused() throws IOException {
        Path real = Files.move(book, folder.resolve("week-review.xlsx"));
        byte[] before = Files.readAllBytes(real);
        Files.createSymbolicLink(book, real);
        Call call = Call.of("review", book, "--quiet", "--reports", "workbook");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("week-review.xlsx would replace one that this call reads"), call::err);
        assertArrayEquals(before, Files.readAllBytes(real));
    }

    @Test
    void aFolderForTheReportsThatIsALinkToTheInputsIsNoWayAround() throws IOException {
        Path other = folder.resolve("week-review.xlsx");
        Files.copy(book, other);
        byte[] before = Files.readAllBytes(other);
        Path link = Files.createSymbolicLink(folder.resolve("out"), folder);
        Call call = Call.of("review", book, other, "--quiet", "--reports", "workbook", "--out", link);
        assertEquals(2, call.code());
        assertArrayEquals(before, Files.readAllBytes(other));
    }

    @Test
    void benchSheetsOfTwoBooksOfOneNameDoNotReplaceEachOther() throws IOException {
        Path second = Files.createDirectory(folder.resolve("second")).resolve("week.xlsx");
        Files.copy(book, second);
        Path out = folder.resolve("out");
        Call call = Call.of("bench", book, second, "--out", out);
        assertEquals(2, call.code());
        assertTrue(
                call.err().contains("week-bench.pdf would replace one that this call reads or has written"), call::err);
        assertTrue(Files.exists(out.resolve("week-bench.pdf")));
    }

    @Test
    void aSheetOfSomebodysOwnUnderTheNameOfABenchSheetIsKept() throws IOException {
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(out.resolve("week-bench.pdf"), "drawn by hand");
        assertEquals(0, Call.of("bench", book, "--out", out).code());
        assertEquals("drawn by hand", Files.readString(out.resolve("week-bench.kept.pdf")));
    }

    @Test
    void aFileThatOnlyHasTheNameOfAManifestIsKeptAside() throws IOException {
        Files.writeString(folder.resolve("week-review.manifest.json"), "{\"files\": 3}");
        assertEquals(0, review().code());
        assertEquals("{\"files\": 3}", Files.readString(folder.resolve("week-review.manifest.kept.json")));
    }

    @Test
    void aManifestLeadsNobodyOutOfTheFolder() throws IOException {
        Path outside = Files.writeString(folder.resolve("outside.txt"), "outside");
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(
                out.resolve("week-review.manifest.json"),
                "{\"tool\": \"1\", \"inputs\": [], \"files\": [{\"name\": \"../outside.txt\", \"sha256\": \"0\"}]}");
        assertEquals(
                0,
                Call.of("review", book, "--quiet", "--reports", "csv,json", "--out", out)
                        .code());
        assertEquals("outside", Files.readString(outside));
    }

    private Call review() {
        return Call.of("review", book, "--quiet", "--reports", "csv,json");
    }

    private Map<String, String> names() throws IOException {
        return new TreeMap<>(Folder.content(folder));
    }
}
