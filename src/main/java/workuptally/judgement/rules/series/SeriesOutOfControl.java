package workuptally.judgement.rules.series;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.rules.BookRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.series.SeriesAccount;
import workuptally.tally.series.SeriesTally;
import workuptally.tally.series.SeriesTally.Result;

/** A repeated preparation whose new yield signals on the chart of its earlier results; judged against them, not added to them. */
public final class SeriesOutOfControl implements BookRule {

    private final Substances substances;

    /** With the reference data in force. */
    public SeriesOutOfControl(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.SERIES_OUT_OF_CONTROL);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        List<Finding> findings = new ArrayList<>();
        for (SeriesTally series : new SeriesAccount(book, tallies, substances).list()) {
            series.chart()
                    .ifPresent(chart -> series.results().stream()
                            .filter(r -> !r.signals().isEmpty())
                            .forEach(r -> findings.add(finding(series, chart, r, run(r.run(), tallies)))));
        }
        return List.copyOf(findings);
    }

    private static RunTally run(String id, List<RunTally> tallies) {
        return tallies.stream().filter(t -> t.run().id().equals(id)).findFirst().orElseThrow();
    }

    private static Finding finding(SeriesTally series, SeriesTally.Chart chart, Result result, RunTally run) {
        return new Finding(
                FindingCode.SERIES_OUT_OF_CONTROL,
                Severity.CHECK,
                Subject.ofRun(result.run()),
                run.run().row().at("Series"),
                Phrase.of(
                        "{} {} in series {}: {}",
                        result.product(),
                        Figure.decimals(result.yieldPercent(), 1, "%"),
                        run.run().head().series(),
                        String.join("; ", result.signals())),
                Phrase.of(
                        "{} to {} (mean {} of {} earlier results)",
                        Figure.decimals(chart.lowerLimitPercent(), 1, ""),
                        Figure.decimals(chart.upperLimitPercent(), 1, "%"),
                        Figure.decimals(chart.centrePercent(), 1, "%"),
                        series.history().size()),
                "individuals and moving-range chart, x̄ ± 2.66·MR̄",
                Phrase.of(
                        "Look for what was different this time; a result above the limits is as suspicious as one below."));
    }
}
