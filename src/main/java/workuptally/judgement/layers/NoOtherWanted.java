package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerTally;

/**
 * R8: no second wanted component. Another wanted product that was not looked for in this layer counts by its own bound, like the first one:
 * what the run lacks of it at most, which must be within the layer limit, with room for what the balance may read too high unnoticed. The
 * assay that was not made is named all the same. Where one was found nowhere, somebody must say whether it is wanted from here.
 */
final class NoOtherWanted implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        double limit = evidence.book().limits().value(Limit.LAYER_LIMIT);
        List<Phrase> asked = new ArrayList<>();
        List<String> elsewhere = new ArrayList<>();
        List<Phrase> unassayed = new ArrayList<>();
        for (Product product : evidence.run().run().products()) {
            if (!product.wanted() || isLookedForIn(evidence.layer(), product)) {
                continue;
            }
            if (!isFound(evidence.run(), product)) {
                return missing(Phrase.of("ask whether {} is wanted from this layer", product.name()));
            }
            Phrase assay = Phrase.of("an assay for {}", product.name());
            Optional<Double> most = atMostPercent(evidence, product);
            if (most.isEmpty()) {
                return missing(Phrase.of("{}, of which nothing bounds what is here", assay));
            }
            if (most.get() > limit || !isBalanced(evidence, product, limit)) {
                asked.add(Phrase.of(
                        "{}, of which at most {} of theory is unaccounted for",
                        product.name(),
                        Figure.bound(most.get(), "%")));
                continue;
            }
            elsewhere.add(product.name());
            unassayed.add(assay);
        }
        if (!asked.isEmpty()) {
            return missing(
                    Phrase.of("an assay for {}; limit {}", Phrase.join(", and ", asked), Figure.digits(limit, 2, "%")));
        }
        List<Phrase> noted = evidence.layer().contents().stream()
                .filter(c -> evidence.run()
                        .run()
                        .product(c.substance())
                        .filter(p -> !p.wanted())
                        .isPresent())
                .filter(c -> c.massGrams().isPresent())
                .map(c -> Phrase.of("{} ({})", c.substance(), c.evidence()))
                .toList();
        Phrase text = elsewhere.isEmpty()
                ? Phrase.of("none named")
                : Phrase.of("{} found in other portions", String.join(", ", elsewhere));
        return new Condition(
                Criterion.OTHER_PRODUCTS,
                State.MET,
                noted.isEmpty() ? text : Phrase.of("{}; also holds {}", text, Phrase.join(", ", noted)),
                Phrase.join("; ", unassayed));
    }

    private static Condition missing(Phrase what) {
        return new Condition(Criterion.OTHER_PRODUCTS, State.MISSING, what);
    }

    private static boolean isFound(RunTally run, Product product) {
        return run.layers().stream().anyMatch(l -> isLookedForIn(l, product))
                || run.lots().stream()
                        .anyMatch(l -> l.isOf(product.name()) && l.pureGrams().isPresent());
    }

    /** What the run lacks of a product at most, % of theory. */
    private static Optional<Double> atMostPercent(LayerEvidence evidence, Product product) {
        Optional<Double> theory = LayerEvidence.theoryGrams(evidence.run(), product.name());
        return evidence.layer().contents().stream()
                .filter(c -> c.isOf(product.name()) && c.isBoundedByConservation())
                .findFirst()
                .flatMap(c -> theory.filter(t -> t > 0)
                        .map(t -> 100 * c.upperBoundGrams().orElse(Double.POSITIVE_INFINITY) / t));
    }

    private static boolean isBalanced(LayerEvidence evidence, Product product, double limit) {
        return evidence.run().closures().stream()
                .filter(c -> c.counts(product.name()))
                .allMatch(c -> BalanceSettled.isSmall(c, limit));
    }

    private static boolean isLookedForIn(LayerTally layer, Product product) {
        return layer.contents().stream().anyMatch(c -> c.isOf(product.name()) && LayerEvidence.isBounded(c));
    }
}
