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
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import workuptally.model.FindingCode;

/** The page of findings has a whole section for every code that a rule or the reading of a book can raise, and for no other. */
class FindingsPageTest {
    private static final Path PAGE = Path.of("reference", "findings.md");
    private static final List<String> PARTS = List.of(
            "Severity:", "Catalogue:", "What triggers it.", "Example.", "Why it matters at the bench.", "What to do.");

    private static final Pattern CATALOGUE = Pattern.compile("C\\d\\d");
    private static final Pattern SEVERITY = Pattern.compile("Severity: (as the column needs|stop|hold|check|note)");

    private static Map<String, String> sections() throws IOException {
        Map<String, String> sections = new LinkedHashMap<>();
        for (String section : Files.readString(PAGE).split("(?m)^## ")) {
            int end = section.indexOf('\n');
            sections.put(section.substring(0, end).strip(), section.substring(end));
        }
        sections.remove("# Findings");
        return sections;
    }

    @Test
    void everyCodeHasASectionAndEverySectionACode() throws Exception {
        Set<String> codes = new TreeSet<>();
        Stream.of(FindingCode.values()).forEach(code -> codes.add(code.word()));
        assertEquals(codes, new TreeSet<>(sections().keySet()));
    }

    @Test
    void theSectionStatesTheCatalogueNumbersOfItsCode() throws Exception {
        Map<String, String> sections = sections();
        for (FindingCode code : FindingCode.values()) {
            String line = sections.get(code.word())
                    .lines()
                    .filter(l -> l.startsWith("Severity:"))
                    .findFirst()
                    .orElseThrow();
            assertEquals(
                    code.catalogue(),
                    CATALOGUE.matcher(line).results().map(MatchResult::group).toList(),
                    code::word);
        }
    }

    @Test
    void theSectionNamesTheUsualSeverityFirst() throws Exception {
        Map<String, String> sections = sections();
        for (FindingCode code : FindingCode.values()) {
            Matcher named = SEVERITY.matcher(sections.get(code.word()));
            assertTrue(named.find(), code::word);
            assertTrue(
                    named.group(1).equals("as the column needs")
                            || named.group(1).equals(code.severity().word()),
                    code::word);
        }
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
