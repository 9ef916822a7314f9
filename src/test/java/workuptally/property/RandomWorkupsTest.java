package workuptally.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Book;
import workuptally.model.Limit;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;

/** Two thousand random workups whose truth is known, half of them with gaps; the run id of a failure names its seed. */
@Tag("slow")
class RandomWorkupsTest {
    private static final int RUNS = 1000;

    @TempDir
    private static Path folder;

    private static final List<RandomWorkup> COMPLETE = new ArrayList<>();
    private static final List<RandomWorkup> WITH_GAPS = new ArrayList<>();
    private static Review complete;
    private static Review withGaps;

    @BeforeAll
    static void reviewTheBooks() throws IOException {
        for (int seed = 1; seed <= RUNS; seed++) {
            COMPLETE.add(new RandomWorkup("seed-" + seed, seed, RandomWorkup.Style.COMPLETE));
            WITH_GAPS.add(new RandomWorkup("seed-" + (RUNS + seed), RUNS + seed, RandomWorkup.Style.WITH_GAPS));
        }
        complete = review(COMPLETE);
        withGaps = review(WITH_GAPS);
    }

    private static Review review(List<RandomWorkup> workups) throws IOException {
        CsvTables tables = RandomWorkup.emptyBook();
        workups.forEach(workup -> workup.addTo(tables));
        Book book = tables.read(folder);
        assertEquals(List.of(), book.findings());
        assertEquals(RUNS, book.runs().size());
        return new ReviewBuilder(Reference.load(), "test").review(book);
    }

    @Test
    void productAndMassAreConservedThroughEveryGraph() {
        for (int i = 0; i < RUNS; i++) {
            RandomWorkup truth = COMPLETE.get(i);
            RunTally tally = complete.runs().get(i).tally();
            assertEquals(List.of(), tally.evidence().gaps().graphFaults(), truth.run);
            MassBalance balance = tally.massBalance().orElseThrow();
            assertEquals(truth.inGrams(), balance.inGrams().value(), 1e-5, truth.run);
            assertEquals(truth.inGrams(), balance.outGrams().value(), 1e-5, truth.run);
            Closure closure = tally.closures().get(0);
            assertEquals(100, closure.percent().value(), 1e-4, truth.run);
            boolean tooWide = closure.expandedUncertaintyPercent()
                    > complete.book().limits().value(Limit.CLOSURE_RESOLUTION);
            assertEquals(
                    tooWide ? Closure.Verdict.CANNOT_DECIDE : Closure.Verdict.CLOSES, closure.verdict(), truth.run);
            assertEquals(
                    100 * truth.lotGrams() / truth.productGrams(),
                    tally.yields().get(0).percent().value(),
                    1e-4,
                    truth.run);
        }
    }

    @Test
    void whatWasNotAssayedIsMissingFromTheClosureAndNeverMadeUp() {
        int open = 0;
        for (int i = 0; i < RUNS; i++) {
            RandomWorkup truth = WITH_GAPS.get(i);
            Closure closure = withGaps.runs().get(i).tally().closures().get(0);
            double missing = 100 * truth.missingProductGrams() / truth.productGrams();
            assertEquals(100 - missing, closure.percent().value(), 1e-4, truth.run);
            assertNotEquals(Closure.Verdict.OVER, closure.verdict(), truth.run);
            if (missing > closure.expandedUncertaintyPercent()) {
                assertNotEquals(Closure.Verdict.CLOSES, closure.verdict(), truth.run);
                open++;
            }
        }
        assertTrue(open > RUNS / 4, "only " + open);
    }

    @Test
    void noLayerOfUnknownContentEverHasItsEvidenceComplete() {
        int unknown = 0;
        int settled = 0;
        for (int i = 0; i < RUNS; i++) {
            RandomWorkup truth = WITH_GAPS.get(i);
            RunReview run = withGaps.runs().get(i);
            for (LayerDecision decision : run.decisions()) {
                if (truth.unassayed().contains(decision.layer())) {
                    assertNotEquals(
                            LayerDecision.Outcome.EVIDENCE_COMPLETE, decision.outcome(), truth.run + " " + decision);
                    unknown++;
                } else if (decision.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE) {
                    settled++;
                }
            }
        }
        assertTrue(unknown > 500, "only " + unknown + " layers unknown");
        assertTrue(settled > 0, "no layer complete: the test could not fail");
    }
}
