package workuptally.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.measure.Rounding;

/** A period in short on the terminal: runs, yields, solvents, waste, the spans before, and books that are not counted in full. */
final class PeriodSummary {
    private static final int WIDEST = 60;

    private final PeriodReview review;
    private final Rounding rounding;
    private final PrintWriter out;

    private PeriodSummary(PeriodReview review, Rounding rounding, PrintWriter out) {
        this.review = review;
        this.rounding = rounding;
        this.out = out;
    }

    static void print(PeriodReview review, Rounding rounding, PrintWriter out) {
        PeriodSummary summary = new PeriodSummary(review, rounding, out);
        summary.totals();
        summary.tables();
        summary.books();
    }

    private void totals() {
        PeriodTotals totals = review.totals();
        out.println(review.span().from() + " to " + review.span().to() + ": " + totals.runsIsolated()
                + " runs isolated, " + totals.runsInWorkup() + " in workup, " + totals.runsPlanned() + " planned");
        out.println("Yield over all amounts: " + percent(totals.amountWeightedYieldPercent())
                + totals.withoutLargest()
                        .map(w -> "; without " + w.run() + ": " + decimals(w.percent(), 1) + " %")
                        .orElse("")
                + "; median " + percent(totals.medianYieldPercent()) + " of " + totals.yieldsStated()
                + " yields stated");
        out.println("Solvents: " + (totals.isSolventLeast() ? "at least " : "")
                + rounding.toDecimalsThatShow(totals.solventInLitres(), 2) + " L, "
                + rounding.toDecimalsThatShow(totals.solventInGrams() / 1000, 2) + " kg in; "
                + decimals(totals.solventRecoveredPercent(), 0) + " % to re-use, "
                + decimals(totals.solventInDistillatesPercent(), 0) + " % in other distillates, "
                + decimals(totals.solventNotFoundPercent(), 0) + " % not found"
                + (totals.solventInPurificationsGrams() > 0
                        ? "; + " + rounding.toDecimalsThatShow(totals.solventInPurificationsGrams() / 1000, 2)
                                + " kg in purifications"
                        : ""));
        out.println("Process mass intensity: " + number(totals.metrics().pmi()) + " (sum over sum of "
                + totals.metrics().runs().size() + " runs)");
        out.println();
    }

    private void tables() {
        table(
                List.of("Solvent", "In (kg)", "To re-use (kg)", "Other distillates (kg)", "Not found (kg)"),
                review.totals().solvents().stream()
                        .map(s -> List.of(
                                s.solvent(),
                                kilograms(s.inGrams()),
                                kilograms(s.recoveredGrams()),
                                kilograms(s.inDistillatesGrams()),
                                kilograms(s.notFoundGrams())))
                        .toList());
        table(
                List.of("Stream", "Layers", "Kept (kg)", "Without amount"),
                review.totals().waste().stream()
                        .map(w -> List.of(
                                w.streamName(),
                                Integer.toString(w.layers()),
                                kilograms(w.massGrams()),
                                w.withoutMass() == 0 ? "" : Integer.toString(w.withoutMass())))
                        .toList());
        if (review.before().earlier().stream().allMatch(e -> e.runs() == 0)) {
            out.println("No run of the " + review.before().earlier().size() + " periods before, from "
                    + review.before().earlier().get(0).span().from() + " on, stands in these books.");
            out.println();
            return;
        }
        table(
                List.of("Before, from", "to", "Runs", "Solvents in (kg)", "To re-use (%)", "PMI"),
                review.before().earlier().stream().map(this::earlier).toList());
    }

    private List<String> earlier(PeriodReview.Earlier earlier) {
        boolean empty = earlier.runs() == 0;
        PeriodTotals totals = earlier.totals();
        return List.of(
                earlier.span().from().toString(),
                earlier.span().to().toString(),
                Integer.toString(earlier.runs()),
                empty ? "-" : kilograms(totals.solventInGrams()),
                empty ? "-" : decimals(totals.solventRecoveredPercent(), 0),
                empty ? "-" : number(totals.metrics().pmi()));
    }

    private void books() {
        review.books().stream()
                .filter(b -> !b.remark().isEmpty())
                .forEach(b -> Wrapped.lines(b.book() + " (" + b.standing().word() + "): " + b.remark(), "", "  ")
                        .forEach(out::println));
    }

    private void table(List<String> headings, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        TextTable table = new TextTable(WIDEST, headings);
        rows.forEach(table::row);
        table.print(out);
        out.println();
    }

    private String decimals(double value, int decimals) {
        return rounding.toDecimals(value, decimals);
    }

    private String kilograms(double grams) {
        return decimals(grams / 1000, 3);
    }

    private String percent(OptionalDouble value) {
        return value.isPresent() ? decimals(value.getAsDouble(), 1) + " %" : "not stated";
    }

    private String number(OptionalDouble value) {
        return value.isPresent() ? decimals(value.getAsDouble(), 1) : "not computed";
    }
}
