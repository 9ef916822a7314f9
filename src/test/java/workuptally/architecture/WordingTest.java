package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The program lays out evidence and a person decides: no text of ours orders to let a layer go or calls anything harmless. */
class WordingTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Pattern LITERAL = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");
    private static final List<String> NEVER_SAID = List.of(
            "discard",
            "dispose",
            "safe to",
            "throw away",
            "thrown away",
            "bin it",
            "ok to bin",
            "approved",
            "no product present",
            "empty of product");

    @Test
    void noTextOfOursOrdersToLetALayerGo() throws IOException {
        List<String> said = new ArrayList<>();
        List<Path> files = sources();
        for (Path file : files) {
            Matcher literals = LITERAL.matcher(Files.readString(file));
            while (literals.find()) {
                String text = literals.group().toLowerCase(Locale.ROOT);
                NEVER_SAID.stream().filter(text::contains).forEach(word -> said.add(file.getFileName() + ": " + text));
            }
        }
        assertFalse(files.isEmpty());
        assertEquals(List.of(), said);
    }

    @Test
    void everyPackageSaysWhatItHolds() throws IOException {
        List<String> silent = sources().stream()
                .map(Path::getParent)
                .distinct()
                .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                .map(Path::toString)
                .toList();
        assertEquals(List.of(), silent);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
