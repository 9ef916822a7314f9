package workuptally.judgement.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import workuptally.chemistry.IndividualsChart;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.HistoryPoint;
import workuptally.model.Severity;
import workuptally.tally.ProductYield;
import workuptally.tally.RunTally;
import workuptally.tally.YieldBasis;

/** A repeated preparation whose new yield signals on the chart of its earlier results; judged against them, not added to them. */
final class SeriesOutOfControl implements BookRule {
    static final String CODE = "series-out-of-control";

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        List<Finding> findings = new ArrayList<>();
        Map<String, List<Double>> baselines = new HashMap<>();
        for (RunTally tally : tallies) {
            List<Double> baseline = baselines.computeIfAbsent(tally.run().series(), series -> baseline(book, series));
            if (baseline.size() >= IndividualsChart.LEAST_POINTS) {
                tally.yields().stream()
                        .filter(y -> y.stage() == ProductYield.Stage.WORKUP && y.basis() == YieldBasis.ASSAY)
                        .findFirst()
                        .ifPresent(y -> judge(findings, tally, y, baseline));
            }
        }
        return List.copyOf(findings);
    }

    private static List<Double> baseline(Book book, String series) {
        return book.history().stream()
                .filter(p -> !series.isBlank() && p.series().equalsIgnoreCase(series))
                .sorted(Comparator.comparing((HistoryPoint p) -> p.date().orElse(LocalDate.MIN)))
                .flatMap(p -> p.yieldPercent().entered().stream())
                .map(e -> e.value())
                .toList();
    }

    private static void judge(List<Finding> findings, RunTally tally, ProductYield product, List<Double> baseline) {
        IndividualsChart chart = IndividualsChart.of(baseline);
        List<Double> values = new ArrayList<>(baseline);
        values.add(product.percent().value());
        List<String> signals = chart.signals(values).stream()
                .filter(s -> s.index() == baseline.size())
                .map(s -> words(s.rule()))
                .toList();
        if (!signals.isEmpty()) {
            findings.add(new Finding(
                    CODE,
                    Severity.CHECK,
                    tally.run().id(),
                    tally.run().row().at("Series"),
                    FindingList.say(
                            "%s %.1f %% in series %s: %s",
                            product.product().name(),
                            product.percent().value(),
                            tally.run().series(),
                            String.join("; ", signals)),
                    FindingList.say(
                            "%.1f to %.1f %% (mean %.1f %% of %d earlier results)",
                            chart.lowerLimit(), chart.upperLimit(), chart.centre(), baseline.size()),
                    "individuals and moving-range chart, x̄ ± 2.66·MR̄",
                    "Look for what was different this time; a result above the limits is as suspicious as one below."));
        }
    }

    private static String words(IndividualsChart.Rule rule) {
        return switch (rule) {
            case OUTSIDE_LIMITS -> "outside the limits";
            case MOVING_RANGE -> "further from the result before than the moving range allows";
            case NINE_ON_ONE_SIDE -> "nine in a row on one side of the mean";
            case SIX_RISING_OR_FALLING -> "six in a row rising or falling";
        };
    }
}
