package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.model.Step;

/** A run with one number in each cell that can be read otherwise. */
class ChangesTest {
    private static final Run RUN = SmallBook.reaction()
            .but("charges", "Assay", "98")
            .but("charges", "Molarity", "2.5")
            .but("charges", "Titre", "2.4")
            .but("charges", "Density", "0.95")
            .row("charges", "Material", "S", "Molar mass", "100", "Actual amount", "10.00", "Actual unit", "g")
            .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "MTBE", "Volume", "60")
            .but("workup", "Mass", "44.4")
            .but("workup", "Density", "0.74")
            .but("workup", "Gives organic", "O1")
            .but("workup", "Gives aqueous", "A1")
            .but("workup", "Gives other", "R1")
            .row("layers", "Layer", "O1", "Phase", "organic", "Vessel", "E-1", "Volume", "170", "Gross", "277.0")
            .but("layers", "Tare", "106.0")
            .but("layers", "Net", "171.0")
            .row("layers", "Layer", "A1", "Phase", "aqueous", "Vessel", "E-2", "Volume", "30")
            .row("layers", "Layer", "R1", "Phase", "rag", "Vessel", "E-3", "Volume", "3")
            .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.2", "Unit", "mg/mL")
            .row("assays", "Sample", "C1", "Substance", "P", "Method", "HPLC", "Result", "95", "Unit", "% w/w")
            .row("isolated", "Lot", "C1", "Product", "P", "Vessel", "F-1", "Gross", "93.93", "Tare", "90.12")
            .but("isolated", "Net", "3.81")
            .but("isolated", "Assay", "97.5")
            .but("isolated", "Second weighing", "93.92")
            .run();

    private static List<Entry> entries(Run run) {
        return BalanceEntries.of(run);
    }

    private static Entry entry(String what) {
        return entries(RUN).stream()
                .filter(e -> e.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "molar mass of P",
                "amount of S",
                "molar mass of S",
                "assay of S",
                "molarity of S",
                "titre of S",
                "density of S",
                "volume of MTBE in step 1",
                "mass of MTBE in step 1",
                "density of MTBE in step 1",
                "volume of layer O1",
                "gross of layer O1",
                "tare of layer O1",
                "net mass of layer O1",
                "assay of P in A1",
                "gross of lot C1",
                "tare of lot C1",
                "net mass of lot C1",
                "assay of lot C1",
                "second weighing of lot C1"
            })
    void oneNumberIsReadOtherwiseAndNothingElse(String what) {
        Entry typed = entry(what);
        Run changed = Slips.nudged(typed, 1).in(RUN);
        List<Double> expected = entries(RUN).stream()
                .map(e -> e.number().value() + (e.cell().equals(typed.cell()) ? 1 : 0))
                .toList();
        assertEquals(
                expected, entries(changed).stream().map(e -> e.number().value()).toList());
        assertEquals(
                entries(RUN).stream().map(Entry::what).toList(),
                entries(changed).stream().map(Entry::what).toList());
        // back again it is the run as typed
        assertEquals(RUN, Slips.nudged(typed, 0).in(changed));
    }

    @Test
    void withoutAChangeTheRunIsAsTyped() {
        Run same = Changes.NONE.in(RUN);
        assertEquals(RUN, same);
        assertSame(RUN.layers().get(0), same.layers().get(0));
        assertSame(RUN.charges().get(0), same.charges().get(0));
        assertSame(RUN.products().get(0), same.products().get(0));
        assertSame(RUN.steps().get(0), same.steps().get(0));
        assertSame(RUN.assays().get(0), same.assays().get(0));
        assertSame(RUN.lots().get(0), same.lots().get(0));
    }

    @Test
    void anotherUnitIsThatOfOneCharge() {
        Run changed =
                Changes.ofUnit(RUN.charges().get(0).row(), Dimension.VOLUME).in(RUN);
        assertEquals(
                List.of(Dimension.VOLUME, Dimension.MASS),
                changed.charges().stream()
                        .map(c -> c.quantity().actual().orElseThrow().dimension())
                        .toList());
        assertEquals(
                "g", changed.charges().get(0).quantity().actual().orElseThrow().unitAsTyped());
    }

    @Test
    void labelsTheOtherWayRoundChangeTheStepsAndThePhases() {
        Run changed = Changes.ofLabels("O1", "A1").in(RUN);
        Step step = changed.steps().get(0);
        assertEquals(List.of("A1"), step.given().organic());
        assertEquals(List.of("O1"), step.given().aqueous());
        assertEquals(List.of("R1"), step.given().other());
        assertEquals(
                List.of(
                        Optional.of(Layer.Phase.AQUEOUS),
                        Optional.of(Layer.Phase.ORGANIC),
                        Optional.of(Layer.Phase.RAG)),
                changed.layers().stream().map(Layer::phase).toList());
        assertEquals(
                List.of("O1", "A1", "R1"),
                changed.layers().stream().map(Layer::label).toList());
        Run rag = Changes.ofLabels("R1", "A1").in(RUN);
        assertEquals(Optional.of(Layer.Phase.RAG), rag.layers().get(2).phase());
    }

    @Test
    void aLayerThatIsLeftOutGoesWithItsAssays() {
        Run changed = Changes.without("A1").in(RUN);
        assertEquals(
                List.of("O1", "R1"), changed.layers().stream().map(Layer::label).toList());
        assertEquals(List.of("C1"), changed.assays().stream().map(Assay::sample).toList());
        assertEquals(1, changed.lots().size());
    }

    @Test
    void aLotThatIsLeftOutGoesWithItsAssays() {
        Run changed = Changes.withoutLot("C1").in(RUN);
        assertEquals(List.of(), changed.lots().stream().map(Lot::label).toList());
        assertEquals(List.of("A1"), changed.assays().stream().map(Assay::sample).toList());
        assertEquals(3, changed.layers().size());
    }

    @Test
    void aChargeThatIsLeftOutIsOneRow() {
        RowPlace second = RUN.charges().get(1).row();
        List<Charge> left = Changes.withoutCharge(second).in(RUN).charges();
        assertEquals(List.of(RUN.charges().get(0)), left);
    }

    @Test
    void anotherFormIsThatOfOneProductWithItsMolarMass() {
        Product product = RUN.products().get(0);
        Entry molarMass = entry("molar mass of P");
        Changes form = Changes.ofForm(
                product.row(), "C7H10ClN", Slips.nudged(molarMass, 36.46).numbers());
        Product changed = form.in(RUN).products().get(0);
        assertEquals("C7H10ClN", changed.formula());
        assertEquals(
                236.46, changed.molarMassGramsPerMole().entered().orElseThrow().value(), 1e-9);
        Changes formulaAlone = Changes.ofForm(product.row(), "C7H10ClN", List.of());
        assertEquals("C7H10ClN", formulaAlone.in(RUN).products().get(0).formula());
    }

    @Test
    void aCellOfSeveralNumbersIsReadByItsPart() {
        RowPlace row = TypedCells.row("containers", 2);
        BookCell acetone = new BookCell(row, "Contents then", "acetone");
        Changes changes =
                Changes.of(List.of(new Changes.Number(acetone, TypedCells.number("1950", row, "Contents then"))));
        assertEquals(1950, changes.in(acetone).orElseThrow().value(), 0);
        assertTrue(changes.in(new BookCell(row, "Contents then", "heptane")).isEmpty());
    }
}
