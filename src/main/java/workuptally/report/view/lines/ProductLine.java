package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Product;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.ReadableNumbers.Pair;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;

/**
 * A product of a run on one line, the same in every document and on the terminal: one line for each stage of its yield.
 *
 * @param product name of the product; empty where the run has none
 * @param name product, with what sets the line apart
 * @param theory theory, g
 * @param crudeOverTheory crude over theory, %, of each crude lot
 * @param yield yield and U, %
 * @param found the yield itself, if there is one
 * @param plannedPercent planned yield, %
 */
public record ProductLine(
        String product,
        String name,
        String theory,
        List<String> crudeOverTheory,
        Pair yield,
        Optional<ProductYield> found,
        OptionalDouble plannedPercent) {
    /** What stands for a figure that there is none of. */
    public static final String NOTHING = "–";

    /** Copies the list. */
    public ProductLine {
        crudeOverTheory = List.copyOf(crudeOverTheory);
    }

    /**
     * The lines of a run, at least one.
     *
     * @param coverageFactor k of U
     */
    public static List<ProductLine> of(RunTally tally, ReadableNumbers numbers, double coverageFactor) {
        List<ProductLine> lines = new ArrayList<>();
        for (Product product : tally.run().products()) {
            List<ProductYield> yields = tally.yields().stream()
                    .filter(y -> y.product().name().equals(product.name()) && y.basis() != YieldBasis.NONE)
                    .toList();
            Words words = new Words(tally, product, numbers, coverageFactor);
            if (yields.isEmpty() && (product.wanted() || words.theory().isPresent())) {
                lines.add(words.line(Optional.empty()));
            }
            yields.forEach(y -> lines.add(words.line(Optional.of(y))));
        }
        if (lines.isEmpty()) {
            lines.add(new ProductLine(
                    "",
                    tally.run().head().reaction(),
                    NOTHING,
                    List.of(NOTHING),
                    new Pair(NOTHING, ""),
                    Optional.empty(),
                    OptionalDouble.empty()));
        }
        return lines;
    }

    /** True where it may be shown alone for its product: the yield that is reported, or none. */
    public boolean isHeadline() {
        return found.map(ProductYield::headline).orElse(true);
    }

    /** What is said of one product. */
    private record Words(RunTally tally, Product product, ReadableNumbers numbers, double coverageFactor) {
        ProductLine line(Optional<ProductYield> found) {
            boolean purified =
                    found.map(y -> y.stage() == ProductYield.Stage.PURIFIED).orElse(false);
            boolean beside = found.map(y -> !y.endsWorkup()).orElse(false);
            String name = product.name() + (product.wanted() ? "" : " (tracked)") + (purified ? ", purified" : "");
            if (found.map(y -> y.percentOf() == ProductYield.PercentOf.CHARGED).orElse(false)) {
                name += ", % of charged";
            }
            return new ProductLine(
                    product.name(),
                    name,
                    theory().map(t ->
                                    numbers.pair(t.massGrams(), coverageFactor).value())
                            .orElse(NOTHING),
                    beside ? List.of() : crude(),
                    found.map(this::yield).orElse(new Pair(NOTHING, "")),
                    found,
                    beside
                            ? OptionalDouble.empty()
                            : product.plannedYieldPercent()
                                    .entered()
                                    .map(e -> OptionalDouble.of(e.value()))
                                    .orElse(OptionalDouble.empty()));
        }

        Optional<Theory.ProductTheory> theory() {
            return tally.theory().stream()
                    .flatMap(t -> t.products().stream())
                    .filter(t -> t.product().name().equals(product.name()))
                    .findFirst();
        }

        private Pair yield(ProductYield found) {
            Pair pair = numbers.pair(found.percent(), coverageFactor);
            return found.basis().isUpperBound() ? new Pair("≤ " + pair.value(), "") : pair;
        }

        private List<String> crude() {
            List<String> crude = tally.lots().stream()
                    .filter(lot -> lot.isCrude() && lot.isOf(product.name()))
                    .flatMap(lot -> lot.overTheoryPercent().stream())
                    .map(percent -> numbers.pair(percent, coverageFactor).value())
                    .toList();
            return crude.isEmpty() ? List.of(NOTHING) : crude;
        }
    }
}
