package workuptally.tally.bench;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.CompositeSamples;
import workuptally.tally.balance.Route;
import workuptally.tally.layers.GraphFault;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.Meetings;
import workuptally.tally.layers.UnlabelledPhase;
import workuptally.tally.waste.Metrics;

/**
 * What the steps of a workup show beside masses and contents.
 *
 * @param identities which phase each measured layer of a contact is, by its density
 * @param reactions neutralisation and gas at each step
 * @param routes independent routes to the product in a layer
 * @param reextractions gains of further extractions
 * @param gaps what the record of the steps lacks
 * @param makeUps what each terminal layer is made of
 * @param contactMixtures what stood in the funnel at each contact, estimated
 * @param dried every drying step with a weighed, listed agent
 * @param meetings what stands together along the steps
 * @param composites composite samples of several layers
 * @param inLots what each lot holds by its assays, by its label
 * @param metrics mass metrics, if the product was assayed
 * @param plan what to expect, of a run that is only planned
 */
public record WorkupEvidence(
        List<LayerIdentity> identities,
        List<StepReaction> reactions,
        List<Route> routes,
        List<Reextraction> reextractions,
        Gaps gaps,
        List<LayerMakeUp> makeUps,
        List<ContactMixture> contactMixtures,
        List<DriedLayer> dried,
        Meetings meetings,
        CompositeSamples composites,
        Map<String, List<Content>> inLots,
        Optional<Metrics> metrics,
        Optional<Plan> plan) {
    /** Of a run without a recorded workup. */
    public static final WorkupEvidence NONE =
            new WorkupEvidence(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** Of a run whose layers were not followed. */
    public WorkupEvidence(
            List<LayerIdentity> identities,
            List<StepReaction> reactions,
            List<Route> routes,
            List<Reextraction> reextractions,
            List<String> missingLayers,
            List<GraphFault> graphFaults) {
        this(
                identities,
                reactions,
                routes,
                reextractions,
                new Gaps(missingLayers, List.of(), graphFaults),
                List.of(),
                List.of(),
                List.of(),
                Meetings.NONE,
                CompositeSamples.NONE,
                Map.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** Copies the lists. */
    public WorkupEvidence {
        identities = List.copyOf(identities);
        reactions = List.copyOf(reactions);
        routes = List.copyOf(routes);
        reextractions = List.copyOf(reextractions);
        makeUps = List.copyOf(makeUps);
        contactMixtures = List.copyOf(contactMixtures);
        dried = List.copyOf(dried);
        inLots = Collections.unmodifiableMap(new LinkedHashMap<>(inLots));
    }

    /** The largest gain that one more portion would bring from a layer, with a change of pH where that is what it takes. */
    public Optional<Reextraction> bestGain(String layer) {
        return reextractions.stream()
                .filter(r -> r.layer().equals(layer) && r.extractant().portions() == 1)
                .max(Comparator.comparingDouble(r -> r.gain().grams()));
    }

    /** The same with a plan. */
    public WorkupEvidence with(Plan expected) {
        return new WorkupEvidence(
                identities,
                reactions,
                routes,
                reextractions,
                gaps,
                makeUps,
                contactMixtures,
                dried,
                meetings,
                composites,
                inLots,
                metrics,
                Optional.of(expected));
    }

    /**
     * What the record of the steps lacks.
     *
     * @param missingLayers labels that a step gives, nothing consumes and no row records; then the phases without a label by their names
     * @param unlabelledPhases phases of contacts without a label
     * @param graphFaults what does not fit together in the steps
     */
    public record Gaps(
            List<String> missingLayers, List<UnlabelledPhase> unlabelledPhases, List<GraphFault> graphFaults) {
        /** Copies the lists. */
        public Gaps {
            missingLayers = List.copyOf(missingLayers);
            unlabelledPhases = List.copyOf(unlabelledPhases);
            graphFaults = List.copyOf(graphFaults);
        }
    }
}
