package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The questions of {@code reference/ledgers.md} asked of the ledgers of two books by a database that shares no code with this program,
 * against what {@code period} says of the same books. Ledgers round to four decimals.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("slow")
class LedgersInSqlTest {
    private static final Path DEMO = Path.of("input-templates", "demo-week");
    private static final Path PAGE = Path.of("reference", "ledgers.md");
    private static final Pattern QUESTION = Pattern.compile("```sql\\R(.*?)```", Pattern.DOTALL);

    private Path folder;
    private JsonNode period;
    private final List<List<Map<String, Object>>> answers = new ArrayList<>();

    /** The demo week, and the same week a month later under other ids. */
    @BeforeAll
    void asksEveryQuestion(@TempDir Path shared) throws IOException, SQLException {
        folder = shared;
        book("week-10", "R26-", "2026-03");
        book("week-14", "R27-", "2026-04");
        for (String week : List.of("week-10", "week-14")) {
            Call review = Call.of(
                    "review", folder.resolve("books").resolve(week), "--out", folder.resolve("ledgers"), "--quiet");
            assertEquals(0, review.code(), review::err);
        }
        period = period("2026-03-01", "2026-04-30");
        try (Connection database = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = database.createStatement()) {
            statement.execute("SET file_search_path = '" + folder + "'");
            List<String> questions = QUESTION.matcher(Files.readString(PAGE))
                    .results()
                    .map(MatchResult::group)
                    .map(block -> block.replaceAll("```(sql)?", ""))
                    .toList();
            for (String question : questions) {
                answers.add(rows(statement.executeQuery(question)));
            }
        }
    }

    private void book(String name, String prefix, String month) throws IOException {
        Path target = Files.createDirectories(folder.resolve("books").resolve(name));
        try (Stream<Path> tables = Files.list(DEMO)) {
            for (Path table : tables.toList()) {
                String text = Files.readString(table)
                        .replace("R26-", prefix)
                        .replace("2026-03", month)
                        .replace("W-", name.equals("week-10") ? "W-" : "X-");
                Files.writeString(target.resolve(table.getFileName()), text);
            }
        }
    }

    private JsonNode period(String from, String to) throws IOException {
        Path out = folder.resolve("period-" + from);
        Call call = Call.of("period", folder.resolve("books"), "--from", from, "--to", to, "--out", out);
        assertEquals(0, call.code(), call::err);
        return new JsonMapper().readTree(out.resolve("period.json").toFile());
    }

    private static List<Map<String, Object>> rows(ResultSet result) throws SQLException {
        List<Map<String, Object>> rows = new ArrayList<>();
        ResultSetMetaData columns = result.getMetaData();
        while (result.next()) {
            Map<String, Object> row = new LinkedHashMap<>();
            for (int i = 1; i <= columns.getColumnCount(); i++) {
                row.put(columns.getColumnLabel(i), result.getObject(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private static double number(Map<String, Object> row, String column) {
        return ((Number) row.get(column)).doubleValue();
    }

    @Test
    void pageAsksFiveQuestions() {
        assertEquals(5, answers.size());
        answers.forEach(answer -> assertTrue(!answer.isEmpty()));
    }

    @Test
    void solventsAreThoseOfThePeriod() {
        List<Map<String, Object>> rows = answers.get(0);
        assertEquals(period.required("solvents").size(), rows.size());
        for (JsonNode solvent : period.required("solvents")) {
            Map<String, Object> row = rows.stream()
                    .filter(r ->
                            r.get("Solvent").equals(solvent.required("solvent").asString()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(solvent.required("inGrams").asDouble(), number(row, "in_grams"), 0.01);
            assertEquals(solvent.required("recoveredGrams").asDouble(), number(row, "reuse_grams"), 0.01);
            assertEquals(solvent.required("notFoundGrams").asDouble(), number(row, "lost_grams"), 0.01);
            assertEquals(solvent.required("cas").asString(), row.get("cas"));
        }
    }

    @Test
    void wasteIsThatOfThePeriod() {
        List<Map<String, Object>> rows = answers.get(1);
        assertEquals(period.required("waste").size(), rows.size());
        for (JsonNode stream : period.required("waste")) {
            Map<String, Object> row = rows.stream()
                    .filter(r ->
                            r.get("stream_key").equals(stream.required("stream").asString()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(stream.required("massGrams").asDouble(), number(row, "grams"), 0.01);
            assertEquals(stream.required("withoutMass").asInt(), (int) number(row, "without_amount"));
        }
    }

    @Test
    void yieldsAreThoseThatThePeriodStates() {
        JsonNode totals = period.required("period");
        Map<String, Object> row = answers.get(2).get(0);
        assertEquals(totals.required("yieldsStated").asInt(), (int) number(row, "yields"));
        assertEquals(totals.required("meanYieldPercent").asDouble(), number(row, "mean_percent"), 1e-3);
        assertEquals(totals.required("medianYieldPercent").asDouble(), number(row, "median_percent"), 1e-3);
    }

    @Test
    void containersHoldWhatThePeriodSays() {
        List<Map<String, Object>> rows = answers.get(3);
        assertEquals(period.required("containers").size(), rows.size());
        for (JsonNode container : period.required("containers")) {
            Map<String, Object> row = rows.stream()
                    .filter(r -> r.get("Container")
                            .equals(container.required("container").asString()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(container.required("massGrams").asDouble(), number(row, "grams"), 0.01);
        }
    }

    @Test
    void monthsAreThoseOfPeriodsOfAMonth() throws IOException {
        List<Map<String, Object>> rows = answers.get(4);
        assertEquals(2, rows.size());
        List<JsonNode> months = List.of(period("2026-03-01", "2026-03-31"), period("2026-04-01", "2026-04-30"));
        for (int i = 0; i < 2; i++) {
            JsonNode totals = months.get(i).required("period");
            assertEquals(totals.required("solventInGrams").asDouble(), number(rows.get(i), "in_grams"), 0.01);
            assertEquals(
                    totals.required("solventRecoveredPercent").asDouble(), number(rows.get(i), "reuse_percent"), 1e-3);
        }
    }
}
