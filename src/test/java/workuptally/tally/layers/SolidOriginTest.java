package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.reference.waste.LayerFacts;
import workuptally.tally.layers.SolidOrigin.Origin;

class SolidOriginTest {
    private static Origin of(SmallBook book, String label, String metal) {
        FollowedRun run = FollowedRun.of(book);
        return new SolidOrigin(run.run(), run.substances(), run.graph()).of(label, Optional.ofNullable(metal));
    }

    private static SmallBook step(SmallBook book, String number, String operation, String from, String material) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Material", material);
    }

    private static SmallBook solid(SmallBook book, String label) {
        return book.row("layers", "Layer", label, "Phase", "solid", "Net", "8.00", "Status", "kept");
    }

    private static SmallBook filtered(String operation, String material) {
        SmallBook book =
                step(SmallBook.reaction(), "1", operation, "RM", material).but("workup", "Gives other", "O1");
        return solid(step(book, "2", "filter", "O1", "").but("workup", "Gives other", "O2+K1"), "K1");
    }

    @Test
    void aCakeBehindADryingStepIsADryingCake() {
        assertEquals(
                new Origin(LayerFacts.Origin.DRYING_CAKE, "drying cake, step 1"),
                of(filtered("dry", "sodium sulfate"), "K1", null));
        // by the operation or by the agent
        assertEquals(
                LayerFacts.Origin.DRYING_CAKE,
                of(filtered("dry", ""), "K1", null).kind());
        assertEquals(
                LayerFacts.Origin.DRYING_CAKE,
                of(filtered("combine", "sodium sulfate"), "K1", null).kind());
        assertEquals(
                LayerFacts.Origin.OTHER,
                of(filtered("dilute", "toluene"), "K1", null).kind());
    }

    @Test
    void anAgentDoesNotOutlastAContactWithWater() {
        SmallBook book =
                step(SmallBook.reaction(), "1", "dry", "RM", "sodium sulfate").but("workup", "Gives other", "O1");
        step(book, "2", "wash", "O1", "water")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
        step(book, "3", "filter", "O2", "").but("workup", "Gives other", "O3+K1");
        assertEquals(LayerFacts.Origin.OTHER, of(solid(book, "K1"), "K1", null).kind());
        // without an aqueous layer it does
        book = step(SmallBook.reaction(), "1", "dry", "RM", "sodium sulfate").but("workup", "Gives other", "O1");
        step(book, "2", "dilute", "O1", "toluene").but("workup", "Gives other", "O2");
        step(book, "3", "filter", "O2", "").but("workup", "Gives other", "O3+K1");
        assertEquals(
                LayerFacts.Origin.DRYING_CAKE, of(solid(book, "K1"), "K1", null).kind());
    }

    @Test
    void anAgentThatWasFilteredOffIsNotOnTheNextSolid() {
        SmallBook book = filtered("dry", "sodium sulfate");
        step(book, "3", "filter", "O2", "").but("workup", "Gives other", "O3+K2");
        assertEquals(LayerFacts.Origin.OTHER, of(solid(book, "K2"), "K2", null).kind());
        assertEquals(LayerFacts.Origin.DRYING_CAKE, of(book, "K1", null).kind());
    }

    @Test
    void aFilterThatAddsItsAgentGivesItsCake() {
        SmallBook book = step(SmallBook.reaction(), "1", "filter", "RM", "sodium sulfate")
                .but("workup", "Gives other", "O1+K1");
        assertEquals("drying cake, step 1", of(solid(book, "K1"), "K1", null).words());
    }

    @ParameterizedTest
    @CsvSource({
        "filter, silica gel, SORBENT, sorbent or filter aid",
        "filter, Celite, SORBENT, sorbent or filter aid",
        "chromatograph, toluene, SORBENT, sorbent or filter aid",
        "filter, '', OTHER, 'solid, composition not recorded, organic or inorganic'"
    })
    void aSolidOverASorbentIsTheSorbent(String operation, String material, LayerFacts.Origin kind, String words) {
        SmallBook book =
                step(SmallBook.reaction(), "1", operation, "RM", material).but("workup", "Gives other", "O1+K1");
        assertEquals(new Origin(kind, words), of(solid(book, "K1"), "K1", null));
    }

    @Test
    void aMetalMayBeOnIt() {
        SmallBook silica =
                step(SmallBook.reaction(), "1", "filter", "RM", "silica gel").but("workup", "Gives other", "O1+K1");
        assertEquals(
                "sorbent or filter aid, may hold palladium",
                of(solid(silica, "K1"), "K1", "palladium").words());
        SmallBook plain = step(SmallBook.reaction(), "1", "filter", "RM", "").but("workup", "Gives other", "O1+K1");
        assertEquals(
                "solid, composition not recorded, organic or inorganic; may hold palladium",
                of(solid(plain, "K1"), "K1", "palladium").words());
    }

    @ParameterizedTest
    @CsvSource({
        "silica gel 90 %, SORBENT, sorbent or filter aid",
        "sodium sulfate 90 %, SORBENT, sorbent or filter aid",
        "sodium chloride 90 %, OTHER, 'solid, no drying agent or sorbent'"
    })
    void aStatedMakeUpTells(String composition, LayerFacts.Origin kind, String words) {
        SmallBook book = step(SmallBook.reaction(), "1", "filter", "RM", "").but("workup", "Gives other", "O1+K1");
        solid(book, "K1").but("layers", "Composition", composition);
        assertEquals(new Origin(kind, words), of(book, "K1", null));
    }
}
