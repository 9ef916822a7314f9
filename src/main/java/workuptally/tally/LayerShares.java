package workuptally.tally;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.model.Product;
import workuptally.model.Step;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * Shares of one product in the portions of a workup: what each was found to hold, and for a stretch without assay what was found in the
 * portions made from it. The second is a way to follow the product, never a content.
 */
public final class LayerShares {
    private final RunTally run;
    private final Product product;
    private final Map<String, OptionalDouble> found = new LinkedHashMap<>();
    private final Map<String, List<String>> next = new HashMap<>();

    /**
     * Shares of a product of a run.
     *
     * @param run results
     * @param product one of its products
     */
    public LayerShares(RunTally run, Product product) {
        this.run = run;
        this.product = product;
        Map<String, Integer> madeBy = new HashMap<>();
        List<Step> steps = run.run().orderedSteps().stream()
                .filter(s -> !s.from().isEmpty() && !s.gives().isEmpty())
                .toList();
        for (int i = 0; i < steps.size(); i++) {
            int step = i + 1;
            steps.get(i).from().forEach(label -> note(label, 0, madeBy));
            steps.get(i).gives().forEach(label -> note(label, step, madeBy));
            for (String from : steps.get(i).from()) {
                for (String to : steps.get(i).gives()) {
                    // a label given twice leads back to its first step, which is no way forward
                    if (madeBy.get(from) < madeBy.get(to)) {
                        next.computeIfAbsent(from, f -> new ArrayList<>()).add(to);
                    }
                }
            }
        }
    }

    private void note(String label, int step, Map<String, Integer> madeBy) {
        madeBy.putIfAbsent(label, step);
        found.computeIfAbsent(label, this::share);
    }

    private OptionalDouble share(String label) {
        List<Content> contents = run.layer(label).map(LayerTally::contents).orElse(List.of());
        for (Content content : contents) {
            if (content.isOf(product.name())) {
                return content.percentOf();
            }
        }
        return run.lots().stream()
                .filter(l -> l.lot().label().equals(label))
                .filter(l -> l.isOf(product.name()))
                .filter(l -> l.productFraction().isPresent())
                .flatMap(l -> l.pureGrams().stream())
                .map(pure -> ofTheory(pure.value()))
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble ofTheory(double grams) {
        return run.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.isOf(product.name()) && p.massGrams().value() > 0)
                .mapToDouble(p -> 100 * grams / p.massGrams().value())
                .findFirst();
    }

    /** The product. */
    public Product product() {
        return product;
    }

    /** True when the product was found in a portion. */
    public boolean isFound() {
        return found.values().stream().anyMatch(OptionalDouble::isPresent);
    }

    /** What a portion was found to hold, % of theory, of a tracked substance % of the charge; empty without an assay or bound. */
    public OptionalDouble foundPercent(String label) {
        return found.getOrDefault(label, OptionalDouble.empty());
    }

    /** What goes through a portion, in the same percent: its own share where it was found, else the sum of those made from it; 0 where none is known. */
    public double passingPercent(String label) {
        return passing(label, new LinkedHashSet<>());
    }

    private double passing(String label, Set<String> seen) {
        if (!seen.add(label)) {
            return 0;
        }
        OptionalDouble own = foundPercent(label);
        if (own.isPresent()) {
            return own.getAsDouble();
        }
        double sum = 0;
        for (String made : next.getOrDefault(label, List.of())) {
            sum += passing(made, seen);
        }
        return sum;
    }

    /** All portions in order of the steps. */
    public List<Share> list() {
        return found.entrySet().stream()
                .map(e -> new Share(e.getKey(), e.getValue(), passingPercent(e.getKey())))
                .toList();
    }

    /**
     * Share of the product in a portion.
     *
     * @param label label of the layer or lot
     * @param foundPercent what it was found to hold, %
     * @param passingPercent what goes through it, %
     */
    public record Share(String label, OptionalDouble foundPercent, double passingPercent) {}
}
