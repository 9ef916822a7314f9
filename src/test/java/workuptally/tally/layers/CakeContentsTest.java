package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.bench.DriedLayer;

/**
 * 100 g of toluene dried over 5.00 g of sodium sulfate; the cake weighs 8.00 g and the filtrate gives 20.00 g of P. Toluene holds 0.045 %
 * of water when saturated and weighs 0.8668 g/mL (solvent table), so the layer holds 0.0450 g of dissolved water and 100/0.8668 × 0.01 ×
 * 0.9982 = 1.1516 g as drops: the solution on the cake is 3.00 less 0 to 1.1966 g, and 20 in 120 parts of it are P.
 */
class CakeContentsTest {
    @Test
    void solutionOnTheCakeIsTheGainLessNoneOrAllOfTheWater() {
        DryingCake cake = cake(dried());
        assertEquals(3.00, cake.gainGrams(), 1e-9);
        assertEquals(1.1966, cake.mostWaterGrams(), 1e-3);
        // 3.00 × 20/120 = 0.5 g; (3.00 − 1.1966) × 20/120 = 0.30057 g.
        assertEquals(0.5, cake.productGrams("P").orElseThrow().high(), 1e-9);
        assertEquals(0.30057, cake.productGrams("P").orElseThrow().low(), 1e-5);
    }

    @Test
    void closureSolventAccountAndDryingNoteSayTheSame() {
        RunTally tally = dried().tally();
        Closure.Candidate inClosure = tally.closures().get(0).candidates().stream()
                .filter(c -> c.place().equals("cake K1"))
                .findFirst()
                .orElseThrow();
        DriedLayer inNote = tally.evidence().dried().get(0);
        assertEquals(inClosure.lowGrams(), inNote.productLowGrams().orElseThrow(), 1e-12);
        assertEquals(inClosure.highGrams(), inNote.productHighGrams().orElseThrow(), 1e-12);
        // Middle of 1.8034 and 3.00 is 2.4017 g, of which 100 in 120 parts are toluene: 2.00142 g.
        double middle = (inNote.productLowGrams().orElseThrow()
                        + inNote.productHighGrams().orElseThrow())
                / 2;
        double toluene = tally.solvents().get(0).onCakesGrams();
        assertEquals(2.00142, toluene, 1e-4);
        assertEquals(5 * middle, toluene, 1e-9);
    }

    @Test
    void brineBeforeTakesTheDropsOutAlsoWithAStepBetween() {
        SmallBook book = dried("O0")
                .row("workup", "Step", "0.5", "Operation", "wash", "From", "RM", "Material", "brine", "Volume", "20")
                .but("workup", "Gives organic", "O9")
                .but("workup", "Gives aqueous", "A9")
                .row("workup", "Step", "0.6", "Operation", "combine", "From", "O9", "Gives other", "O0");
        // 0.045 % of 100 g.
        assertEquals(0.045, cake(book).mostWaterGrams(), 1e-4);
        SmallBook waterLast = book.but("workup", "Operation", "wash")
                .but("workup", "Material", "water")
                .but("workup", "Gives other", "")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A8");
        assertTrue(cake(waterLast).mostWaterGrams() > 1);
    }

    @Test
    void waterIsNoMoreThanTheAgentBinds() {
        // 0.50 g of sodium sulfate goes over into the decahydrate with 0.50 × 180.15/142.04 = 0.63415 g of water.
        SmallBook book = dried().first("workup", "Mass", "0.50");
        assertEquals(0.63415, cake(book).mostWaterGrams(), 1e-3);
    }

    @Test
    void rinseLeavesLessProductOnTheCakeAndTheSameLiquid() {
        SmallBook book = dried().row(
                        "workup",
                        "Step",
                        "2.5",
                        "Operation",
                        "rinse",
                        "From",
                        "O2",
                        "Material",
                        "toluene",
                        "Volume",
                        "5")
                .but("workup", "Gives other", "O2");
        DryingCake cake = cake(book);
        assertTrue(cake.rinsed());
        // A third of 0.5 g, by common practice 0.3.
        assertEquals(0.15, cake.productGrams("P").orElseThrow().high(), 1e-9);
        // 2.4017 × (1 − 0.3 × 20/120) = 2.28162 g.
        assertEquals(2.28162, cake.heldSolvents().totalGrams(), 1e-4);
    }

