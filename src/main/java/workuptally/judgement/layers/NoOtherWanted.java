package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Limit;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Closure;
import workuptally.tally.layers.LayerTally;

/**
 * R8: no second wanted component. Met where every other wanted product was looked for in this layer, or was found in other portions of the
 * run so far that no more than the run limit of it is unaccounted for; the assay that was not made is named all the same. Where one was
 * found nowhere, somebody must say whether it is wanted from here.
 */
final class NoOtherWanted implements LayerCondition {
    private static final String ID = "R8";
    private static final String TITLE = "no second wanted component";

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<String> elsewhere = new ArrayList<>();
        List<String> unassayed = new ArrayList<>();
        for (Product product : evidence.run().run().products()) {
            if (!product.wanted() || isLookedForIn(evidence.layer(), product)) {
                continue;
            }
            if (!isFound(evidence.run(), product)) {
                return missing("ask whether " + product.name() + " is wanted from this layer");
            }
            String assay = "assay of " + evidence.layer().label() + " for " + product.name();
            Optional<Closure> open = tooOpen(evidence, product);
            if (open.isPresent()) {
                return missing(String.format(
                        Locale.ROOT,
                        "%s, of which %.1f %% is unaccounted for",
                        assay,
                        open.get().unaccountedPercent()));
            }
            elsewhere.add(product.name());
            unassayed.add(assay);
        }
        List<String> noted = evidence.layer().contents().stream()
                .filter(c -> evidence.run()
                        .run()
                        .product(c.substance())
                        .filter(p -> !p.wanted())
                        .isPresent())
                .filter(c -> c.massGrams().isPresent())
                .map(c -> c.substance() + " (" + c.evidence() + ")")
                .toList();
        String text = elsewhere.isEmpty() ? "none named" : String.join(", ", elsewhere) + " found in other portions";
        return new Condition(
                ID,
                TITLE,
                State.MET,
                noted.isEmpty() ? text : text + "; also holds " + String.join(", ", noted),
                String.join("; ", unassayed));
    }

    private static Condition missing(String what) {
        return new Condition(ID, TITLE, State.MISSING, what);
    }

    private static boolean isFound(RunTally run, Product product) {
        return run.layers().stream().anyMatch(l -> isLookedForIn(l, product))
                || run.lots().stream()
                        .anyMatch(l -> l.lot().product().equalsIgnoreCase(product.name())
                                && l.pureGrams().isPresent());
    }

    /** A balance of the workup that counts the product and lacks more of it than the run limit: that may be in this layer. */
    private static Optional<Closure> tooOpen(LayerEvidence evidence, Product product) {
        double limit = evidence.book().limits().value(Limit.RUN_LIMIT);
        return evidence.run().closures().stream()
                .filter(c -> evidence.layer().endsWorkup() && c.counts(product.name()))
                .filter(c -> c.unaccountedPercent() > limit)
                .max(Comparator.comparingDouble(Closure::unaccountedPercent));
    }

    private static boolean isLookedForIn(LayerTally layer, Product product) {
        return layer.contents().stream()
                .anyMatch(c -> c.substance().equalsIgnoreCase(product.name())
                        && c.upperBoundGrams().isPresent());
    }
}
