package workuptally.tally.amounts;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Estimated make-up of a portion: grams and millilitres of each component. An estimate, never data.
 *
 * @param parts parts by component name
 */
public record Ingredients(Map<String, Part> parts) {
    /** Nothing. */
    public static final Ingredients EMPTY = new Ingredients(Map.of());

    /** Copies the map and keeps its order, which decides the last digit of every sum. */
    public Ingredients {
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    /** One component. */
    public static Ingredients of(String component, double grams, double millilitres) {
        return new Ingredients(Map.of(component, new Part(grams, millilitres)));
    }

    /** Both together; volumes add (ideal mixing). */
    public Ingredients plus(Ingredients other) {
        Map<String, Part> sum = new LinkedHashMap<>(parts);
        for (Map.Entry<String, Part> part : other.parts.entrySet()) {
            sum.merge(part.getKey(), part.getValue(), Part::plus);
        }
        return new Ingredients(sum);
    }

    /** What is left when a share of each component, 0 to 1, goes. */
    public Ingredients share(ToDoubleFunction<String> shareOf) {
        Map<String, Part> left = new LinkedHashMap<>();
        for (Map.Entry<String, Part> part : parts.entrySet()) {
            double share = Math.max(0, Math.min(1, shareOf.applyAsDouble(part.getKey())));
            if (share > 0) {
                left.put(part.getKey(), part.getValue().times(share));
            }
        }
        return new Ingredients(left);
    }

    /** Every component times a factor, 0 or more. */
    public Ingredients times(double factor) {
        Map<String, Part> scaled = new LinkedHashMap<>();
        parts.forEach((name, part) -> scaled.put(name, part.times(factor)));
        return new Ingredients(scaled);
    }

    /** Takes grams of a component out, at most what is there. */
    public Ingredients without(String component, double grams) {
        double there = grams(component);
        double share = there > 0 ? 1 - Math.min(grams, there) / there : 1;
        return share(name -> name.equals(component) ? share : 1);
    }

    public double grams(String component) {
        Part part = parts.get(component);
        return part == null ? 0 : part.grams();
    }

    public double totalGrams() {
        return parts.values().stream().mapToDouble(Part::grams).sum();
    }

    /** Sum of the volumes of its liquids before mixing, mL. */
    public double millilitres() {
        return parts.values().stream().mapToDouble(Part::millilitres).sum();
    }

    /**
     * Amount of a component.
     *
     * @param grams mass, g
     * @param millilitres volume it adds, mL; 0 for a dissolved solid
     */
    public record Part(double grams, double millilitres) {
        Part plus(Part other) {
            return new Part(grams + other.grams, millilitres + other.millilitres);
        }

        Part times(double factor) {
            return new Part(grams * factor, millilitres * factor);
        }
    }
}
