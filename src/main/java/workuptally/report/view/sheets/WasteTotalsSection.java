package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.TableView;

/** Waste by stream over all runs of the book. */
public final class WasteTotalsSection {
    /** Title of the table. */
    public static final String TITLE = "Waste totals";

    private WasteTotalsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                WasteSection.NOTE,
                List.of(
                        Column.text("Stream", 40),
                        Column.number("Layers", "", 0),
                        Column.number("Mass", "kg", 3),
                        Column.number("Without amount", "", 0)),
                review.period().waste().stream()
                        .map(total -> new TableView.Row(
                                List.of(
                                        Cell.of(total.streamName()),
                                        Cell.of(total.layers()),
                                        Cell.of(
                                                total.massGrams() / 1000,
                                                Live.over(
                                                        new Live.SumWhere(
                                                                WasteSection.TITLE, "Mass", "Stream", "Stream"),
                                                        new Live.Fixed(1000))),
                                        Cell.of(total.withoutMass())),
                                Optional.empty()))
                        .toList());
    }
}
