package workuptally.tally.layers;

import java.util.List;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.Substances;

/**
 * The run of a small book, with its steps and liquids followed anew.
 *
 * @param tally all results of it
 */
record FollowedRun(RunTally tally, Substances substances, LayerGraph graph, List<Addition> additions, LayerFlow flow) {
    static FollowedRun of(SmallBook book) {
        RunTally tally = book.tally();
        Substances substances = SmallBook.substances();
        LayerGraph graph = LayerGraph.of(tally.run());
        List<Addition> additions =
                new AdditionAccount(tally.run(), new Readings(), Limits.defaults(), graph, substances).list();
        return new FollowedRun(
                tally,
                substances,
                graph,
                additions,
                LayerFlow.of(LayerGraph.of(tally.run()), substances, tally.amounts(), additions, tally.layers()));
    }

    Run run() {
        return tally.run();
    }

    LayerTally layer(String label) {
        return tally.layer(label).orElseThrow();
    }

    /** A number without an uncertainty. */
    static MeasuredValue exactly(double value) {
        return new Readings().enter("a reading", "", value, 0, () -> "");
    }
}
