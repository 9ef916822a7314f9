package workuptally.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import workuptally.judgement.PeriodTotals;
import workuptally.judgement.period.PeriodReview;

/** A period in short on the terminal: runs, yields, solvents, waste, and the weeks before. */
final class PeriodSummary {
    private static final int WIDEST = 60;

    private PeriodSummary() {}

    static void print(PeriodReview review, PrintWriter out) {
        PeriodTotals totals = review.totals();
        out.println(review.from() + " to " + review.to() + ": " + totals.runsIsolated() + " runs isolated, "
                + totals.runsInWorkup() + " in workup, " + totals.runsPlanned() + " planned");
        out.println("Yield over all amounts: " + percent(totals.amountWeightedYieldPercent())
                + totals.withoutLargest()
                        .map(w -> String.format(Locale.ROOT, "; without %s: %.1f %%", w.run(), w.percent()))
                        .orElse("")
                + "; " + totals.yieldsStated() + " yields stated");
        out.println(String.format(
                Locale.ROOT,
                "Solvents: %.2f kg in, %.0f %% recovered, %.0f %% not found",
                totals.solventInGrams() / 1000,
                totals.solventRecoveredPercent(),
                totals.solventNotFoundPercent()));
        out.println("Process mass intensity: " + number(totals.metrics().pmi()) + " (sum over sum of "
                + totals.metrics().runs().size() + " runs)");
        out.println();
        List<List<String>> rows = totals.solvents().stream()
                .map(s -> List.of(
                        s.solvent(),
                        kilograms(s.inGrams()),
                        kilograms(s.recoveredGrams()),
                        kilograms(s.notFoundGrams())))
                .toList();
        table(out, List.of("Solvent", "In (kg)", "Recovered (kg)", "Not found (kg)"), rows);
        table(
                out,
                List.of("Stream", "Layers", "Kept (kg)"),
                totals.waste().stream()
                        .map(w -> List.of(w.streamName(), Integer.toString(w.layers()), kilograms(w.massGrams())))
                        .toList());
        table(
                out,
                List.of("Week from", "Runs", "Solvents in (kg)", "Recovered (%)", "PMI"),
                review.weeks().stream()
                        .map(w -> List.of(
                                w.monday().toString(),
                                Integer.toString(w.runs()),
                                kilograms(w.totals().solventInGrams()),
                                String.format(Locale.ROOT, "%.0f", w.totals().solventRecoveredPercent()),
                                number(w.totals().metrics().pmi())))
                        .toList());
        review.books().stream()
                .filter(b -> !b.remark().isEmpty())
                .forEach(b ->
                        Wrapped.lines(b.book() + ": " + b.remark(), "", "  ").forEach(out::println));
    }

    private static void table(PrintWriter out, List<String> headings, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        TextTable table = new TextTable(WIDEST, headings);
        rows.forEach(table::row);
        table.print(out);
        out.println();
    }

    private static String kilograms(double grams) {
        return String.format(Locale.ROOT, "%.3f", grams / 1000);
    }

    private static String percent(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.1f %%", value.getAsDouble()) : "none stated";
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.1f", value.getAsDouble()) : "not computed";
    }
}