    @Test
    void rinseOfAnotherPortionLeavesTheCakeUnrinsed() {
        SmallBook book = dried().row(
                        "workup",
                        "Step",
                        "2.5",
                        "Operation",
                        "rinse",
                        "From",
                        "A5",
                        "Material",
                        "toluene",
                        "Volume",
                        "5")
                .but("workup", "Gives other", "A5");
        assertEquals(false, cake(book).rinsed());
    }

    @Test
    void portionsOfAgentOnOneCakeAddUpAndThoseOnAnotherDoNot() {
        SmallBook twice = dried().row(
                        "workup", "Step", "1.5", "Operation", "dry", "From", "O1", "Material", "sodium sulfate")
                .but("workup", "Mass", "1.00")
                .but("workup", "Gives other", "O1");
        assertEquals(6.00, cake(twice).agentGrams(), 1e-9);
        SmallBook again = dried().row(
                        "workup", "Step", "3", "Operation", "dry", "From", "O2", "Material", "sodium sulfate")
                .but("workup", "Mass", "1.00")
                .but("workup", "Gives other", "O3")
                .row("workup", "Step", "4", "Operation", "filter", "From", "O3", "Gives other", "O4+K2")
                .row("layers", "Layer", "K2", "Phase", "solid", "Net", "1.40", "Status", "kept");
        List<DryingCake> cakes = cakes(again);
        assertEquals(5.00, cakes.get(0).agentGrams(), 1e-9);
        assertEquals(1.00, cakes.get(1).agentGrams(), 1e-9);
        assertEquals(0.40, cakes.get(1).gainGrams(), 1e-9);
    }

    @Test
    void lotOfAnotherBranchIsNotInItsSolution() {
        SmallBook book = dried().row(
                        "products", "Product", "Q", "Wanted", "yes", "Molar mass", "100", "Coefficient", "1")
                .row("isolated", "Lot", "C2", "Product", "Q", "Stage", "crude", "From", "A5", "Net", "4.00")
                .but("isolated", "Assay", "100");
        assertTrue(cake(book).productGrams("Q").isEmpty());
        assertEquals(0.5, cake(book).productGrams("P").orElseThrow().high(), 1e-9);
    }

    @Test
    void statedCompositionGoesBeforeTheEstimate() {
        SmallBook book = dried().but("layers", "Composition", "toluene 20 %");
        // 20 % of 8.00 g.
        assertEquals(1.60, cake(book).heldSolvents().totalGrams(), 1e-9);
        assertEquals(1.60, book.tally().solvents().get(0).onCakesGrams(), 1e-9);
    }

    @Test
    void weighedSolidWithoutAnAgentIsNoDryingCake() {
        SmallBook book = dried().first("workup", "Material", "");
        assertEquals(List.of(), cakes(book));
        assertEquals(0, book.tally().solvents().get(0).onCakesGrams(), 0);
    }

    @Test
    void cakeLighterThanItsAgentHoldsNothing() {
        SmallBook book = dried().but("layers", "Net", "4.90");
        assertEquals(0, cake(book).gainGrams(), 0);
        assertTrue(cake(book).productGrams("P").isEmpty());
        assertEquals(0, cake(book).heldSolvents().totalGrams(), 0);
    }

