package workuptally.judgement.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.containers.ContainerReview;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Product;
import workuptally.model.Transfer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.layers.LayerTally;

/**
 * What the conditions may read about one layer.
 *
 * @param layer the layer
 * @param run results of its run
 * @param book the book
 * @param settled what its Corrections settle
 * @param transfers transfers of the run
 * @param findings findings of the run
 * @param sums what the kept layers of the run hold together
 * @param containers containers for which something of the run is proposed
 */
record LayerEvidence(
        LayerTally layer,
        RunTally run,
        Book book,
        SettledByHand settled,
        List<Transfer> transfers,
        List<Finding> findings,
        SumOfLayers sums,
        List<ContainerReview> containers) {

    /** Wanted products the layer's contents name, with or without a figure. */
    List<Content> wanted() {
        return wanted(layer, run);
    }

    static List<Content> wanted(LayerTally layer, RunTally run) {
        return layer.contents().stream()
                .filter(c ->
                        run.run().product(c.substance()).filter(Product::wanted).isPresent())
                .toList();
    }

    /** True for a content that was looked for or is bounded; what nobody looked for beside another product is asked for by R8. */
    static boolean isBounded(Content content) {
        return content.kind() != Content.Kind.UNKNOWN
                && content.upperBoundGrams().isPresent();
    }

    /**
     * What a layer holds at most as a share of theory, %, with the guard band of both: 100/θ·(m + √((b − m)² + (1.645·b·u(θ)/θ)²)), θ the
     * theory, m what was measured (b itself where it was not) and b its one-sided bound, all in g.
     *
     * @param atMostGrams b
     * @throws java.util.NoSuchElementException if the product has no theory
     */
    static double guardedPercentOfTheory(RunTally run, Content content, double atMostGrams) {
        MeasuredValue theory = theory(run, content.substance()).orElseThrow();
        double measured = content.kind() == Content.Kind.MEASURED
                ? Math.min(
                        atMostGrams,
                        content.massGrams().map(MeasuredValue::value).orElse(atMostGrams))
                : atMostGrams;
        double ofTheory = MeasuredValue.ONE_SIDED_95 * atMostGrams * theory.relativeStandardUncertainty();
        return 100 / theory.value() * (measured + Math.hypot(atMostGrams - measured, ofTheory));
    }

    /** Theory of a product, g. */
    static Optional<Double> theoryGrams(RunTally run, String product) {
        return theory(run, product).map(MeasuredValue::value);
    }

    private static Optional<MeasuredValue> theory(RunTally run, String product) {
        return run.theory()
                .flatMap(t -> t.products().stream()
                        .filter(p -> p.isOf(product))
                        .findFirst()
                        .map(ProductTheory::massGrams));
    }
}
