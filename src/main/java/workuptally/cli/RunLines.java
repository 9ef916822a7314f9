package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.measure.Rounding;
import workuptally.model.Product;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.balance.Closure;

/** Theory, crude over theory, yield and closure of each wanted product, narrow enough for a screen. */
final class RunLines {
    private static final int WIDEST_CLOSURES = 22;
    private static final int WIDEST_CELL = 44;
    private static final int THEORY_DIGITS = 4;
    private static final String NOTHING = "-";

    private final Review review;
    private final Rounding rounding;
    private final List<List<String>> lines = new ArrayList<>();

    RunLines(Review review, Rounding rounding) {
        this.review = review;
        this.rounding = rounding;
        review.runs().forEach(this::add);
    }

    int size() {
        return lines.size();
    }

    void print(PrintWriter out, String indent) {
        TextTable table = new TextTable(
                WIDEST_CELL, List.of("Run", "Product", "Theory (g)", "Crude (%)", "Yield (%)", "Least closure (%)"), 1);
        lines.forEach(table::row);
        if (!lines.isEmpty()) {
            table.print(out, indent);
        }
    }

    private void add(RunReview run) {
        boolean first = true;
        for (Product product : run.tally().run().products()) {
            if (product.wanted()) {
                lines.add(List.of(
                        first ? run.id() : "",
                        product.name() + (isPurified(run, product) ? ", purified" : ""),
                        theory(run, product),
                        crudeOverTheory(run, product),
                        yieldOf(run, product),
                        first ? closures(run) : ""));
                first = false;
            }
        }
    }

    private String theory(RunReview run, Product product) {
        return run.tally().theory().stream()
                .flatMap(theory -> theory.products().stream())
                .filter(p -> p.product().name().equals(product.name()))
                .map(p -> rounding.toSignificant(p.massGrams().value(), THEORY_DIGITS))
                .findFirst()
                .orElse(NOTHING);
    }

    private String crudeOverTheory(RunReview run, Product product) {
        return run.tally().lots().stream()
                .filter(LotTally::isCrude)
                .filter(l -> l.product().equalsIgnoreCase(product.name()))
                .flatMap(l -> l.overTheoryPercent().stream())
                .findFirst()
                .map(v -> rounding.toDecimals(v.value(), 1))
                .orElse(NOTHING);
    }

    private static boolean isPurified(RunReview run, Product product) {
        return headline(run, product)
                .filter(y -> y.stage() == ProductYield.Stage.PURIFIED)
                .isPresent();
    }

    private static Optional<ProductYield> headline(RunReview run, Product product) {
        return run.tally().yields().stream()
                .filter(y -> y.headline() && y.product().name().equals(product.name()))
                .findFirst();
    }

    private String yieldOf(RunReview run, Product product) {
        return headline(run, product)
                .map(y -> (y.basis().isUpperBound() ? "≤ " : "")
                        + rounding.withUncertainty(
                                y.percent().value(),
                                y.percent().expandedUncertainty(review.period().coverageFactor())))
                .orElse(NOTHING);
    }

    /** Every closure where they fit, else the one furthest below 100 %. */
    private String closures(RunReview run) {
        List<Closure> closures = run.tally().closures();
        String all = closures.stream().map(this::percent).collect(Collectors.joining("; "));
        return all.length() <= WIDEST_CLOSURES
                ? all
                : closures.stream()
                        .min(Comparator.comparingDouble(c -> c.percent().value()))
                        .map(this::percent)
                        .orElse(NOTHING);
    }

    private String percent(Closure closure) {
        return rounding.withUncertainty(closure.percent().value(), closure.expandedUncertaintyPercent());
    }
}
