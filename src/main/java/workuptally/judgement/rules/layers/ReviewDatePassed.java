package workuptally.judgement.rules.layers;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerTally;

/** A kept layer whose day of review has passed on the day of the report. */
public final class ReviewDatePassed implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_REVIEW_OVERDUE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<LocalDate> asOf = book.limits().day(Limit.AS_OF);
        for (LayerTally layer : tally.layers()) {
            Optional<Layer> entry = layer.entry().filter(l -> isKept(l) && layer.terminal());
            Optional<LocalDate> reviewBy = entry.flatMap(l -> l.custody().reviewBy());
            if (reviewBy.isPresent() && asOf.filter(reviewBy.get()::isBefore).isPresent()) {
                findings.add(
                        FindingCode.LAYER_REVIEW_OVERDUE,
                        Severity.CHECK,
                        entry.get().row().at("Review by"),
                        Phrase.of(
                                "layer {} was to be reviewed by {}; today is {}",
                                layer.label(),
                                reviewBy.get(),
                                asOf.get()),
                        Phrase.of("a review by its day; a kept layer has an owner and a date"),
                        FindingList.PRACTICE,
                        Phrase.of("Review the layer and enter a new day, or what has become of it."));
            }
        }
        return findings.list();
    }

    private static boolean isKept(Layer layer) {
        return layer.custody().status().map(s -> s == Layer.Status.KEPT).orElse(true);
    }
}
