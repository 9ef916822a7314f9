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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A class that grows beyond what can be read in one go has a second job, which is to have a name and a class of its own. */
class LengthOfClassesTest {
    private static final Path SOURCES = Path.of("src/main/java/workuptally");

    /** Rule of this project: no file of the program is longer, comments and imports included. */
    private static final int MOST_LINES = 350;

    /** Rule of this project too, formatted; lists and tables of cases come near it. */
    private static final int MOST_LINES_OF_A_METHOD = 80;

    /** A line that begins a method, by its type and name, or a constructor that stands on one line; no statement and no type. */
    private static final Pattern HEAD_OF_A_METHOD = Pattern.compile(
            "((?: {4}){1,2})(?!.*\\b(?:class|record|enum|interface|new|return|throw|if|for|while|switch|try|else|do|case)\\b)"
                    + "(?:[\\w<>\\[\\],.?& ]+ \\w+\\([^;]*[{(]|\\w+\\([^;]*\\{)");

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

    @Test
    void noMethodIsLongerThanCanBeReadInOneGo() throws IOException {
        Map<String, Integer> tooLong = new TreeMap<>();
        int methods = 0;
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path source : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                for (Map.Entry<String, Integer> method : methods(source).entrySet()) {
                    methods++;
                    if (method.getValue() > MOST_LINES_OF_A_METHOD) {
                        tooLong.put(SOURCES.relativize(source) + ": " + method.getKey(), method.getValue());
                    }
                }
            }
        }
        assertTrue(methods > 3000, "the methods were not found: " + methods);
        assertEquals(Map.of(), tooLong, "methods of more than " + MOST_LINES_OF_A_METHOD + " lines");
    }

    /** Lines of each method, from its head to its end, by its first line: code is formatted, so that both stand at one indentation. */
    private static Map<String, Integer> methods(Path source) throws IOException {
        Map<String, Integer> lengths = new TreeMap<>();
        List<String> lines = Files.readAllLines(source);
        for (int i = 0; i < lines.size(); i++) {
            Matcher head = HEAD_OF_A_METHOD.matcher(lines.get(i));
            if (head.matches()) {
                String end = head.group(1) + "}";
                int last = i;
                while (last < lines.size() && !lines.get(last).equals(end)) {
                    last++;
                }
                lengths.put(i + 1 + " " + lines.get(i).strip(), last - i + 1);
            }
        }
        return lengths;
    }

    private static int lines(Path source) {
        try {
            return Files.readAllLines(source).size();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
