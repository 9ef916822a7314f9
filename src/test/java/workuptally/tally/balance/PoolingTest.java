package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;

/** Aliquots of two water layers, A1 of a first wash and A2 of a second one, put into one vial. */
class PoolingTest {
    private static SmallBook washed(String first, String second) {
        return SmallBook.reaction()
                .row("charges", "Material", "MTBE", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Status", "kept")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", first, "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", second, "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
    }

    private static Pooling pooling(RunTally tally) {
        return new Pooling(tally.run(), tally.evidence().meetings(), SmallBook.substances());
    }

    private static Optional<String> together(SmallBook book) {
        return pooling(book.tally()).whyNotTogether("A1", "A2");
    }

    private static Optional<String> whyNot(SmallBook book, String label) {
        RunTally tally = book.tally();
        return pooling(tally).whyNot(tally.layer(label).orElseThrow());
    }

    @Test
    void plainWatersMayMeet() {
        assertEquals(Optional.empty(), together(washed("water", "water")));
        assertEquals(Optional.empty(), together(washed("water", "brine")));
        assertEquals(Optional.empty(), whyNot(washed("water", "water"), "A1"));
    }

    @Test
    void acidAndHydrogencarbonateFoamInAVial() {
        String why = together(washed("1 M HCl", "sat. NaHCO3")).orElseThrow();
        assertTrue(why.startsWith("A1 holds ") && why.contains(", A2 "), why);
    }

    @Test
    void acidIsKeptFromCyanide() {
        assertTrue(together(washed("1 M HCl", "sodium cyanide")).isPresent());
        assertTrue(together(washed("sodium azide", "1 M HCl")).isPresent());
    }

    /** Below 4 and above 7.5, whatever it comes from. */
    @ParameterizedTest
    @CsvSource({
        "2, 9, true",
        "9, 2, true",
        "3.9, 7.6, true",
        "4, 9, false",
        "2, 7.5, false",
        "2, '', false",
        "'', 9, false"
    })
    void acidAndBaseByPHAreKeptApart(String first, String second, boolean apart) {
        SmallBook book = washed("water", "water").first("layers", "pH", first).but("layers", "pH", second);
        assertEquals(
                apart
                        ? Optional.of(
                                "one of A1 and A2 is acidic and the other basic by the pH written down: heat, gas")
                        : Optional.empty(),
                together(book));
    }

    @Test
    void thePHAfterTheStepTellsToo() {
        SmallBook book = washed("water", "water").first("layers", "pH", "2").but("workup", "pH after", "9");
        assertTrue(together(book).isPresent());
    }

    @Test
    void whatNoAliquotStandsForIsLeftOut() {
        assertEquals(
                Optional.of("A1 is a solid"), whyNot(washed("water", "water").first("layers", "Phase", "solid"), "A1"));
        assertEquals(
                Optional.of("A1 has no volume"), whyNot(washed("water", "water").first("layers", "Volume", ""), "A1"));
        assertEquals(
                Optional.of("A1 is no clear layer, so that no aliquot stands for it"),
                whyNot(washed("water", "water").first("layers", "Phase", "rag"), "A1"));
        assertEquals(
                Optional.of("A2 is no clear layer, so that no aliquot stands for it"),
                whyNot(washed("water", "water").but("workup", "Emulsion", "persistent"), "A2"));
        assertEquals(Optional.of("O1 has no row in Layers"), whyNot(washed("water", "water"), "O1"));
        SmallBook between = washed("water", "water")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "90", "Status", "kept");
        assertEquals(Optional.of("O1 is not among the layers that end the workup"), whyNot(between, "O1"));
    }
}
