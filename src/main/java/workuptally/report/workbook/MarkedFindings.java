package workuptally.report.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.RowPlace;

/**
 * The findings with a mark for each layer that one of them is about: who filters the sheet of layers must see every held row, and not the
 * first of them only.
 */
final class MarkedFindings {
    private MarkedFindings() {}

    /** All findings, behind them a short one for each further layer, which names the cell with the words. */
    static List<Finding> of(Review review) {
        List<Finding> all = new ArrayList<>(review.findings());
        for (RunReview run : review.runs()) {
            for (Finding finding : run.findings()) {
                for (String label : finding.subject().layers()) {
                    row(run, label)
                            .map(row -> row.at("Layer"))
                            .filter(place -> place.row() != finding.place().row()
                                    && place.sheet().equals(finding.place().sheet()))
                            .ifPresent(place -> all.add(beside(finding, place)));
                }
            }
        }
        return all;
    }

    private static Optional<RowPlace> row(RunReview run, String label) {
        return run.tally().layer(label).flatMap(layer -> layer.entry()).map(Layer::row);
    }

    private static Finding beside(Finding finding, Place place) {
        return new Finding(
                finding.code(),
                finding.severity(),
                finding.subject(),
                place,
                Phrase.NONE,
                Phrase.NONE,
                "",
                Phrase.of("Told at {}.", finding.place().inWords()));
    }
}
