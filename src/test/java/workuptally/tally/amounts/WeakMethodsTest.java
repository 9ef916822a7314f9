package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;

/** TLC and LC-MS of a layer of 50 mL: shown, and counted only where the laboratory says so. */
class WeakMethodsTest {
    private static SmallBook book(String method, String result) {
        return SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", method, "Result", result, "Unit", "mg/mL");
    }

    private static Content content(SmallBook book) {
        return book.tally().layer("A1").orElseThrow().contents().get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"TLC", "LC-MS", "LCMS", "UPLC/MS"})
    void doesNotCountUnlessTheLimitsSaySo(String method) {
        SmallBook book = book(method, "<0.10");
        assertEquals(Content.Kind.UNKNOWN, content(book).kind());
        assertTrue(book.tally().notComputed().stream()
                .anyMatch(n -> n.because().endsWith("is shown and does not count here")));
    }

    @Test
    void countsWhereTheLimitsSaySo() {
        assertEquals(
                0.005 * (1 + 1.645 * 0.012),
                content(book("TLC", "<0.10").limit("TLC counts", "yes"))
                        .upperBoundGrams()
                        .orElseThrow(),
                1e-9);
        assertEquals(
                0.005 * (1 + 1.645 * 0.012),
                content(book("LC-MS", "n.d.").limit("LC-MS counts", "yes").limit("Detection limit LC-MS", "0.10"))
                        .upperBoundGrams()
                        .orElseThrow(),
                1e-9);
    }

    @Test
    void spotIsABoundAtTwiceItsFigure() {
        // told apart within a factor of 2 at best (common practice): 2 × 0.10 mg/mL × 50 mL = 0.010 g, and 1.2 % of the
        // volume
        Content spot = content(book("TLC", "0.10").limit("TLC counts", "yes"));
        assertEquals(Content.Kind.BOUND, spot.kind());
        assertEquals(0.010 * (1 + 1.645 * 0.012), spot.upperBoundGrams().orElseThrow(), 1e-9);
    }

    @Test
    void resultByIonsIsUncertainByAFifth() {
        // 20 % (common practice) and 1.2 % of the volume: 0.005 g + 1.645·u
        Content found = content(book("LC-MS", "0.10").limit("LC-MS counts", "yes"));
        assertEquals(
                0.005 * (1 + 1.645 * Math.hypot(0.20, 0.012)),
                found.upperBoundGrams().orElseThrow(),
                1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"TLC", "LC-MS"})
    void countsAgainstWhereItFindsClearlyMore(String method) {
        // 1.2 mg/mL by HPLC beside 20 mg/mL: more than five times as much, of 50 mL 1.0 g
        Content disputed = content(book("HPLC", "1.2")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", method, "Result", "20", "Unit", "mg/mL"));
        assertEquals(Content.Rests.DISPUTED_READINGS, disputed.rests());
        assertEquals(1.0, disputed.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(
                Content.Rests.OWN_READING,
                content(book("HPLC", "1.2")
                                .row(
                                        "assays",
                                        "Sample",
                                        "A1",
                                        "Substance",
                                        "P",
                                        "Method",
                                        method,
                                        "Result",
                                        "1.5",
                                        "Unit",
                                        "mg/mL"))
                        .rests());
    }
}
