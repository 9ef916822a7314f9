package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.RunReview;
import workuptally.model.Run;
import workuptally.report.view.lines.ProductLine;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.balance.Closure;

/** The runs of a review on the terminal: yields and closures with their uncertainty, a line for each product and stage. */
final class RunTable {
    private static final int WIDEST_CELL = 44;

    private final ReadableNumbers numbers;
    private final double coverageFactor;
    private final TextTable table = new TextTable(
            WIDEST_CELL,
            List.of("Run", "Product", "Theory (g)", "Crude (%)", "Yield (%)", "Closure (%)", "Verdict", "Urgent"),
            1);

    RunTable(List<RunReview> runs, double coverageFactor, ReadableNumbers numbers) {
        this.numbers = numbers;
        this.coverageFactor = coverageFactor;
        runs.forEach(this::add);
    }

    void print(PrintWriter out) {
        if (!table.isEmpty()) {
            table.print(out);
        }
    }

    private void add(RunReview review) {
        List<Closure> closures = new ArrayList<>(review.tally().closures());
        boolean isolated = review.tally().run().status() == Run.Status.ISOLATED;
        List<List<String>> lines = new ArrayList<>();
        for (ProductLine line : ProductLine.of(review.tally(), numbers, coverageFactor)) {
            Optional<Closure> closure = take(closures, line.product());
            lines.add(List.of(
                    line.name(),
                    line.theory(),
                    String.join("; ", line.crudeOverTheory()),
                    line.found().isEmpty() && isolated
                            ? "not computed"
                            : line.yield().together(),
                    closure.map(this::percent).orElse(ProductLine.NOTHING),
                    closure.map(c -> c.verdict().word()).orElse(ProductLine.NOTHING)));
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
                .orElse(ProductLine.NOTHING);
        for (int i = 0; i < lines.size(); i++) {
            List<String> cells = new ArrayList<>(List.of(i == 0 ? review.id() : ""));
            cells.addAll(lines.get(i));
            cells.add(i == 0 ? urgent : "");
            table.row(cells);
        }
    }

    /** The closure that counts this product, taken out of the list. */
    private static Optional<Closure> take(List<Closure> closures, String product) {
        Optional<Closure> own =
                closures.stream().filter(c -> c.unaccountedAs().equals(product)).findFirst();
        own.ifPresent(closure -> closures.removeIf(c -> c == closure));
        return own;
    }

    private String percent(Closure closure) {
        return numbers.pair(closure.percent().value(), closure.expandedUncertaintyPercent())
                .together();
    }
}
