package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.tally.Content;
import workuptally.tally.LayerTally;

/** Layers and what they hold, one line per layer and substance. */
public final class LayerBalanceSection {
    /** Title of the table. */
    public static final String TITLE = "Layer balance";

    private LayerBalanceSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        double k = review.period().coverageFactor();
        for (RunReview run : review.runs()) {
            for (LayerTally layer : run.tally().layers()) {
                if (layer.contents().isEmpty()) {
                    rows.add(row(run, layer, Optional.empty(), k));
                }
                layer.contents().forEach(content -> rows.add(row(run, layer, Optional.of(content), k)));
            }
        }
        return new TableView(
                TITLE,
                "Only terminal layers count in a balance. Kind says how a content is known: measured, bound, carried, predicted or unknown. "
                        + Words.coverage(k)
                        + "\n" + SafetyWording.A_PERSON_DECIDES,
                columns(),
                rows);
    }

    private static List<Column> columns() {
        return List.of(
                Column.text("Run", 14),
                Column.text("Layer", 12),
                Column.text("Phase", 14),
                Column.text("Terminal", 9),
                Column.text("Status", 10),
                Column.number("Mass", "g", 2),
                Column.number("Volume", "mL", 1),
                Column.number("Density", "g/mL", 3),
                Column.text("Substance", 28),
                Column.text("Kind", 10),
                Column.number("Content", "g", 4),
                Column.number("U of content", "g", 4),
                Column.number("Upper bound", "g", 4),
                Column.number("Of theory or charged", "%", 2),
                Column.text("Evidence", 44));
    }

    private static TableView.Row row(RunReview run, LayerTally layer, Optional<Content> content, double k) {
        Optional<MeasuredValue> mass = content.flatMap(Content::massGrams);
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(layer.label()),
                        Cell.of(layer.phase().map(Layer.Phase::word).orElse("")),
                        Words.yesNo(layer.terminal()),
                        Cell.of(layer.entry()
                                .flatMap(Layer::status)
                                .map(Layer.Status::word)
                                .orElse("")),
                        Figures.cell(layer.massGrams(), k),
                        Figures.cell(layer.volumeMillilitres(), k),
                        Figures.cell(layer.densityGramsPerMillilitre(), k),
                        Cell.of(content.map(Content::substance).orElse("")),
                        Cell.of(content.map(c -> c.kind().word()).orElse("")),
                        Figures.cell(mass, k),
                        mass.map(m -> Figures.uncertaintyCell(m.expandedUncertainty(k)))
                                .orElseGet(() -> new Cell.Missing("")),
                        content.map(c -> Cell.of(c.upperBoundGrams())).orElseGet(() -> new Cell.Missing("")),
                        content.map(c -> Cell.of(c.percentOf())).orElseGet(() -> new Cell.Missing("")),
                        Cell.of(content.map(Content::evidence).orElse("nothing recorded"))),
                Optional.empty());
    }
}
