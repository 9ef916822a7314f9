package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Run;
import workuptally.model.Step;

class StepOutputsTest {
    private static StepOutputs outputs(Run run) {
        return new StepOutputs(run, LayerGraph.of(run), SmallBook.substances());
    }

    private static SmallBook step(SmallBook book, String number, String operation, String from, String other) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Gives other", other);
    }

    private static SmallBook filtered(String other) {
        return step(SmallBook.reaction(), "1", "filter", "RM", other);
    }

    private static boolean isSolid(SmallBook book, String label) {
        Run run = book.run();
        Step filter = run.steps().stream()
                .filter(s -> s.gives().contains(label))
                .findFirst()
                .orElseThrow();
        return outputs(run).isSolid(filter, label);
    }

    @Test
    void aRowTellsWhatALabelIs() {
        SmallBook book = filtered("K1+F1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "5.00")
                .row("layers", "Layer", "F1", "Phase", "organic", "Net", "5.00");
        assertTrue(isSolid(book, "K1"));
        assertFalse(isSolid(book, "F1"));
    }

    @Test
    void besideAFiltrateThatIsKnownAFilterKeptASolidBack() {
        assertFalse(isSolid(filtered("K1+F1"), "K1"));
        assertTrue(isSolid(filtered("K1+F1").row("layers", "Layer", "F1", "Phase", "organic", "Net", "5.00"), "K1"));
        assertFalse(isSolid(filtered("K1+F1").row("layers", "Layer", "F1", "Phase", "solid", "Net", "5.00"), "K1"));
        assertTrue(isSolid(filtered("K1").but("workup", "Gives organic", "F1"), "K1"));
        assertTrue(isSolid(filtered("K1").but("workup", "Gives aqueous", "F1"), "K1"));
        // by a later step that only a liquid goes through
        assertTrue(isSolid(step(filtered("K1+F1"), "2", "concentrate", "F1", "F2"), "K1"));
        assertFalse(isSolid(step(filtered("K1+F1"), "2", "dry solid", "F1", "F2"), "K1"));
        assertFalse(isSolid(step(filtered("K1+F1"), "2", "concentrate", "K1", "K2"), "K1"));
    }

    @Test
    void onlyAFilterKeepsASolidBack() {
        SmallBook combined =
                step(SmallBook.reaction(), "1", "combine", "RM", "K1").but("workup", "Gives organic", "F1");
        assertFalse(isSolid(combined, "K1"));
        assertFalse(isSolid(filtered("K1").but("workup", "Gives organic", "F1"), "F1"));
        // a lot, and what goes on under its label
        assertFalse(isSolid(
                filtered("C1").but("workup", "Gives organic", "F1").row("isolated", "Lot", "C1", "Product", "P"),
                "C1"));
        assertFalse(
                isSolid(step(filtered("F0"), "2", "filter", "F0", "F0").but("workup", "Gives organic", "F1"), "F0"));
    }

    @Test
    void whatBecomesALotIsASolidUnlessItWasDried() {
        SmallBook product = filtered("P1").row("isolated", "Lot", "C1", "Product", "P", "From", "P1");
        assertTrue(isSolid(product, "P1"));
        SmallBook dried = step(step(SmallBook.reaction(), "1", "dry", "RM", "O1"), "2", "filter", "O1", "P1")
                .row("isolated", "Lot", "C1", "Product", "P", "From", "P1");
        assertFalse(isSolid(dried, "P1"));
        SmallBook agent = step(SmallBook.reaction(), "1", "combine", "RM", "O1").but("workup", "Material", "MgSO4");
        agent = step(agent, "2", "filter", "O1", "P1").row("isolated", "Lot", "C1", "Product", "P", "From", "P1");
        assertFalse(isSolid(agent, "P1"));
        SmallBook diluted =
                step(SmallBook.reaction(), "1", "dilute", "RM", "O1").but("workup", "Material", "toluene");
        diluted = step(diluted, "2", "filter", "O1", "P1").row("isolated", "Lot", "C1", "Product", "P", "From", "P1");
        assertTrue(isSolid(diluted, "P1"));
    }

    @Test
    void aDryingCakeIsASolidBehindADryingStep() {
        SmallBook dried = step(step(SmallBook.reaction(), "1", "dry", "RM", "O1"), "2", "filter", "O1", "K1")
                .but("workup", "Gives organic", "F1");
        Run run = dried.run();
        assertTrue(outputs(run).isDryingCake(run.steps().get(1), "K1"));
        Run plain = filtered("K1").but("workup", "Gives organic", "F1").run();
        assertFalse(outputs(plain).isDryingCake(plain.steps().get(0), "K1"));
        assertFalse(outputs(run).isDryingCake(run.steps().get(1), "F1"));
    }

    @ParameterizedTest
    @CsvSource({
        "wash, O1, A1, true",
        "extract, O1, '', true",
        "back extract, '', A1, true",
        "quench, O1, A1, true",
        "quench, O1, '', false",
        "quench, '', A1, false",
        "strip, O1, A1, false",
        "filter, O1, A1, false"
    })
    void twoLiquidsMeetInAShakeAndWhereAStepGivesBoth(
            String operation, String organic, String aqueous, boolean contact) {
        Step step = step(SmallBook.reaction(), "1", operation, "RM", "")
                .but("workup", "Gives organic", organic)
                .but("workup", "Gives aqueous", aqueous)
                .run()
                .steps()
                .get(0);
        assertEquals(contact, StepOutputs.isContact(step));
    }

    @ParameterizedTest
    @CsvSource({"concentrate, true", "strip, true", "distil, true", "filter, false"})
    void solventIsTakenOffByThreeOperations(String operation, boolean distillation) {
        Step step = step(SmallBook.reaction(), "1", operation, "RM", "O1")
                .run()
                .steps()
                .get(0);
        assertEquals(distillation, StepOutputs.isDistillation(step));
    }

    @Test
    void liquidsAreNeitherDistillateSolidNorLot() {
        Run run = filtered("K1+D1+C1+F1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "5.00")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "5.00")
                .row("layers", "Layer", "F1", "Phase", "mother liquor", "Net", "5.00")
                .row("isolated", "Lot", "C1", "Product", "P")
                .run();
        assertEquals(List.of("F1"), outputs(run).liquids(run.steps().get(0)));
        assertTrue(outputs(run).isDistillate("D1"));
        assertFalse(outputs(run).isDistillate("F1"));
        Run through = step(SmallBook.reaction(), "1", "filter", "C1", "C1")
                .row("isolated", "Lot", "C1", "Product", "P")
                .run();
        assertEquals(List.of("C1"), outputs(through).liquids(through.steps().get(0)));
    }

    @Test
    void amongTheOtherPortionsOfAContactSolidsRagsDistillatesAndLotsAreNoLiquid() {
        Run run = step(SmallBook.reaction(), "1", "wash", "RM", "K1+D1+R1+C1+X1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "5.00")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "5.00")
                .row("layers", "Layer", "R1", "Phase", "rag", "Net", "5.00")
                .row("isolated", "Lot", "C1", "Product", "P")
                .run();
        assertEquals(List.of("X1"), outputs(run).liquidsAmongOthers(run.steps().get(0)));
    }

    @Test
    void aVolatileProductGoesOver() {
        Run run = SmallBook.reaction()
                .first("products", "Boiling point", "60")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "300", "Boiling point", "320")
                .run();
        assertTrue(outputs(run).goesOver(run.products().get(0)));
        assertFalse(outputs(run).goesOver(run.products().get(1)));
    }
}
