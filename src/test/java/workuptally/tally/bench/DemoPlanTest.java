package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.PhaseDensities;

/** The plan of the invented week's esterification; expected figures worked out by hand from the planned amounts and handbook densities. */
class DemoPlanTest {
    private static Plan plan;
    private static List<RunTally> others;

    @BeforeAll
    static void tallyTheWeek() throws Exception {
        Book book = new BookReader().read(Path.of("input-templates", "demo-week"));
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        List<RunTally> tallies = book.runs().stream().map(tallying::tally).toList();
        plan = tallies.stream().flatMap(t -> t.plan().stream()).findFirst().orElseThrow();
        others = tallies.stream()
                .filter(t -> t.run().status() != Run.Status.PLANNED)
                .toList();
    }

    private static Plan.ExpectedLayer layer(String label) {
        return plan.layers().stream()
                .filter(l -> l.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Plan.PlannedStep step(String number) {
        return plan.steps().stream()
                .filter(s -> s.step().number().equals(number))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void runsWithMeasurementsHaveNoPlan() {
        others.forEach(t -> assertEquals(Optional.empty(), t.plan(), t.run().id()));
    }

    /** 8.82 g; one per cent of it either way. */
    @Test
    void weighingsAreThePlannedAmountsWithATolerance() {
        Plan.Weighing alcohol = plan.weighings().get(0);
        assertEquals("isopentyl alcohol", alcohol.material());
        assertEquals(8.82, alcohol.massGrams().getAsDouble(), 1e-9);
        assertEquals(0.0882, alcohol.toleranceGrams().getAsDouble(), 1e-9);
        assertEquals(8.82 / 0.81, alcohol.volumeMillilitres().getAsDouble(), 1e-6);
        assertEquals(3, plan.weighings().size());
    }

    /** 8.82 g × 0.99 / 88.15 g/mol × 130.19 g/mol = 12.90 g. */
    @Test
    void theoryFollowsFromTheLimitingAlcohol() {
        assertEquals(12.90, plan.products().get(0).theoryGrams(), 0.005);
    }

    /** The ether is lighter than water and brine. */
    @Test
    void waterIsExpectedBelowTheEtherInEveryWash() {
        for (String number : List.of("2", "3", "4")) {
            PhaseDensities densities = step(number).densities().orElseThrow();
            assertEquals(Optional.of(Layer.Phase.AQUEOUS), densities.lower(), number);
            assertTrue(densities.organic().lowGramsPerMillilitre() >= 0.73, number);
        }
        assertEquals(Optional.empty(), step("5").densities());
    }

    /** After brine: about 31 to 40 g of ether with 1.3 to 1.5 % water is 0.4 to 0.6 g; twice that over a low uptake of 0.2 g/g and more. */
    @Test
    void dryingAgentIsGivenAsARangeAroundThePlannedOne() {
        Plan.DryingNeed need = step("5").drying().orElseThrow();
        assertEquals(0.5, need.waterGrams(), 0.1);
        assertTrue(need.leastGrams() < 4.0 && 4.0 < need.mostGrams(), need.toString());
    }

    /** 50 mL of water take up 4 to 5 % of ether. */
    @Test
    void washesCarryDissolvedEtherIntoTheExpectedLayers() {
        Plan.ExpectedLayer wash = layer("A1");
        assertEquals(Optional.of(Layer.Phase.AQUEOUS), wash.phase());
        assertTrue(wash.terminal());
        double ether = wash.grams().get("tert-butyl methyl ether");
        assertEquals(2.5, ether, 0.8);
        assertEquals(
                wash.massGrams().getAsDouble(),
                wash.grams().values().stream().mapToDouble(Double::doubleValue).sum(),
                1e-6);
    }

    @Test
    void everyLabelThatTheStepsGiveIsExpectedOnce() {
        assertEquals(
                List.of("O1", "A1", "O2", "A2", "O3", "A3", "O4", "O5", "K1", "D1", "CR1"),
                plan.layers().stream().map(Plan.ExpectedLayer::label).toList());
    }

    @Test
    void wasteIsTheSumOfTheLayersThatEnd() {
        double layers = plan.layers().stream()
                .filter(Plan.ExpectedLayer::terminal)
                .mapToDouble(l -> l.massGrams().orElse(0))
                .sum();
        double waste =
                plan.waste().stream().mapToDouble(Plan.ExpectedWaste::massGrams).sum();
        assertEquals(layers, waste, 1e-6);
        assertTrue(waste > 100, () -> "three washes weigh more than 100 g: " + waste);
    }
}
