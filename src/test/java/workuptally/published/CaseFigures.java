package workuptally.published;

import java.util.LinkedHashMap;
import java.util.Map;

/** Figures that the code under test gives for a case, by the names the data file expects. */
final class CaseFigures {
    private final Map<String, Double> byName = new LinkedHashMap<>();

    CaseFigures with(String name, double value) {
        byName.put(name, value);
        return this;
    }

    double get(String name) {
        Double value = byName.get(name);
        if (value == null) {
            throw new IllegalStateException("no figure " + name + " among " + byName.keySet());
        }
        return value;
    }
}
