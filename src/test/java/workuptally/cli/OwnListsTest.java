package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import workuptally.examples.OwnLists;

/**
 * Five invented lists, each reviewed with the headings file that the program proposes for it, unedited. The expected yields are worked out by
 * hand from the rows as written: mass of product over (mass / molar mass of substrate × molar mass of product); atomic weights are the
 * abridged ones of IUPAC (C 12.011, H 1.008, N 14.007, O 15.999, Cl 35.45, Br 79.904).
 */
@Tag("slow")
class OwnListsTest {
    /** Expected yields are written with one decimal. */
    private static final double HALF_A_DIGIT = 0.05;

    @TempDir
    private Path folder;

    /** The review of a list as JSON, by the proposed headings file. */
    private JsonNode review(Path list) throws IOException {
        return review(list, "json");
    }

    private JsonNode review(Path list, String reports) throws IOException {
        Path headings = folder.resolve("headings.json");
        Call proposed = Call.of("headings", list, "--out", headings);
        assertEquals(0, proposed.code(), proposed::err);
        Call call =
                Call.of("review", list, "--headings", headings, "--out", folder.resolve("out"), "--reports", reports);
        assertEquals(0, call.code(), call::err);
        String name = list.getFileName().toString().replaceAll("\\.\\w+$", "");
        return new ObjectMapper()
                .readTree(Files.readString(folder.resolve("out").resolve(name + "-review.json")));
    }

    private static Map<String, Double> yields(JsonNode review) {
        Map<String, Double> yields = new LinkedHashMap<>();
        for (JsonNode run : review.get("runs")) {
            for (JsonNode each : run.path("yields")) {
                yields.put(run.get("run").asString(), each.get("percent").asDouble());
            }
        }
        return yields;
    }

    private static void assertYields(Map<String, Double> expected, Map<String, Double> found) {
        assertEquals(expected.keySet(), found.keySet());
        expected.forEach((run, percent) -> assertEquals(percent, found.get(run), HALF_A_DIGIT, run));
    }

    private static List<String> findings(JsonNode review, String code) {
        List<String> runs = new ArrayList<>();
        for (JsonNode finding : review.get("findings")) {
            if (finding.get("code").asString().startsWith(code)) {
                runs.add(finding.path("run").asString(""));
            }
        }
        return runs;
    }

    @Test
    void csvWithAmountsInMillimoles() throws IOException {
        JsonNode review = review(OwnLists.csv(folder));
        // 812 / (5.00 × 184.238), 491 / (4.00 × 168.239), 1930 / (10.0 × 212.248); nothing was isolated of L-03
        assertYields(Map.of("L-01", 88.1, "L-02", 73.0, "L-04", 90.9), yields(review));
        assertEquals(4, review.get("runs").size());
        assertEquals(List.of("L-04"), findings(review, "stated-yield-differs"));
        assertEquals(1, findings(review, "list-rows-left-out").size());
    }

    @Test
    void germanWithTitleAndSum() throws IOException {
        JsonNode review = review(OwnLists.german(folder));
        // 4.88 / (5.00 / 167.120 × 181.15), 2.61 / (3.20 / 156.565 × 170.59), 4.02 / (4.10 / 167.120 × 181.15)
        assertYields(Map.of("K-101", 90.0, "K-102", 74.9, "K-103", 90.5), yields(review));
        assertEquals(
                "4-Nitrobenzoesäure", review.at("/runs/0/limiting/0/material").asString());
    }

    @Test
    void groupedWithMergedHeadings() throws IOException {
        JsonNode review = review(OwnLists.grouped(folder));
        // 1540 / (1061 / 106.12 × 181.24), 960 / (680 / 136.15 × 211.26), 1720 / (1406 / 140.57 × 215.68)
        assertYields(Map.of("G-1", 85.0, "G-2", 91.0, "G-3", 79.7), yields(review));
        assertEquals("benzaldehyde", review.at("/runs/0/limiting/0/material").asString());
        assertEquals(9.998, review.at("/runs/0/limiting/0/amountMillimoles").asDouble(), 0.0005);
    }

    @Test
    void equivalentsInsteadOfCoefficients() throws IOException {
        JsonNode review = review(OwnLists.equivalents(folder));
        // 341 / (398 / 199.05 × 196.25), 288 / (374 / 187.04 × 184.24), 370 / (404 / 202.01 × 199.21)
        assertYields(Map.of("M-11", 86.9, "M-12", 78.2, "M-13", 92.9), yields(review));
    }

    @Test
    void threeHundredRowsOverThreeYears() throws IOException {
        Path list = OwnLists.threeYears(folder);
        JsonNode review = review(list);
        assertEquals(300, review.get("runs").size());
        for (int n = 0; n < 300; n++) {
            JsonNode run = review.get("runs").get(n);
            double theory = OwnLists.acidGrams(n) / 138.12 * 180.16;
            assertEquals(
                    theory,
                    run.at("/theory/0/massGrams").asDouble(),
                    0.0005,
                    run.get("run").asString());
            assertEquals(
                    100 * OwnLists.crudeGrams(n) / theory,
                    run.at("/lots/0/crudeOverTheoryPercent").asDouble(),
                    HALF_A_DIGIT,
                    run.get("run").asString());
        }
        assertEquals(List.of(), findings(review, "stated-yield-differs"));
    }

