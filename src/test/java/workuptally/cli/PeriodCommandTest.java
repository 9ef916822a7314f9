package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@Tag("slow")
class PeriodCommandTest {
    private static final Path DEMO = Path.of("input-templates", "demo-week");

    @TempDir
    private Path folder;

    @TempDir
    private Path out;

    private void copyDemo(String name) throws IOException {
        Path target = Files.createDirectories(folder.resolve(name));
        try (Stream<Path> tables = Files.list(DEMO)) {
            for (Path table : tables.toList()) {
                Files.copy(table, target.resolve(table.getFileName()));
            }
        }
    }

    /** The same runs under other ids, a number of days earlier in the same month and year. */
    private void copyDemoAs(String name, String prefix, String day, String instead) throws IOException {
        copyDemo(name);
        try (Stream<Path> tables = Files.list(folder.resolve(name))) {
            for (Path table : tables.toList()) {
                String text = Files.readString(table).replace("R26-", prefix);
                if (table.getFileName().toString().equals("runs.csv")) {
                    text = text.replaceAll(day, instead);
                }
                Files.writeString(table, text);
            }
        }
    }

    private Call period(String from, String to) {
        return Call.of("period", folder, "--from", from, "--to", to, "--out", out);
    }

    private JsonNode json() throws IOException {
        return new JsonMapper().readTree(out.resolve("period.json").toFile());
    }

    @Test
    void oneWeekGivesTheFiguresOfItsReview() throws IOException {
        copyDemo("week-10");
        Call call = period("2026-03-02", "2026-03-06");
        assertEquals(0, call.code(), call::err);
        JsonNode period = json().required("period");
        assertEquals(10, period.required("runsIsolated").asInt());
        assertEquals(91.7, period.required("amountWeightedYieldPercent").asDouble(), 0.3);
        assertEquals(22.7, period.required("metrics").required("pmi").asDouble(), 0.23);
        assertEquals(5, json().required("containers").size());
        assertTrue(
                call.out().contains("2026-03-02 to 2026-03-06: 10 runs isolated, 1 in workup, 2 planned"), call::out);
    }

    @Test
    void runsOutsideThePeriodAreComparedByWeekAndNotAdded() throws IOException {
        copyDemo("week-10");
        copyDemoAs("week-09", "R26-9", "2026-03-0\\d", "2026-02-24");
        assertEquals(0, period("2026-03-02", "2026-03-06").code());
        assertEquals(10, json().required("period").required("runsIsolated").asInt());
        JsonNode week = json().required("weeksBefore").get(0);
        assertEquals("2026-02-23", week.required("monday").asString());
        assertEquals(13, week.required("runs").asInt());
        assertEquals(
                json().required("period").required("solventInGrams").asDouble(),
                week.required("totals").required("solventInGrams").asDouble(),
                1e-6);
    }

    @Test
    void twoWeeksAddUp() throws IOException {
        copyDemo("week-10");
        copyDemoAs("week-09", "R26-9", "2026-03-0\\d", "2026-02-24");
        period("2026-03-02", "2026-03-06");
        double one = json().required("period").required("solventInGrams").asDouble();
        period("2026-02-23", "2026-03-06");
        assertEquals(
                2 * one,
                json().required("period").required("solventInGrams").asDouble(),
                // each is written with seven digits
                1e-6 * one);
        assertEquals(20, json().required("period").required("runsIsolated").asInt());
    }

    @Test
    void bookWithTheContentOfAnotherIsNamedAndNotCounted() throws IOException {
        copyDemo("week-10");
        copyDemo("week-10-copy");
        period("2026-03-02", "2026-03-06");
        assertEquals(10, json().required("period").required("runsIsolated").asInt());
        assertEquals(
                "the same content as week-10, counted there",
                json().required("books").get(1).required("remark").asString());
    }

