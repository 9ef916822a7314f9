package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.tally.Closure;

/** Closures per skeleton: what is isolated, what stands in layers, what is not accounted for and where it can be. */
public final class ClosuresSection {
    /** Title of the table. */
    public static final String TITLE = "Closures";

    private ClosuresSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        for (RunReview run : review.runs()) {
            for (Closure closure : run.tally().closures()) {
                rows.add(row(run, closure));
            }
        }
        return new TableView(
                TITLE,
                "Units of the named partner found, over units charged. "
                        + Words.coverage(review.period().coverageFactor())
                        + "\nA closure that cannot decide says so; bounds and estimates are named as such in the layer balance.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Skeleton", 24),
                        Column.number("Charged", "mmol", 3),
                        Column.number("Isolated", "%", 1),
                        Column.number("In layers", "%", 1),
                        Column.number("Unaccounted", "%", 1),
                        Column.number("Closure", "%", 1),
                        Column.number("U of closure", "%", 1),
                        Column.text("Verdict", 14),
                        Column.number("z", "", 1),
                        Column.number("Unaccounted mass", "g", 3),
                        Column.text("As", 24),
                        Column.text("Where it can be", 60)),
                rows);
    }

    private static TableView.Row row(RunReview run, Closure closure) {
        double expanded = closure.expandedUncertaintyPercent();
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(closure.skeleton()),
                        Figures.cell(closure.chargedMillimoles(), closure.coverageFactor()),
                        Figures.cell(share(run, closure, true), expanded),
                        Figures.cell(share(run, closure, false), expanded),
                        Figures.cell(closure.unaccountedPercent(), expanded),
                        Figures.cell(closure.percent().value(), expanded),
                        Figures.uncertaintyCell(expanded),
                        Cell.of(closure.verdict().word()),
                        Double.isFinite(closure.z()) ? Cell.of(closure.z()) : new Cell.Missing(""),
                        Cell.of(closure.unaccountedGrams()),
                        Cell.of(closure.unaccountedAs()),
                        Cell.of(closure.candidates().stream()
                                .map(ClosuresSection::inWords)
                                .collect(Collectors.joining("\n")))),
                Optional.empty());
    }

    private static double share(RunReview run, Closure closure, boolean isolated) {
        return closure.terms().stream()
                .filter(term -> run.tally().run().lot(term.place()).isPresent() == isolated)
                .mapToDouble(Closure.Term::percent)
                .sum();
    }

    private static String inWords(Closure.Candidate candidate) {
        String range = candidate.lowGrams() > 0
                ? Figures.plain(candidate.lowGrams(), 2) + " to " + Figures.plain(candidate.highGrams(), 2) + " g"
                : "up to " + Figures.plain(candidate.highGrams(), 2) + " g";
        return candidate.place() + ": " + range + " (" + candidate.evidence() + "); settled by "
                + candidate.settledBy();
    }
}
