package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.tally.RunTally;

/**
 * Results of 1.00 g in layer A1 whose uncertainty of 4 % stands on few repeats. Quantiles of Student's distribution, 95 % one-sided: 2.920 for 2,
 * 2.132 for 4, 2.015 for 5 degrees of freedom, 1.645 for very many (any table of statistics).
 */
class CalibrationsTest {
    private static SmallBook book(String calibration, String repeats) {
        return assay(
                SmallBook.reaction()
                        .row(
                                "layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status",
                                "kept"),
                "A1",
                calibration,
                repeats);
    }

    private static SmallBook assay(SmallBook book, String sample, String calibration, String repeats) {
        return book.row("assays", "Sample", sample, "Substance", "P", "Method", "HPLC", "Result", "1.00", "Unit", "g")
                .but("assays", "Relative standard uncertainty", "4")
                .but("assays", "Calibration", calibration)
                .but("assays", "Replicates", repeats);
    }

    private static double bound(SmallBook book, String layer) {
        return book.tally()
                .layer(layer)
                .orElseThrow()
                .contents()
                .get(0)
                .upperBoundGrams()
                .orElseThrow();
    }

    /** 1 + t × 0.04 g, whether or not half of the variance is that of a calibration. */
    @ParameterizedTest
    @CsvSource({
        "cal-1, 3, 2.920",
        "cal-1, 5, 2.132",
        "cal-1, 6, 2.015",
        "'', 3, 2.920",
        "cal-1, '', 1.645",
        "cal-1, 1, 1.645"
    })
    void partsOfAResultHaveTheFreedomOfTheWhole(String calibration, String repeats, double quantile) {
        assertEquals(1 + quantile * 0.04, bound(book(calibration, repeats), "A1"), 1e-4);
        assertEquals(
                1 + quantile * 0.04, bound(book(calibration, repeats).limit("Calibration share", "0"), "A1"), 1e-4);
    }

    /** The calibration has the freedom that its first row gives it; 1/2 = 0.25/0.625 + 0.25/2.5, and 1/4 = 0.25/∞ + 0.25/1. */
    @ParameterizedTest
    @CsvSource({"6, 3, 2.920", "3, 5, 2.132"})
    void laterRowOfACalibrationKeepsItsOwnFreedom(String first, String second, double quantile) {
        SmallBook book = book("cal-1", first)
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        assertEquals(1 + quantile * 0.04, bound(assay(book, "A2", "cal-1", second), "A2"), 1e-4);
    }

    /** Titrations do not share a calibration unless they name one: two of 0.04 g are √2 × 0.04 g; with a name (0.5 × 4 + 0.5 × 2)^½ × 0.04 g. */
    @ParameterizedTest
    @CsvSource({"HPLC, '', 0.069282", "titration, '', 0.056569", "titration, cal-1, 0.069282"})
    void onlyExternalStandardsAreTakenAsShared(String method, String calibration, double grams) {
        SmallBook book = book(calibration, "")
                .but("assays", "Method", method)
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        assay(book, "A2", calibration, "").but("assays", "Method", method);
        RunTally tally = book.tally();
        assertEquals(grams, mass(tally, "A1").plus(mass(tally, "A2")).standardUncertainty(), 1e-6);
    }

    private static MeasuredValue mass(RunTally tally, String layer) {
        return tally.layer(layer).orElseThrow().contents().get(0).massGrams().orElseThrow();
    }

    @Test
    void budgetNamesTheCalibration() {
        assertEquals(
                List.of("assay of P in A1", "calibration cal-1"),
                mass(book("cal-1", "").tally(), "A1").budget().stream()
                        .map(c -> c.reading().name())
                        .sorted()
                        .toList());
    }
}
