package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Limit;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.CompetingProducts;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.balance.CompositeSamples;
import workuptally.tally.layers.LayerTally;

/**
 * Where the wanted product of one run is: isolated, in kept layers, not found as product, which unreacted substrate is a part of, or not
 * known yet, because a tare or an assay is missing.
 *
 * @param run run id
 * @param theoryGrams theory of all wanted products together, g; of a separation what was charged
 * @param hasLot whether a lot of a wanted product is recorded, weighed or not
 * @param isolatedGrams isolated by assay, g; empty where no wanted product has a yield by assay
 * @param atMostGrams isolated in lots whose yield is only an upper bound, g
 * @param isRestOpen whether what is found neither in lots nor in layers may still be there: a lot without tare or assay, or, before anything
 *     is isolated, a layer that was not assayed
 * @param aboveTheory whether a yield is above 100 % by more than its U: something in it is wrong, and no total counts it
 * @param keptGrams found in layers that still exist, g
 * @param sampledGrams found in portions taken for analysis, g
 * @param notAssayed number of kept layers in which a wanted product was not looked for
 * @param worst the balance of the run that is furthest from closing
 */
public record Recovery(
        String run,
        double theoryGrams,
        boolean hasLot,
        Optional<Double> isolatedGrams,
        double atMostGrams,
        boolean isRestOpen,
        boolean aboveTheory,
        double keptGrams,
        double sampledGrams,
        int notAssayed,
        Optional<Closure> worst) {
    /** A line for each run with a theory that is more than planned, in order of the book. */
    public static List<Recovery> of(Review review) {
        List<Recovery> lines = new ArrayList<>();
        for (RunReview run : review.runs()) {
            double theory = theoryGrams(run);
            if (run.tally().run().status() != Run.Status.PLANNED && theory > 0) {
                lines.add(of(run, theory, review.book().limits().value(Limit.COVERAGE_FACTOR)));
            }
        }
        return lines;
    }

    private static Recovery of(RunReview run, double theoryGrams, double coverageFactor) {
        Optional<Double> isolated = grams(run, false);
        boolean hasLot = hasLot(run);
        int notAssayed = notAssayed(run);
        boolean lotOpen = run.tally().run().products().stream()
                .filter(Product::wanted)
                .anyMatch(product ->
                        lots(run, product) > 0 && yieldOf(run, product).isEmpty());
        boolean nothingYet = isolated.isEmpty() && !hasLot;
        return new Recovery(
                run.id(),
                theoryGrams,
                hasLot,
                isolated,
                grams(run, true).orElse(0.0),
                lotOpen || nothingYet && (notAssayed > 0 || run.decisions().isEmpty()),
                run.tally().yields().stream().anyMatch(y -> y.product().wanted() && y.isAboveAll(coverageFactor)),
                keptGrams(run),
                sampledGrams(run),
                notAssayed,
                Closure.worst(run.tally().closures()));
    }

    /** Of products that compete for one partner one counts, as the found ones share it: what each found is of its own theory adds up. */
    private static double theoryGrams(RunReview run) {
        return run.tally().theory().stream()
                .flatMap(
                        t -> CompetingProducts.of(run.tally().run(), run.tally().amounts(), t).stream())
                .mapToDouble(group -> theoryGrams(run, group))
                .sum();
    }

    private static double theoryGrams(RunReview run, List<Theory.ProductTheory> competing) {
        double found = 0;
        double share = 0;
        double most = 0;
        for (Theory.ProductTheory product : competing) {
            double grams = yieldOf(run, product.product())
                    .map(y -> y.massGrams().value())
                    .orElse(0.0);
            found += grams;
            share += grams / product.massGrams().value();
            most = Math.max(most, product.massGrams().value());
        }
        return share > 0 ? found / share : most;
    }

    private static boolean hasLot(RunReview run) {
        return run.tally().run().products().stream().anyMatch(p -> p.wanted() && lots(run, p) > 0);
    }

    private static long lots(RunReview run, Product product) {
        return run.tally().lots().stream()
                .filter(lot ->
                        run.tally().run().product(lot.lot().product()).stream().anyMatch(p -> p == product))
                .count();
    }

    /** The headline yield of a product: that of the workup, else the purified one stands in. */
    private static Optional<ProductYield> yieldOf(RunReview run, Product product) {
        return run.tally().yields().stream()
                .filter(y -> y.product().name().equals(product.name()) && y.basis() != YieldBasis.NONE)
                .findFirst();
    }

    /** What was isolated of all wanted products together, by assay or as an upper bound. */
    private static Optional<Double> grams(RunReview run, boolean upperBounds) {
        List<ProductYield> yields = run.tally().run().products().stream()
                .filter(Product::wanted)
                .flatMap(product -> yieldOf(run, product).stream())
                .filter(y -> y.basis().isUpperBound() == upperBounds)
                .toList();
        return yields.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        yields.stream().mapToDouble(y -> y.massGrams().value()).sum());
    }

    private static double keptGrams(RunReview run) {
        CompositeSamples composites = run.tally().evidence().composites();
        Stream<Content> alone = run.tally().layers().stream()
                .filter(l -> l.terminal() && !l.aliquot() && l.endsWorkup())
                .flatMap(l -> l.contents().stream().filter(c -> !composites.cover(l.label(), c.substance())));
        return Stream.concat(alone, composites.counted().stream().map(CompositeSample::together))
                .filter(c -> run.tally()
                        .run()
                        .product(c.substance())
                        .filter(Product::wanted)
                        .isPresent())
                .map(Content::massGrams)
                .flatMap(Optional::stream)
                .mapToDouble(m -> m.value())
                .sum();
    }

    private static double sampledGrams(RunReview run) {
        return run.tally().layers().stream()
                .filter(LayerTally::aliquot)
                .flatMap(l -> l.contents().stream())
                .filter(c -> run.tally()
                        .run()
                        .product(c.substance())
                        .filter(Product::wanted)
                        .isPresent())
                .flatMap(c -> c.massGrams().stream())
                .mapToDouble(m -> m.value())
                .sum();
    }

    /** Kept layers of the workup that hold nobody knows what of a wanted product. */
    private static int notAssayed(RunReview run) {
        List<Product> wanted =
                run.tally().run().products().stream().filter(Product::wanted).toList();
        return (int) run.decisions().stream()
                .flatMap(d -> run.tally().layer(d.layer()).stream())
                .filter(LayerTally::endsWorkup)
                .filter(layer -> !wanted.stream().allMatch(product -> isRead(layer, product)))
                .count();
    }

    private static boolean isRead(LayerTally layer, Product product) {
        return layer.contents().stream()
                .anyMatch(c -> c.isOf(product.name()) && (c.massGrams().isPresent() || c.isOwnEvidence()));
    }

    /** True where nobody looked for product in the kept layers, so that what they hold is not known. */
    public boolean isKeptUnknown() {
        return keptGrams == 0 && notAssayed > 0;
    }

    /** Share isolated by assay, % of theory; 0 where it is not known. */
    public double isolatedPercent() {
        return percent(isolatedGrams.orElse(0.0));
    }

    /** Share in lots whose yield is an upper bound, % of theory. */
    public double atMostPercent() {
        return percent(atMostGrams);
    }

    /** Share in layers, % of theory. */
    public double keptPercent() {
        return percent(keptGrams);
    }

    /** Share of which nobody can say yet where it is, % of theory: upper bounds of lots, and the rest while something is open. */
    public double notKnownPercent() {
        return atMostPercent() + (isRestOpen ? rest() : 0);
    }

    /** Share not found as product, % of theory, at least 0. */
    public double notFoundPercent() {
        return isRestOpen ? 0 : rest();
    }

    private double rest() {
        return Math.max(0, 100 - isolatedPercent() - atMostPercent() - keptPercent() - percent(sampledGrams));
    }

    private double percent(double grams) {
        return 100 * grams / theoryGrams;
    }
}
