package workuptally.report.pdf;

import java.util.Optional;
import workuptally.judgement.RunReview;
import workuptally.tally.LayerTally;

/** The words that judge a layer, where a review has them. */
interface LayerOutcomes {
    /** For reviews that judge no layers; the column is then left out. */
    LayerOutcomes NONE = (run, layer) -> Optional.empty();

    /** Outcome of a layer with its reason, in words. */
    Optional<String> of(RunReview run, LayerTally layer);
}
