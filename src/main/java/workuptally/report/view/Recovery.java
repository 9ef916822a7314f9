package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.balance.CompositeSamples;
import workuptally.tally.layers.LayerTally;

/**
 * Where the wanted product of one run is: isolated, in kept layers, or not found as product, which unreacted substrate is a part of.
 *
 * @param run run id
 * @param theoryGrams theory of all wanted products together, g; of a separation what was charged
 * @param hasLot whether a lot of a wanted product is recorded, weighed or not
 * @param isolatedGrams isolated by assay, g; empty where no wanted product has a yield
 * @param keptGrams found in layers that still exist, g
 * @param notAssayed number of kept layers in which a wanted product was not looked for
 */
public record Recovery(
        String run,
        double theoryGrams,
        boolean hasLot,
        Optional<Double> isolatedGrams,
        double keptGrams,
        int notAssayed) {
    /** A line for each run with a theory that is more than planned, in order of the book. */
    public static List<Recovery> of(Review review) {
        List<Recovery> lines = new ArrayList<>();
        for (RunReview run : review.runs()) {
            double theory = theoryGrams(run);
            if (run.tally().run().status() != Run.Status.PLANNED && theory > 0) {
                lines.add(new Recovery(
                        run.id(), theory, hasLot(run), isolatedGrams(run), keptGrams(run), notAssayed(run)));
            }
        }
        return lines;
    }

    private static double theoryGrams(RunReview run) {
        return run.tally().theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(p -> p.product().wanted())
                .map(Theory.ProductTheory::massGrams)
                .mapToDouble(m -> m.value())
                .sum();
    }

    private static boolean hasLot(RunReview run) {
        return run.tally().lots().stream()
                .anyMatch(lot -> run.tally()
                        .run()
                        .product(lot.lot().product())
                        .filter(Product::wanted)
                        .isPresent());
    }

    /** The headline yield of each wanted product: that of the workup, else the purified one stands in. */
    private static Optional<Double> isolatedGrams(RunReview run) {
        double sum = 0;
        boolean any = false;
        for (Product product : run.tally().run().products()) {
            Optional<ProductYield> found = run.tally().yields().stream()
                    .filter(y -> product.wanted()
                            && y.product().name().equals(product.name())
                            && y.basis() != YieldBasis.NONE)
                    .findFirst();
            if (found.isPresent()) {
                sum += found.get().massGrams().value();
                any = true;
            }
        }
        return any ? Optional.of(sum) : Optional.empty();
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
                .anyMatch(c -> c.substance().equalsIgnoreCase(product.name())
                        && (c.massGrams().isPresent() || c.isOwnEvidence()));
    }

    /** True where nobody looked for product in the kept layers, so that what they hold is not known. */
    public boolean isKeptUnknown() {
        return keptGrams == 0 && notAssayed > 0;
    }

    /** True where the run was isolated and nothing tells how much. */
    public boolean isOpen() {
        return isolatedGrams.isEmpty() && keptGrams == 0;
    }

    /** Share isolated, % of theory; 0 where it is not known. */
    public double isolatedPercent() {
        return 100 * isolatedGrams.orElse(0.0) / theoryGrams;
    }

    /** Share in layers, % of theory. */
    public double keptPercent() {
        return 100 * keptGrams / theoryGrams;
    }

    /** Share not found as product, % of theory, at least 0. */
    public double missingPercent() {
        return Math.max(0, 100 - isolatedPercent() - keptPercent());
    }
}
