package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Contents;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.layers.LayerTally;

/**
 * Upper bounds, one-sided 95 %, on a product in layers that were not assayed for it: the smallest of those whose evidence exists.
 *
 * <ul>
 *   <li>conservation: theory less what was found elsewhere, plus 1.645·u; only where every lot has a mass and
 *       an assay, since a lot known only as an upper bound would make this bound too low; a purified lot in the place of its crude makes it
 *       no more than wider
 *   <li>the same for a product that was not looked for in a layer assayed for another: all layers share that rest, so that it is told as
 *       evidence and stays unknown
 *   <li>mixed layer: for a rag, its volume times the strongest solution measured in a layer of the run, plus 1.645·u
 * </ul>
 */
public final class ContentBounds {
    private final Run run;
    private final Optional<Theory> theory;
    private final List<LayerTally> layers;
    private final List<LotTally> lots;
    private final PurifiedLots purified;
    private final Found found;

    public ContentBounds(
            Run run,
            Optional<Theory> theory,
            List<LayerTally> layers,
            List<LotTally> lots,
            PurifiedLots purified,
            Found found) {
        this.run = run;
        this.theory = theory;
        this.layers = layers;
        this.lots = lots;
        this.purified = purified;
        this.found = found;
    }

    /** The layers, with a bound in place of an unknown content where there is evidence for one. */
    public List<LayerTally> applied() {
        List<LayerTally> bounded = new ArrayList<>();
        for (LayerTally layer : layers) {
            List<Content> contents = new ArrayList<>();
            for (Content content : layer.contents()) {
                contents.add(content.kind() == Content.Kind.UNKNOWN ? bounded(layer, content) : content);
            }
            bounded.add(layer.withContents(contents));
        }
        return bounded;
    }

    /** The bound of a rag by the strongest solution of the run, g; empty for other layers or without an assay. */
    Optional<Double> mixedGrams(LayerTally layer, String product) {
        return strongest(layer, product).map(Strength::boundGrams);
    }

    /** True for a layer that was assayed for one wanted product, so that another one in it is bounded by the run's balance alone. */
    boolean isAssayedForAnother(LayerTally layer) {
        return layer.contents().stream()
                .anyMatch(c -> c.massGrams().isPresent()
                        && run.product(c.substance()).filter(Product::wanted).isPresent());
    }

    private Content bounded(LayerTally layer, Content unknown) {
        Optional<Strength> mixed = strongest(layer, unknown.substance());
        Optional<Double> conservation = conservationGrams(unknown.substance()).filter(g -> layer.endsWorkup());
        if (mixed.isEmpty() && conservation.isEmpty()) {
            return unknown;
        }
        if (mixed.isEmpty() && isAssayedForAnother(layer)) {
            return Content.unknown(
                    unknown.substance(),
                    String.format(
                            Locale.ROOT,
                            "%s; no more than %.3g g of it is unaccounted for in the run",
                            unknown.evidence(),
                            conservation.orElseThrow()));
        }
        double byMixing = mixed.map(Strength::boundGrams).orElse(Double.POSITIVE_INFINITY);
        double byConservation = conservation.orElse(Double.POSITIVE_INFINITY);
        String evidence = byMixing <= byConservation
                ? String.format(
                        Locale.ROOT,
                        "not assayed; at most its volume at the strength of %s (%.3g mg/mL)",
                        mixed.orElseThrow().label(),
                        mixed.orElseThrow().milligramsPerMillilitre())
                : Content.BY_CONSERVATION;
        return new Content(
                unknown.substance(),
                Content.Kind.BOUND,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(Math.min(byMixing, byConservation)),
                OptionalDouble.empty(),
                evidence);
    }

    /** Theory of a product less what was found of it, plus 1.645·u, g; empty where a lot is not known. */
    Optional<Double> conservationGrams(String product) {
        Optional<ProductTheory> expected = theory.flatMap(t -> t.products().stream()
                .filter(p -> p.product().name().equalsIgnoreCase(product))
                .findFirst());
        boolean lotsKnown = !lots.isEmpty()
                && lots.stream()
                        .filter(LotTally::endsWorkup)
                        .allMatch(l -> (l.pureGrams().isPresent() && !l.basis().isUpperBound())
                                || purified.replaced().contains(l));
        if (expected.isEmpty() || !lotsKnown) {
            return Optional.empty();
        }
        MeasuredValue rest = expected.get().massGrams();
        for (Found.Term term : found.terms()) {
            if (term.content().substance().equalsIgnoreCase(product)
                    && term.content().massGrams().isPresent()) {
                rest = rest.minus(term.content().massGrams().get());
            }
        }
        return Optional.of(Math.max(0, rest.value() + Contents.ONE_SIDED_95 * rest.standardUncertainty()));
    }

    private Optional<Strength> strongest(LayerTally layer, String product) {
        boolean wanted = run.product(product).filter(Product::wanted).isPresent();
        if (!wanted
                || layer.phase().filter(p -> p == Layer.Phase.RAG).isEmpty()
                || layer.volumeMillilitres().isEmpty()) {
            return Optional.empty();
        }
        Optional<Strength> strongest = Optional.empty();
        for (LayerTally other : layers) {
            boolean liquid = other.phase()
                    .filter(p -> p == Layer.Phase.ORGANIC || p == Layer.Phase.AQUEOUS)
                    .isPresent();
            for (Content content : other.contents()) {
                if (liquid
                        && content.substance().equalsIgnoreCase(product)
                        && content.massGrams().isPresent()
                        && other.volumeMillilitres().filter(v -> v.value() > 0).isPresent()) {
                    MeasuredValue strength = content.massGrams()
                            .get()
                            .over(other.volumeMillilitres().get());
                    MeasuredValue held =
                            strength.times(layer.volumeMillilitres().get());
                    double bound = held.value() + Contents.ONE_SIDED_95 * held.standardUncertainty();
                    if (strongest.filter(s -> s.boundGrams() >= bound).isEmpty()) {
                        strongest = Optional.of(new Strength(other.label(), 1000 * strength.value(), bound));
                    }
                }
            }
        }
        return strongest;
    }

    private record Strength(String label, double milligramsPerMillilitre, double boundGrams) {}
}
