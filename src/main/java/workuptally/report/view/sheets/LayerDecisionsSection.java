package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.Criterion;
import workuptally.judgement.layers.LayerDecision;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;
import workuptally.report.view.wording.Words;

/** What the evidence about each layer amounts to, an answer a condition; what is missing and what another extraction would bring follow. */
public final class LayerDecisionsSection {
    /** Title of the table. */
    public static final String TITLE = "Layer decisions";

    private static final int ON_A_LINE = 4;

    private LayerDecisionsSection() {}

    /** The table of a review: an answer a condition, whose evidence stands in its own table. */
    public static TableView of(Review review, Wording wording) {
        Set<Criterion> asked = asked(review);
        List<Column> columns = new ArrayList<>(List.of(
                Column.text("Run", 14),
                Column.text("Layer", 12),
                Column.text("Outcome", 18),
                Column.text("Reason", 60)));
        asked.forEach(condition -> columns.add(Column.text(condition.id(), 10)));
        return TableView.of(
                TITLE,
                SafetyWording.A_PERSON_DECIDES + "\n" + SafetyWording.DEFERS + inWords(asked),
                columns,
                review.runs(),
                run -> run.decisions().stream().map(decision -> row(run, decision, asked, wording)));
    }

    /** What any decision of the book asks for, each once, in the order of asking. */
    private static Set<Criterion> asked(Review review) {
        Set<Criterion> asked = EnumSet.noneOf(Criterion.class);
        review.runs().stream()
                .flatMap(run -> run.decisions().stream())
                .flatMap(decision -> decision.conditions().stream())
                .forEach(condition -> asked.add(condition.criterion()));
        return asked;
    }

    /** What is asked for, a few on a line of the note. */
    private static String inWords(Set<Criterion> asked) {
        StringBuilder lines = new StringBuilder();
        int told = 0;
        for (Criterion criterion : asked) {
            lines.append(told++ % ON_A_LINE == 0 ? "\n" : "; ")
                    .append(criterion.id())
                    .append(' ')
                    .append(criterion.title());
        }
        return lines.toString();
    }

    private static TableView.Row row(RunReview run, LayerDecision decision, Set<Criterion> asked, Wording wording) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(run.id()),
                Cell.of(decision.layer()),
                Cell.of(decision.outcome().word()),
                Cell.of(wording.of(decision.reasonAndSilence()))));
        asked.forEach(criterion -> cells.add(Cell.of(state(decision, criterion))));
        return new TableView.Row(cells, Optional.empty());
    }

    private static String state(LayerDecision decision, Criterion criterion) {
        return decision.conditions().stream()
                .filter(condition -> condition.criterion() == criterion)
                .map(condition -> Words.of(condition.state()))
                .findFirst()
                .orElse("");
    }
}
