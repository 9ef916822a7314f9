package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;

/**
 * 100 g put in, 70 of them in the workup, for 10 g product; 24 g solvent, 40 g water, 20 g set aside to be re-used and 5 g water in them.
 * Definitions as quoted in {@link Metrics}, hand arithmetic.
 */
class MetricsTest {
    private static final Readings READINGS = new Readings();

    private static MeasuredValue grams(double value) {
        return READINGS.exact(value);
    }

    private static Metrics metrics(Optional<MeasuredValue> reactants) {
        return new Metrics(
                grams(100),
                grams(70),
                grams(10),
                false,
                grams(24),
                grams(40),
                20,
                5,
                reactants,
                OptionalDouble.empty());
    }

    @Test
    void everyFigureIsPerGramOfProduct() {
        Metrics metrics = metrics(Optional.of(grams(16)));
        assertEquals(10, metrics.pmi().value(), 1e-12);
        assertEquals(7, metrics.pmiWorkupOnly().value(), 1e-12);
        assertEquals(2.4, metrics.solventIntensity().value(), 1e-12);
        assertEquals(4, metrics.waterIntensity().value(), 1e-12);
        // 10 g of 16 g reactants
        assertEquals(62.5, metrics.reactionMassEfficiencyPercent().orElseThrow().value(), 1e-12);
        assertTrue(metrics(Optional.empty()).reactionMassEfficiencyPercent().isEmpty());
    }

    @Test
    void waterIsLeftOutOfTheEFactorOnBothSides() {
        // (100 − 10 − 20)/10; without water (100 − 40 − 10 − (20 − 5))/10
        assertEquals(7, metrics(Optional.empty()).eFactorWithWater(), 1e-12);
        assertEquals(3.5, metrics(Optional.empty()).eFactorWithoutWater(), 1e-12);
    }

    /** Diels-Alder: all atoms. Fischer ester, ethyl acetate 88.11 of acetic acid 60.05 and ethanol 46.07 g/mol: 83.02 %. */
    @Test
    void atomEconomyIsProductOverReactants() {
        assertEquals(100, Metrics.atomEconomyPercent(120, 120), 1e-12);
        assertEquals(83.02, Metrics.atomEconomyPercent(88.11, 60.05 + 46.07), 0.01);
    }
}
