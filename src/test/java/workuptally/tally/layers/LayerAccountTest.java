package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Content.Kind;

/** Layers A1 (0.40 g product) and A2 that were put together to A3. */
class LayerAccountTest {
    @Test
    void densityIsNetMassOverVolume() {
        // 110.00 g / 100 mL = 1.10 g/mL.
        LayerTally layer = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "110.00")
                .tally()
                .layer("A1")
                .orElseThrow();
        assertEquals(1.10, layer.densityGramsPerMillilitre().orElseThrow().value(), 1e-12);
    }

    @Test
    void phaseIsThatOfTheStepWhereTheRecordNamesNone() {
        RunTally tally = pooled().but("layers", "Phase", "").tally();
        assertEquals(
                workuptally.model.Layer.Phase.AQUEOUS,
                tally.layer("A1").orElseThrow().phase().orElseThrow());
    }

    @Test
    void contentPassesOnToTheOneLiquidMadeFromALayer() {
        Content content = contentOfA3(acidified()).get(0);
        assertEquals(Kind.CARRIED, content.kind());
        assertEquals(0.40, content.massGrams().orElseThrow().value(), 1e-12);
    }

    @Test
    void ownAssayOfTheNewLayerReplacesWhatWouldPassOn() {
        List<Content> contents = contentOfA3(assay(acidified(), "A3", "0.30"));
        assertEquals(1, contents.size());
        assertEquals(Kind.MEASURED, contents.get(0).kind());
        assertEquals(0.30, contents.get(0).massGrams().orElseThrow().value(), 1e-12);
    }

    @Test
    void contentsOfLayersPutTogetherAddUp() {
        // 0.40 g + 0.25 g = 0.65 g, and so do their bounds.
        RunTally tally = assay(pooled(), "A2", "0.25").tally();
        List<Content> contents = tally.layer("A3").orElseThrow().contents();
        assertEquals(1, contents.size());
        assertEquals(Kind.CARRIED, contents.get(0).kind());
        assertEquals(0.65, contents.get(0).massGrams().orElseThrow().value(), 1e-12);
        assertEquals(
                bound(tally, "A1") + bound(tally, "A2"),
                contents.get(0).upperBoundGrams().orElseThrow(),
                1e-12);
    }

    @Test
    void nonDetectsOfLayersPutTogetherStayABound() {
        // <0.10 g and <0.20 g: at most 0.30 g.
        SmallBook book = pooled().but("assays", "Result", "<0.10");
        Content content = contentOfA3(assay(book, "A2", "<0.20")).get(0);
        assertEquals(Kind.BOUND, content.kind());
        assertEquals(0.30, content.upperBoundGrams().orElseThrow(), 1e-12);
    }

    @Test
    void productLookedForInOneOfTwoLayersPutTogetherIsNotKnown() {
        Content content = contentOfA3(pooled()).get(0);
        assertEquals(Kind.UNKNOWN, content.kind());
        assertTrue(content.upperBoundGrams().isEmpty());
        assertEquals("assayed in A1, not in A2", content.evidence());
    }

    @Test
    void contentDoesNotPassOnWhereALayerBecameTwoLiquids() {
        RunTally tally = SmallBook.reaction()
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
                        "Gives organic",
                        "O1",
                        "Gives aqueous",
                        "A1")
                .row(
                        "workup",
                        "Step",
                        "2",
                        "Operation",
                        "wash",
                        "From",
                        "O1",
                        "Material",
                        "water",
                        "Gives organic",
                        "O2",
                        "Gives aqueous",
                        "A2")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", "90.00")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "15", "Unit", "g")
                .tally();
        assertEquals(
                List.of(Kind.UNKNOWN),
                tally.layer("A2").orElseThrow().contents().stream()
                        .map(Content::kind)
                        .toList());
    }

    @Test
    void layerThatNobodyAssayedHoldsAnUnknownAmount() {
        Content content = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "110.00")
                .tally()
                .layer("A1")
                .orElseThrow()
                .contents()
                .get(0);
        assertEquals(Kind.UNKNOWN, content.kind());
        assertTrue(content.massGrams().isEmpty());
    }

    private static double bound(RunTally tally, String layer) {
        return tally.layer(layer)
                .orElseThrow()
                .contents()
                .get(0)
                .upperBoundGrams()
                .orElseThrow();
    }

    private static List<Content> contentOfA3(SmallBook book) {
        return book.tally().layer("A3").orElseThrow().contents();
    }

    private static SmallBook acidified() {
        return start().row(
                        "workup",
                        "Step",
                        "3",
                        "Operation",
                        "acidify",
                        "From",
                        "A1",
                        "Material",
                        "1 M HCl",
                        "Volume",
                        "10")
                .but("workup", "Gives aqueous", "A3");
    }

    private static SmallBook pooled() {
        return start().row("workup", "Step", "3", "Operation", "combine", "From", "A1+A2", "Gives aqueous", "A3");
    }

    private static SmallBook start() {
        SmallBook book = SmallBook.reaction()
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
                        "Gives organic",
                        "O1",
                        "Gives aqueous",
                        "A1")
                .row(
                        "workup",
                        "Step",
                        "2",
                        "Operation",
                        "wash",
                        "From",
                        "O1",
                        "Material",
                        "water",
                        "Gives organic",
                        "O2",
                        "Gives aqueous",
                        "A2");
        for (String label : List.of("A3", "A2", "A1")) {
            book.row("layers", "Layer", label, "Phase", "aqueous", "Volume", "50", "Net", "50.00");
        }
        return assay(book, "A1", "0.40");
    }

    private static SmallBook assay(SmallBook book, String layer, String grams) {
        return book.row("assays", "Sample", layer, "Substance", "P", "Method", "HPLC", "Result", grams, "Unit", "g");
    }
}
