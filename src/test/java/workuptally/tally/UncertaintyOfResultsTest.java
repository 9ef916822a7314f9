package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.Closure;

/** What the uncertainty of a result takes in: weighings of an NMR assay, a shared calibration, few repeats, a number without its zeros. */
class UncertaintyOfResultsTest {
    @Test
    void internalStandardNmrHoldsBothWeighings() {
        // √((0.05/0.9)² + (0.05/1.1)² + 0.02²) = 7.45 %
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00")
                .row("nmr-assays", "Sample", "C1", "Substance", "P", "Standard", "T", "Standard molar mass", "200")
                .but("nmr-assays", "Standard purity", "100")
                .but("nmr-assays", "Standard mass", "0.9")
                .but("nmr-assays", "Sample mass", "1.1")
                .but("nmr-assays", "Standard integral", "1")
                .but("nmr-assays", "Standard nuclei", "1")
                .but("nmr-assays", "Substance integral", "1.1")
                .but("nmr-assays", "Substance nuclei", "1")
                .but("nmr-assays", "Relative standard uncertainty", "2");
        MeasuredValue fraction = book.tally().lots().get(0).productFraction().orElseThrow();
        assertEquals(0.9, fraction.value(), 1e-9);
        assertEquals(0.0745, fraction.relativeStandardUncertainty(), 0.0002);
    }

    @Test
    void resultsOfOneMethodShareHalfTheirVariance() {
        // 1.00 g each at 2 %: u of the sum is 2·(2 %)·√(½ + ½/2) = 3.46 %·1 g, and 2.83 % where both name a calibration
        // of their own
        assertEquals(0.0346, sumOf("", "").standardUncertainty(), 0.0001);
        assertEquals(0.0283, sumOf("C1", "C2").standardUncertainty(), 0.0001);
        assertEquals(0.0346, sumOf("C1", "C1").standardUncertainty(), 0.0001);
    }

    @Test
    void threeRepeatsWidenTheBoundOfALayer() {
        // the 10.0 mL aliquot layer holds 1.000 g by 100 mg/mL: the assay's 5 % and the volume's 6 %, ν = 2 for the
        // first
        Content well = content("");
        Content few = content("3");
        double degrees = few.massGrams().orElseThrow().effectiveDegreesOfFreedom();
        double u = Math.hypot(0.05, 0.06);
        assertEquals(Math.pow(u, 4) / (Math.pow(0.05, 4) / 2), degrees, 0.01);
        assertEquals(1 + 1.645 * u, well.upperBoundGrams().orElseThrow(), 1e-3);
        // one-sided 95 % of Student's distribution with 11 degrees of freedom: 1.796 (JCGM 100:2008, table G.2 for 90
        // %: 1.80)
        assertEquals(11, Math.floor(degrees), 0);
        assertEquals(1 + 1.796 * u, few.upperBoundGrams().orElseThrow(), 1e-3);
    }

    @Test
    void distributionRatioFromAssaysHasItsUncertainty() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Status", "kept");
        assay(book, "O1", "80", "mg/mL", "2", "C1");
        assay(book, "A1", "20", "mg/mL", "2", "C2");
        var gain = book.tally().evidence().reextractions().get(0);
        // the volumes cancel: c(organic)/c(aqueous) = 80/20, u = 4·√(2 %² + 2 %²)
        assertEquals(4, gain.partition().distributionRatio(), 1e-9);
        assertEquals(
                4 * Math.hypot(0.02, 0.02),
                gain.partition().standardUncertainty().orElseThrow(),
                1e-6);
    }

    private static MeasuredValue sumOf(String first, String second) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Status", "kept");
        assay(book, "A1", "1.00", "g", "2", first);
        assay(book, "A2", "1.00", "g", "2", second);
        List<MeasuredValue> masses = book.tally().layers().stream()
                .map(l -> l.contents().get(0).massGrams().orElseThrow())
                .toList();
        return masses.get(0).plus(masses.get(1));
    }

    private static Content content(String replicates) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "10.0", "Status", "kept");
        assay(book, "A1", "100", "mg/mL", "5", "");
        book.but("assays", "Method", "other").but("assays", "Replicates", replicates);
        RunTally tally = book.tally();
        for (Closure closure : tally.closures()) {
            assertTrue(closure.expandedUncertaintyPercent() > 0);
        }
        return tally.layers().get(0).contents().get(0);
    }

    private static void assay(
            SmallBook book, String sample, String result, String unit, String percent, String calibration) {
        book.row("assays", "Sample", sample, "Substance", "P", "Method", "HPLC", "Result", result, "Unit", unit)
                .but("assays", "Relative standard uncertainty", percent)
                .but("assays", "Calibration", calibration);
    }
}
