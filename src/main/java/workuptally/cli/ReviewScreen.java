package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.measure.Rounding;
import workuptally.report.view.firstpage.LayerBoard;
import workuptally.report.view.firstpage.NextMeasurement;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.LotTally;

/** A review on one screen: what needs doing, what is complete, what was recovered, and the solvent; {@code --all} shows the rest. */
final class ReviewScreen {
    private static final int WIDTH = 100;
    private static final int MOST_RUNS_NAMED = 8;
    private static final int MOST_LINES_OF_RUNS = 15;
    private static final int LABEL = 8;
    private static final int WHERE = 11;
    private static final String INDENT = "  ";
    private static final String CUT = "…";

    private final Review review;
    private final Rounding rounding;
    private final Wording wording;
    private final PrintWriter out;

    private ReviewScreen(Review review, Rounding rounding, Wording wording, PrintWriter out) {
        this.review = review;
        this.wording = wording;
        this.rounding = rounding;
        this.out = out;
    }

    static void print(Review review, Rounding rounding, Wording wording, PrintWriter out) {
        ReviewScreen screen = new ReviewScreen(review, rounding, wording, out);
        screen.title();
        screen.toDo();
        screen.measureNext();
        screen.layers();
        screen.recovered();
        screen.solvent();
    }

    private void title() {
        PeriodTotals totals = review.period();
        List<String> parts = new ArrayList<>();
        add(parts, totals.runsIsolated(), "isolated");
        add(parts, totals.runsInWorkup(), "in workup");
        add(parts, totals.runsPlanned(), "planned");
        line(review.book().name() + ": " + count(review.runs().size(), "run")
                + (parts.isEmpty() ? "" : " (" + String.join(", ", parts) + ")") + "; "
                + TerminalFindings.counts(review.findings()));
        out.println();
    }

    private static void add(List<String> parts, int number, String word) {
        if (number > 0) {
            parts.add(number + " " + word);
        }
    }

