package workuptally.judgement.rules.quench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.Neutralisation;
import workuptally.tally.bench.NeutralisationAccount;
import workuptally.tally.layers.LayerGraph;

/**
 * An acidification or basification that brought too little to set free the product isolated from it, or to give the pH that was read:
 * what was weighed is then its salt, or most of it stayed in the water.
 */
public final class NeutralisationShort implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public NeutralisationShort(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.NEUTRALISATION_SHORT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Neutralisation one :
                new NeutralisationAccount(tally.run(), book.limits(), substances, tally.amounts()).list()) {
            Optional<Entered> pH = one.step().pHAfter().entered();
            Optional<Product> product = isolatedFrom(tally.run(), one);
            boolean claimed = product.isPresent()
                    ? pH.isEmpty()
                            || isFreeAt(product.get(), one.acid(), pH.get().value())
                    : pH.filter(read -> isExtreme(one.acid(), read.value())).isPresent();
            if (claimed && one.coveredPercent() < 100 - substances.value(Threshold.NEUTRALISATION_SHORT)) {
                findings.add(
                        FindingCode.NEUTRALISATION_SHORT,
                        severity(tally.run(), product),
                        one.step().row().at("Volume"),
                        seen(one, pH, product),
                        Phrase.of(
                                "at least {} of {}: all that strong {} took",
                                Figure.decimals(one.neededMillimoles(), 0, "mmol"),
                                one.acid() ? "acid" : "base",
                                one.acid() ? "base" : "acid"),
                        "table of solutes; threshold common practice",
                        Phrase.of(
                                "Check volume and strength of what was charged and added, and read the pH of the liquor again: what was"
                                        + " not set free is dissolved in it as its salt. Settle which form was weighed; a row in"
                                        + " Corrections settles it."));
            }
        }
        return findings.list();
    }

    private static Severity severity(Run run, Optional<Product> product) {
        return product.isEmpty() || run.status() == Run.Status.PLANNED ? Severity.CHECK : Severity.HOLD;
    }

    private static Phrase seen(Neutralisation one, Optional<Entered> pH, Optional<Product> product) {
        Phrase of = product.map(p -> Phrase.of("{} cannot all have been set free", p.name()))
                .orElse(Phrase.of("pH {} cannot be", pH.map(Entered::asTyped).orElse("")));
        return Phrase.of(
                "up to step {} ({}) {} of {} was brought for {} of strong {}: it covers {}; {}",
                one.step().number(),
                one.step().added().material(),
                Figure.decimals(one.broughtMillimoles(), 1, "mmol"),
                one.acid() ? "acid" : "base",
                Figure.decimals(one.neededMillimoles(), 1, "mmol"),
                one.acid() ? "base" : "acid",
                Figure.decimals(one.coveredPercent(), 0, "%"),
                of);
    }

    /** The acid, or the base, that a lot made from what the step gave is of. */
    private static Optional<Product> isolatedFrom(Run run, Neutralisation one) {
        Product.Character character = one.acid() ? Product.Character.ACID : Product.Character.BASE;
        LayerGraph graph = LayerGraph.of(run);
        Set<String> outcomes = new LinkedHashSet<>(
                one.step().gives().isEmpty() ? one.step().from() : one.step().gives());
        List<String> open = new ArrayList<>(outcomes);
        while (!open.isEmpty()) {
            for (String child : graph.children(open.remove(0))) {
                if (outcomes.add(child)) {
                    open.add(child);
                }
            }
        }
        return run.products().stream()
                .filter(p ->
                        p.partitioning().character().filter(c -> c == character).isPresent())
                .filter(p -> run.status() == Run.Status.PLANNED
                        || run.lots().stream()
                                .anyMatch(lot -> lot.product().equals(p.name())
                                        && (outcomes.contains(lot.label())
                                                || lot.from().stream().anyMatch(outcomes::contains))))
                .findFirst();
    }

    /** Whether a product is free at a pH, a unit beyond its pKa; without one, where any carboxylic acid or alkylamine is. */
    private boolean isFreeAt(Product product, boolean acid, double pH) {
        return product.partitioning()
                .pKa()
                .entered()
                .map(pKa -> acid ? pH <= pKa.value() - 1 : pH >= pKa.value() + 1)
                .orElse(isExtreme(acid, pH));
    }

    private boolean isExtreme(boolean acid, double pH) {
        return acid
                ? pH <= substances.value(Threshold.STRONG_ACID_UP_TO)
                : pH >= substances.value(Threshold.STRONG_BASE_FROM);
    }
}
