package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.model.EarlierContent;

class EarlierReviewsTest {
    @TempDir
    private Path folder;

    @Test
    void readsOwnReadingsOfTerminalLayersAndSaysWhatItCannotRead() throws IOException {
        Files.createDirectories(folder.resolve("march"));
        Files.writeString(folder.resolve("march/w1-review.json"), """
                {"schemaVersion":"0.3","runs":[
                 {"run":"R1","series":"S-1","date":"2026-03-02","layers":[
                  {"layer":"A1","terminal":true,"contents":[
                    {"substance":"P","percentOfTheory":0.4,"kind":"measured","restsOn":"own reading"},
                    {"substance":"Q","percentOfTheory":0.05,"kind":"bound","restsOn":"own reading"},
                    {"substance":"T","kind":"bound","restsOn":"conservation","upperBoundGrams":1}]},
                  {"layer":"O1","terminal":false,"contents":[
                    {"substance":"P","percentOfTheory":90,"kind":"measured","restsOn":"own reading"}]}]},
                 {"run":"R2","layers":[]}],
                 "findings":[]}
                """);
        Files.writeString(folder.resolve("w2-review.json"), "{\"runs\":[{\"run\":\"R3\",");
        Files.writeString(folder.resolve("notes.json"), "no review");
        EarlierReviews earlier = EarlierReviews.in(folder);
        assertEquals(
                List.of("A1 P 0.4 false", "A1 Q 0.1 true"),
                earlier.contents().stream().map(EarlierReviewsTest::inWords).toList());
        assertEquals(1, earlier.findings().size());
        assertEquals("experience-unreadable", earlier.findings().get(0).code().word());
        assertEquals("w2-review.json", earlier.findings().get(0).place().inWords());
    }

    @Test
    void theRootOfADiskHasNoNameAndIsReadAlike() throws IOException {
        Path disk = folder.resolve("disk.zip");
        try (FileSystem zip = FileSystems.newFileSystem(disk, Map.of("create", "true"))) {
            Files.writeString(zip.getPath("/w2-review.json"), "{");
            EarlierReviews earlier = EarlierReviews.in(zip.getPath("/"));
            assertEquals(1, earlier.findings().size());
        }
    }

    private static String inWords(EarlierContent content) {
        return content.layer() + " " + content.substance() + " " + content.percentOfTheory() + " " + content.below();
    }
}
