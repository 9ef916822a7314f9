package workuptally.tally.amounts;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;

/**
 * Masses by name in a fixed order, g; cannot be changed. Names and masses stand in two arrays, since a large book keeps some ten thousands
 * of these with a handful of entries each; a name is therefore looked for from the first to the last.
 */
public final class Masses extends AbstractMap<String, Double> {
    private final String[] names;
    private final double[] grams;

    private Masses(Map<String, Double> masses) {
        names = masses.keySet().toArray(String[]::new);
        grams = masses.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The same masses in the same order. */
    public static Map<String, Double> copyOf(Map<String, Double> masses) {
        return masses instanceof Masses ? masses : new Masses(masses);
    }

    @Override
    public Double get(Object name) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(name)) {
                return grams[i];
            }
        }
        return null;
    }

    @Override
    public boolean containsKey(Object name) {
        return get(name) != null;
    }

    @Override
    public Set<Map.Entry<String, Double>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Map.Entry<String, Double>> iterator() {
                return new Iterator<>() {
                    private int next;

                    @Override
                    public boolean hasNext() {
                        return next < names.length;
                    }

                    @Override
                    public Map.Entry<String, Double> next() {
                        if (next == names.length) {
                            throw new NoSuchElementException();
                        }
                        return Map.entry(names[next], grams[next++]);
                    }
                };
            }

            @Override
            public int size() {
                return names.length;
            }
        };
    }
}
