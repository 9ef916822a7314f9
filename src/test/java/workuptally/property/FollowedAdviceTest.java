package workuptally.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.measurements.NextTest;
import workuptally.model.Limit;
import workuptally.model.Severity;
import workuptally.reference.Reference;

/**
 * Whoever follows the advice what to measure next comes to an end, and no layer that holds more than the limit gets its evidence complete:
 * invented workups of which everything is known, some assays left out, and the advised ones made with an error of 2 %. {@code
 * -Dadvice.runs} sets how many.
 */
@Tag("slow")
class FollowedAdviceTest {
    private static final int RUNS = Integer.getInteger("advice.runs", 15);
    private static final int MOST_ROUNDS = 12;

    @TempDir
    Path folder;

    private Review review(CsvTables tables) {
        return new ReviewBuilder(Reference.load(), "test").review(tables.read(folder));
    }

    @Test
    void followedToItsEndNothingIsAdvisedAndHardlyALayerAboveItsLimitIsComplete() {
        CsvTables tables = RandomWorkup.emptyBook();
        List<RandomWorkup> truths = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            RandomWorkup truth = new RandomWorkup("W" + i, 900 + i, RandomWorkup.Style.SOUND);
            truth.addTo(tables);
            truths.add(truth);
        }
        Random random = new Random(4);
        tables.remove("assays.csv", row -> row.get("Sample").startsWith("A") && random.nextInt(3) > 0);
        int made = 0;
        int composites = 0;
        Review review = review(tables);
        for (int round = 0; round < MOST_ROUNDS && advised(review); round++) {
            for (int i = 0; i < RUNS; i++) {
                List<NextTest> next = assays(review.runs().get(i));
                if (!next.isEmpty()) {
                    NextTest test = next.get(0);
                    made++;
                    composites += test.kind() == NextTest.Kind.COMPOSITE ? 1 : 0;
                    for (String sample : test.samples()) {
                        assay(tables, truths.get(i), sample, test.kind(), random);
                    }
                }
            }
            review = review(tables);
        }
        assertTrue(made > RUNS / 4, "only " + made + " tests advised");
        assertTrue(composites > 0, "no composite advised");
        for (RunReview run : review.runs()) {
            assertEquals(List.of(), assays(run), run.id());
        }
        draws(review, truths);
    }

    private static boolean advised(Review review) {
        return review.runs().stream().anyMatch(r -> !assays(r).isEmpty());
    }

    /** The look at the bench that tells which phase a layer is has no column in these tables. */
    private static List<NextTest> assays(RunReview run) {
        return run.nextTests().stream()
                .filter(t -> t.kind() != NextTest.Kind.DROP)
                .toList();
    }

    /** What an assay of the portion would read; a composite that fails its limit is followed by the assays of its portions. */
    private static void assay(CsvTables tables, RandomWorkup truth, String label, NextTest.Kind kind, Random random) {
        double strength = truth.milligramsPerMillilitre(label);
        boolean dried = kind == NextTest.Kind.DRY_RESIDUE;
        boolean found = strength >= RandomWorkup.DETECTION_LIMIT;
        tables.add(
                "assays.csv",
                List.of(
                        truth.run,
                        label,
                        "product",
                        dried ? "dry residue" : "HPLC",
                        found
                                ? String.format(Locale.ROOT, "%.4f", strength * (1 + 0.02 * random.nextGaussian()))
                                : "<" + RandomWorkup.DETECTION_LIMIT,
                        "mg/mL",
                        "2.0"));
    }

    private static void draws(Review review, List<RandomWorkup> truths) {
        double limit = review.book().limits().value(Limit.LAYER_LIMIT) / 100;
        int complete = 0;
        int above = 0;
        for (int i = 0; i < truths.size(); i++) {
            RandomWorkup truth = truths.get(i);
            RunReview run = review.runs().get(i);
            for (LayerDecision decision : run.decisions()) {
                if (decision.outcome() == Outcome.EVIDENCE_COMPLETE) {
                    complete++;
                    above += truth.productGrams(decision.layer()) > limit * truth.productGrams() ? 1 : 0;
                }
            }
            assertTrue(
                    run.has(Severity.STOP)
                            || !run.nextTests().isEmpty()
                            || run.decisions().stream().allMatch(d -> d.outcome() != Outcome.MEASURE_FIRST),
                    run.id() + " has a layer that waits for a test that nobody advises");
        }
        assertTrue(complete > truths.size() / 2, "only " + complete + " layers complete");
        assertTrue(above <= 0.05 * complete, above + " of " + complete);
    }
}
