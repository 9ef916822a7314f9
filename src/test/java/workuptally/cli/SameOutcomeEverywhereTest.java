package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The same layer shows the same outcome and the same reason in JSON, workbook, PDF and on the terminal. */
@Tag("slow")
class SameOutcomeEverywhereTest {
    private static final Path BOOK = Path.of("input-templates", "demo-week.xlsx");

    @TempDir
    private static Path out;

    private static final Map<String, String> OUTCOMES = new TreeMap<>();
    private static final Map<String, String> REASONS = new TreeMap<>();

    @BeforeAll
    static void reviewTheDemoWeek() throws Exception {
        assertEquals(0, Call.of("review", BOOK, "--out", out).code());
        JsonNode review = new JsonMapper().readTree(out.resolve("demo-week-review.json"));
        for (JsonNode run : review.get("runs")) {
            for (JsonNode layer : run.get("layers")) {
                if (layer.has("outcome")) {
                    String key =
                            run.get("run").asString() + " " + layer.get("layer").asString();
                    OUTCOMES.put(key, layer.get("outcome").asString());
                    REASONS.put(key, layer.get("reason").asString());
                }
            }
        }
        assertEquals(34, OUTCOMES.size());
    }

    @Test
    void workbookShowsWhatTheJsonSays() throws Exception {
        Map<String, String> outcomes = new TreeMap<>();
        Map<String, String> reasons = new TreeMap<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(out.resolve("demo-week-review.xlsx")))) {
            Sheet sheet = workbook.getSheet("Layer decisions");
            for (Row row : sheet) {
                String run = text(row, 0);
                if (run.startsWith("R26-")) {
                    outcomes.put(run + " " + text(row, 1), text(row, 2));
                    reasons.put(run + " " + text(row, 1), text(row, 3));
                }
            }
        }
        assertEquals(OUTCOMES, outcomes);
        // behind the reason stands what the decision says nothing about, such as a note that was not read
        REASONS.forEach((layer, reason) ->
                assertTrue((reasons.get(layer) + "; ").startsWith(reason.isEmpty() ? "" : reason + "; "), layer));
    }

    @Test
    void pdfShowsWhatTheJsonSays() throws Exception {
        String text;
        try (PDDocument document =
                Loader.loadPDF(out.resolve("demo-week-review.pdf").toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            text = stripper.getText(document);
        }
        OUTCOMES.forEach((name, outcome) -> {
            String run = name.split(" ")[0];
            String layer = name.split(" ")[1];
            String block = block(text, run);
            // the words of an outcome may stand on two lines; the first tells them apart
            String first = outcome.split(" ")[0];
            Pattern row = Pattern.compile("(?m)^" + layer + "\\s.*\\s" + first + "(\\s+complete|\\s+first)?\\s*$");
            assertTrue(row.matcher(block).find(), name + " as " + outcome + " in " + block);
        });
    }

    /** The text of a run's own block: from its heading on to the next run's, or to the end. */
    private static String block(String text, String run) {
        Matcher headings = Pattern.compile("(?m)^(R26-\\d+)\\s+\\S.*\\R(?:.*\\R)?2026-03-0\\d · ")
                .matcher(text);
        int from = -1;
        while (headings.find()) {
            if (from >= 0) {
                return text.substring(from, headings.start());
            }
            if (headings.group(1).equals(run)) {
                from = headings.start();
            }
        }
        assertTrue(from >= 0, "no block of " + run);
        return text.substring(from);
    }

    @Test
    void terminalShowsWhatTheJsonSays() {
        String text = packed(Call.of("check", BOOK).out());
        // what keeps a layer stands behind the numbers of the conditions, what makes it complete behind a colon
        OUTCOMES.forEach((layer, outcome) -> assertTrue(
                text.contains(packed(layer.split(" ")[1] + outcome + ","))
                        || text.contains(packed(layer.split(" ")[1] + outcome + ":" + REASONS.get(layer))),
                layer));
    }

    private static String text(Row row, int column) {
        return row.getCell(column) == null ? "" : row.getCell(column).toString();
    }

    private static String packed(String text) {
        return text.replaceAll("[\\s\\u00A0]+", "");
    }
}
