package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Charge;
import workuptally.model.Layer;

/**
 * A plan over 10.00 g of S (100 mmol) in 86.68 g of toluene (0.8668 g/mL: 100 mL), washed with 50 mL of water and 30 mL of brine, dried
 * over sodium sulfate, filtered and stripped. Toluene takes up 0.045 % of water and water 0.052 % of toluene (mass of the saturated phase).
 */
class PlanAccountTest {
    /** Of a plan, whose water layers have no pH yet. */
    private static final String AQUEOUS = "aqueous: the pH will tell";

    private static final double WATER_IN_TOLUENE_GRAMS = 86.68 * 0.045 / 99.955;
    private static final double TOLUENE_IN_WATER_GRAMS = 49.91 * 0.052 / 99.948;

    @Test
    void weighingsAreThePlannedAmountsWithTheToleranceOfTheBook() {
        Plan.Weighing substrate = plan(book()).weighings().get(0);
        assertEquals("S", substrate.material());
        assertEquals("substrate", substrate.role());
        assertEquals(10.00, substrate.massGrams().orElseThrow(), 1e-9);
        assertEquals(100, substrate.amountMillimoles().orElseThrow(), 1e-9);
        assertEquals(OptionalDouble.empty(), substrate.volumeMillilitres());
        assertEquals(OptionalDouble.empty(), substrate.toleranceMillilitres());
        // 1 % by the default, 2 % where the book says so
        assertEquals(0.10, substrate.toleranceGrams().orElseThrow(), 1e-9);
        Plan.Weighing toluene =
                plan(book().limit("Weighing tolerance", "2")).weighings().get(1);
        assertEquals(100, toluene.volumeMillilitres().orElseThrow(), 1e-3);
        assertEquals(2.0, toluene.toleranceMillilitres().orElseThrow(), 1e-3);
        assertEquals(
                "", plan(book().but("charges", "Role", "")).weighings().get(1).role());
    }

    @Test
    void productIsExpectedByItsPlannedYield() {
        Plan.ExpectedProduct product =
                plan(book().but("products", "Planned yield", "85")).products().get(0);
        assertEquals("P", product.product());
        assertEquals(20.0, product.theoryGrams(), 1e-9);
        assertEquals(100, product.theoryMillimoles(), 1e-9);
        assertEquals(17.0, product.expectedGrams().orElseThrow(), 1e-9);
        assertEquals(OptionalDouble.empty(), plan(book()).products().get(0).expectedGrams());
    }

    @Test
    void dryingAgentIsGivenForTheWaterThatBrineLeft() {
        // 0.045 % of 86.65 g of toluene: 0.03899 g; 1.5 times that over 0.6 g/g, twice that over 0.2 g/g
        Plan.DryingNeed need = step(book(), "3").drying().orElseThrow();
        assertEquals("Sodium sulfate, anhydrous", need.agent());
        assertEquals(0.03899, need.waterGrams(), 1e-4);
        assertEquals(1.5 * need.waterGrams() / 0.6, need.leastGrams(), 1e-12);
        assertEquals(2 * need.waterGrams() / 0.2, need.mostGrams(), 1e-12);
        assertTrue(need.assumption().contains("no drops"), need.assumption());
    }

    @Test
    void onlyDryingOverSolventNeedsAnAgent() {
        Plan plan = plan(book());
        assertEquals(Optional.empty(), step(plan, "1").drying());
        assertEquals(Optional.empty(), step(plan, "4").drying());
        assertEquals(
                Optional.empty(),
                step(book().but("charges", "Material", "water"), "3").drying());
        SmallBook filteredThroughAgent = book().row("workup", "Step", "6", "Operation", "filter", "From", "O1");
        filteredThroughAgent.but("workup", "Material", "sodium sulfate").but("workup", "Mass", "5");
        assertEquals(Optional.empty(), step(filteredThroughAgent, "6").drying());
    }

    @Test
    void densitiesAreExpectedOfContactsOnly() {
        Plan plan = plan(book());
        assertEquals(
                Optional.of(Layer.Phase.AQUEOUS),
                step(plan, "1").densities().orElseThrow().lower());
        assertEquals(Optional.empty(), step(plan, "3").densities());
    }