    private void change(String table, String from, String to) throws IOException {
        Path file = folder.resolve(table);
        String text = Files.readString(file);
        assertTrue(text.contains(from), from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void aRunThatASecondBookRepeatsCountsOnceAndIsNamed() throws IOException {
        copyDemo("week-10");
        copyDemo("week-10-later");
        change("week-10-later/workup.csv", "\n", "\n\n");
        period("2026-03-02", "2026-03-06");
        assertEquals(10, json().required("period").required("runsIsolated").asInt());
        JsonNode left = json().required("runsNotCounted");
        assertEquals(13, left.size());
        assertEquals("counts in week-10", left.get(0).required("because").asString());
        assertTrue(json().required("books")
                .get(1)
                .required("remark")
                .asString()
                .startsWith("each of the runs R26-041, R26-042"));
    }

    @Test
    void ofTwoRecordsOfARunTheOneFurtherOnCountsAndTheDifferenceIsSaid() throws IOException {
        copyDemo("week-10");
        change("week-10/runs.csv", "isolated", "in workup");
        copyDemo("week-11");
        period("2026-03-02", "2026-03-06");
        assertEquals(10, json().required("period").required("runsIsolated").asInt());
        assertTrue(json().required("runsNotCounted")
                .valueStream()
                .anyMatch(n -> n.required("book").asString().equals("week-10")
                        && n.required("because").asString().equals("counts in week-11, where its entries differ")));
    }

    @Test
    void bookThatCannotBeReadIsListedAndTheOthersCount() throws IOException {
        copyDemo("week-10");
        Files.writeString(folder.resolve("torn.xlsx"), "no workbook");
        Call call = period("2026-03-02", "2026-03-06");
        assertEquals(2, call.code());
        assertTrue(call.err().startsWith("torn.xlsx: "), call::err);
        assertEquals(10, json().required("period").required("runsIsolated").asInt());
        assertEquals(
                "torn.xlsx", json().required("books").get(0).required("book").asString());
    }

    @Test
    void bookWhoseTablesArePartedByTabsIsFound() throws IOException {
        Files.createDirectories(folder.resolve("week"));
        Files.writeString(folder.resolve("week/runs.tsv"), "Run\tDate\tStatus\nR1\t2026-03-02\tisolated\n");
        Call call = period("2026-03-02", "2026-03-06");
        assertEquals(0, call.code(), call::err);
        assertEquals(1, json().required("period").required("runsIsolated").asInt());
    }

    @Test
    void reviewThatTheProgramWroteIsPassedOver() throws IOException {
        copyDemo("week-10");
        Call review = Call.of("review", folder.resolve("week-10"), "--quiet");
        assertEquals(0, review.code(), review::err);
        Call call = period("2026-03-02", "2026-03-06");
        assertEquals(0, call.code(), call::err);
        assertEquals(10, json().required("period").required("runsIsolated").asInt());
        assertTrue(call.out().contains("passed over"), call::out);
    }

    @Test
    void ledgersHaveALineForEachRunAndSolventAndForEachLayer() throws IOException {
        copyDemo("week-10");
        period("2026-03-02", "2026-03-06");
        List<String> solvents = Files.readAllLines(out.resolve("period-solvents.csv"));
        assertTrue(solvents.get(0).startsWith("Book,Date,Run,Solvent,CAS,In by volume (L)"), solvents.get(0));
        assertTrue(solvents.stream().anyMatch(l -> l.startsWith("week-10,2026-03-05,R26-050,ethanol,")));
        List<String> waste = Files.readAllLines(out.resolve("period-waste.csv"));
        assertTrue(waste.stream().anyMatch(l -> l.startsWith("week-10,2026-03-04,R26-045,L1,halogenated-organic,")));
    }

    @Test
    void noChemistIsNamed() throws IOException {
        copyDemo("week-10");
        Call call = period("2026-03-02", "2026-03-06");
        String all = call.out()
                + Files.readString(out.resolve("period.json"))
                + Files.readString(out.resolve("period-solvents.csv"))
                + Files.readString(out.resolve("period-waste.csv"));
        assertTrue(Stream.of("\"C1\"", ",C1,", " C1 ", "chemist").noneMatch(all::contains));
    }

    @Test
    void sameFolderGivesTheSameBytes() throws IOException {
        copyDemo("a");
        copyDemoAs("b", "R26-9", "2026-03-0\\d", "2026-02-24");
        period("2026-02-23", "2026-03-06");
        byte[] first = Files.readAllBytes(out.resolve("period.json"));
        period("2026-02-23", "2026-03-06");
        assertEquals(
                new String(first, java.nio.charset.StandardCharsets.UTF_8),
                Files.readString(out.resolve("period.json")));
    }

    @Test
    void daysTheWrongWayRoundAreWrongUse() {
        Call call = period("2026-03-06", "2026-03-02");
        assertEquals(2, call.code());
        assertTrue(call.err().contains("--to"), call::err);
    }

    @Test
    void folderWithoutBooksGivesEmptyAccounts() throws IOException {
        assertEquals(0, period("2026-03-02", "2026-03-06").code());
        assertEquals(0, json().required("books").size());
        assertEquals(1, Files.readAllLines(out.resolve("period-solvents.csv")).size());
    }
}
