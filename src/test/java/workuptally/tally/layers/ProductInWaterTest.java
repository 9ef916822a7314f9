package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;

/** A water layer is worth another extraction where it stands there, has a volume, and a wanted product was found in it. */
class ProductInWaterTest {
    /** Ethyl acetate is shaken with the mixture; the water is assayed for P. */
    private static SmallBook extracted() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "50", "Net", "46.00", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
    }

    private static SmallBook assayed(SmallBook book, String sample, String substance, String result) {
        return book.row("assays", "Sample", sample, "Substance", substance, "Method", "HPLC", "Result", result)
                .but("assays", "Unit", "mg/mL");
    }

    private static List<String> found(SmallBook book, String label) {
        RunTally tally = book.tally();
        return ProductInWater.of(tally.layer(label).orElseThrow(), tally.run()).stream()
                .map(Content::substance)
                .toList();
    }

    @Test
    void wantedProductFoundInWaterThatStandsThere() {
        assertEquals(List.of("P"), found(assayed(extracted(), "A1", "P", "2.0"), "A1"));
    }

    @ParameterizedTest
    @CsvSource({
        // another phase: the assay of an organic layer or a rag says nothing of water
        "Phase, organic",
        "Phase, rag",
        // no volume, nothing to shake
        "Volume, ''",
        "Volume, 0"
    })
    void whatIsNoMeasuredWaterIsPassedOver(String heading, String cell) {
        assertEquals(List.of(), found(assayed(extracted().but("layers", heading, cell), "A1", "P", "2.0"), "A1"));
    }

    @Test
    void amountInGramsOfALayerWithoutVolumeIsNoMeasureOfWater() {
        SmallBook book = assayed(extracted().but("layers", "Volume", "0"), "A1", "P", "2.0");
        assertEquals(List.of(), found(book.but("assays", "Unit", "g"), "A1"));
    }

    @Test
    void organicLayerWithProductIsNoWater() {
        assertEquals(List.of(), found(assayed(extracted(), "O1", "P", "20"), "O1"));
    }

    @Test
    void waterThatWentOnIsNotThereAnyMore() {
        SmallBook book = assayed(extracted(), "A1", "P", "2.0")
                .row("workup", "Step", "2", "Operation", "extract", "From", "A1", "Material", "ethyl acetate")
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
        assertEquals(List.of(), found(book, "A1"));
    }

    @Test
    void sampleTakenForAnalysisIsNotExtracted() {
        SmallBook book = extracted()
                .row("workup", "Step", "2", "Operation", "sample", "From", "A1", "Gives other", "S1")
                .row("layers", "Layer", "S1", "Phase", "aqueous", "Volume", "1.0", "Net", "1.00", "Status", "kept");
        assertEquals(List.of(), found(assayed(book, "S1", "P", "2.0"), "S1"));
        assertEquals(List.of("P"), found(assayed(book, "A1", "P", "2.0"), "A1"));
    }

    @Test
    void liquorOfAPurificationBelongsToTheSecondBalance() {
        SmallBook book = assayed(extracted(), "ML", "P", "2.0")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "10.00")
                .row("workup", "Step", "2", "Operation", "recrystallise", "From", "C1", "Material", "water")
                .but("workup", "Volume", "40")
                .but("workup", "Gives other", "C2")
                .but("workup", "Gives aqueous", "ML")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "purified", "From", "C1", "Net", "8.00")
                .row("layers", "Layer", "ML", "Phase", "aqueous", "Volume", "40", "Net", "40.00", "Status", "kept");
        assertEquals(List.of(), found(book, "ML"));
    }

    @Test
    void onlyWhatWasMeasuredCounts() {
        assertEquals(List.of(), found(assayed(extracted(), "A1", "P", "<0.10"), "A1"));
        assertEquals(List.of(), found(extracted(), "A1"));
    }

    @Test
    void byProductAndUnknownSubstancesAreNotFetched() {
        SmallBook book = extracted()
                .row("products", "Product", "B", "Wanted", "no", "Molar mass", "150", "Coefficient", "1")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "180", "Coefficient", "1");
        assayed(book, "A1", "B", "3.0");
        assayed(book, "A1", "Q", "1.0");
        assayed(book, "A1", "S", "1.5");
        assertEquals(List.of("Q"), found(book, "A1"));
    }

    @Test
    void pHIsTheOneReadInTheLayer() {
        RunTally tally = extracted().but("layers", "pH", "8.5").tally();
        assertEquals(
                8.5,
                ProductInWater.pH(tally.layer("A1").orElseThrow()).orElseThrow().value(),
                0);
        assertTrue(ProductInWater.pH(tally.layer("O1").orElseThrow()).isEmpty());
    }
}
