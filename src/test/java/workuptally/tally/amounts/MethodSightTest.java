package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;

/**
 * What a method cannot see it has not found (common practice): a layer of 50 mL with 1.2 mg/mL by it. Invented figures.
 */
class MethodSightTest {
    private static SmallBook book(String method, String substance) {
        return SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", substance, "Method", method, "Result", "1.2")
                .but("assays", "Unit", "mg/mL");
    }

    private static boolean counts(SmallBook book) {
        return book.tally().layer("A1").orElseThrow().contents().stream()
                .anyMatch(c -> c.kind() == Content.Kind.MEASURED);
    }

    @ParameterizedTest
    @CsvSource({"KF, P", "Karl Fischer, S", "LOD, P", "loss on drying, P"})
    void ofTheProductItTellsNothing(String method, String substance) {
        SmallBook book = book(method, substance);
        assertEquals(false, counts(book));
        assertTrue(
                book.tally().notComputed().stream()
                        .anyMatch(n ->
                                n.because().contains(" sees ") && n.unlockedBy().startsWith("an assay that sees it")),
                book.tally().notComputed()::toString);
    }

    @ParameterizedTest
    @CsvSource({"KF, water", "KF, H2O", "LOD, water", "LOD, ethyl acetate", "HPLC, P", "titration, P", "other, P"})
    void whatItSeesCounts(String method, String substance) {
        assertTrue(counts(book(method, substance)));
    }

    @Test
    void aNeutralProductIsNotTitrated() {
        assertEquals(false, counts(book("titration", "P").but("products", "Character", "neutral")));
        assertTrue(counts(book("titration", "P").but("products", "Character", "acid")));
        assertTrue(counts(book("other", "P").but("products", "Character", "neutral")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UV",
                "IR",
                "MS",
                "polarimetry",
                "GC-MS",
                "HPTLC",
                "HPLC uncalibrated",
                "HPLC area%",
                "HPLC (old calibration)",
                "GC, not calibrated",
                "HPLC (Flächenprozent)",
                "HPLC, calibration pending",
                "HPLC (no std)",
                "HPLC %",
                "HPLC purity",
                "HPLC vs SM standard",
                "HPLC, one point",
                "NMR (trace visible)",
                "HPLC RF=1",
                "qNMR (rough)"
            })
    void aMethodThatMeasuresNoContentSettlesNothing(String method) {
        SmallBook book = book(method, "P");
        assertEquals(false, counts(book));
        assertEquals(
                !method.equals("HPTLC"),
                book.book().findings().stream().anyMatch(f -> f.code() == FindingCode.CHOICE_UNKNOWN),
                book.book().findings()::toString);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "HPLC (C18, 254 nm)",
                "HPLC, method 3",
                "GC (dodecane)",
                "HPLC with external standard",
                "HPLC, recalibrated",
                "qNMR (maleic acid)",
                "1H NMR (CDCl3)",
                "HPLC by AK"
            })
    void whatOnlySaysHowItWasDoneChangesNothing(String method) {
        assertTrue(counts(book(method, "P")));
    }

    @ParameterizedTest
    @CsvSource({"HPLC, true", "'', true", "?, true", "KF, false", "HPLC area%, false", "UV, false"})
    void aLotIsNotAssayedByWhatDoesNotSeeIt(String method, boolean assayed) {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "L9", "Product", "P", "Stage", "purified", "Net", "1.00")
                .row("assays", "Sample", "L9", "Substance", "P", "Method", method, "Result", "50", "Unit", "% w/w");
        assertEquals(
                assayed,
                book.tally().lots().stream()
                        .filter(l -> l.lot().label().equals("L9"))
                        .allMatch(l -> l.productFraction().isPresent()));
    }
}
