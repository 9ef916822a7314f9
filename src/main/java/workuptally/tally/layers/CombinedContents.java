package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.ContentsAccount;

/**
 * Bounds what layers hold that were assayed by themselves, without a volume of their own, and then combined: the whole is nowhere stronger
 * than the strongest of them, so that the largest of their strengths times the volume, or mass, of the whole is not exceeded.
 */
final class CombinedContents {
    private final Run run;
    private final LayerGraph graph;
    private final ContentsAccount contents;

    CombinedContents(Run run, LayerGraph graph, ContentsAccount contents) {
        this.run = run;
        this.graph = graph;
        this.contents = contents;
    }

    /** The layer with such bounds for wanted products of which it has no content yet; the same where it was not combined. */
    LayerTally bounded(LayerTally whole, Map<String, LayerTally> layers) {
        boolean measured =
                whole.volumeMillilitres().isPresent() || whole.massGrams().isPresent();
        boolean combined = graph.givenBy(whole.label())
                .flatMap(Step::operation)
                .filter(o -> o == Step.Operation.COMBINE)
                .isPresent();
        if (!measured || !combined) {
            return whole;
        }
        List<String> parts = graph.parents(whole.label()).stream()
                .filter(label -> !isSolid(layers.get(label)))
                .toList();
        List<Content> known = new ArrayList<>(whole.contents());
        for (Product product : run.products()) {
            boolean isKnown = known.stream().anyMatch(c -> c.kind() != Content.Kind.UNKNOWN && c.isOf(product.name()));
            Optional<Content> bound = product.wanted() && !isKnown ? bound(whole, product, parts) : Optional.empty();
            if (bound.isPresent()) {
                known.removeIf(c -> c.isOf(product.name()));
                known.add(bound.get());
            }
        }
        return whole.withContents(known);
    }

    /** Empty where one of the parts was not assayed for it. */
    private Optional<Content> bound(LayerTally whole, Product product, List<String> parts) {
        List<Content> atStrengths = new ArrayList<>();
        for (String part : parts) {
            contents.of(part, whole.massGrams(), whole.volumeMillilitres(), Optional.empty()).stream()
                    .filter(c -> c.isOf(product.name()))
                    .filter(c -> c.upperBoundGrams().isPresent() && c.rests() == Content.Rests.OWN_READING)
                    .forEach(atStrengths::add);
        }
        if (parts.isEmpty() || atStrengths.size() < parts.size()) {
            return Optional.empty();
        }
        Content strongest = atStrengths.stream()
                .max(Comparator.comparingDouble(c -> c.upperBoundGrams().getAsDouble()))
                .orElseThrow();
        boolean detected = atStrengths.stream().anyMatch(c -> c.kind() == Content.Kind.MEASURED);
        return Optional.of(new Content(
                product.name(),
                Content.Kind.BOUND,
                detected ? Optional.empty() : strongest.massGrams(),
                detected ? Optional.empty() : strongest.amountMillimoles(),
                strongest.upperBoundGrams(),
                OptionalDouble.empty(),
                atStrengths.stream().map(Content::evidence).distinct().collect(Collectors.joining("; ")) + " in "
                        + String.join(", ", parts) + " before they were combined",
                Content.Rests.PARENT));
    }

    private static boolean isSolid(LayerTally layer) {
        return layer != null
                && layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
    }
}
