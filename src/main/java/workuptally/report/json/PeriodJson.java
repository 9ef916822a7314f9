package workuptally.report.json;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.judgement.totals.PeriodTotals.StreamTotal;
import workuptally.model.Correction;
import workuptally.model.Field;
import workuptally.model.HistoryPoint;
import workuptally.model.Run;
import workuptally.model.Transfer;

/** Totals over the book, and its registers: containers, transfers, series, corrections. */
final class PeriodJson {
    private PeriodJson() {}

    static void write(JsonFields json, Review review) {
        PeriodTotals period = review.period();
        SolventJson.array(json, period.solvents());
        json.array("waste", period.waste(), total -> stream(json, total));
        ContainerJson.array(json, review);
        json.array("transfers", review.book().transfers(), transfer -> transfer(json, transfer));
        json.object("period", () -> totals(json, period));
        series(json, review);
        json.array("corrections", review.book().corrections(), correction -> correction(json, correction));
    }

    static void totals(JsonFields json, PeriodTotals period) {
        json.number("coverageFactor", period.coverageFactor());
        json.count("runsIsolated", period.runsIsolated());
        json.count("runsInWorkup", period.runsInWorkup());
        json.count("runsPlanned", period.runsPlanned());
        json.count("yieldsStated", period.yieldsStated());
        json.number("meanYieldPercent", period.meanYieldPercent());
        json.number("medianYieldPercent", period.medianYieldPercent());
        json.number("amountWeightedYieldPercent", period.amountWeightedYieldPercent());
        period.withoutLargest().ifPresent(without -> {
            json.number("amountWeightedWithoutLargestPercent", without.percent());
            json.text("largestRun", without.run());
        });
        json.number("solventInGrams", period.solventInGrams());
        json.number("solventRecoveredPercent", period.solventRecoveredPercent());
        json.number("solventInDistillatesPercent", period.solventInDistillatesPercent());
        json.number("solventNotFoundPercent", period.solventNotFoundPercent());
        json.object("metrics", () -> PeriodMetricsJson.write(json, period.metrics()));
        json.texts("excluded", period.excluded());
    }

    static void stream(JsonFields json, StreamTotal total) {
        json.text("stream", total.stream());
        json.text("streamName", total.streamName());
        json.count("layers", total.layers());
        json.number("massGrams", total.massGrams());
        json.count("withoutMass", total.withoutMass());
    }

    private static void transfer(JsonFields json, Transfer transfer) {
        json.text("transfer", transfer.id());
        json.text("run", transfer.run());
        json.texts("layers", transfer.layers());
        json.text("material", transfer.material());
        json.text("container", transfer.container());
        entered(json, "massGrams", transfer.massGrams());
        json.text("status", EnumWord.of(transfer.status()));
        json.text("by", transfer.by());
        json.text("date", transfer.date());
    }

    private static void series(JsonFields json, Review review) {
        Map<String, List<HistoryPoint>> history =
                review.book().history().stream().collect(Collectors.groupingBy(HistoryPoint::series));
        Map<String, List<String>> runs = review.book().runs().stream()
                .collect(Collectors.groupingBy(
                        r -> r.head().series(), Collectors.mapping(Run::id, Collectors.toList())));
        Set<String> names = new LinkedHashSet<>();
        review.book().history().forEach(point -> names.add(point.series()));
        review.book().runs().forEach(run -> names.add(run.head().series()));
        names.remove("");
        json.array("series", names, name -> {
            json.text("series", name);
            json.texts("runs", runs.getOrDefault(name, List.of()));
            json.array("history", history.getOrDefault(name, List.of()), point -> {
                json.text("date", point.date());
                entered(json, "yieldPercent", point.yieldPercent());
            });
            review.series().stream()
                    .filter(tally -> tally.series().equalsIgnoreCase(name))
                    .findFirst()
                    .ifPresent(tally -> SeriesJson.write(json, tally));
        });
    }

    private static void correction(JsonFields json, Correction correction) {
        json.text("when", correction.when());
        json.text("who", correction.who());
        json.text("record", correction.record());
        json.text("old", correction.oldValue());
        json.text("new", correction.newValue());
        json.text("reason", correction.reason());
    }

    /** An entered number, with a word beside it where it is a limit or an estimate. */
    static void entered(JsonFields json, String name, Field field) {
        field.entered().ifPresent(number -> {
            json.number(name, number.value());
            if (number.qualifier() != Field.Qualifier.EXACT) {
                json.text(name + "Qualifier", EnumWord.of(number.qualifier()));
            }
        });
    }
}
