package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.tally.waste.SolventUse.Purification;

/** Two invented uses of one solvent in round numbers; hand arithmetic. */
class SolventUseTest {
    private static SolventUse use(double times) {
        return SolventUse.balanced(
                "toluene",
                Optional.of("108-88-3"),
                100 * times,
                50 * times,
                new Purification(40 * times, 8 * times, 4 * times, 2 * times),
                10 * times,
                20 * times,
                5 * times,
                3 * times,
                2 * times,
                0.5,
                (int) times);
    }

    @Test
    void whatIsNotFoundIsTheRest() {
        // 100 + 50 − 10 − 20 − 5 − 3 − 2 = 110 g; of the purification 40 − 8 − 4 − 2 = 26 g.
        assertEquals(110, use(1).notFoundGrams(), 1e-12);
        assertEquals(26, use(1).purification().notFoundGrams(), 1e-12);
        // 150 g of 0.5 g/mL are 0.3 L; the purification is outside.
        assertEquals(0.3, use(1).inLitres(), 1e-12);
        assertEquals(40, use(1).purificationGrams(), 1e-12);
    }

    @Test
    void usesOfOneSolventAddUpColumnByColumn() {
        assertEquals(use(11), use(1).plus(use(10)));
    }
}
