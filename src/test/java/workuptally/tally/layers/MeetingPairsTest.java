package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;

/** Pairs by the names people type, in a planned run, a run that was done, and a proposal; and ordinary washes, which raise nothing. */
@Tag("slow")
class MeetingPairsTest {
    private static final String MUST_NOT = "materials-must-not-meet";
    private static final int LEAST_NAMED_PERCENT = 95;
    private static final int LEAST_PAIRS = 250;

    record Row(String one, String other, String kind) {
        @Override
        public String toString() {
            return one + " + " + other + ": " + kind;
        }
    }

    private static Stream<Row> rows(String file) {
        try (InputStream stream = MeetingPairsTest.class.getResourceAsStream(file)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> !line.startsWith("#"))
                            .skip(1)
                            .map(line -> line.split(","))
                            .filter(cells -> cells.length == 3 && !cells[2].equals("skip"))
                            .map(cells -> new Row(cells[0], cells[1], cells[2]))
                            .toList()
                            .stream();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<Row> dangerous() {
        return rows("dangerous-pairs.csv");
    }

    static Stream<Row> never() {
        return dangerous().filter(row -> row.kind().equals("never"));
    }

    static Stream<Row> ordinary() {
        return rows("ordinary-steps.csv");
    }

    private static SmallBook run(String status, String charged, String operation, String added) {
        return SmallBook.reaction()
                .first("runs", "Status", status)
                .row(
                        "charges",
                        "Material",
                        charged,
                        "Role",
                        "reagent",
                        "Actual amount",
                        "20",
                        "Actual unit",
                        "mmol",
                        "Planned amount",
                        "20",
                        "Planned unit",
                        "mmol")
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        operation,
                        "From",
                        "RM",
                        "Material",
                        added,
                        "Volume (mL)",
                        "50",
                        "Quench test",
                        "",
                        "Gives organic",
                        "O1",
                        "Gives aqueous",
                        "A1");
    }

    private static Review proposal(String there, String added) {
        return SmallBook.reaction()
                .row(
                        "containers",
                        "Container",
                        "W1",
                        "Waste stream",
                        "bottle seven",
                        "Capacity (L)",
                        "10",
                        "Contents then",
                        there + " 100 g")
                .row(
                        "transfers",
                        "Transfer",
                        "T1",
                        "Run",
                        "",
                        "Material",
                        added,
                        "Container",
                        "W1",
                        "Amount (g)",
                        "50",
                        "Status",
                        "proposed")
                .but("transfers", "Run", "")
                .review();
    }

    private static boolean isNamed(Row row, Review review) {
        return review.runs().get(0).tally().evidence().meetings().list().stream()
                .anyMatch(m -> m.step().isPresent());
    }

    private static List<Finding> hard(Review review) {
        return review.findings().stream()
                .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.HOLD)
                .filter(f -> f.code().word().equals(MUST_NOT)
                        || f.code().word().equals("controlled-meeting")
                        || f.code().word().startsWith("proposal-incompatible"))
                .toList();
    }

    @Test
    void theListIsLongAndNearlyAllOfItIsNamed() {
        List<String> silent = new ArrayList<>();
        List<Row> all = dangerous().toList();
        for (Row row : all) {
            boolean named = isNamed(
                            row,
                            run("planned", row.one(), "quench", row.other()).review())
                    || proposal(row.one(), row.other()).findings().stream()
                            .anyMatch(f -> f.code().word().startsWith("proposal-incompatible"));
            if (!named) {
                silent.add(row.toString());
            }
        }
        assertTrue(all.size() >= LEAST_PAIRS, "pairs: " + all.size());
        assertTrue(
                100 * (all.size() - silent.size()) >= LEAST_NAMED_PERCENT * all.size(),
                silent.size() + " silent: " + silent);
    }

    @ParameterizedTest
    @MethodSource("never")
    void whatMustNotMeetStopsAPlanAndHoldsWhatWasDone(Row row) {
        Review planned = run("planned", row.one(), "wash", row.other()).review();
        assertTrue(
                planned.findings().stream()
                        .anyMatch(f -> f.code().word().equals(MUST_NOT) && f.severity() == Severity.STOP),
                () -> row + " in a plan: "
                        + planned.runs().get(0).tally().evidence().meetings().list());
        Review done = run("in workup", row.one(), "wash", row.other()).review();
        assertTrue(
                done.findings().stream()
                        .anyMatch(f -> f.code().word().equals(MUST_NOT) && f.severity() != Severity.NOTE),
                () -> row + " done");
        Review proposed = proposal(row.one(), row.other());
        assertTrue(
                proposed.findings().stream()
                        .anyMatch(f ->
                                f.code().word().startsWith("proposal-incompatible") && f.severity() == Severity.STOP),
                () -> row + " proposed: " + proposed.findings());
    }

    @ParameterizedTest
    @MethodSource("ordinary")
    void anOrdinaryWashOrQuenchRaisesNeitherStopNorHold(Row row) {
        assertEquals(
                List.of(),
                hard(run("planned", row.one(), row.kind(), row.other()).review()),
                row::toString);
        assertEquals(
                List.of(),
                hard(run("in workup", row.one(), row.kind(), row.other()).review()),
                row::toString);
    }
}
