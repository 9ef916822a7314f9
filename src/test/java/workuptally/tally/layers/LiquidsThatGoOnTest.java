package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.layers.LayerIdentity.Verdict;

/** 86.68 g of toluene (100 mL), 30 g of methanol and what is said: what each step leaves under its labels. */
class LiquidsThatGoOnTest {
    private static final double EPSILON = 1e-6;

    private static SmallBook charged(String... materialsAndGrams) {
        SmallBook book = SmallBook.reaction();
        for (int i = 0; i < materialsAndGrams.length; i += 2) {
            book.row("charges", "Material", materialsAndGrams[i], "Role", "solvent")
                    .but("charges", "Actual amount", materialsAndGrams[i + 1])
                    .but("charges", "Actual unit", "g");
        }
        return book;
    }

    private static SmallBook liquids() {
        return charged("toluene", "86.68", "methanol", "30.00");
    }

    private static SmallBook step(SmallBook book, String number, String operation, String from, String other) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Gives other", other);
    }

    private static SmallBook layer(SmallBook book, String label, String phase, String net) {
        return book.row("layers", "Layer", label, "Phase", phase, "Net", net, "Status", "kept");
    }

    private static LayerFlow flow(SmallBook book) {
        return FollowedRun.of(book).flow();
    }

    @Test
    void aDistillateTakesItsShareOfEverySolventAndNothingElse() {
        // 58.34 of 116.68 g
        SmallBook book = layer(
                step(charged("toluene", "86.68", "methanol", "30.00", "water", "20.00"), "1", "distil", "RM", "D1+B1"),
                "D1",
                "distillate",
                "58.34");
        LayerFlow flow = flow(book);
        assertEquals(43.34, flow.portion("D1").grams("toluene"), EPSILON);
        assertEquals(15, flow.portion("D1").grams("methanol"), EPSILON);
        assertEquals(0, flow.portion("D1").grams("water"), 0);
        assertEquals(43.34, flow.portion("B1").grams("toluene"), EPSILON);
        assertEquals(20, flow.portion("B1").grams("water"), EPSILON);
        // by a volume: half of what the solvents take up
        double all = 100 + 30 / 0.7914;
        SmallBook read = layer(step(liquids(), "1", "distil", "RM", "D1+B1"), "D1", "distillate", "")
                .but("layers", "Volume", Double.toString(all / 2));
        assertEquals(15, flow(read).portion("D1").grams("methanol"), 1e-3);
        SmallBook unmeasured = layer(step(liquids(), "1", "distil", "RM", "D1+B1"), "D1", "distillate", "");
        assertEquals(0, flow(unmeasured).portion("D1").totalGrams(), 0);
        SmallBook dry = layer(step(charged("water", "20.00"), "1", "distil", "RM", "D1+B1"), "D1", "distillate", "");
        assertEquals(0, flow(dry).portion("D1").totalGrams(), 0);
    }

    @Test
    void ofADistillationThatNobodyMeasuredNothingOrganicStays() {
        SmallBook book = step(charged("toluene", "86.68", "water", "20.00"), "1", "concentrate", "RM", "B1");
        assertEquals(Set.of("water"), withMass(flow(book).portion("B1")));
        // what was weighed or read stays
        assertTrue(flow(layer(book, "B1", "organic", "60.00")).portion("B1").grams("toluene") > 1);
        SmallBook read = layer(
                step(charged("toluene", "86.68", "water", "20.00"), "1", "concentrate", "RM", "B1"),
                "B1",
                "organic",
                "");
        assertTrue(flow(read.but("layers", "Volume", "60")).portion("B1").grams("toluene") > 1);
        // a filter takes no solvent off
        SmallBook filtered = step(charged("toluene", "86.68"), "1", "filter", "RM", "B1");
        assertEquals(86.68, flow(filtered).portion("B1").grams("toluene"), EPSILON);
    }

    private static Set<String> withMass(Ingredients portion) {
        Set<String> names = new java.util.TreeSet<>();
        portion.parts().forEach((name, part) -> {
            if (part.grams() > 0) {
                names.add(name);
            }
        });
        return names;
    }

    @Test
    void whereAStepWithoutAContactGivesBothPhasesTheyDivide() {
        SmallBook book = step(charged("toluene", "86.68", "water", "50.00"), "1", "filter", "RM", "")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        LayerFlow flow = flow(book);
        assertEquals(86.68, flow.portion("O1").grams("toluene"), 0.05);
        assertEquals(50, flow.portion("A1").grams("water"), 0.05);
        // a distillation carries over what is organic and leaves the rest
        SmallBook distilled = step(charged("toluene", "86.68", "water", "50.00"), "1", "strip", "RM", "")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        layer(distilled, "O1", "organic", "").but("layers", "Volume", "100");
        assertEquals(86.68, flow(distilled).portion("O1").grams("toluene"), EPSILON);
        assertEquals(0, flow(distilled).portion("O1").grams("water"), 0);
        assertEquals(50, flow(distilled).portion("A1").grams("water"), EPSILON);
        assertEquals(0, flow(distilled).portion("A1").grams("toluene"), 0);
        // two labels of one phase share it
        SmallBook one =
                step(charged("toluene", "86.68"), "1", "filter", "RM", "").but("workup", "Gives organic", "O1+O2");
        layer(layer(one, "O1", "organic", "20.00"), "O2", "organic", "60.00");
        assertEquals(20, flow(one).portion("O1").totalGrams(), 0.01);
    }

    @Test
    void aSampleIsItsShareOfTheSource() {
        SmallBook book = layer(step(liquids(), "1", "sample", "RM", "Q1"), "Q1", "organic", "11.668");
        assertEquals(8.668, flow(book).portion("Q1").grams("toluene"), EPSILON);
        assertEquals(86.68, flow(book).portion("RM").grams("toluene"), EPSILON);
    }

    private static SmallBook dried(String waterGrams) {
        SmallBook book = charged("toluene", "86.68", "water", waterGrams);
        step(book, "1", "dry", "RM", "O1")
                .but("workup", "Material", "sodium sulfate")
                .but("workup", "Mass", "5.00");
        step(book, "2", "filter", "O1", "O2+K1");
        return layer(layer(book, "K1", "solid", "8.00"), "O2", "organic", "");
    }

    @Test
    void aFilterKeepsTheAgentBackUnlessWaterHasDissolvedIt() {
        // 5 g of sodium sulfate bind 1.268 g of water each: 6.34 g
        assertEquals(5, flow(dried("6.30")).portion("K1").grams("sodium sulfate"), EPSILON);
        assertEquals(0, flow(dried("6.30")).portion("O2").grams("sodium sulfate"), EPSILON);
        assertEquals(0, flow(dried("6.40")).portion("K1").totalGrams(), EPSILON);
        assertEquals(5, flow(dried("6.40")).portion("O2").grams("sodium sulfate"), EPSILON);
        LayerFlow flow = flow(dried("6.30"));
        Ingredients with = Ingredients.of("sodium sulfate", 5, 0).plus(Ingredients.of("toluene", 50, 58));
        assertEquals(Set.of("toluene"), withMass(flow.withoutUndissolvedAgents(with)));
    }

    @Test
    void aWashThatMakesOnePhaseGoesOnAsOne() {
        // a solid in water alone
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "RM", "Gives other", "B1");
        FollowedRun run = FollowedRun.of(book);
        // step 2 takes all of it under its old label; the shake says a layer that nobody has
        assertEquals(49.91, run.flow().taken(run.run().steps().get(1)).grams("water"), 0.05);
        assertEquals(List.of("aqueous layer of step 1"), names(run.flow()));
        assertEquals(List.of("organic layer of step 1"), names(flow(book.first("workup", "Material", "toluene"))));
        // under a label of its own it is there
        SmallBook labelled = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives other", "X1");
        assertEquals(49.91, flow(labelled).portion("X1").grams("water"), 0.05);
        assertEquals(List.of(), names(flow(labelled)));
    }

    private static List<String> names(LayerFlow flow) {
        return flow.unlabelledPhases().stream().map(UnlabelledPhase::name).toList();
    }

    @Test
    void noLayerHoldsMoreOfASolventThanWentIn() {
        SmallBook book = layer(step(charged("toluene", "86.68"), "1", "filter", "RM", "O1"), "O1", "organic", "150.00");
        assertEquals(86.68, flow(book).portion("O1").grams("toluene"), EPSILON);
        assertEquals(63.32, flow(book).portion("O1").grams(LayerFlow.UNSTATED), EPSILON);
        // what a step added counts too
        step(book, "2", "dilute", "O1", "O2")
                .but("workup", "Material", "toluene")
                .but("workup", "Mass", "20.00");
        layer(book, "O2", "organic", "170.00");
        assertEquals(106.68, flow(book).portion("O2").grams("toluene"), EPSILON);
    }

    @Test
    void aLayerUnderTheOtherLabelGetsWhatTheOtherPhaseHolds() {
        SmallBook book = charged("toluene", "86.68")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        layer(layer(book, "O1", "organic", "101.00").but("layers", "Volume", "100"), "A1", "aqueous", "88.00")
                .but("layers", "Volume", "100");
        FollowedRun run = FollowedRun.of(book);
        List<LayerIdentity> identities = new IdentityAccount(run.run(), run.substances(), run.flow())
                .of(run.tally().layers(), run.tally().amounts());
        assertEquals(
                List.of(Verdict.SWAPPED, Verdict.SWAPPED),
                identities.stream().map(LayerIdentity::verdict).toList());
        assertTrue(run.flow().portion("O1").grams("toluene") > 50);
        run.flow().correct(identities);
        assertTrue(run.flow().portion("O1").grams("water") > 95);
        assertTrue(run.flow().portion("A1").grams("toluene") > 80);
    }

    @Test
    void aConsistentLayerIsLeftAsItIs() {
        SmallBook book = charged("toluene", "86.68")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        layer(layer(book, "O1", "organic", "88.00").but("layers", "Volume", "100"), "A1", "aqueous", "101.00")
                .but("layers", "Volume", "100");
        FollowedRun run = FollowedRun.of(book);
        Ingredients before = run.flow().portion("O1");
        run.flow()
                .correct(new IdentityAccount(run.run(), run.substances(), run.flow())
                        .of(run.tally().layers(), run.tally().amounts()));
        assertEquals(before, run.flow().portion("O1"));
    }

    @Test
    void theSolventOfAPurificationThatGivesItsLotAloneHasAName() {
        SmallBook crystallised = step(SmallBook.reaction(), "1", "crystallise", "C1", "P1")
                .but("workup", "Material", "toluene")
                .but("workup", "Mass", "40.00")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "Net", "15.00");
        assertEquals(
                40, flow(crystallised).unnamedLiquors().get("liquor of step 1").grams("toluene"), EPSILON);
        SmallBook column = crystallised.but("workup", "Operation", "chromatograph");
        assertEquals(40, flow(column).unnamedLiquors().get("eluate of step 1").grams("toluene"), EPSILON);
        SmallBook filtered = column.but("workup", "Operation", "filter");
        assertEquals(
                40, flow(filtered).unnamedLiquors().get("filtrate of step 1").grams("toluene"), EPSILON);
        assertTrue(flow(crystallised.but("workup", "Operation", "crystallise").but("workup", "Mass", ""))
                .unnamedLiquors()
                .isEmpty());
    }

    @Test
    void whatALotIsTakenFromGoesOnUnderItsLabel() {
        SmallBook book = charged("toluene", "86.68")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives aqueous", "A1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "RM", "Net", "18.00");
        assertEquals(List.of(), names(flow(book)));
        assertEquals(86.68, flow(book).portion("RM").grams("toluene"), 0.05);
        SmallBook unspoken = book.but("isolated", "From", "");
        assertEquals(List.of("organic layer of step 1"), names(flow(unspoken)));
    }
}