    @Test
    void portionsHoldWhatTheSolventsTakeUpOfEachOther() {
        Plan.ExpectedLayer water = layer(book(), "A1");
        assertEquals(Optional.of(Layer.Phase.AQUEOUS), water.phase());
        assertEquals(List.of("water", "toluene"), List.copyOf(water.grams().keySet()));
        assertEquals(49.91 - WATER_IN_TOLUENE_GRAMS, water.grams().get("water"), 1e-3);
        assertEquals(TOLUENE_IN_WATER_GRAMS, water.grams().get("toluene"), 1e-4);
        assertEquals(
                49.91 - WATER_IN_TOLUENE_GRAMS + TOLUENE_IN_WATER_GRAMS,
                water.massGrams().orElseThrow(),
                1e-3);
        assertEquals(50, water.volumeMillilitres().orElseThrow(), 0.1);
        assertEquals(List.of("water", "toluene"), water.substances());
        assertEquals(List.of(), water.mayHold());
    }

    @Test
    void reactantsStandInTheOrganicPortionWithTheirMass() {
        // S, 10.00 g, and 10.401 g of benzaldehyde beside toluene and the water in it
        SmallBook book = book().row("charges", "Material", "benzaldehyde", "Role", "reagent", "Molar mass", "106.12");
        book.but("charges", "Planned amount", "10.401").but("charges", "Planned unit", "g");
        Plan.ExpectedLayer organic = layer(book, "O1");
        assertEquals(Optional.of(Layer.Phase.ORGANIC), organic.phase());
        assertEquals(
                86.68 - TOLUENE_IN_WATER_GRAMS + WATER_IN_TOLUENE_GRAMS + 20.401,
                organic.massGrams().orElseThrow(),
                1e-3);
        assertEquals(20.401, organic.grams().get("organic reactants and products"), 1e-6);
        // 10 g at 1.2 g/mL and 10.401 g at 1.040 g/mL in solution
        assertEquals(100 + 10 / 1.2 + 10.0, organic.volumeMillilitres().orElseThrow(), 0.2);
    }

    @Test
    void portionThatGoesOnIsNoWaste() {
        Plan plan = plan(book());
        assertFalse(layer(plan, "O1").terminal());
        assertEquals("", layer(plan, "O1").streamName());
        assertEquals("", layer(plan, "O1").why());
        assertTrue(layer(plan, "A1").terminal());
        assertEquals(AQUEOUS, layer(plan, "A1").streamName());
        assertFalse(layer(plan, "A1").why().isEmpty());
    }

    @Test
    void sampleLeavesTheRestOfItsLayer() {
        SmallBook book = book().row("workup", "Step", "6", "Operation", "sample", "From", "A1", "Gives other", "S1");
        assertTrue(layer(book, "A1").terminal());
        assertFalse(layer(book.but("workup", "Operation", "combine"), "A1").terminal());
    }

    @Test
    void phaseIsThatOfTheLayersTableWhereTheStepDoesNotTell() {
        assertEquals(Optional.empty(), layer(book(), "K1").phase());
        assertEquals(
                Optional.of(Layer.Phase.SOLID),
                layer(book().row("layers", "Layer", "K1", "Phase", "solid"), "K1")
                        .phase());
    }

    @Test
    void whatAFilterOrAStillSharesOutIsNotFollowed() {
        Plan plan = plan(book());
        Plan.ExpectedLayer cake = layer(plan, "K1");
        assertTrue(cake.grams().isEmpty());
        assertEquals(OptionalDouble.empty(), cake.massGrams());
        assertEquals(OptionalDouble.empty(), cake.volumeMillilitres());
        assertEquals("", cake.streamName());
        // the agent stays in the filter, so that a cake may hold it and a distillate not; what is followed by its
        // volume alone, S in solution, has no mass to be named by
        assertEquals("toluene", cake.mayHold().get(0));
        assertTrue(cake.mayHold().contains("sodium sulfate"), cake.mayHold().toString());
        assertTrue(
                cake.mayHold().stream().noneMatch(name -> name.contains("organic")),
                cake.mayHold().toString());
        List<String> distillate = layer(plan, "D1").mayHold();
        assertEquals("toluene", distillate.get(0));
        assertFalse(distillate.contains("sodium sulfate"), distillate.toString());
        assertEquals(cake.mayHold(), cake.substances());
        SmallBook straight = book().but("workup", "From", "O3");
        assertFalse(layer(straight, "D1").mayHold().contains("sodium sulfate"));
    }

