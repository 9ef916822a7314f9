package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Limits;

/**
 * By w = (Ix/Is)·(Ns/Nx)·(Mx/Ms)·(ms/m)·Ps, as in any text on quantitative NMR: two protons with an integral of 3.0 against three protons
 * with 2.0, 200 against 100 g/mol, 10 mg of a standard of 99 % in 50 mg: 3.0/2.0 × 3/2 × 2 × 0.2 × 0.99 = 0.891.
 */
class NmrPurityTest {
    @Test
    void fractionIsThatOfTheEquation() {
        MeasuredValue fraction = of(book()).orElseThrow();
        assertEquals(0.891, fraction.value(), 1e-12);
        // 2 % as stated beside 0.05 mg of each weighing
        assertEquals(
                Math.sqrt(0.02 * 0.02 + 0.005 * 0.005 + 0.001 * 0.001), fraction.relativeStandardUncertainty(), 1e-6);
    }

    @Test
    void theWeighingOfTheStandardCarriesItsName() {
        MeasuredValue fraction =
                of(book().but("nmr-assays", "Standard", "dimethyl sulfone")).orElseThrow();
        assertTrue(
                fraction.budget().stream()
                        .anyMatch(c ->
                                c.reading().name().equals("mass of the standard dimethyl sulfone for the NMR of C1")),
                fraction.budget().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "Substance integral, 6.0, 1.782",
        "Standard integral, 4.0, 0.4455",
        "Substance nuclei, 1, 1.782",
        "Standard nuclei, 6, 1.782",
        "Standard molar mass, 200, 0.4455",
        "Standard mass, 20, 1.782",
        "Sample mass, 100, 0.4455",
        "Standard purity, 49.5, 0.4455"
    })
    void everyNumberCountsOnItsSide(String heading, String cell, double fraction) {
        assertEquals(
                fraction,
                of(book().but("nmr-assays", heading, cell)).orElseThrow().value(),
                1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Substance integral",
                "Standard integral",
                "Substance nuclei",
                "Standard nuclei",
                "Standard molar mass",
                "Standard mass",
                "Sample mass",
                "Standard purity"
            })
    void missingNumberGivesNothing(String heading) {
        assertEquals(Optional.empty(), of(book().but("nmr-assays", heading, "")));
    }

    @Test
    void signalThatIsNotThereGivesNothing() {
        assertEquals(Optional.empty(), of(book().but("nmr-assays", "Substance integral", "0")));
    }

    @ParameterizedTest
    @CsvSource({
        // a rectangular half-width of 3 % of the number
        "Substance integral, 3.0 ± 0.09",
        "Standard integral, 2.0 ± 0.06",
        "Standard mass, 10 ± 0.3",
        "Sample mass, 50 ± 1.5"
    })
    void spanOfANumberWidensTheResult(String heading, String cell) {
        MeasuredValue fraction = of(book().but("nmr-assays", heading, cell)).orElseThrow();
        double span = 0.03 / Math.sqrt(3);
        assertEquals(
                Math.sqrt(0.02 * 0.02 + 0.005 * 0.005 + 0.001 * 0.001 + span * span),
                fraction.relativeStandardUncertainty(),
                1e-6);
    }

    @Test
    void readingsNameTheirCells() {
        assertEquals(
                List.of("Substance integral", "Standard mass", "Sample mass"),
                of(book()).orElseThrow().budget().stream()
                        .sorted(Comparator.comparingDouble(c -> -c.variancePercent()))
                        .map(c -> c.reading().where().replaceAll(".*, ", ""))
                        .toList());
    }

    private static Optional<MeasuredValue> of(SmallBook book) {
        return new NmrPurity(new Readings(), Limits.defaults())
                .fraction(book.run().nmrAssays().get(0), 200);
    }

    private static SmallBook book() {
        return SmallBook.reaction()
                .row("nmr-assays", "Sample", "C1", "Substance", "P", "Standard", "T", "Standard molar mass", "100")
                .but("nmr-assays", "Standard purity", "99")
                .but("nmr-assays", "Standard mass", "10")
                .but("nmr-assays", "Sample mass", "50")
                .but("nmr-assays", "Standard integral", "2.0")
                .but("nmr-assays", "Standard nuclei", "3")
                .but("nmr-assays", "Substance integral", "3.0")
                .but("nmr-assays", "Substance nuclei", "2")
                .but("nmr-assays", "Relative standard uncertainty", "2");
    }
}
