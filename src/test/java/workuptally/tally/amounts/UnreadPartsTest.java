package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Run;

class UnreadPartsTest {
    @Test
    void partsOfACompositionThatNoTableKnowsAreNamedInOrder() {
        assertEquals(List.of("brown oil", "glop"), of("water 70 %; brown oil 10 %; ethyl acetate 15 %; glop 5 %"));
    }

    @Test
    void compoundsOfTheRunAreItsOwn() {
        assertEquals(List.of(), of("water 70 %; p 10 %; S 10 %; x-impurity 10 %"));
        // a reagent is not: what is left of it is told by the tables
        assertEquals(List.of("zorblax"), of("water 90 %; zorblax 10 %"));
    }

    @Test
    void liquidsMixedWithoutTheirSharesAreNotTold() {
        assertEquals(List.of("hexane/ethyl acetate"), of("water 70 %; hexane/ethyl acetate 30 %"));
        // a solution in a named solvent is
        assertEquals(List.of(), of("water 70 %; 2 M HCl in ether 30 %"));
    }

    private static List<String> of(String composition) {
        Run run = SmallBook.reaction()
                .row("charges", "Material", "zorblax", "Role", "reagent", "Actual amount", "5")
                .row("assays", "Sample", "A1", "Substance", "X-impurity", "Method", "HPLC", "Result", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Composition", composition)
                .run();
        return new UnreadParts(run, SmallBook.substances()).of(run.layers().get(0));
    }
}
