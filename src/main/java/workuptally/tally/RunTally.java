package workuptally.tally;

import java.util.List;
import java.util.Optional;
import workuptally.model.Run;

/**
 * All results of one run.
 *
 * @param run the entries
 * @param amounts charges as amounts, in order of the table
 * @param theory what the limiting reagent allows, if it could be computed
 * @param lots lots
 * @param yields yields, workup first
 * @param layers layers in order of the steps
 * @param closures closure per skeleton
 * @param massBalance total mass balance, if there is a workup
 * @param contacts every shake in a funnel
 * @param identities which phase each measured layer of a contact is, by its density
 * @param solvents solvents of the run
 * @param waste waste account of the run
 * @param reactions neutralisation and gas at each step
 * @param routes independent routes to the product in a layer
 * @param reextractions gains of further extractions
 * @param missingLayers labels that a step gives, nothing consumes and no row records
 * @param graphFaults what does not fit together in the steps
 * @param notComputed what was not computed and why
 */
public record RunTally(
        Run run,
        List<ChargeAmount> amounts,
        Optional<Theory> theory,
        List<LotTally> lots,
        List<ProductYield> yields,
        List<LayerTally> layers,
        List<Closure> closures,
        Optional<MassBalance> massBalance,
        List<Contact> contacts,
        List<LayerIdentity> identities,
        List<SolventUse> solvents,
        List<WasteLine> waste,
        List<StepReaction> reactions,
        List<Route> routes,
        List<Reextraction> reextractions,
        List<String> missingLayers,
        List<GraphFault> graphFaults,
        List<NotComputed> notComputed) {
    /** Copies the lists. */
    public RunTally {
        amounts = List.copyOf(amounts);
        lots = List.copyOf(lots);
        yields = List.copyOf(yields);
        layers = List.copyOf(layers);
        closures = List.copyOf(closures);
        contacts = List.copyOf(contacts);
        identities = List.copyOf(identities);
        solvents = List.copyOf(solvents);
        waste = List.copyOf(waste);
        reactions = List.copyOf(reactions);
        routes = List.copyOf(routes);
        reextractions = List.copyOf(reextractions);
        missingLayers = List.copyOf(missingLayers);
        graphFaults = List.copyOf(graphFaults);
        notComputed = List.copyOf(notComputed);
    }

    /** The layer of that label, if it is known. */
    public Optional<LayerTally> layer(String label) {
        return layers.stream().filter(l -> l.label().equals(label)).findFirst();
    }

    /** The identity of a layer by its density, if it came from a contact. */
    public Optional<LayerIdentity> identity(String label) {
        return identities.stream().filter(i -> i.label().equals(label)).findFirst();
    }

    /** True for a portion that a step gives, nothing consumes and no row records. */
    public boolean isMissing(String label) {
        return missingLayers.contains(label);
    }
}
