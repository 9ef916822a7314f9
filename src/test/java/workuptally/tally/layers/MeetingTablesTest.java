package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.reference.substances.MaterialRow;
import workuptally.report.view.wording.Wording;

/**
 * Every pair of the reactivity tables, each with two materials that belong to it: a plan that adds one to the other, a workup that did, a
 * proposal that pours one to the other, and each material alone. Expected is what the row itself says; the rows name their sources.
 */
@Tag("slow")
class MeetingTablesTest {
    private static final Reference REFERENCE = Reference.load();
    private static final Reactivity REACTIVITY = REFERENCE.reactivity();
    private static final String MUST_NOT = "materials-must-not-meet";

    /** A row of the table with one material for each of its classes. */
    private record Walked(ReactivityPair pair, MaterialRow there, MaterialRow added) {
        boolean neverInFunnel() {
            return pair.inWorkup() == InWorkup.NEVER
                    && pair.where().contains(ReactivityPair.FUNNEL)
                    && pair.severity() != ReactivityPair.Severity.CAUTION;
        }

        boolean isOfContainer() {
            return pair.inWorkup() != InWorkup.ORDINARY && pair.severity() != ReactivityPair.Severity.CAUTION;
        }
    }

    private static final List<Walked> WALKED = new ArrayList<>();
    private static Review review;

    @BeforeAll
    static void reviewOneBook(@TempDir Path folder) throws Exception {
        for (ReactivityPair pair : REACTIVITY.pairs()) {
            if (!pair.ofChart() && pair.thirdClass().isEmpty()) {
                materials(pair).ifPresent(WALKED::add);
            }
        }
        write(folder);
        review = new ReviewBuilder(REFERENCE, "test").review(new BookReader().read(folder));
    }

