package workuptally.report.view.lines;

import java.util.List;
import java.util.StringJoiner;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Words;
import workuptally.tally.series.SeriesTally;

/** What a repeated preparation says, in a sentence that can stand over its picture. */
public final class SeriesVerdict {
    private static final int NAMED_CHARACTERS = 70;

    private SeriesVerdict() {}

    /** The sentence. */
    public static String of(SeriesTally series, ReadableNumbers numbers) {
        return series.together()
                .map(group -> ofClass(series, group, numbers))
                .orElseGet(() -> ofRepeats(series, numbers));
    }

    private static String ofClass(SeriesTally series, SeriesTally.Together group, ReadableNumbers numbers) {
        StringJoiner text = new StringJoiner("; ", "Class " + series.series() + ": ", ".");
        text.add(
                group.medianPercent().isPresent()
                        ? Words.count(group.yields(), "yield") + ", median "
                                + numbers.fixed(group.medianPercent().getAsDouble(), 1) + "\u00A0%"
                        : "no yield counts");
        text.add(group.outliers().isEmpty() ? "no outlier" : "outliers: " + named(group.outliers()));
        if (!group.copies().isEmpty()) {
            text.add("same numbers as an earlier run: " + named(group.copies()));
        }
        return text.toString();
    }

    private static String named(List<String> runs) {
        return Words.listed(runs, ", ", NAMED_CHARACTERS, more -> Words.count(more, "more run"));
    }

    private static String ofRepeats(SeriesTally series, ReadableNumbers numbers) {
        String name = "Series " + series.series() + ": ";
        if (series.chart().isEmpty()) {
            return name + "too few earlier results for limits ("
                    + series.history().size() + " of 8).";
        }
        List<SeriesTally.Result> signals =
                series.results().stream().filter(r -> !r.signals().isEmpty()).toList();
        SeriesTally.Chart chart = series.chart().get();
        String range = numbers.fixed(chart.lowerLimitPercent(), 1) + " to "
                + numbers.fixed(chart.upperLimitPercent(), 1) + "\u00A0%";
        if (series.results().isEmpty()) {
            return name + "no new result; limits of the earlier ones " + range + ".";
        }
        if (signals.isEmpty()) {
            return name
                    + Words.listed(
                            series.results().stream()
                                    .map(r -> r.run() + " with " + numbers.fixed(r.yieldPercent(), 1) + "\u00A0%")
                                    .toList(),
                            ", ",
                            NAMED_CHARACTERS,
                            more -> Words.count(more, "more run"))
                    + (series.results().size() == 1 ? " lies" : " lie") + " within the limits, " + range + ".";
        }
        return name
                + Words.listed(
                        signals.stream()
                                .map(r -> r.run() + " with " + numbers.fixed(r.yieldPercent(), 1) + "\u00A0%: "
                                        + String.join(", ", r.signals()))
                                .toList(),
                        "; ",
                        2 * NAMED_CHARACTERS,
                        more -> Words.count(more, "more run"))
                + " (limits " + range + ").";
    }
}
