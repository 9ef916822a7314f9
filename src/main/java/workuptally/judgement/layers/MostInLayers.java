package workuptally.judgement.layers;

import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.layers.LayerTally;

/**
 * What some layers of a run can hold together of some products, each layer at its one-sided 95 % bound. What the run lacks of a product can
 * be in one layer only and counts once, and so does what a composite sample tells of several layers.
 *
 * @param grams the most they can hold, as far as anything bounds it, g
 * @param atStakeGrams the same, where what nobody looked for is no more than theory less what was isolated, g
 * @param unbounded number of the layers in which nothing bounds one of the products at least
 */
public record MostInLayers(double grams, double atStakeGrams, int unbounded) {
    /**
     * The most for some layers.
     *
     * @param run results of the run
     * @param layers labels of the layers; another label counts for nothing
     * @param products names of the products
     */
    public static MostInLayers of(RunTally run, Collection<String> layers, Collection<String> products) {
        double grams = 0;
        double atStake = 0;
        Set<String> unbounded = new HashSet<>();
        for (String product : products) {
            double own = 0;
            double conserved = 0;
            Set<String> told = new HashSet<>();
            for (LayerTally layer : run.layers()) {
                if (!layers.contains(layer.label())) {
                    continue;
                }
                Optional<Content> content = layer.contents().stream()
                        .filter(c -> c.isOf(product))
                        .filter(c -> c.upperBoundGrams().isPresent())
                        .findFirst();
                double most = content.map(c -> c.upperBoundGrams().orElse(0)).orElse(0.0);
                if (content.isEmpty()) {
                    unbounded.add(layer.label());
                } else if (content.get().isBoundedByConservation()) {
                    conserved = Math.max(conserved, most);
                } else if (told.add(reading(run, layer, content.get()))) {
                    own += most;
                }
            }
            grams += own + conserved;
            atStake += own + Math.min(conserved, notIsolatedGrams(run, product));
        }
        return new MostInLayers(grams, atStake, unbounded.size());
    }

    /** The layer, or the composite sample that tells of it beside others. */
    private static String reading(RunTally run, LayerTally layer, Content content) {
        return content.rests() == Content.Rests.COMPOSITE_SAMPLE
                ? run.evidence()
                        .composites()
                        .of(layer.label(), content.substance())
                        .map(CompositeSample::name)
                        .orElse(layer.label())
                : layer.label();
    }

    /** Theory less what was isolated of a product, g; no limit where either is not known or nothing is left. */
    private static double notIsolatedGrams(RunTally run, String product) {
        Optional<Double> isolated = run.yields().stream()
                .filter(y -> y.isOf(product) && y.basis() != YieldBasis.NONE)
                .map(y -> y.massGrams().value())
                .findFirst();
        double left = LayerEvidence.theoryGrams(run, product).orElse(Double.POSITIVE_INFINITY) - isolated.orElse(0.0);
        return left > 0 ? left : Double.POSITIVE_INFINITY;
    }
}
