package workuptally.tally;

import java.util.List;
import java.util.Optional;
import workuptally.model.Limits;

/**
 * Estimates of mixtures and drying for rules that ask, one after the other, about the same run: those of the run asked last are
 * remembered. Not safe for use by several threads at once.
 */
public final class RunEstimates {
    private final Limits limits;
    private final Substances substances;
    private OfRun last = new OfRun(Optional.empty(), List.of(), List.of());

    /** With the settings and reference data in force. */
    public RunEstimates(Limits limits, Substances substances) {
        this.limits = limits;
        this.substances = substances;
    }

    /** What stands in the funnel at every contact of a run, in order of the steps. */
    public List<ContactMixture> contacts(RunTally tally) {
        return of(tally).contacts();
    }

    /** Every drying step of a run with a weighed, listed agent. */
    public List<DriedLayer> dried(RunTally tally) {
        return of(tally).dried();
    }

    private OfRun of(RunTally tally) {
        if (last.run().filter(run -> run == tally).isEmpty()) {
            LayerFlow flow = Mixtures.flow(tally, limits, substances);
            last = new OfRun(
                    Optional.of(tally),
                    Mixtures.of(tally, substances, flow),
                    DryingAccount.of(tally, substances, flow));
        }
        return last;
    }

    /** The run asked last, if one was, and its estimates. */
    private record OfRun(Optional<RunTally> run, List<ContactMixture> contacts, List<DriedLayer> dried) {}
}
