package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerTally;

/** Mass metrics of the invented week: its authors computed the process mass intensities by hand from the printed masses. */
class DemoMetricsTest {
    private static final List<RunTally> TALLIES = new ArrayList<>();

    @BeforeAll
    static void tallyTheWeek() throws Exception {
        TALLIES.clear();
        Book book = new BookReader().read(Path.of("input-templates", "demo-week"));
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        book.runs().forEach(run -> TALLIES.add(tallying.tally(run)));
    }

    private static RunTally run(String id) {
        return TALLIES.stream().filter(t -> t.run().id().equals(id)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "R26-042,28.4", "R26-043,19.3", "R26-044,99.8", "R26-046,70.5",
        "R26-048,79.2", "R26-050,20.5", "R26-051,35.6", "R26-052,20.0"
    })
    void massIntensityOfARunIsTheMassPutInOverItsProduct(String id, double pmi) {
        assertEquals(pmi, run(id).metrics().orElseThrow().pmi().value(), 0.01 * pmi);
    }

    @Test
    void everyMassPutInIsSolventWaterOrSomethingElse() {
        for (RunTally tally : TALLIES) {
            tally.metrics()
                    .ifPresent(m -> assertTrue(
                            m.solventGrams().value() + m.waterGrams().value()
                                    < m.inGrams().value(),
                            tally.run().id()));
        }
    }

    @Test
    void pmiIsEFactorPlusOneWhereNothingIsReused() {
        Metrics metrics = run("R26-048").metrics().orElseThrow();
        assertEquals(0, metrics.reusedGrams(), 0);
        assertEquals(metrics.pmi().value() - 1, metrics.eFactorWithWater(), 1e-9);
    }

    @Test
    void distillateSetAsideIsLeftOutOfTheEFactor() {
        Metrics metrics = run("R26-042").metrics().orElseThrow();
        assertEquals(44.8, metrics.reusedGrams(), 1e-9);
        assertEquals(
                metrics.pmi().value() - 1 - 44.8 / metrics.productGrams().value(), metrics.eFactorWithWater(), 1e-9);
    }

    @Test
    void reagentOfASolutionCountsWithoutItsSolvent() {
        // 9.11 g benzophenone, and 21 mL of 2.62 mol/L phenylmagnesium bromide at 181.31 g/mol.
        Metrics metrics = run("R26-043").metrics().orElseThrow();
        assertEquals(
                9.11 + 21 * 2.62 * 181.31 / 1000,
                metrics.reactantGrams().orElseThrow().value(),
                0.02);
    }

    @Test
    void workupAloneStartsAtTheQuench() {
        // 60 mL NH4Cl, 60 mL ether, 30 mL brine, 6 g agent, 10 mL ether.
        Metrics metrics = run("R26-043").metrics().orElseThrow();
        assertEquals(
                60 * 1.073 + 60 * 0.713 + 30 * 1.198 + 6 + 10 * 0.713,
                metrics.workupInGrams().value(),
                0.5);
    }

    @ParameterizedTest
    @CsvSource({"R26-045", "R26-047"})
    void metricsAreRefusedWithoutAnAssayedProduct(String id) {
        assertTrue(run(id).metrics().isEmpty());
        assertTrue(run(id).notComputed().stream().anyMatch(n -> n.what().startsWith("mass metrics")));
    }

    @Test
    void plannedRunHasNoMetricsAndAsksForNone() {
        assertEquals(Run.Status.PLANNED, run("R26-049").run().status());
        assertTrue(run("R26-049").metrics().isEmpty());
        assertTrue(run("R26-049").notComputed().stream().noneMatch(n -> n.what().startsWith("mass metrics")));
    }

    @Test
    void makeUpOfEveryLayerAddsUpToItsMass() {
        for (RunTally tally : TALLIES) {
            for (LayerMakeUp makeUp : tally.evidence().makeUps()) {
                assertTrue(makeUp.weighed(), tally.run().id() + " " + makeUp.layer());
                double grams = tally.layer(makeUp.layer())
                        .flatMap(LayerTally::massGrams)
                        .orElseThrow()
                        .value();
                assertEquals(
                        grams, makeUp.totalGrams(), 1e-6 * grams, tally.run().id() + " " + makeUp.layer());
            }
        }
    }

    @Test
    void layerWhoseDensityContradictsItsLabelIsMadeOfTheOtherPhase() {
        assertEquals(
                "dichloromethane",
                run("R26-045")
                        .makeUp("L1")
                        .orElseThrow()
                        .grams()
                        .keySet()
                        .iterator()
                        .next());
        assertEquals(
                "water",
                run("R26-045")
                        .makeUp("L2")
                        .orElseThrow()
                        .grams()
                        .keySet()
                        .iterator()
                        .next());
        assertEquals(
                "halogenated-organic",
                run("R26-045").waste().stream().filter(w -> w.layer().equals("L1")).findFirst().orElseThrow().stream());
    }
}