    @Test
    void aSolventOfUnknownAmountLeavesTheStrengthOfTheSolutionUnknown() {
        assertTrue(cake(dried().row("charges", "Material", "MTBE", "Role", "solvent", "Actual amount", "")
                        .but("charges", "Actual unit", "mL"))
                .productGrams("P")
                .isEmpty());
        // by its role, though no table has it, and by the table, whatever its role
        assertTrue(cake(dried().row("charges", "Material", "liquid nine", "Role", "solvent", "Actual amount", "")
                        .but("charges", "Actual unit", "mL"))
                .productGrams("P")
                .isEmpty());
        assertTrue(cake(dried().row("charges", "Material", "MTBE", "Role", "reagent", "Actual amount", "")
                        .but("charges", "Actual unit", "mL"))
                .productGrams("P")
                .isEmpty());
        // a reagent is none, and water of a step
        assertTrue(cake(dried().row("charges", "Material", "benzocaine", "Role", "reagent", "Actual amount", "")
                        .but("charges", "Actual unit", "g"))
                .productGrams("P")
                .isPresent());
        SmallBook step = dried().row("workup", "Step", "3", "Operation", "dilute", "From", "O2", "Gives other", "O2");
        assertTrue(cake(step.but("workup", "Material", "toluene"))
                .productGrams("P")
                .isEmpty());
        assertTrue(cake(step.but("workup", "Mass", "4.00")).productGrams("P").isPresent());
        assertTrue(cake(step.but("workup", "Mass", "").but("workup", "Volume", "5"))
                .productGrams("P")
                .isPresent());
        assertTrue(cake(step.but("workup", "Material", "water").but("workup", "Volume", ""))
                .productGrams("P")
                .isPresent());
    }

    @Test
    void portionsOfAgentInOneStepAddUp() {
        assertEquals(10.00, cake(dried().first("workup", "Portions", "2")).agentGrams(), 1e-9);
    }

    @Test
    void aRinseBeforeTheFilterRinsesNoCake() {
        SmallBook book = dried("O0")
                .row("workup", "Step", "0.5", "Operation", "rinse", "From", "RM", "Material", "toluene", "Volume", "5")
                .but("workup", "Gives other", "O0");
        assertEquals(false, cake(book).rinsed());
    }

    @Test
    void aLotThatTheFiltrateGaveByAStepIsInItsSolution() {
        SmallBook given = dried().first("isolated", "From", "")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "O2", "Gives other", "C1");
        assertEquals(0.5, cake(given).productGrams("P").orElseThrow().high(), 1e-9);
        SmallBook elsewhere = dried().first("isolated", "From", "")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "A5", "Gives other", "C1");
        assertTrue(cake(elsewhere).productGrams("P").isEmpty());
        // a lot that does not say where it is from
        assertEquals(
                0.5,
                cake(dried().first("isolated", "From", ""))
                        .productGrams("P")
                        .orElseThrow()
                        .high(),
                1e-9);
    }

    @Test
    void dropsAreAssumedWhereNoBrineWentBefore() {
        SmallBook book = dried("O0")
                .row("workup", "Step", "0.5", "Operation", "wash", "From", "RM", "Material", "brine", "Volume", "20")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A9");
        assertEquals(false, assumesDrops(book));
        assertTrue(assumesDrops(book.but("workup", "Material", "5% Na2CO3")));
        assertTrue(assumesDrops(dried()));
    }

    private static boolean assumesDrops(SmallBook book) {
        FollowedRun run = FollowedRun.of(book);
        CakeContents contents = new CakeContents(
                run.run(),
                run.substances(),
                run.graph(),
                run.flow(),
                run.tally().amounts());
        return contents.assumesDrops(run.run().orderedSteps().stream()
                .filter(s -> s.operation()
                        .filter(o -> o == workuptally.model.Step.Operation.DRY)
                        .isPresent())
                .findFirst()
                .orElseThrow());
    }

    private static DryingCake cake(SmallBook book) {
        return cakes(book).get(0);
    }

    private static List<DryingCake> cakes(SmallBook book) {
        RunTally tally = book.tally();
        LayerGraph graph = LayerGraph.of(tally.run());
        Substances substances = SmallBook.substances();
        List<Addition> additions =
                new AdditionAccount(tally.run(), new Readings(), Limits.defaults(), graph, substances).list();
        LayerFlow flow =
                LayerFlow.of(LayerGraph.of(tally.run()), substances, tally.amounts(), additions, tally.layers());
        return new CakeContents(tally.run(), substances, graph, flow, tally.amounts()).of(tally.layers(), tally.lots());
    }

    private static SmallBook dried() {
        return dried("RM");
    }

    private static SmallBook dried(String from) {
        return SmallBook.reaction()
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100.00", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "dry", "From", from, "Material", "sodium sulfate")
                .but("workup", "Mass", "5.00")
                .but("workup", "Gives other", "O1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "O1", "Gives other", "O2+K1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "20.00")
                .but("isolated", "Assay", "100")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "8.00", "Status", "kept");
    }
}
