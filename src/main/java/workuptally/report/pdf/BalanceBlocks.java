package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.pictures.ClosureBar;
import workuptally.report.pdf.pictures.ClosureRow;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.balance.Route;

/** The balances of a run: a bar for each partner, where the rest can be, independent routes to a figure, and total mass in a line. */
final class BalanceBlocks {
    private static final int CANDIDATES = 2;
    private static final int MOST_BARS = 3;

    private final Look look;
    private final RunReview run;
    private final double coverageFactor;

    BalanceBlocks(Look look, RunReview run, double coverageFactor) {
        this.look = look;
        this.run = run;
        this.coverageFactor = coverageFactor;
    }

    /** The bars with their figures. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Closure> closures = run.tally().closures();
        for (Closure closure : closures.subList(0, Math.min(MOST_BARS, closures.size()))) {
            blocks.add(new ClosureRow(look, closureLine(closure), new ClosureBar(look, run).of(closure)));
        }
        return blocks;
    }

    /** Where the rest can be, independent routes, and total mass. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        List<Closure> closures = run.tally().closures();
        for (Closure closure : closures) {
            if (!closure.candidates().isEmpty() && !isTooMuch(closure)) {
                sentences.add(candidates(closure, closures.size() > 1));
            }
        }
        routes(sentences);
        run.tally().massBalance().ifPresent(m -> sentences.add(mass(m)));
        return sentences;
    }

    private String closureLine(Closure closure) {
        ReadableNumbers figures = look.figures();
        ReadableNumbers.Pair percent = figures.pair(closure.percent().value(), closure.expandedUncertaintyPercent());
        boolean tooMuch = isTooMuch(closure);
        ReadableNumbers.Pair rest =
                figures.pair(Math.abs(closure.unaccountedPercent()), closure.expandedUncertaintyPercent());
        String sign = !tooMuch && closure.unaccountedPercent() < 0 ? "\u2212" : "";
        String grams = closure.unaccountedAs().isBlank()
                ? ""
                : " (" + sign + figures.significant(Math.abs(closure.unaccountedGrams()), 2) + "\u00A0g "
                        + closure.unaccountedAs() + ")";
        return "Balance on " + closure.skeleton() + " " + percent.together() + "\u00A0%: "
                + closure.verdict().word() + "; " + (tooMuch ? "" : "unaccounted " + sign) + rest.value() + "\u00A0%"
                + (tooMuch ? " too much" : "") + grams + ".";
    }

    /** More was found than was charged, by more than U: there is no rest to look for. */
    private static boolean isTooMuch(Closure closure) {
        return -closure.unaccountedPercent() > closure.expandedUncertaintyPercent();
    }

    private String candidates(Closure closure, boolean named) {
        StringJoiner text =
                new StringJoiner("; ", "The rest" + (named ? " of " + closure.skeleton() : "") + " can be: ", ".");
        closure.candidates().stream()
                .limit(CANDIDATES)
                .forEach(c -> text.add(c.place() + ", " + range(c) + " (" + c.settledBy() + ")"));
        if (closure.candidates().size() > CANDIDATES) {
            text.add("and "
                    + closure.candidates().stream()
                            .skip(CANDIDATES)
                            .map(Closure.Candidate::place)
                            .distinct()
                            .collect(Collectors.joining(", ")));
        }
        return closure.withoutPlaceGrams() > 0
                ? text + " At least " + look.figures().significant(closure.withoutPlaceGrams(), 2)
                        + "\u00A0g is more than these can hold."
                : text.toString();
    }

    private String range(Closure.Candidate candidate) {
        return candidate.lowGrams() > 0
                ? look.figures().significant(candidate.lowGrams(), 2) + " to "
                        + look.figures().most(candidate.highGrams()) + "\u00A0g"
                : look.figures().bound(candidate.highGrams()) + "\u00A0g";
    }

    /** Assay, charge balance and partition beside each other: they share no error, so their agreement says something. */
    private void routes(List<String> sentences) {
        List<Route> routes = run.tally().evidence().routes();
        if (routes.isEmpty()) {
            return;
        }
        StringJoiner text = new StringJoiner("; ", "Independent routes to the same figure: ", ".");
        for (Route route : routes) {
            text.add(route.layer() + " by " + route.way().word() + " "
                    + look.figures().significant(route.massGrams(), 3) + "\u00A0g ("
                    + look.figures().significant(route.lowGrams(), 3) + " to "
                    + look.figures().significant(route.highGrams(), 3) + ")");
        }
        sentences.add(text.toString());
    }

    private String mass(MassBalance balance) {
        ReadableNumbers figures = look.figures();
        return "Total mass: in "
                + figures.pair(balance.inGrams(), coverageFactor).value() + "\u00A0g, out "
                + figures.pair(balance.outGrams(), coverageFactor).value() + "\u00A0g, gap "
                + figures.pair(balance.gapGrams(), coverageFactor).together() + "\u00A0g; "
                + (balance.gasGrams() > 0
                        ? "gas expected " + figures.significant(balance.gasGrams(), 2) + "\u00A0g, "
                        : "")
                + "evaporation allowed " + figures.significant(balance.evaporationAllowanceGrams(), 2) + "\u00A0g."
                + (balance.complete() ? "" : " A layer or lot has no mass: the gap is an upper limit.");
    }
}
