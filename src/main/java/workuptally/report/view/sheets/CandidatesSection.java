package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.tally.balance.Closure;

/** Where what a closure leaves unaccounted can be, a place a row, the largest first. */
public final class CandidatesSection {
    /** Title of the table. */
    public static final String TITLE = "Where it can be";

    private CandidatesSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                "What a closure leaves unaccounted, by the places that can hold it. Bounds and estimates, never data.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Skeleton", 24),
                        Column.text("Place", 24),
                        Column.number("At least", "g", 3),
                        Column.number("At most", "g", 3),
                        Column.text("Evidence", 60),
                        Column.text("Settled by", 50)),
                review.runs(),
                run -> run.tally().closures().stream().flatMap(closure -> rows(run, closure)));
    }

    private static Stream<TableView.Row> rows(RunReview run, Closure closure) {
        return closure.candidates().stream()
                .map(candidate -> new TableView.Row(
                        List.of(
                                Cell.of(run.id()),
                                Cell.of(closure.skeleton()),
                                Cell.of(candidate.place()),
                                candidate.lowGrams() > 0 ? Cell.of(candidate.lowGrams()) : new Cell.Missing(""),
                                Cell.of(candidate.highGrams()),
                                Cell.of(candidate.evidence()),
                                Cell.of(candidate.settledBy())),
                        Optional.empty()));
    }
}
