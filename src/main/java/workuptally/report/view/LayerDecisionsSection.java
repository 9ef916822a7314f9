package workuptally.report.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.LayerDecision;

/** What the evidence about each layer amounts to, an answer a condition; what is missing and what another extraction would bring follow. */
public final class LayerDecisionsSection {
    /** Title of the table. */
    public static final String TITLE = "Layer decisions";

    private static final int ON_A_LINE = 4;

    private LayerDecisionsSection() {}

    /** The table of a review: an answer a condition, whose evidence stands in its own table. */
    public static TableView of(Review review, Wording wording) {
        List<LayerDecision.Condition> asked = asked(review);
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

    /** The conditions that any decision of the book asks for, each once, in their order. */
    private static List<LayerDecision.Condition> asked(Review review) {
        Map<String, LayerDecision.Condition> asked = new LinkedHashMap<>();
        review.runs().stream()
                .flatMap(run -> run.decisions().stream())
                .flatMap(decision -> decision.conditions().stream())
                .forEach(condition -> asked.putIfAbsent(condition.id(), condition));
        return asked.values().stream()
                .sorted(Comparator.comparingInt(
                        condition -> Integer.parseInt(condition.id().substring(1))))
                .toList();
    }

    /** What the conditions ask for, a few on a line of the note. */
    private static String inWords(List<LayerDecision.Condition> asked) {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < asked.size(); i++) {
            LayerDecision.Condition condition = asked.get(i);
            lines.append(i % ON_A_LINE == 0 ? "\n" : "; ")
                    .append(condition.id())
                    .append(' ')
                    .append(condition.title());
        }
        return lines.toString();
    }

    private static TableView.Row row(
            RunReview run, LayerDecision decision, List<LayerDecision.Condition> asked, Wording wording) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(run.id()),
                Cell.of(decision.layer()),
                Cell.of(decision.outcome().word()),
                Cell.of(wording.of(decision.reasonAndSilence()))));
        asked.forEach(condition -> cells.add(Cell.of(state(decision, condition.id()))));
        return new TableView.Row(cells, Optional.empty());
    }

    private static String state(LayerDecision decision, String id) {
        return decision.conditions().stream()
                .filter(condition -> condition.id().equals(id))
                .map(condition -> Words.of(condition.state()))
                .findFirst()
                .orElse("");
    }
}
