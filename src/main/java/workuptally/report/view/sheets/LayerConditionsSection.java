package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.LayerDecision;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;
import workuptally.report.view.wording.Words;

/** The conditions that a layer does not meet, or that cannot be told, a condition a row with what it rests on. */
public final class LayerConditionsSection {
    /** Title of the table. */
    public static final String TITLE = "Layer conditions";

    private LayerConditionsSection() {}

    /** The table of a review. */
    public static TableView of(Review review, Wording wording) {
        return TableView.of(
                TITLE,
                "Conditions that are not met or missing, with the figure or entry that says so. "
                        + SafetyWording.A_PERSON_DECIDES,
                List.of(
                        Column.text("Run", 14),
                        Column.text("Layer", 12),
                        Column.text("Condition", 11),
                        Column.text("Asks for", 30),
                        Column.text("State", 10),
                        Column.text("Evidence", 90)),
                review.runs(),
                run -> run.decisions().stream().flatMap(decision -> rows(run, decision, wording)));
    }

    private static Stream<TableView.Row> rows(RunReview run, LayerDecision decision, Wording wording) {
        return decision.conditions().stream()
                .filter(c -> c.state() == LayerDecision.State.NOT_MET || c.state() == LayerDecision.State.MISSING)
                .map(condition -> new TableView.Row(
                        List.of(
                                Cell.of(run.id()),
                                Cell.of(decision.layer()),
                                Cell.of(condition.id()),
                                Cell.of(condition.criterion().title()),
                                Cell.of(Words.of(condition.state())),
                                Cell.of(wording.of(condition.evidence()))),
                        Optional.empty()));
    }
}
