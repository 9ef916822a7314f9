package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A name of a class stands once, and a plural is what holds many of the singular: what computes says so in its name. */
class NamesOfClassesTest {
    private static final Path SOURCES = Path.of("src/main/java/workuptally");

    /** Lists, tables and registers of what the singular names. */
    private static final Set<String> HOLD_MANY = Set.of(
            "CompositeSamples",
            "Limits",
            "Meetings",
            "NumberFormats",
            "Readings",
            "Substances",
            "TableFiles",
            "TableRows",
            "WasteStreams");

    @Test
    void pluralsHoldManyOfTheirSingular() throws IOException {
        Set<String> names = new TreeSet<>(names());
        assertTrue(names.size() > 300, "the sources were not found");
        Set<String> plurals = names.stream()
                .filter(name -> singulars(name).anyMatch(names::contains))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(HOLD_MANY), plurals);
    }

    @Test
    void aNameStandsOnce() throws IOException {
        List<String> names = names();
        Set<String> seen = new TreeSet<>();
        assertEquals(List.of(), names.stream().filter(name -> !seen.add(name)).toList());
    }

    private static Stream<String> singulars(String name) {
        return Stream.of("s", "es", "ies")
                .filter(name::endsWith)
                .map(ending -> name.substring(0, name.length() - ending.length()) + (ending.equals("ies") ? "y" : ""));
    }

    private static List<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java") && !name.equals("package-info.java"))
                    .map(name -> name.substring(0, name.length() - ".java".length()))
                    .toList();
        }
    }
}
