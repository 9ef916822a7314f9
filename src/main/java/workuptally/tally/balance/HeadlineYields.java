package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import workuptally.model.Limit;
import workuptally.model.LimitAnswer;
import workuptally.model.Limits;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.ProductYield.Stage;

/**
 * Which yield of a product is reported first: that of the workup, or the purified one where the book's {@link Limit#YIELD_REPORTED} says so.
 * Where it is not known by assay and the other one is, the other stands in; both are shown always.
 */
public final class HeadlineYields {
    private HeadlineYields() {}

    /** The yields in their order, one of each product marked. */
    public static List<ProductYield> marked(List<ProductYield> yields, Limits limits) {
        Stage first = limits.answer(Limit.YIELD_REPORTED)
                .filter(answer -> answer == LimitAnswer.PURIFIED)
                .map(answer -> Stage.PURIFIED)
                .orElse(Stage.WORKUP);
        List<ProductYield> marked = new ArrayList<>();
        for (ProductYield yield : yields) {
            ProductYield headline = yields.stream()
                    .filter(y -> y.product() == yield.product())
                    .min(Comparator.<ProductYield, Boolean>comparing(
                                    y -> y.basis().isUpperBound())
                            .thenComparing(y -> y.stage() != first))
                    .orElseThrow();
            marked.add(yield.headline(yield == headline));
        }
        return marked;
    }
}
