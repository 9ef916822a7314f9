package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.Readings;
import workuptally.model.Product;

class ProductYieldTest {
    private static final Product PRODUCT = SmallBook.reaction().run().products().get(0);

    private static ProductYield of(double percent, double standardUncertainty, boolean endsWorkup) {
        Readings readings = new Readings();
        return new ProductYield(
                PRODUCT,
                ProductYield.Stage.WORKUP,
                endsWorkup,
                List.of("C1"),
                readings.exact(20),
                readings.enter("yield", "%", percent, standardUncertainty, () -> "here"),
                ProductYield.PercentOf.THEORY,
                YieldBasis.ASSAY,
                Optional.empty(),
                Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"103, 1, true", "102, 1, false", "101, 1, false", "98, 1, false", "103, 2, false"})
    void yieldIsWrongWhereItIsAboveAllByMoreThanItsUncertainty(double percent, double u, boolean above) {
        assertEquals(above, of(percent, u, true).isAboveAll(2));
    }

    @Test
    void yieldOfTheWorkupHeadsItsProductUntilItIsSaidOtherwise() {
        assertTrue(of(80, 1, true).headline());
        assertFalse(of(80, 1, false).headline());
        ProductYield other = of(80, 1, true).headline(false);
        assertFalse(other.headline());
        assertEquals(80, other.percent().value(), 0);
        assertTrue(other.headline(true).headline());
    }

    @Test
    void onlyAnAssayGivesMoreThanABound() {
        for (YieldBasis basis : YieldBasis.values()) {
            boolean bound = basis != YieldBasis.ASSAY && basis != YieldBasis.NONE;
            assertEquals(bound, basis.isUpperBound(), basis.word());
        }
        assertEquals("assay", YieldBasis.ASSAY.word());
    }
}
