package workuptally.tally.balance;

import java.util.List;
import java.util.function.Predicate;
import workuptally.model.Product;

/** Where the unaccounted part of a product can be, with a bound or range and the test that would settle each. */
public interface Whereabouts {
    /**
     * Candidates, largest first.
     *
     * @param product product that the unaccounted part is told in
     * @param counts tells the substances that the balance counts
     * @param unaccountedGrams the unaccounted part as grams of the product
     * @param reachGrams how far its one-sided 95 % bound lies above it, g
     */
    List<Closure.Candidate> of(Product product, Predicate<String> counts, double unaccountedGrams, double reachGrams);
}