    @Test
    void periodCountsTheRunsOfListsBetweenTwoDays() throws IOException {
        Path list = OwnLists.csv(folder);
        review(list);
        Path headings = folder.resolve("headings.json");
        Call.of("review", list, "--headings", headings, "--reports", "csv"); // its ledgers then stand beside the list
        Call call = Call.of(
                "period",
                folder,
                "--from",
                "2026-01-13",
                "--to",
                "2026-01-31",
                "--headings",
                headings,
                "--out",
                folder.resolve("sum"));
        JsonNode period = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("sum").resolve("period.json")));
        assertEquals(3, period.get("runs").size(), period::toString);
        assertTrue(call.out().contains("solvents") || call.out().contains("Solvents"), call::out);
    }

    @Test
    void annotatedWorkbookIsTheListItself() throws IOException {
        Path list = OwnLists.csv(folder);
        review(list, "workbook,json");
        try (var workbook = new org.apache.poi.xssf.usermodel.XSSFWorkbook(
                Files.newInputStream(folder.resolve("out").resolve("yields-review.xlsx")))) {
            var sheet = workbook.getSheet("yields");
            assertEquals("Exp", sheet.getRow(0).getCell(0).getStringCellValue());
            assertEquals(812, sheet.getRow(1).getCell(10).getNumericCellValue());
            assertTrue(sheet.getRow(4)
                    .getCell(11)
                    .getCellComment()
                    .getString()
                    .getString()
                    .contains("90.9"));
        }
    }

    /** A list of the resources, as a CSV file. */
    private Path listed(String name) throws IOException {
        try (var in = OwnListsTest.class.getResourceAsStream("/workuptally/lists/" + name + ".csv")) {
            return Files.write(folder.resolve(name + ".csv"), in.readAllBytes());
        }
    }

    @Test
    void theListOfTheGuideGivesTheYieldsItStates() throws IOException {
        String guide = Files.readString(Path.of("reference", "lists.md"));
        String list = guide.substring(guide.indexOf("```csv\n") + 7);
        Path file = Files.writeString(folder.resolve("ausbeuten.csv"), list.substring(0, list.indexOf("```")));
        JsonNode review = review(file);
        // 1540 / (1061 / 106.12 × 181.24), 845 / (680.8 / 136.15 × 211.26)
        assertYields(Map.of("N-1", 85.0, "N-2", 80.0), yields(review));
        assertEquals(1.812, review.at("/runs/0/theory/0/massGrams").asDouble(), 0.0005);
        assertEquals(List.of(), findings(review, "list-heading"));
    }

    @Test
    void frenchWithEquivalentsAndSolvent() throws IOException {
        // 1150 / (1221 / 122.123 × 136.150), 608 / (690.6 / 138.122 × 152.149)
        assertYields(Map.of("F-1", 84.5, "F-2", 79.9), yields(review(listed("esters"))));
    }

    @Test
    void wideWithTwelveReagents() throws IOException {
        JsonNode review = review(listed("twelve-reagents"));
        // 800 / (935.2 / 187.04 × 184.24), 655 / (785.0 / 157.01 × 154.21)
        assertYields(Map.of("W-1", 86.8, "W-2", 85.0), yields(review));
        assertEquals(List.of(), findings(review, "list-heading"));
    }

    @Test
    void headingsThatChangeOverTheYears() throws IOException {
        JsonNode review = review(listed("three-headings"));
        // 1.90 / (2.00 / 138.12 × 180.16), 2.00 / (2.05 / 138.12 × 180.16); the third year is in mg
        assertYields(Map.of("Y-1", 72.8, "Y-2", 74.8), yields(review));
        assertEquals(1, findings(review, "list-heading-missing").size());
    }

    @Test
    void partedByBarsWithCrudeAndPure() throws IOException {
        // 650 / (760.8 / 152.15 × 154.16), 610 / (750.7 / 150.13 × 152.15)
        assertYields(Map.of("S-1", 84.3, "S-2", 80.2), yields(review(listed("barred"))));
    }

    @Test
    void proposalNamesWhatItDidNotUnderstand() throws IOException {
        Path list = Files.writeString(
                folder.resolve("odd.csv"),
                "Exp,SM,MW,mg,Zebra,Menge,Product,MW,mg,Purity (%)\nA,a,100,500,x,3,b,150,600,98\n");
        Call call = Call.of("headings", list);
        assertEquals(0, call.code(), call::err);
        assertTrue(call.out().contains("Not understood, kept as your own:\n  'Zebra'"), call::out);
        assertTrue(call.out().contains("'Menge':"), call::out);
        assertTrue(call.out().contains("'Purity (%)':"), call::out);
        String json = Files.readString(folder.resolve("odd-headings.json"));
        assertTrue(json.contains("\"heading\": \"Menge\""), json);
        assertFalse(json.contains("\"Assay\""), json);
    }

    @Test
    void anExistingHeadingsFileIsKept() throws IOException {
        Path list = OwnLists.csv(folder);
        Path kept = Files.writeString(folder.resolve("yields-headings.json"), "{}");
        Call call = Call.of("headings", list);
        assertEquals(2, call.code());
        assertEquals("{}", Files.readString(kept));
    }

    @Test
    void aFileAsFirstWordIsReviewed() throws IOException {
        Path list = OwnLists.csv(folder);
        Path headings = folder.resolve("headings.json");
        Call.of("headings", list, "--out", headings);
        Call call = Call.of(list, "--headings", headings, "--out", folder.resolve("out"), "--reports", "json");
        assertEquals(0, call.code(), call::err);
        assertTrue(Files.exists(folder.resolve("out").resolve("yields-review.json")));
    }
}