    private static Membership of(MaterialRow row) {
        return REACTIVITY.membership(row, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Two materials for which this row is the finest; empty where finer rows cover every one that the tables list. */
    private static Optional<Walked> materials(ReactivityPair pair) {
        for (MaterialRow one : REFERENCE.materials()) {
            if (of(one).classes().contains(pair.classA())) {
                for (MaterialRow other : REFERENCE.materials()) {
                    if (one != other
                            && of(other).classes().contains(pair.classB())
                            && REACTIVITY.between(of(one), of(other), Set.of()).contains(pair)) {
                        return Optional.of(new Walked(pair, one, other));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static void write(Path folder) throws IOException {
        StringBuilder runs = new StringBuilder("Run,Reaction,Kind,Status\n");
        StringBuilder charges =
                new StringBuilder("Run,Material,Role,Actual amount,Actual unit,Planned amount,Planned unit\n");
        StringBuilder workup =
                new StringBuilder("Run,Step,Operation,From,Material,Volume (mL),Gives organic,Gives aqueous\n");
        StringBuilder containers = new StringBuilder("Container,Waste stream,Capacity (L),Contents then\n");
        StringBuilder transfers = new StringBuilder("Transfer,Run,Layer,Material,Container,Amount (g),Status\n");
        for (int i = 0; i < WALKED.size(); i++) {
            Walked walked = WALKED.get(i);
            for (String status : List.of("planned", "in workup")) {
                String id = (status.equals("planned") ? "P" : "D") + i;
                runs.append(id).append(",walk,reaction,").append(status).append('\n');
                charges.append(id)
                        .append(',')
                        .append(quoted(walked.there().names().name()))
                        .append(",reagent,20,mmol,20,mmol\n");
                workup.append(id)
                        .append(",1,quench,RM,")
                        .append(quoted(walked.added().names().name()))
                        .append(",50,O1,A1\n");
            }
            containers
                    .append("W")
                    .append(i)
                    .append(",bottle,10,")
                    .append(quoted(walked.there().names().name() + " 100 g"))
                    .append('\n');
            transfers
                    .append("T")
                    .append(i)
                    .append(",,,")
                    .append(quoted(walked.added().names().name()))
                    .append(",W")
                    .append(i)
                    .append(",50,proposed\n");
        }
        Set<MaterialRow> alone = new LinkedHashSet<>();
        WALKED.forEach(w -> {
            alone.add(w.there());
            alone.add(w.added());
        });
        int number = 0;
        for (MaterialRow row : alone) {
            String id = "A" + number++;
            runs.append(id).append(",apart,reaction,planned\n");
            charges.append(id).append(',').append(quoted(row.names().name())).append(",reagent,20,mmol,20,mmol\n");
        }
        Files.writeString(folder.resolve("runs.csv"), runs);
        Files.writeString(folder.resolve("charges.csv"), charges);
        Files.writeString(folder.resolve("workup.csv"), workup);
        Files.writeString(folder.resolve("containers.csv"), containers);
        Files.writeString(folder.resolve("transfers.csv"), transfers);
        Files.writeString(folder.resolve("products.csv"), "Run,Product\n");
        Files.writeString(folder.resolve("isolated.csv"), "Run,Lot,Product\n");
    }

    private static String quoted(String cell) {
        return '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static Map<String, RunReview> runs() {
        Map<String, RunReview> runs = new LinkedHashMap<>();
        review.runs().forEach(run -> runs.put(run.id(), run));
        return runs;
    }

    private static boolean raises(RunReview run, Severity severity) {
        return run.findings().stream().anyMatch(f -> f.code().word().equals(MUST_NOT) && f.severity() == severity);
    }

    @Test
    void nearlyEveryPairHasMaterialsOfItsOwn() {
        long pairs = REACTIVITY.pairs().stream()
                .filter(p -> !p.ofChart() && p.thirdClass().isEmpty())
                .count();
        assertTrue(WALKED.size() > 0.85 * pairs, WALKED.size() + " of " + pairs);
        long grave = WALKED.stream()
                .filter(w -> w.pair().severity() != ReactivityPair.Severity.CAUTION)
                .count();
        assertTrue(grave >= 250, "high or critical: " + grave);
    }

    @Test
    void whatMustNotMeetStopsThePlanAndIsToldWhereItWasDone() {
        Map<String, RunReview> runs = runs();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < WALKED.size(); i++) {
            Walked walked = WALKED.get(i);
            if (walked.neverInFunnel()) {
                boolean done = raises(runs.get("D" + i), Severity.HOLD) || raises(runs.get("D" + i), Severity.CHECK);
                if (!raises(runs.get("P" + i), Severity.STOP) || !done) {
                    wrong.add(
                            walked.pair().key() + ": " + walked.there().names().name() + " + "
                                    + walked.added().names().name());
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void whatIsNotOrdinaryIsStoppedAtTheContainer() {
        Set<String> stopped = new LinkedHashSet<>();
        for (Finding finding : review.findings()) {
            if (finding.code().word().startsWith("proposal-incompatible") && finding.severity() == Severity.STOP) {
                stopped.add(Wording.POINT
                        .of(finding.seen())
                        .substring(0, Wording.POINT.of(finding.seen()).indexOf(':')));
            }
        }
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < WALKED.size(); i++) {
            if (WALKED.get(i).isOfContainer() && !stopped.contains("T" + i)) {
                wrong.add(WALKED.get(i).pair().key() + ": "
                        + WALKED.get(i).there().names().name() + " + "
                        + WALKED.get(i).added().names().name());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyPairOfTheFunnelIsAmongTheMeetings() {
        Map<String, RunReview> runs = runs();
        List<String> missing = new ArrayList<>();
        for (int i = 0; i < WALKED.size(); i++) {
            ReactivityPair pair = WALKED.get(i).pair();
            boolean told = runs.get("D" + i).tally().evidence().meetings().list().stream()
                    .anyMatch(m -> m.pair().equals(pair));
            if (!told && pair.where().contains(ReactivityPair.FUNNEL)) {
                missing.add(pair.key());
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void theSameMaterialsKeptApartRaiseNothing() {
        for (RunReview run : review.runs()) {
            if (run.id().startsWith("A")) {
                assertEquals(
                        List.of(),
                        run.tally().evidence().meetings().list().stream()
                                .filter(Meeting::isForbidden)
                                .toList(),
                        run.id());
            }
        }
    }
}
