package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Dimension;
import workuptally.model.Place;
import workuptally.tally.RunBalances;

class MistypedWordsTest {
    private static List<Hypothesis> of(SmallBook book) {
        return new MistypedWords(RunBalances.of(book.tally())).list();
    }

    private static List<String> places(Hypothesis hypothesis) {
        return hypothesis.places().stream().map(Place::inWords).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "g, VOLUME, 10.00 mL",
        "mL, MASS, 10.00 g",
        "mg, VOLUME, 10.00 µL",
        "kg, VOLUME, 10.00 L",
        "µL, MASS, 10.00 mg",
        "L, MASS, 10.00 kg"
    })
    void aLiquidMayHaveBeenTypedInTheOtherUnit(String unit, Dimension meant, String suggested) {
        SmallBook book = SmallBook.reaction().but("charges", "Density", "0.95").but("charges", "Actual unit", unit);
        Hypothesis other = of(book).get(0);
        assertEquals(UsualSlip.MILLILITRES_FOR_GRAMS, other.slip());
        assertEquals(Optional.of(meant), other.changes().dimension().map(Changes.Unit::dimension));
        assertEquals(suggested, other.suggested());
        assertEquals("10.00 " + unit, other.typed());
        assertEquals("unit of S", other.what());
        assertEquals(List.of("charges.csv line 2, Actual unit", "charges.csv line 2, Actual amount"), places(other));
    }

    @Test
    void withoutADensityOrAnAmountThereIsNoOtherUnit() {
        assertEquals(List.of(), of(SmallBook.reaction()));
        assertEquals(
                List.of(),
                of(SmallBook.reaction().but("charges", "Density", "0.95").but("charges", "Actual amount", "")));
        assertEquals(
                List.of(),
                of(SmallBook.reaction().but("charges", "Density", "0.95").but("charges", "Actual unit", "mmol")));
    }

    /** 90 g of ethyl acetate and 50 g of water, both layers weighed and measured. */
    private static SmallBook parted() {
        return SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "90.00")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Gross", "150.00", "Tare", "60.00")
                .but("layers", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Gross", "120.00", "Tare", "70.00")
                .but("layers", "Status", "kept");
    }

    @Test
    void theTwoLayersOfAContactMayBearEachOthersLabels() {
        List<Hypothesis> all = of(parted());
        assertEquals(1, all.size());
        Hypothesis labels = all.get(0);
        assertEquals(UsualSlip.LABELS_SWAPPED, labels.slip());
        assertEquals(List.of("O1", "A1"), labels.changes().swapped());
        assertEquals(List.of("layers.csv line 2, Layer", "layers.csv line 3, Layer"), places(labels));
        assertEquals("O1 organic and A1 aqueous", labels.typed());
        assertEquals("O1 aqueous and A1 organic", labels.suggested());
        assertEquals("labels of layers O1 and A1", labels.what());
    }

    @ParameterizedTest
    @CsvSource({
        // one weighing, in two rows
        "51, 120.00, 70.00, '', 1",
        "51, 120.00, 71.00, '', 0",
        "51, 121.00, 70.00, '', 0",
        // to the last digit
        "51, 120.0, 70.00, '', 0",
        "50, '', '', '', 0"
    })
    void oneWeighingInTwoRowsIsOnePortion(String volume, String gross, String tare, String net, int twice) {
        SmallBook book = parted().row(
                        "layers", "Layer", "A9", "Phase", "aqueous", "Volume", volume, "Gross", gross, "Tare", tare)
                .but("layers", "Net", net)
                .but("layers", "Status", "kept");
        List<Hypothesis> found = of(book).stream()
                .filter(h -> h.slip() == UsualSlip.COUNTED_TWICE)
                .toList();
        assertEquals(twice, found.size());
        found.forEach(h -> {
            assertEquals(Optional.of("A9"), h.changes().leftOut());
            assertEquals("layer A9", h.what());
            assertEquals("the same portion as A1", h.suggested());
            assertEquals(List.of("layers.csv line 4, Layer", "layers.csv line 3, Layer"), places(h));
        });
    }

    @ParameterizedTest
    @CsvSource({"40.0, 50, 1", "40.1, 50, 0", "40.0, 51, 0"})
    void oneNetMassAndVolumeInTwoRowsAreOnePortion(String net, String volume, int twice) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "40.0", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", volume, "Net", net, "Status", "kept");
        assertEquals(twice, of(book).size());
    }

    @ParameterizedTest
    @CsvSource({"s, 10.00, g, 1", "T, 10.00, g, 0", "S, 10.01, g, 0", "S, 10.00, mL, 0", "S, '', g, 0"})
    void oneChargeInTwoRowsIsOneCharge(String material, String amount, String unit, int twice) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Molar mass", "100", "Actual amount", amount)
                .but("charges", "Actual unit", unit);
        List<Hypothesis> found = of(book);
        assertEquals(twice, found.size());
        found.forEach(h -> {
            assertEquals(3, h.changes().leftOutCharge().orElseThrow().row());
            assertEquals("s a second time", h.what());
            assertEquals("the same charge as line 2", h.suggested());
            assertEquals(List.of("charges.csv line 3, Material", "charges.csv line 2, Material"), places(h));
        });
    }

    private static SmallBook lots(String firstStage, String secondStage, String secondNet) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", firstStage, "Net", "3.00")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", secondStage, "Net", secondNet);
    }

    private static List<Optional<String>> leftOutLots(SmallBook book) {
        return of(book).stream().map(h -> h.changes().leftOutLot()).toList();
    }

    @Test
    void aCrudeBesideWhatWasPurifiedFromItIsCountedTwice() {
        assertEquals(List.of(Optional.of("C1")), leftOutLots(lots("crude", "purified", "2.00")));
        assertEquals(List.of(Optional.of("P1")), leftOutLots(lots("purified", "crude", "2.00")));
        Hypothesis crude = of(lots("crude", "purified", "2.00")).get(0);
        assertEquals("the same material as P1", crude.suggested());
        assertEquals(List.of("isolated.csv line 2, Lot", "isolated.csv line 3, Lot"), places(crude));
        assertEquals(List.of(), leftOutLots(lots("crude", "crude", "2.00")));
    }

    @Test
    void twoLotsOfOneWeighingAreOne() {
        assertEquals(List.of(Optional.of("P1")), leftOutLots(lots("crude", "crude", "3.00")));
        assertEquals(List.of(), leftOutLots(lots("crude", "crude", "3.0")));
        SmallBook weighed = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Gross", "93.00", "Tare", "90.00")
                .row("isolated", "Lot", "C2", "Product", "P", "Gross", "93.00", "Tare", "90.00");
        assertEquals(List.of(Optional.of("C2")), leftOutLots(weighed));
        assertEquals(List.of(), leftOutLots(weighed.but("isolated", "Tare", "91.00")));
        assertEquals(
                List.of(), leftOutLots(weighed.but("isolated", "Tare", "90.00").but("isolated", "Gross", "94.00")));
        // two products of one lot are one material
        assertEquals(
                List.of(),
                leftOutLots(SmallBook.reaction()
                        .row("isolated", "Lot", "C1", "Product", "P", "Net", "3.00")
                        .row("isolated", "Lot", "C1", "Product", "Q", "Net", "3.00")));
    }

    @Test
    void aLayerThatAStepUsedUpAndIsSaidToBeThereIsCountedTwice() {
        SmallBook book = parted().row(
                        "workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Mass", "20.00")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
        List<Hypothesis> gone = of(book).stream()
                .filter(h -> h.slip() == UsualSlip.COUNTED_TWICE)
                .toList();
        assertEquals(1, gone.size());
        assertEquals(Optional.of("O1"), gone.get(0).changes().leftOut());
        assertEquals("status of layer O1", gone.get(0).what());
        assertEquals("kept", gone.get(0).typed());
        assertEquals("consumed", gone.get(0).suggested());
        assertEquals(List.of("layers.csv line 2, Status", "layers.csv line 2, Layer"), places(gone.get(0)));
    }
}
