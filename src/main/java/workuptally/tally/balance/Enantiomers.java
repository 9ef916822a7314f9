package workuptally.tally.balance;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import workuptally.measure.MeasuredValue;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.balance.Closure.Candidate;

/**
 * The two halves of a racemate that is resolved: what a balance over it lacks is mostly the enantiomer that nobody wants. Of the wanted one
 * no more can be missing than its own theory less what was found of it, of the other no more than the same theory less what was found of
 * that; both with the one-sided 95 % reach.
 */
final class Enantiomers {
    private static final String UNNAMED = "the other enantiomer";

    private final ProductTheory wanted;
    private final List<Product> others;
    private final Found found;

    private Enantiomers(ProductTheory wanted, List<Product> others, Found found) {
        this.wanted = wanted;
        this.others = others;
        this.found = found;
    }

    /** Of a product and the balance that counts it; empty without its theory, and where more than one product of the balance is wanted. */
    static Optional<Enantiomers> of(
            Run run, Product product, Predicate<String> counts, Optional<Theory> theory, Found found) {
        long wanted = run.products().stream()
                .filter(p -> p.wanted() && counts.test(p.name()))
                .count();
        List<Product> others = run.products().stream()
                .filter(p -> !p.wanted() && p.formOf().isEmpty() && counts.test(p.name()))
                .filter(p -> isSameComposition(p, product))
                .toList();
        return theory.filter(t -> wanted == 1)
                .flatMap(t -> t.products().stream()
                        .filter(p -> p.product() == product)
                        .findFirst())
                .map(p -> new Enantiomers(p, others, found));
    }

    private static boolean isSameComposition(Product one, Product other) {
        return one.formula().isBlank() || one.formula().equals(other.formula());
    }

    /** What can be missing of the wanted one at most, g. */
    double wantedAtMostGrams() {
        return atMostGrams(List.of(wanted.product()));
    }

    /** The other one as a place of what is missing, at most all of it; empty where all of it was found. */
    Optional<Candidate> other(double missingGrams) {
        double most = Math.min(missingGrams, atMostGrams(others));
        String name = others.size() == 1 ? others.get(0).name() : UNNAMED;
        return most > 0
                ? Optional.of(new Candidate(
                        name,
                        0,
                        most,
                        "half of the racemate, less what was found of it",
                        "assay the liquors and layers for " + name))
                : Optional.empty();
    }

    /** True for a product that the candidate stands for. */
    boolean isOther(Product product) {
        return others.contains(product);
    }

    private double atMostGrams(List<Product> ofHalf) {
        MeasuredValue rest = wanted.massGrams();
        for (Found.Term term : found.terms()) {
            boolean counted =
                    ofHalf.stream().anyMatch(p -> p.isOf(term.content().substance()));
            if (counted && term.content().massGrams().isPresent()) {
                rest = rest.minus(term.content().massGrams().get());
            }
        }
        return Math.max(0, rest.value()) + rest.oneSidedReach();
    }
}
