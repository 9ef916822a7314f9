package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Content;

/**
 * Passes on what was assayed in a consumed layer and in none of the portions made from it, as an estimate of its own kind, to the one liquid
 * among them: what was not looked for is not thereby gone.
 *
 * <p>Where several layers were put together their contents add up. A wanted product that was assayed in some of them only is not known in
 * what they became.
 */
final class CarriedContents {
    private final Run run;
    private final LayerGraph graph;
    private final Map<String, LayerTally> own;
    private final Map<String, LayerTally> layers;

    /**
     * Over the layers of a run.
     *
     * @param own layers by label, with their own assays alone
     */
    CarriedContents(Run run, LayerGraph graph, Map<String, LayerTally> own) {
        this.run = run;
        this.graph = graph;
        this.own = new LinkedHashMap<>(own);
        this.layers = new LinkedHashMap<>(own);
    }

    /** The same layers, in the same order, with what was carried on to them. */
    Map<String, LayerTally> added() {
        for (String label : inOrderOfSteps()) {
            if (isLiquid(layers.get(label)) && !graph.isAliquot(label)) {
                carryTo(label);
            }
        }
        return layers;
    }

    private List<String> inOrderOfSteps() {
        Set<String> ordered = new LinkedHashSet<>();
        for (Step step : run.orderedSteps()) {
            step.gives().stream().filter(layers::containsKey).forEach(ordered::add);
        }
        ordered.addAll(layers.keySet());
        return List.copyOf(ordered);
    }

    private void carryTo(String label) {
        Map<String, List<Source>> bySubstance = new LinkedHashMap<>();
        for (String parent : graph.parents(label)) {
            if (layers.containsKey(parent) && !graph.isTerminal(parent) && isOnlyLiquidOf(parent, label)) {
                for (Content content : layers.get(parent).contents()) {
                    boolean lookedFor = made(parent).stream().anyMatch(child -> isAssayed(child, content.substance()));
                    if (!lookedFor && content.kind() != Content.Kind.UNKNOWN) {
                        bySubstance
                                .computeIfAbsent(content.substance(), k -> new ArrayList<>())
                                .add(new Source(parent, content));
                    }
                }
            }
        }
        List<Content> contents = new ArrayList<>(layers.get(label).contents());
        bySubstance.forEach((substance, sources) -> contents.add(content(label, substance, sources)));
        layers.put(label, layers.get(label).withContents(contents));
    }

    private Content content(String label, String substance, List<Source> sources) {
        List<String> notLookedFor = graph.parents(label).stream()
                .filter(p -> !own.containsKey(p) || isLiquid(own.get(p)))
                .filter(p -> sources.stream().noneMatch(s -> s.label().equals(p)))
                .toList();
        boolean wanted = run.product(substance).filter(Product::wanted).isPresent();
        if (wanted && !notLookedFor.isEmpty()) {
            return Content.unknown(
                    substance,
                    "assayed in " + sources.stream().map(Source::label).collect(Collectors.joining(", ")) + ", not in "
                            + String.join(", ", notLookedFor));
        }
        List<Content> parts = sources.stream().map(Source::content).toList();
        boolean bound = parts.stream().allMatch(c -> c.kind() == Content.Kind.BOUND);
        return new Content(
                substance,
                bound ? Content.Kind.BOUND : Content.Kind.CARRIED,
                parts.stream().flatMap(c -> c.massGrams().stream()).reduce(MeasuredValue::plus),
                parts.stream().flatMap(c -> c.amountMillimoles().stream()).reduce(MeasuredValue::plus),
                sum(parts.stream().map(Content::upperBoundGrams).toList()),
                sum(parts.stream().map(Content::percentOf).toList()),
                sources.stream()
                                .map(s -> s.content().evidence() + " in " + s.label())
                                .collect(Collectors.joining("; "))
                        + ", carried on",
                parts.stream().allMatch(c -> c.rests() != Content.Rests.DISPUTED_READINGS)
                        ? Content.Rests.PARENT
                        : Content.Rests.DISPUTED_READINGS);
    }

    private static OptionalDouble sum(List<OptionalDouble> parts) {
        return parts.stream().allMatch(OptionalDouble::isPresent)
                ? OptionalDouble.of(
                        parts.stream().mapToDouble(OptionalDouble::getAsDouble).sum())
                : OptionalDouble.empty();
    }

    private boolean isOnlyLiquidOf(String parent, String label) {
        return made(parent).stream()
                .filter(c -> layers.containsKey(c) && isLiquid(layers.get(c)))
                .toList()
                .equals(List.of(label));
    }

    private List<String> made(String parent) {
        return graph.children(parent).stream().filter(c -> !graph.isAliquot(c)).toList();
    }

    private static boolean isLiquid(LayerTally layer) {
        return layer.phase()
                .filter(p -> p != Layer.Phase.SOLID && p != Layer.Phase.DISTILLATE)
                .isPresent();
    }

    private boolean isAssayed(String label, String substance) {
        boolean inLayer =
                own.containsKey(label) && own.get(label).contents().stream().anyMatch(c -> c.isOf(substance));
        boolean inLot = run.lot(label)
                .filter(l -> l.isOf(substance)
                        || run.assays().stream().anyMatch(a -> a.sample().equals(label) && a.isOf(substance)))
                .isPresent();
        return inLayer || inLot;
    }

    private record Source(String label, Content content) {}
}
