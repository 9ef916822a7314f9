package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.tally.bench.Reextraction;

/** What one more extraction of a kept layer would bring, priced with the run's own solvent and portion. */
public final class ReextractionsSection {
    /** Title of the table. */
    public static final String TITLE = "One more extraction";

    private ReextractionsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                "Estimates by the distribution observed, or by partition ratio, pKa and pH. A volume stands for each portion.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("Layer", 12),
                        Column.text("Substance", 28),
                        Column.text("Solvent", 28),
                        Column.number("Bring to pH", "", 1),
                        Column.number("Portions", "", 0),
                        Column.number("Volume", "mL", 0),
                        Column.number("Gain", "g", 3),
                        Column.number("Gain of theory", "%", 1),
                        Column.number("Ratio D", "", 1),
                        Column.text("D from", 44),
                        Column.text("The acid it needs must not meet", 50)),
                review.runs(),
                run -> run.tally().evidence().reextractions().stream().map(extraction -> row(run, extraction)));
    }

    private static TableView.Row row(RunReview run, Reextraction extraction) {
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(extraction.layer()),
                        Cell.of(extraction.substance()),
                        Cell.of(extraction.extractant().solvent()),
                        Cell.of(extraction.phSetting().pH()),
                        Cell.of(extraction.extractant().portions()),
                        Cell.of(extraction.extractant().volumeMillilitres()),
                        Cell.of(extraction.gain().grams()),
                        Cell.of(extraction.gain().percentOfTheory()),
                        Cell.of(extraction.partition().distributionRatio()),
                        Cell.of(extraction.partition().origin()),
                        Cell.of(
                                extraction.phSetting().acidGases().isEmpty()
                                        ? ""
                                        : extraction.phSetting().acidCaution())),
                Optional.empty());
    }
}
