package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Content.Kind;

/** Layers in which a product was looked for, and those in which it was not; what their rows lack. */
class WhatLayersHoldTest {
    private static SmallBook layer(String phase) {
        return SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", phase, "Volume", "100", "Net", "110.00", "Status", "kept");
    }

    private static List<Kind> kinds(SmallBook book, String label) {
        return book.tally().layer(label).orElseThrow().contents().stream()
                .map(Content::kind)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"aqueous, true", "rag, true", "mother liquor, true", "solid, false", "distillate, false"})
    void aLiquidThatNobodyAssayedHoldsAnUnknownAmount(String phase, boolean unknown) {
        assertEquals(unknown ? List.of(Kind.UNKNOWN) : List.of(), kinds(layer(phase), "A1"));
    }

    @Test
    void aDistillateHoldsAVolatileProduct() {
        assertEquals(List.of(Kind.UNKNOWN), kinds(layer("distillate").first("products", "Boiling point", "60"), "A1"));
    }

    @Test
    void aSecondProductThatNobodyLookedForIsNotKnownEither() {
        SmallBook book = layer("aqueous")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150")
                .row("products", "Product", "N", "Wanted", "no", "Molar mass", "150")
                .row("assays", "Sample", "A1", "Substance", "p", "Method", "HPLC", "Result", "2", "Unit", "mg/mL");
        List<Content> contents = book.tally().layer("A1").orElseThrow().contents();
        assertEquals(
                List.of("P", "Q"),
                contents.stream().map(c -> c.substance().toUpperCase()).toList());
        assertEquals("not assayed for it", contents.get(1).evidence());
        Content alone =
                layer("aqueous").tally().layer("A1").orElseThrow().contents().get(0);
        assertTrue(alone.kind() == Kind.UNKNOWN && !alone.evidence().equals("not assayed for it"));
    }

    @Test
    void aSampleOrLiquorInWhichOneProductWasLookedForIsLeftOut() {
        SmallBook book = SmallBook.reaction()
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150")
                .row("workup", "Step", "1", "Operation", "sample", "From", "RM", "Gives other", "Q1")
                .row("layers", "Layer", "Q1", "Phase", "organic", "Volume", "2", "Status", "kept")
                .row("assays", "Sample", "Q1", "Substance", "P", "Method", "HPLC", "Result", "2", "Unit", "mg/mL");
        assertEquals(List.of(Kind.MEASURED), kinds(book, "Q1"));
        assertEquals(
                List.of(Kind.UNKNOWN, Kind.UNKNOWN),
                kinds(book.but("assays", "Substance", "S"), "Q1").stream()
                        .filter(k -> k == Kind.UNKNOWN)
                        .toList());
        SmallBook liquor = SmallBook.reaction()
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00")
                .row("workup", "Step", "1", "Operation", "crystallise", "From", "C1", "Gives other", "ML1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Volume", "20", "Status", "kept")
                .row("assays", "Sample", "ML1", "Substance", "P", "Method", "HPLC", "Result", "2", "Unit", "mg/mL");
        assertEquals(List.of(Kind.MEASURED), kinds(liquor, "ML1"));
    }

    @Test
    void aLayerWithoutARowOrThatWasUsedUpIsAskedForNothing() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        assertEquals(List.of(), kinds(book, "A1"));
        SmallBook used = book.row("workup", "Step", "2", "Operation", "dry", "From", "O1", "Gives other", "O2")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "50", "Status", "consumed");
        assertEquals(List.of(), kinds(used, "O1"));
    }

    private static boolean lacksMass(SmallBook book) {
        return book.tally().notComputed().stream()
                .anyMatch(n ->
                        n.what().equals("mass of layer A1") && n.unlockedBy().equals("Gross and Tare of A1 in Layers"));
    }

    @Test
    void aKeptLayerWithoutAMassSaysSo() {
        assertTrue(lacksMass(layer("aqueous").but("layers", "Net", "")));
        assertFalse(lacksMass(layer("aqueous")));
        SmallBook used = layer("aqueous")
                .but("layers", "Net", "")
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Material",
                        "water",
                        "Gives aqueous",
                        "A1")
                .row("workup", "Step", "2", "Operation", "acidify", "From", "A1", "Gives other", "A2");
        assertFalse(lacksMass(used.but("layers", "Status", "consumed")));
    }

    @Test
    void aVolumeOfZeroIsNone() {
        RunTally tally = layer("aqueous").but("layers", "Volume", "0").tally();
        assertTrue(tally.layer("A1").orElseThrow().volumeMillilitres().isEmpty());
        assertTrue(tally.layer("A1").orElseThrow().densityGramsPerMillilitre().isEmpty());
    }

    @Test
    void onlyASamplesVolumeIsTheAliquotOfItsAssay() {
        SmallBook layer = layer("aqueous")
                .but("layers", "Volume", "")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "2", "Unit", "mg/mL")
                .but("assays", "Aliquot", "5");
        assertEquals(Optional.empty(), layer.tally().layer("A1").orElseThrow().volumeMillilitres());
    }
}
