package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MassesTest {
    private final Map<String, Double> put = new LinkedHashMap<>();
    private final Map<String, Double> masses;

    MassesTest() {
        put.put("water", 12.5);
        put.put("ethyl acetate", 3.0);
        put.put("acetic acid", 0.25);
        masses = Masses.copyOf(put);
        put.put("water", 99.0);
    }

    @Test
    void keepsTheOrderAndTheMassesOfTheTimeOfTheCopy() {
        assertEquals(List.of("water", "ethyl acetate", "acetic acid"), List.copyOf(masses.keySet()));
        assertEquals(List.of(12.5, 3.0, 0.25), List.copyOf(masses.values()));
        assertSame(masses, Masses.copyOf(masses));
        assertEquals(3, masses.size());
    }

    @Test
    void findsMassesByName() {
        assertEquals(0.25, masses.get("acetic acid"));
        assertNull(masses.get("acetone"));
        assertFalse(masses.containsKey("acetone"));
        assertEquals(0.0, masses.getOrDefault("acetone", 0.0));
    }

    @Test
    void cannotBeChanged() {
        assertThrows(UnsupportedOperationException.class, () -> masses.put("acetone", 1.0));
        assertThrows(UnsupportedOperationException.class, () -> masses.remove("water"));
        assertThrows(
                UnsupportedOperationException.class,
                () -> masses.entrySet().iterator().next().setValue(1.0));
    }
}
