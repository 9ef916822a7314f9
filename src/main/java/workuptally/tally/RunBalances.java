package workuptally.tally;

import java.util.List;
import java.util.Optional;
import workuptally.model.Run;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/**
 * What the entries of one run say against each other.
 *
 * @param run the entries
 * @param closures closure per skeleton
 * @param massBalance total mass, if it could be computed
 * @param layers layers in order of the steps
 * @param identities which phase each layer is by its density
 * @param contacts volumes into and out of each contact
 */
public record RunBalances(
        Run run,
        List<Closure> closures,
        Optional<MassBalance> massBalance,
        List<LayerTally> layers,
        List<LayerIdentity> identities,
        List<ContactMixture> contacts) {
    /** Copies the lists. */
    public RunBalances {
        closures = List.copyOf(closures);
        layers = List.copyOf(layers);
        identities = List.copyOf(identities);
        contacts = List.copyOf(contacts);
    }

    /** Those of a run that was tallied whole. */
    public static RunBalances of(RunTally tally) {
        return new RunBalances(
                tally.run(),
                tally.closures(),
                tally.massBalance(),
                tally.layers(),
                tally.evidence().identities(),
                tally.evidence().contactMixtures());
    }
}
