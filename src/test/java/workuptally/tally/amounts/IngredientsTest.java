package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** 80 g of toluene (92 mL) and 30 g of water (30 mL) with 5 g of salt in it. */
class IngredientsTest {
    private final Ingredients mixture = Ingredients.of("toluene", 80, 92)
            .plus(Ingredients.of("water", 30, 30))
            .plus(Ingredients.of("salt", 5, 0));

    @Test
    void massesAndVolumesAdd() {
        assertEquals(115, mixture.totalGrams(), 1e-12);
        assertEquals(122, mixture.millilitres(), 1e-12);
        Ingredients more = mixture.plus(Ingredients.of("water", 10, 11));
        assertEquals(40, more.grams("water"), 1e-12);
        assertEquals(133, more.millilitres(), 1e-12);
        assertEquals(
                List.of("toluene", "water", "salt"), List.copyOf(more.parts().keySet()));
        assertEquals(0, mixture.grams("acetone"), 0);
    }

    @Test
    void shareKeepsWhatTheShareSaysAndLeavesOutWhatIsAllGone() {
        Ingredients half = mixture.share(name -> name.equals("water") ? 0.5 : 0);
        assertEquals(List.of("water"), List.copyOf(half.parts().keySet()));
        assertEquals(15, half.totalGrams(), 1e-12);
        assertEquals(15, half.millilitres(), 1e-12);
        // not more than all, and not less than nothing
        assertEquals(mixture, mixture.share(name -> 1.5));
        assertTrue(mixture.share(name -> -0.5).parts().isEmpty());
    }

    @Test
    void factorScalesEverything() {
        assertEquals(230, mixture.times(2).totalGrams(), 1e-12);
        assertEquals(244, mixture.times(2).millilitres(), 1e-12);
    }

    @Test
    void takingGramsOutTakesTheirVolumeAlong() {
        Ingredients left = mixture.without("toluene", 20);
        assertEquals(60, left.grams("toluene"), 1e-12);
        assertEquals(30, left.grams("water"), 1e-12);
        assertEquals(0.75 * 92 + 30, left.millilitres(), 1e-12);
        assertEquals(35, mixture.without("toluene", 200).totalGrams(), 1e-12);
        assertEquals(mixture, mixture.without("acetone", 20));
        // nothing to take of what weighs nothing
        Ingredients weightless = Ingredients.of("foam", 0, 10);
        assertEquals(10, weightless.without("foam", 5).millilitres(), 1e-12);
    }

    @Test
    void cannotBeChanged() {
        assertThrows(UnsupportedOperationException.class, () -> mixture.parts().remove("water"));
    }
}
