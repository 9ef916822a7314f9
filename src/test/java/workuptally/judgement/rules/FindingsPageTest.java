package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of findings has a whole section for every code that a rule or the reading of a book can raise, and for no other. */
class FindingsPageTest {
    private static final Path PAGE = Path.of("reference", "findings.md");
    private static final Path BOOK_SOURCES = Path.of("src", "main", "java", "workuptally", "book");
    private static final List<String> PARTS = List.of(
            "Severity:", "Catalogue:", "What triggers it.", "Example.", "Why it matters at the bench.", "What to do.");

    /** A code in the sources of the reader: words joined by hyphens in quotes. */
    private static final Pattern CODE = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");

    private static final Set<String> NO_CODES = Set.of("yyyy-mm-dd");

    private static Map<String, String> sections() throws IOException {
        Map<String, String> sections = new LinkedHashMap<>();
        for (String section : Files.readString(PAGE).split("(?m)^## ")) {
            int end = section.indexOf('\n');
            sections.put(section.substring(0, end).strip(), section.substring(end));
        }
        sections.remove("# Findings");
        return sections;
    }

    private static Set<String> codesOfReading() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> files = Files.walk(BOOK_SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher code = CODE.matcher(Files.readString(file));
                while (code.find()) {
                    codes.add(code.group(1));
                }
            }
        }
        codes.removeAll(NO_CODES);
        return codes;
    }

    @Test
    void everyCodeHasASectionAndEverySectionACode() throws Exception {
        Set<String> codes = new TreeSet<>(FindingExamplesTest.codesOfRules());
        codes.addAll(codesOfReading());
        assertEquals(codes, new TreeSet<>(sections().keySet()));
    }

    @Test
    void everySectionHasAllItsParts() throws Exception {
        sections().forEach((code, text) -> assertTrue(PARTS.stream().allMatch(text::contains), code));
    }

    @Test
    void thePageNeverOrdersToLetALayerGo() throws Exception {
        String page = Files.readString(PAGE).toLowerCase(Locale.ROOT);
        assertFalse(Stream.of("discard", "dispose", "throw away", "safe to", "bin it")
                .anyMatch(page::contains));
    }
}
