package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What README.md shows is what the program does. */
class ReadmeTest {
    private static final String OUT = "target/demo";
    private static final String LEFT_OUT = "…";

    @TempDir
    private Path folder;

    private static List<String> readme() throws IOException {
        return Files.readAllLines(Path.of("README.md"));
    }

    @Tag("slow")
    @Test
    void outputShownIsTheOutputOfTheCommandAboveIt() throws IOException {
        List<String> lines = readme();
        int command = lines.indexOf(lines.stream()
                .filter(line -> line.contains("java -jar"))
                .findFirst()
                .orElseThrow());
        String line = lines.get(command);
        String[] args = line.substring(line.indexOf(".jar ") + 5)
                .replace(OUT, folder.toString())
                .split(" ");
        Call call = Call.of((Object[]) args);
        assertEquals(0, call.code(), call::err);
        String out = call.out().replace(folder.toString(), OUT);
        List<String> printed = out.lines().toList();
        List<String> shown = lines.subList(command + 4, lines.size()).stream()
                .takeWhile(l -> !l.equals("```"))
                .toList();
        assertTrue(shown.size() > 8, shown::toString);
        for (String expected : shown) {
            assertTrue(expected.equals(LEFT_OUT) || printed.contains(expected), expected + "\n" + out);
        }
    }

    @Tag("slow")
    @Test
    void theListShownGivesTheOutputShown() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("reference", "lists.md"));
        List<String> commands = lines.stream()
                .filter(line -> line.startsWith("target/workup-tally "))
                .toList();
        assertEquals(2, commands.size());
        String out = "";
        for (String command : commands) {
            String[] args = command.substring("target/workup-tally ".length())
                    .replace("target/", folder + "/")
                    .split(" ");
            Call call = Call.of((Object[]) args);
            assertEquals(0, call.code(), call::err);
            out = call.out().replace(folder + "/", "target/");
        }
        List<String> printed = out.lines().toList();
        List<String> shown = lines.subList(lines.indexOf(commands.get(1)) + 4, lines.size()).stream()
                .takeWhile(l -> !l.equals("```"))
                .toList();
        assertTrue(shown.size() > 8, shown::toString);
        for (String expected : shown) {
            assertTrue(expected.equals(LEFT_OUT) || printed.contains(expected), expected + "\n" + out);
        }
        List<String> inReadme = readme().stream()
                .filter(line -> line.startsWith("  L-0") || line.startsWith("  Run "))
                .toList();
        assertEquals(3, inReadme.size());
        assertTrue(printed.containsAll(inReadme), inReadme + "\n" + out);
        List<String> list = Files.readAllLines(Path.of("input-templates", "own-list.csv"));
        assertTrue(readme().containsAll(list.subList(0, 2)), list::toString);
    }

    @Test
    void everyHeadingOfTheTemplateIsListed() throws IOException {
        String text = Files.readString(Path.of("reference", "book.md"));
        List<String> missing = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("input-templates", "csv"))) {
            for (Path file : files.toList()) {
                String headings =
                        Files.readAllLines(file).get(0).replace("\"", "").replace(",", ", ");
                if (!text.contains("| " + headings + " |")) {
                    missing.add(file.getFileName() + ": " + headings);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void readmeIsShortAndItsLinksLeadSomewhere() throws IOException {
        List<String> lines = readme();
        assertTrue(lines.size() < 120, lines.size() + " lines");
        List<String> pictures = lines.stream().filter(l -> l.startsWith("![")).toList();
        assertEquals(2, pictures.size());
        for (String picture : pictures) {
            Path file = Path.of(picture.substring(picture.indexOf("](") + 2, picture.length() - 1));
            assertTrue(Files.isRegularFile(file), file + " is made with the samples");
        }
    }

    @Test
    void everyCommandAndExitCodeIsNamed() throws IOException {
        String text = String.join("\n", readme());
        for (String word : new String[] {"review", "check", "template", "reference"}) {
            assertTrue(text.contains("`" + word + " ") || text.contains(" " + word + " "), word);
        }
        for (ExitCode code : ExitCode.values()) {
            assertTrue(text.contains("| " + code.number() + " |"), code.name());
        }
    }

    @Test
    void theCommandsOfReadmeAreRunByTheContinuousBuild() throws IOException {
        String build = Files.readString(Path.of(".ci", "run"));
        List<String> commands =
                readme().stream().filter(line -> line.startsWith("mvn ")).toList();
        assertEquals(2, commands.size());
        commands.forEach(command -> assertTrue(build.contains("\n" + command + "\n"), command));
    }
}
