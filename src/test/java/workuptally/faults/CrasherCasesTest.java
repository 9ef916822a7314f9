package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Single cells of the example week that once stopped the program with a fault of its own. */
@Tag("slow")
class CrasherCasesTest {
    private static final Path EXAMPLE = Path.of("input-templates", "demo-week");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvFileSource(resources = "crashers.csv", numLinesToSkip = 1)
    void theBookIsReviewed(String file, String run, String row, String heading, String value) throws Exception {
        for (Path each : BookToDamage.files(EXAMPLE)) {
            Files.write(folder.resolve(each.getFileName()), Files.readAllBytes(each));
        }
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(Files.readString(EXAMPLE.resolve(file)), CSVFormat.RFC4180)) {
            parser.forEach(each -> rows.add(new ArrayList<>(each.toList())));
        }
        int column = rows.get(0).indexOf(heading);
        assertTrue(column > 1, heading);
        List<List<String>> hit = rows.stream()
                .filter(cells -> cells.get(0).equals(run) && cells.get(1).equals(row))
                .toList();
        assertTrue(!hit.isEmpty(), "no such row");
        hit.forEach(cells -> cells.set(column, value));
        Files.writeString(folder.resolve(file), BookToDamage.csv(rows));
        Ended ended = Ended.run("check", folder);
        assertEquals("", ended.err());
        assertEquals(1, ended.code());
    }
}
