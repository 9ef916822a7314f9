package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.view.lines.ProductLine;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.balance.Closure;

/** Theory, crude over theory, the yield reported and closure of each product, narrow enough for a screen. */
final class RunLines {
    private static final int WIDEST_CLOSURES = 22;
    private static final int WIDEST_CELL = 44;

    private final double coverageFactor;
    private final ReadableNumbers numbers;
    private final List<List<String>> lines = new ArrayList<>();

    RunLines(Review review, ReadableNumbers numbers) {
        this.coverageFactor = review.period().coverageFactor();
        this.numbers = numbers;
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
        for (ProductLine line : ProductLine.of(run.tally(), numbers, coverageFactor)) {
            if (line.isHeadline()) {
                lines.add(List.of(
                        first ? run.id() : "",
                        line.name(),
                        line.theory(),
                        String.join("; ", line.crudeOverTheory()),
                        line.yield().together(),
                        first ? closures(run) : ""));
                first = false;
            }
        }
    }

    /** Every closure where they fit, else the one furthest below 100 %. */
    private String closures(RunReview run) {
        List<Closure> closures = run.tally().closures();
        String all = closures.stream().map(this::percent).collect(Collectors.joining("; "));
        return closures.isEmpty()
                ? ProductLine.NOTHING
                : all.length() <= WIDEST_CLOSURES
                        ? all
                        : closures.stream()
                                .min(Comparator.comparingDouble(c -> c.percent().value()))
                                .map(this::percent)
                                .orElseThrow();
    }

    private String percent(Closure closure) {
        return numbers.pair(closure.percent().value(), closure.expandedUncertaintyPercent())
                .together();
    }
}
