package workuptally.report.pdf.pictures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.Look;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.balance.Closure;

/** Turns a closure into a bar: lots first, then layers in order, then what is unaccounted. */
public final class ClosureBar {
    private final Look look;
    private final RunReview run;

    public ClosureBar(Look look, RunReview run) {
        this.look = look;
        this.run = run;
    }

    public BalanceBar of(Closure closure) {
        Map<String, Double> lots = new LinkedHashMap<>();
        Map<String, Double> layers = new LinkedHashMap<>();
        List<String> labels = run.tally().lots().stream()
                .map(LotTally::lot)
                .map(l -> l.label())
                .toList();
        for (Closure.Term term : closure.terms()) {
            (labels.contains(term.place()) ? lots : layers).merge(term.place(), term.percent(), Double::sum);
        }
        List<BalanceBar.Part> parts = new ArrayList<>();
        lots.forEach((label, percent) -> parts.add(new BalanceBar.Part(
                "isolated " + label, percent, percent(percent), look.palette().isolated())));
        int index = 0;
        for (Map.Entry<String, Double> layer : layers.entrySet()) {
            parts.add(new BalanceBar.Part(
                    layer.getKey(),
                    layer.getValue(),
                    percent(layer.getValue()),
                    look.palette().portion(index)));
            index++;
        }
        parts.add(new BalanceBar.Part(
                closure.unaccountedPercent() < 0 ? "found above charged" : "unaccounted",
                closure.unaccountedPercent(),
                percent(Math.abs(closure.unaccountedPercent())),
                look.palette().unaccounted()));
        return new BalanceBar(
                look,
                "Units of " + closure.skeleton() + ", % of charged: "
                        + closure.verdict().word(),
                parts,
                closure.percent().value(),
                closure.expandedUncertaintyPercent(),
                ClosureRow.barWidth(look));
    }

    private String percent(double value) {
        return look.figures().fixed(value, 1) + "\u00A0%";
    }
}
