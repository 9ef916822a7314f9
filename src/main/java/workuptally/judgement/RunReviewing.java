package workuptally.judgement;

import java.util.List;
import java.util.Map;
import workuptally.judgement.hazards.HazardNoteAccount;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.measurements.OpenLayers;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.amounts.Substances;
import workuptally.tally.suspects.RunSuspects;

/**
 * Puts together what was found about each run of a book.
 *
 * @param book the book
 * @param substances reference rows in force
 * @param findings findings of each run, the gravest first
 * @param decisions decisions about its layers
 * @param materials what was charged and added
 */
record RunReviewing(
        Book book,
        Substances substances,
        Map<String, List<Finding>> findings,
        Map<String, List<LayerDecision>> decisions,
        Map<String, List<RunMaterial>> materials) {

    /** What to measure next in each run, in their order. */
    List<OpenLayers> asked(List<RunTally> tallies) {
        return tallies.parallelStream().map(this::asked).toList();
    }

    /** While a stop is open the balance itself is in doubt, and its own action comes first: nothing is asked then. */
    private OpenLayers asked(RunTally tally) {
        boolean stopped = of(tally).stream().anyMatch(f -> f.severity() == Severity.STOP);
        return OpenLayers.of(
                tally, stopped ? List.of() : decisions.get(tally.run().id()), book.limits(), substances.apart());
    }

    private List<Finding> of(RunTally tally) {
        return findings.getOrDefault(tally.run().id(), List.of());
    }

    /**
     * The runs, in their order.
     *
     * @param suspects entries to look at again in each run
     * @param asked what to measure next in each run
     */
    List<RunReview> list(List<RunTally> tallies, Map<String, RunSuspects> suspects, Map<String, OpenLayers> asked) {
        HazardNoteAccount notes = new HazardNoteAccount(substances, book.limits());
        return tallies.parallelStream()
                .map(tally -> {
                    String id = tally.run().id();
                    return new RunReview(
                            tally,
                            of(tally),
                            decisions.get(id),
                            notes.of(tally, materials.get(id)),
                            suspects.get(id),
                            asked.get(id).list(),
                            materials.get(id));
                })
                .toList();
    }
}
