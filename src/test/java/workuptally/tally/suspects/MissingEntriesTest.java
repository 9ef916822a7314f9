package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;

class MissingEntriesTest {
    private static List<Suspect> ofRun(SmallBook small) {
        Book book = small.book();
        return new MissingEntries(new TareRegister(book.vesselTares()))
                .of(book.runs().get(0));
    }

    private static List<Suspect> ofContainer(SmallBook small) {
        Book book = small.book();
        return new MissingEntries(new TareRegister(book.vesselTares()))
                .of(book.containers().get(0));
    }

    private static SmallBook lot(String gross, String tare) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Vessel", "F-1", "Gross", gross, "Tare", tare);
    }

    @Test
    void aGrossWithoutItsTareWaitsForIt() {
        Suspect missing = ofRun(lot("93.00", "")).get(0);
        assertEquals("isolated.csv line 2, Tare", missing.place().inWords());
        assertEquals("tare of lot C1", missing.what());
        assertEquals("", missing.typed());
        assertEquals("", missing.suggested());
        assertEquals(UsualSlip.MISSING_ENTRY, missing.slip());
        assertEquals(List.of("mass of lot C1, and every balance that rests on it"), missing.explains());
        assertTrue(missing.chiSquareBefore().isEmpty());
    }

    @Test
    void theRegisterKnowsTheTareOfItsVessel() {
        SmallBook book =
                lot("93.00", "").row("vessels", "Vessel", "F-1", "Date", "2026-03-01", "Clean dry tare", "84.10");
        assertEquals("84.10", ofRun(book).get(0).suggested());
    }

    @Test
    void aTareWithoutItsGrossWaitsForIt() {
        Suspect missing = ofRun(lot("", "84.10")).get(0);
        assertEquals("isolated.csv line 2, Gross", missing.place().inWords());
        assertEquals("gross of lot C1", missing.what());
    }

    @Test
    void aWholeOrABlankWeighingMissesNothing() {
        assertEquals(List.of(), ofRun(lot("93.00", "84.10")));
        assertEquals(List.of(), ofRun(lot("", "")));
        // what nobody could read is reported by itself
        assertEquals(List.of(), ofRun(lot("smudged", "84.10")));
        assertEquals(List.of(), ofRun(lot("93.00", "smudged")));
    }

    @Test
    void aLayerMissesItsTareToo() {
        Suspect missing = ofRun(SmallBook.reaction()
                        .row(
                                "layers", "Layer", "A1", "Phase", "aqueous", "Vessel", "E-1", "Gross", "120.0", "Tare",
                                ""))
                .get(0);
        assertEquals("layers.csv line 2, Tare", missing.place().inWords());
        assertEquals("tare of layer A1", missing.what());
    }

    @ParameterizedTest
    @CsvSource({
        "A1, 20, mg/mL, '', 1",
        "A1, 0.2, mol/L, '', 1",
        "A1, 20, % w/w, '', 0",
        "A2, 20, mg/mL, '', 0",
        "A1, '', mg/mL, '', 0",
        "A1, 20, mg/mL, 50, 0"
    })
    void anAssayByVolumeWaitsForTheVolume(String sample, String result, String unit, String volume, int missing) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", volume)
                .row("assays", "Sample", sample, "Substance", "P", "Method", "HPLC", "Result", result, "Unit", unit);
        List<Suspect> found = ofRun(book);
        assertEquals(missing, found.size());
        found.forEach(s -> {
            assertEquals("layers.csv line 2, Volume", s.place().inWords());
            assertEquals("volume of layer A1", s.what());
            assertEquals(List.of("what layer A1 holds, from its assay"), s.explains());
        });
    }

    @Test
    void aContainerThatWasWeighedMissesItsTareAndOneThatWasNotMissesNothing() {
        SmallBook weighed = SmallBook.reaction()
                .row("containers", "Container", "W-1", "Waste stream", "solvents", "Tare", "", "Gross then", "5612");
        Suspect missing = ofContainer(weighed).get(0);
        assertEquals("containers.csv line 2, Tare", missing.place().inWords());
        assertEquals("tare of container W-1", missing.what());
        assertEquals(
                List.of(),
                ofContainer(SmallBook.reaction()
                        .row("containers", "Container", "W-1", "Waste stream", "solvents", "Tare", "412")
                        .but("containers", "Gross then", "")));
    }
}
