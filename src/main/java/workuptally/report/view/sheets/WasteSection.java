package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.TableView;
import workuptally.tally.waste.WasteLine;

/** The stream that each layer's composition suggests. */
public final class WasteSection {
    /** Title of the table. */
    public static final String TITLE = "Waste";

    /** What stands above tables of waste. */
    public static final String NOTE = SafetyWording.WASTE_DETERMINATION + "\n" + SafetyWording.DEFERS;

    private WasteSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        RowIndex layers = LayerBalanceSection.rows(review);
        return TableView.of(
                TITLE,
                NOTE,
                List.of(
                        Column.text("Run", 14),
                        Column.text("Layer", 14),
                        Column.text("Stream", 34),
                        Column.text("Why", 50),
                        Column.number("Mass", "g", 1),
                        Column.text("Kept", 8)),
                review.runs(),
                run -> run.tally().waste().stream().map(line -> row(run, layers, line)));
    }

    private static TableView.Row row(RunReview run, RowIndex layers, WasteLine line) {
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(line.layer()),
                        Cell.of(line.streamName()),
                        Cell.of(line.why()),
                        mass(run, layers, line),
                        Cell.yesNo(line.kept())),
                Optional.empty());
    }

    private static Cell mass(RunReview run, RowIndex layers, WasteLine line) {
        OptionalInt row = layers.of(run, line.layer());
        boolean weighed = run.tally()
                .layer(line.layer())
                .filter(l -> l.massGrams().isPresent())
                .isPresent();
        return row.isEmpty() || !weighed
                ? Cell.of(line.massGrams())
                : Cell.of(
                        line.massGrams().orElseThrow(),
                        new Live.InTable(LayerBalanceSection.TITLE, row.getAsInt(), "Mass"));
    }
}
