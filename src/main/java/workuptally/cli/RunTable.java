package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Rounding;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.balance.Closure;

/** The runs of a review on the terminal: yields and closures with their uncertainty, one line per product. */
final class RunTable {
    private static final int WIDEST_CELL = 44;
    private static final int THEORY_DIGITS = 4;
    private static final String NOTHING = "-";

    private final Rounding rounding;
    private final double coverageFactor;
    private final TextTable table = new TextTable(
            WIDEST_CELL,
            List.of("Run", "Product", "Theory (g)", "Crude (%)", "Yield (%)", "Closure (%)", "Verdict", "Urgent"),
            1);

    RunTable(List<RunReview> runs, double coverageFactor, Rounding rounding) {
        this.rounding = rounding;
        this.coverageFactor = coverageFactor;
        runs.forEach(this::add);
    }

    void print(PrintWriter out) {
        if (!table.isEmpty()) {
            table.print(out);
        }
    }

    private void add(RunReview review) {
        Run run = review.tally().run();
        List<Closure> closures = new ArrayList<>(review.tally().closures());
        List<List<String>> lines = new ArrayList<>();
        for (Product product : run.products()) {
            if (product.wanted()) {
                lines.add(line(review, product.name(), true, take(closures, product)));
                if (yieldOf(review, product.name(), false).isPresent()) {
                    lines.add(line(review, product.name(), false, Optional.empty()));
                }
            }
        }
        for (Closure closure : closures) {
            lines.add(List.of(
                    "(closure of " + closure.skeleton() + ")",
                    "",
                    "",
                    "",
                    percent(closure),
                    closure.verdict().word()));
        }
        String urgent = review.findings().stream()
                .findFirst()
                .map(f -> f.severity().word())
                .orElse(NOTHING);
        for (int i = 0; i < lines.size(); i++) {
            List<String> cells = new ArrayList<>(List.of(i == 0 ? run.id() : ""));
            cells.addAll(lines.get(i));
            cells.add(i == 0 ? urgent : "");
            table.row(cells);
        }
    }

    /** The closure that counts this product, taken out of the list. */
    private static Optional<Closure> take(List<Closure> closures, Product product) {
        Optional<Closure> own = closures.stream()
                .filter(c -> c.unaccountedAs().equals(product.name()))
                .findFirst();
        own.ifPresent(closure -> closures.removeIf(c -> c == closure));
        return own;
    }

    private List<String> line(RunReview review, String product, boolean workup, Optional<Closure> closure) {
        boolean purified = yieldOf(review, product, workup)
                .filter(y -> y.stage() == ProductYield.Stage.PURIFIED)
                .isPresent();
        return List.of(
                purified ? product + ", purified" : product,
                workup ? theory(review, product) : "",
                workup ? crudeOverTheory(review, product) : "",
                yieldText(review, product, workup),
                closure.map(this::percent).orElse(workup ? NOTHING : ""),
                closure.map(c -> c.verdict().word()).orElse(workup ? NOTHING : ""));
    }

    private String theory(RunReview review, String product) {
        return review.tally().theory().stream()
                .flatMap(theory -> theory.products().stream())
                .filter(p -> p.product().name().equals(product))
                .map(p -> rounding.toSignificant(p.massGrams().value(), THEORY_DIGITS))
                .findFirst()
                .orElse(NOTHING);
    }

    private String crudeOverTheory(RunReview review, String product) {
        return review.tally().lots().stream()
                .filter(LotTally::isCrude)
                .filter(l -> l.product().equalsIgnoreCase(product))
                .flatMap(l -> l.overTheoryPercent().stream())
                .findFirst()
                .map(v -> rounding.toDecimals(v.value(), 1))
                .orElse(NOTHING);
    }

    private String yieldText(RunReview review, String product, boolean workup) {
        Optional<ProductYield> found = yieldOf(review, product, workup);
        if (found.isPresent()) {
            String text = withUncertainty(found.get().percent());
            return found.get().basis().isUpperBound() ? "≤ " + text : text;
        }
        return review.tally().run().status() == Run.Status.ISOLATED ? "not computed" : NOTHING;
    }

    private static Optional<ProductYield> yieldOf(RunReview review, String product, boolean workup) {
        return review.tally().yields().stream()
                .filter(y -> y.endsWorkup() == workup && y.product().name().equals(product))
                .findFirst();
    }

    private String percent(Closure closure) {
        return rounding.withUncertainty(closure.percent().value(), closure.expandedUncertaintyPercent());
    }

    private String withUncertainty(MeasuredValue value) {
        return rounding.withUncertainty(value.value(), value.expandedUncertainty(coverageFactor));
    }
}
