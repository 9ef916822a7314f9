package workuptally.tally;

import java.util.List;
import workuptally.model.Product;

/** Where the unaccounted part of a product can be, with a bound or range and the test that would settle each. */
interface Whereabouts {
    /**
     * Candidates, largest first.
     *
     * @param unaccountedGrams the unaccounted part as grams of the product
     * @param standardUncertaintyGrams its standard uncertainty, g
     */
    List<Closure.Candidate> of(Product product, double unaccountedGrams, double standardUncertaintyGrams);
}