    private static String count(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    /** The same actions in the same order as page one of the PDF and the summary of the workbook. */
    private void toDo() {
        List<UrgentAction> actions =
                UrgentAction.of(review, new ReadableNumbers(wording.mark()), UrgentAction.MOST_LINES);
        out.println(
                actions.isEmpty()
                        ? UrgentAction.nothingFirst(review)
                        : "To do, the gravest first (grams of product at stake)");
        for (UrgentAction action : actions) {
            String start = INDENT
                    + TerminalFindings.pad(action.severity().word(), LABEL - INDENT.length())
                    + TerminalFindings.pad(action.where(), WHERE);
            String grams = action.gramsAtStake().isPresent()
                    ? " (" + rounding.toSignificant(action.gramsAtStake().getAsDouble(), 3) + "\u00A0g)"
                    : "";
            Wrapped.lines(action.text() + grams, start, " ".repeat(LABEL + WHERE))
                    .forEach(out::println);
        }
        out.println();
    }

    /** The same measurements as on page one of the PDF, a line each. */
    private void measureNext() {
        List<NextMeasurement> next = NextMeasurement.of(review, wording);
        if (!next.isEmpty()) {
            out.println("Measure next");
            next.stream()
                    .limit(NextMeasurement.MOST_LINES)
                    .forEach(n -> line(INDENT + TerminalFindings.pad(n.run(), WHERE) + n.test() + "; " + n.settles()));
            NextMeasurement.left(next).ifPresent(left -> line(INDENT + TerminalFindings.pad("", WHERE) + left));
            out.println();
        }
    }

    private static String in(List<String> runs) {
        if (runs.isEmpty()) {
            return "";
        }
        String named = runs.stream().limit(MOST_RUNS_NAMED).collect(Collectors.joining(", "));
        return ": " + named
                + (runs.size() > MOST_RUNS_NAMED ? " and " + (runs.size() - MOST_RUNS_NAMED) + " more" : "");
    }

    private void layers() {
        Map<LayerDecision.Outcome, Long> outcomes = review.runs().stream()
                .flatMap(run -> run.decisions().stream())
                .filter(d -> !d.isGone())
                .collect(Collectors.groupingBy(LayerDecision::outcome, Collectors.counting()));
        List<String> gone = LayerBoard.gone(review);
        if (outcomes.isEmpty() && gone.isEmpty()) {
            return;
        }
        List<String> complete = review.runs().stream()
                .flatMap(run -> run.decisions().stream()
                        .filter(d -> d.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE && !d.isGone())
                        .map(d -> run.id() + " " + d.layer()))
                .toList();
        out.println("Layers");
        line(INDENT + "evidence complete (" + complete.size() + ")" + in(complete));
        List<String> others = new ArrayList<>();
        for (LayerDecision.Outcome outcome : LayerDecision.Outcome.values()) {
            if (outcome != LayerDecision.Outcome.EVIDENCE_COMPLETE && outcomes.containsKey(outcome)) {
                others.add(outcome.word() + " (" + outcomes.get(outcome) + ")");
            }
        }
        if (!others.isEmpty()) {
            line(INDENT + String.join("; ", others));
        }
        if (!gone.isEmpty()) {
            line(INDENT + "gone" + in(gone));
        }
        Wrapped.lines(SafetyWording.A_PERSON_DECIDES, INDENT, INDENT).forEach(out::println);
        out.println();
    }

    private void recovered() {
        PeriodTotals totals = review.period();
        long bounds = review.runs().stream()
                .flatMap(run -> run.tally().yields().stream())
                .filter(y -> y.basis().isUpperBound())
                .count();
        long crudeOnly = review.runs().stream()
                .filter(run -> run.tally().yields().isEmpty())
                .filter(run -> run.tally().lots().stream()
                        .map(LotTally::overTheoryPercent)
                        .anyMatch(percent -> percent.isPresent()))
                .count();
        List<String> parts = new ArrayList<>(List.of(count(totals.yieldsStated(), "yield") + " stated"));
        if (totals.yieldsStated() > 0) {
            parts.add("median " + percent(totals.medianYieldPercent()));
            parts.add(percent(totals.amountWeightedYieldPercent()) + " over all amounts");
        }
        if (bounds > 0) {
            parts.add(bounds + " at most, since no assay is recorded");
        }
        if (crudeOnly > 0) {
            parts.add(count(crudeOnly, "run") + " with crude over theory only");
        }
        out.println("Product");
        line(INDENT + String.join("; ", parts));
        RunLines lines = new RunLines(review, new ReadableNumbers(wording.mark()));
        if (lines.size() <= MOST_LINES_OF_RUNS) {
            lines.print(out, INDENT);
        }
        out.println();
    }

    private void solvent() {
        PeriodTotals totals = review.period();
        double purification = totals.solventInPurificationsGrams();
        if (totals.solventInGrams() <= 0 && purification <= 0) {
            return;
        }
        out.println("Solvent");
        line(INDENT + (totals.isSolventLeast() ? "at least " : "")
                + rounding.toDecimalsThatShow(totals.solventInLitres(), 2) + " L, "
                + rounding.toDecimalsThatShow(totals.solventInGrams() / 1000, 2) + " kg in; "
                + (review.recordsWorkup() ? whereabouts(totals) : "what became of it is not recorded"));
        if (purification > 0) {
            line(INDENT + "+ " + new ReadableNumbers(wording.mark()).mass(purification)
                    + " in purifications, which none of these figures counts");
        }
        out.println();
    }

    private String whereabouts(PeriodTotals totals) {
        return rounding.toDecimals(totals.solventRecoveredPercent(), 0) + " % to re-use, "
                + rounding.toDecimals(totals.solventInDistillatesPercent(), 0) + " % in other distillates, "
                + rounding.toDecimals(totals.solventNotFoundPercent(), 0) + " % not found";
    }

    private String percent(OptionalDouble percent) {
        return percent.isPresent() ? rounding.toDecimals(percent.getAsDouble(), 1) + " %" : "not computed";
    }

    /** One line; a longer text ends with its last whole clause. */
    private void line(String text) {
        out.println(clause(text.replaceAll("\\R", " ").stripTrailing(), WIDTH));
    }

    /** A text of at most so many characters: cut visibly behind its last whole clause, else behind its last whole word. */
    private static String clause(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        String start = text.substring(0, most - CUT.length() - 1);
        int end = -1;
        for (String mark : List.of(". ", "; ", ", ", " (")) {
            end = Math.max(end, start.lastIndexOf(mark));
        }
        end = end > most / 2 ? end : start.lastIndexOf(' ');
        return start.substring(0, end > 0 ? end : start.length()) + " " + CUT;
    }
}
