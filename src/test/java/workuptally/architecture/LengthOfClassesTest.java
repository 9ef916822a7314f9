package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A class that grows beyond what can be read in one go has a second job, which is to have a name and a class of its own. */
class LengthOfClassesTest {
    private static final Path SOURCES = Path.of("src/main/java/workuptally");

    /** Rule of this project: no file of the program is longer, comments and imports included. */
    private static final int MOST_LINES = 350;

    @Test
    void noClassIsLongerThanCanBeReadInOneGo() throws IOException {
        Map<String, Integer> tooLong = new TreeMap<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            List<Path> sources =
                    files.filter(f -> f.toString().endsWith(".java")).toList();
            assertTrue(sources.size() > 300, "the sources were not found");
            for (Path source : sources) {
                int lines = lines(source);
                if (lines > MOST_LINES) {
                    tooLong.put(SOURCES.relativize(source).toString(), lines);
                }
            }
        }
        assertEquals(Map.of(), tooLong, "classes of more than " + MOST_LINES + " lines");
    }

    private static int lines(Path source) {
        try {
            return Files.readAllLines(source).size();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
