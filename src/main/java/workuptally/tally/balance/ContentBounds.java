package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.layers.LayerTally;

/**
 * Upper bounds, one-sided 95 %, on a product in layers that were not assayed for it: by conservation, theory less what was found elsewhere,
 * plus its one-sided reach ({@link MeasuredValue#oneSidedReach()}). Only where every lot has a mass and an assay, since a lot known only as an upper bound would make this bound too low; a
 * purified lot in the place of its crude makes it no more than wider. A balance that reads above 100 % leaves no less than that reach. The
 * strength of another phase bounds nothing: a rag or an interphase can hold more than the solutions it stood between.
 *
 * <p>What earlier batches of a series held in a layer of that label is told beside; it is the bound where the laboratory takes it for one and
 * it is the lower one. Not of a rag, which is no two times the same, nor of what is lost.
 *
 * <p>A product that was not looked for in a layer assayed for another stays unknown there, with what the run lacks of it at most.
 */
public final class ContentBounds {
    private final Run run;
    private final Optional<Theory> theory;
    private final List<LayerTally> layers;
    private final List<LotTally> lots;
    private final PurifiedLots purified;
    private final Found found;
    private final Experience experience;

    public ContentBounds(
            Run run,
            Optional<Theory> theory,
            List<LayerTally> layers,
            List<LotTally> lots,
            PurifiedLots purified,
            Found found,
            Experience experience) {
        this.experience = experience;
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
                contents.add(
                        content.kind() == Content.Kind.UNKNOWN
                                ? byExperience(layer, bounded(layer, content))
                                : content);
            }
            bounded.add(layer.withContents(contents));
        }
        return bounded;
    }

    /** True for a layer that was assayed for one wanted product, so that another one in it is bounded by the run's balance alone. */
    boolean isAssayedForAnother(LayerTally layer) {
        return layer.contents().stream()
                .anyMatch(c -> (c.massGrams().isPresent() || c.isOwnEvidence())
                        && run.product(c.substance()).filter(Product::wanted).isPresent());
    }

    private Content bounded(LayerTally layer, Content unknown) {
        Optional<Double> conservation = conservationGrams(unknown.substance()).filter(g -> layer.endsWorkup());
        if (conservation.isEmpty()) {
            return unknown;
        }
        boolean assayedForAnother = isAssayedForAnother(layer);
        return unknown.atMostByConservation(
                assayedForAnother ? Content.Kind.UNKNOWN : Content.Kind.BOUND,
                conservation.get(),
                unknown.evidence() + "; at most theory less what was found elsewhere");
    }

    private Content byExperience(LayerTally layer, Content content) {
        boolean alike = layer.endsWorkup()
                && !layer.isLost()
                && layer.phase().filter(p -> p != Layer.Phase.RAG).isPresent();
        Optional<Experience.Bound> known =
                alike ? experience.bound(run, layer.label(), content.substance()) : Optional.empty();
        if (known.isEmpty()) {
            return content;
        }
        Optional<Double> grams = theoryOf(content.substance())
                .map(t -> known.get().percentOfTheory() / 100 * t.massGrams().value());
        double before = content.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
        boolean lower = known.get().counts() && grams.filter(g -> g < before).isPresent();
        return new Content(
                content.substance(),
                lower ? Content.Kind.BOUND : content.kind(),
                content.massGrams(),
                content.amountMillimoles(),
                lower ? OptionalDouble.of(grams.get()) : content.upperBoundGrams(),
                content.percentOf(),
                content.evidence() + "; " + known.get().inWords(),
                lower ? Content.Rests.EXPERIENCE : content.rests());
    }

    private Optional<ProductTheory> theoryOf(String product) {
        return theory.flatMap(
                t -> t.products().stream().filter(p -> p.isOf(product)).findFirst());
    }

    /** Theory of a product less what was found of it, plus its one-sided reach, g; empty where a lot is not known. */
    Optional<Double> conservationGrams(String product) {
        Optional<ProductTheory> expected = theoryOf(product);
        boolean lotsKnown = !lots.isEmpty()
                && lots.stream()
                        .filter(LotTally::endsWorkup)
                        .allMatch(l -> (l.pureGrams().isPresent() && !l.basis().isUpperBound())
                                || purified.replaced().contains(l));
        boolean disputed = found.terms().stream()
                .map(Found.Term::content)
                .anyMatch(c -> c.isOf(product) && c.rests() == Content.Rests.DISPUTED_READINGS);
        if (expected.isEmpty() || !lotsKnown || disputed) {
            return Optional.empty();
        }
        MeasuredValue rest = expected.get().massGrams();
        for (Found.Term term : found.terms()) {
            if (term.content().isOf(product) && term.content().massGrams().isPresent()) {
                rest = rest.minus(term.content().massGrams().get());
            }
        }
        return Optional.of(Math.max(0, rest.value()) + rest.oneSidedReach());
    }
}