    @Test
    void everyLabelIsExpectedOnceButTheReactionMixture() {
        SmallBook book = book().row("workup", "Step", "0", "Operation", "dilute", "From", "RM", "Material", "toluene");
        book.but("workup", "Volume", "10").but("workup", "Gives other", "RM");
        Plan plan = plan(book);
        assertEquals(
                List.of("O1", "A1", "O2", "A2", "O3", "O4", "K1", "C1", "D1"),
                plan.layers().stream().map(Plan.ExpectedLayer::label).toList());
        assertEquals("1", layer(plan, "O1").step().number());
    }

    @Test
    void wasteOfAStreamAddsUp() {
        Plan plan = plan(book());
        Plan.ExpectedWaste aqueous = plan.waste().get(0);
        assertEquals(1, plan.waste().size());
        assertEquals(AQUEOUS, aqueous.streamName());
        Plan.ExpectedLayer water = layer(plan, "A1");
        Plan.ExpectedLayer brine = layer(plan, "A2");
        assertEquals(water.massGrams().orElseThrow() + brine.massGrams().orElseThrow(), aqueous.massGrams(), 1e-9);
        assertEquals(
                water.volumeMillilitres().orElseThrow()
                        + brine.volumeMillilitres().orElseThrow(),
                aqueous.volumeMillilitres(),
                1e-9);
        // 50 mL of water at 0.998 and 30 mL of saturated brine at 1.2 g/mL (memory)
        assertEquals(49.9 + 36, aqueous.massGrams(), 0.5);
    }

    @Test
    void streamsAreKeptApart() {
        SmallBook book = book().but("workup", "Operation", "wash").but("workup", "Material", "water");
        book.but("workup", "Volume", "20").but("workup", "Gives other", "").but("workup", "Gives organic", "O5");
        assertEquals(
                List.of(AQUEOUS, "Non-halogenated organic liquid"),
                plan(book).waste().stream().map(Plan.ExpectedWaste::streamName).toList());
    }

    @Test
    void substratesAndReagentsMayBeLeftOver() {
        SmallBook book = book().row("charges", "Material", "B", "Role", "reagent", "Planned amount", "1")
                .row("charges", "Material", "C", "Role", "catalyst", "Planned amount", "1")
                .row("charges", "Material", "D", "Planned amount", "1");
        assertEquals(
                List.of("S", "B"),
                Plan.leftOver(book.run()).stream().map(Charge::material).toList());
    }

    private static Plan plan(SmallBook book) {
        return book.tally().plan().orElseThrow();
    }

    private static Plan.ExpectedLayer layer(SmallBook book, String label) {
        return layer(plan(book), label);
    }

    private static Plan.ExpectedLayer layer(Plan plan, String label) {
        return plan.layers().stream()
                .filter(l -> l.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Plan.PlannedStep step(SmallBook book, String number) {
        return step(plan(book), number);
    }

    private static Plan.PlannedStep step(Plan plan, String number) {
        return plan.steps().stream()
                .filter(s -> s.step().number().equals(number))
                .findFirst()
                .orElseThrow();
    }

    private static SmallBook book() {
        return SmallBook.empty()
                .but("runs", "Status", "planned")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Planned amount", "10.00")
                .but("charges", "Planned unit", "g")
                .row("charges", "Material", "toluene", "Role", "solvent", "Planned amount", "86.68")
                .but("charges", "Planned unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "brine", "Volume", "30")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "3", "Operation", "dry", "From", "O2", "Material", "sodium sulfate")
                .but("workup", "Mass", "5.00")
                .but("workup", "Gives organic", "O3")
                .row("workup", "Step", "4", "Operation", "filter", "From", "O3", "Gives other", "O4+K1")
                .row("workup", "Step", "5", "Operation", "strip", "From", "O4", "Gives other", "C1+D1");
    }
}
