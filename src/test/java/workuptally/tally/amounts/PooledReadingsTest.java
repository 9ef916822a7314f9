package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Content.Kind;
import workuptally.tally.amounts.Content.Rests;

/** Several assays of one product in layer A1; results in g with u of 2 %. */
class PooledReadingsTest {
    private static SmallBook book(String... results) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        for (String result : results) {
            book.row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", result, "Unit", "g");
        }
        return book;
    }

    private static Content pooled(String... results) {
        List<Content> contents = book(results).tally().layer("A1").orElseThrow().contents();
        assertEquals(1, contents.size());
        return contents.get(0);
    }

    @Test
    void agreeingResultsGiveTheirMeanAndTheLargerBound() {
        // u = 0.02 g and 0.0208 g; 0.04 g apart is within 2·√(0.02² + 0.0208²) = 0.0577 g. Bound of 1.04 g: 1.04 × (1 +
        // 1.645 × 0.02).
        Content content = pooled("1.00", "1.04");
        assertEquals(1.02, content.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(1.074216, content.upperBoundGrams().orElseThrow(), 1e-9);
        assertTrue(content.isOwnEvidence());
    }

    @Test
    void amountsArePooledAsTheMassesAre() {
        // over 200 g/mol: 5.1 mmol on the mean, 5 mmol of the larger of two that do not agree
        assertEquals(
                5.1, pooled("1.00", "1.04").amountMillimoles().orElseThrow().value(), 1e-12);
        assertEquals(
                5.0, pooled("0.50", "1.00").amountMillimoles().orElseThrow().value(), 1e-12);
        assertFalse(pooled("1.00", "1.04").evidence().contains("agree"));
        assertTrue(pooled("0.50", "1.00").evidence().endsWith("which do not agree"));
    }

    @Test
    void nonDetectIsHeldAgainstTheLowEndOfAResult() {
        // 1.00 − 2 × 0.02 = 0.96 g
        assertEquals(Rests.OWN_READING, pooled("1.00", "<0.97").rests());
        assertEquals(Rests.DISPUTED_READINGS, pooled("1.00", "<0.95").rests());
        assertEquals(Rests.DISPUTED_READINGS, pooled("<0.95", "1.00").rests());
    }

    @Test
    void resultsApartByTheirUncertaintyAgree() {
        // u = 0.02 and 0.0212 g: up to 2 × 0.02914 = 0.0583 g apart
        assertEquals(Rests.OWN_READING, pooled("1.00", "1.058").rests());
        assertEquals(Rests.DISPUTED_READINGS, pooled("1.00", "1.06").rests());
    }

    @Test
    void secondLowerResultNeverLowersTheBound() {
        assertEquals(
                pooled("1.00").upperBoundGrams().orElseThrow(),
                pooled("1.00", "0.97").upperBoundGrams().orElseThrow(),
                1e-12);
    }

    @Test
    void ofResultsThatDoNotAgreeTheLargerCountsAndTheyAreDisputed() {
        Content content = pooled("0.50", "1.00");
        assertEquals(1.00, content.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(Rests.DISPUTED_READINGS, content.rests());
        assertFalse(content.isOwnEvidence());
    }

    @Test
    void nonDetectBelowAResultDisputesIt() {
        assertEquals(Rests.DISPUTED_READINGS, pooled("1.00", "<0.10").rests());
        assertEquals(Rests.OWN_READING, pooled("1.00", "<1.50").rests());
        assertEquals(1.50, pooled("1.00", "<1.50").upperBoundGrams().orElseThrow(), 1e-12);
    }

    @Test
    void nonDetectsAreNeverAveragedDown() {
        Content content = pooled("<0.10", "<0.30");
        assertEquals(Kind.BOUND, content.kind());
        assertEquals(0.30, content.upperBoundGrams().orElseThrow(), 1e-12);
        assertEquals(0.15, content.massGrams().orElseThrow().value(), 1e-12);
    }

    @Test
    void zeroIsNoResult() {
        assertEquals(Kind.UNKNOWN, pooled("0").kind());
        assertEquals(Kind.UNKNOWN, pooled("<0").kind());
        assertTrue(book("0").tally().notComputed().stream()
                .anyMatch(n -> n.because().startsWith("0 is no result")));
    }

    @Test
    void spotOnAPlateCountsWhereTheLaboratorySaysSo() {
        SmallBook book = book("<0.10").but("assays", "Method", "TLC");
        assertEquals(
                Kind.UNKNOWN,
                book.tally().layer("A1").orElseThrow().contents().get(0).kind());
        Content counted = book.limit("TLC counts", "yes")
                .tally()
                .layer("A1")
                .orElseThrow()
                .contents()
                .get(0);
        assertEquals(Kind.BOUND, counted.kind());
    }

    @Test
    void lowerLimitBoundsNothing() {
        assertEquals(Kind.UNKNOWN, pooled(">0.10").kind());
    }

    @Test
    void figureBelowTheLimitOfTheMethodIsANonDetect() {
        SmallBook book = book("0.03").but("assays", "Unit", "mg/mL").limit("Detection limit HPLC", "0.10");
        Content content = book.tally().layer("A1").orElseThrow().contents().get(0);
        assertEquals(Kind.BOUND, content.kind());
        // 0.10 mg/mL in the volume and its 1.2 %
        assertEquals(0.010 * (1 + 1.645 * 0.012), content.upperBoundGrams().orElseThrow(), 1e-9);
    }
}
