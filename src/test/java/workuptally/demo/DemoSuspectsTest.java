package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.measurements.NextTest;
import workuptally.model.Place;
import workuptally.tally.suspects.Suspect;
import workuptally.tally.suspects.UsualSlip;

/**
 * Three runs of the invented week have an entry that is wrong on purpose: these are named, and no other cell is. And what its open layers
 * wait for is asked for by the test that tells most.
 */
class DemoSuspectsTest {
    private static Review review;

    @BeforeAll
    static void reviews() throws Exception {
        review = DemoReview.review();
    }

    private static Suspect only(String run) {
        List<Suspect> suspects = review.runs().stream()
                .filter(r -> r.id().equals(run))
                .findFirst()
                .orElseThrow()
                .suspects()
                .list();
        assertEquals(1, suspects.size(), run);
        return suspects.get(0);
    }

    @Test
    void theMolarMassOfTheBaseIsNamed() {
        Suspect suspect = only("R26-044");
        assertEquals(UsualSlip.SALT_FOR_BASE, suspect.slip());
        assertEquals("charges.csv line 12, Molar mass", suspect.place().inWords());
        assertEquals("107.15", suspect.typed());
        // benzylamine hydrochloride C7H10ClN, standard atomic weights of 2021
        assertEquals("143.61", suspect.suggested());
    }

    @Test
    void theSwappedLabelsAreNamed() {
        Suspect suspect = only("R26-045");
        assertEquals(UsualSlip.LABELS_SWAPPED, suspect.slip());
        assertEquals(
                List.of("layers.csv line 25, Layer", "layers.csv line 26, Layer"),
                Stream.concat(Stream.of(suspect.place()), suspect.together().stream())
                        .map(Place::inWords)
                        .sorted()
                        .toList());
        assertTrue(suspect.explains().containsAll(List.of("density of layer L1", "density of layer L2")));
    }

    @Test
    void theMissingTareIsNamedWithWhatTheRegisterHas() {
        Suspect suspect = only("R26-047");
        assertEquals(UsualSlip.MISSING_ENTRY, suspect.slip());
        assertEquals("isolated.csv line 11, Tare", suspect.place().inWords());
        assertEquals("84.1012", suspect.suggested());
    }

    private static List<NextTest> next(String run) {
        return review.runs().stream()
                .filter(r -> r.id().equals(run))
                .findFirst()
                .orElseThrow()
                .nextTests();
    }

    @Test
    void theRagsAssayIsTheNextMeasurementOf048() {
        NextTest first = next("R26-048").get(0);
        assertEquals(NextTest.Kind.ASSAY, first.kind());
        assertEquals(List.of("R1"), first.samples());
        assertEquals(List.of("A1", "R1", "A2"), first.settles());
        // 2 % of 3.70 g of theory in 17.5 mL, within what the run limit leaves and with a guard for the assay to come
        assertTrue(first.mustBeBelow().orElseThrow() < 1000 * 0.02 * 3.85 / 17.5);
    }

    @Test
    void oneAssayOfTheBrineIsTheNextMeasurementOf041() {
        assertEquals(1, next("R26-041").size());
        NextTest first = next("R26-041").get(0);
        assertEquals(List.of("A3"), first.samples());
        assertEquals(List.of("benzoic acid", "benzocaine"), first.substances());
        assertEquals(List.of("A3"), first.settles());
    }

    @Test
    void noMeasurementIsAdvisedWhileAStopIsOpen() {
        assertEquals(List.of(), next("R26-044"));
        assertEquals(List.of(), next("R26-047"));
    }

    @Test
    void noOtherRunNamesACell() {
        Map<String, Integer> shown = new TreeMap<>();
        for (RunReview run : review.runs()) {
            if (!run.suspects().list().isEmpty()) {
                shown.put(run.id(), run.suspects().list().size());
            }
        }
        assertEquals(Map.of("R26-044", 1, "R26-045", 1, "R26-047", 1), shown);
    }
}
