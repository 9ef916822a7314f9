package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/**
 * Carries solvents, water and salts along the steps, to estimate what each portion is made of and how much stands in a funnel.
 *
 * <p>At a contact the two phases are those of {@link PhaseSplit}. A phase that a step gives no label is kept apart, so that it does not
 * vanish. A strip, distillation, filtration or drying is no contact: its liquid goes once, shared by the labels given. Distillates take
 * out what their composition states, else their mass or volume of the solvents there; a residue whose distillate was not measured keeps
 * none. After a negative quench test no hydride is left. A stated composition or a measured mass overrides the estimate. These figures serve accounts of solvent and waste and the fill of funnels; no product content comes from them.
 */
public final class LayerFlow {

    /** Name of the part of a portion that its stated composition leaves out. */
    public static final String UNSTATED = "not stated";

    private final Run run;
    private final Substances substances;
    private final IngredientAccount materials;
    private final Map<Step, Addition> additions;
    private final StepOutputs outputs;
    private final MeasuredPortions measured;
    private final FunnelShakes shakes;
    private final Map<String, Ingredients> portions = new LinkedHashMap<>();
    private final Map<Step, List<Double>> volumesInFunnel = new IdentityHashMap<>();
    private final Map<Step, Phases> phases = new IdentityHashMap<>();
    private final Map<Step, Ingredients> taken = new IdentityHashMap<>();
    private final List<UnlabelledPhase> unlabelled = new ArrayList<>();
    private final LiquorsWithoutLabel liquors;

    private LayerFlow(
            LayerGraph graph, Substances substances, Map<String, LayerTally> layers, Map<Step, Addition> additions) {
        this.run = graph.run();
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
        this.additions = additions;
        this.outputs = new StepOutputs(run, graph, substances);
        this.liquors = new LiquorsWithoutLabel(run, substances, outputs);
        this.measured = new MeasuredPortions(run, substances, layers);
        this.shakes = new FunnelShakes(substances, measured);
    }

    /** Follows the steps of the run of a graph. */
    public static LayerFlow of(
            LayerGraph graph,
            Substances substances,
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers) {
        Map<String, LayerTally> byLabel = new LinkedHashMap<>();
        layers.forEach(l -> byLabel.put(l.label(), l));
        Map<Step, Addition> byStep = new IdentityHashMap<>();
        additions.forEach(a -> byStep.put(a.step(), a));
        LayerFlow flow = new LayerFlow(graph, substances, byLabel, byStep);
        Ingredients mixture = Ingredients.EMPTY;
        for (ChargeAmount amount : amounts) {
            mixture = mixture.plus(flow.materials.of(amount));
        }
        flow.portions.put(Step.REACTION_MIXTURE, mixture);
        flow.measured.put(mixture);
        additions.forEach(a -> flow.measured.put(flow.materials.of(a)));
        for (Step step : graph.run().orderedSteps()) {
            flow.follow(step);
        }
        for (LayerTally layer : layers) {
            flow.portions.merge(
                    layer.label(), flow.measured.of(layer.label(), Ingredients.EMPTY), (known, blank) -> known);
        }
        return flow;
    }

    /** Estimated make-up of a portion; empty mixture for an unknown label. */
    public Ingredients portion(String label) {
        return portions.getOrDefault(label, Ingredients.EMPTY);
    }

    /** Estimated make-up of what a step takes, as it was at that step: a mixture goes on under its label and changes. */
    public Ingredients taken(Step step) {
        return taken.getOrDefault(step, Ingredients.EMPTY);
    }

    /** Volume in the funnel at each shake of a step, mL; empty list for a step without a contact. */
    public List<Double> volumesInFunnel(Step step) {
        return volumesInFunnel.getOrDefault(step, List.of());
    }

    /** Estimated make-up of the two phases after a contact, before anything measured overrides it; empty for a step without a contact. */
    public Optional<Phases> phases(Step step) {
        return Optional.ofNullable(phases.get(step));
    }

    /** Gives a layer whose density fits the other phase of its contact the make-up of that phase. */
    public void correct(List<LayerIdentity> identities) {
        for (LayerIdentity identity : identities) {
            if (identity.verdict() == LayerIdentity.Verdict.SWAPPED) {
                phases(identity.step())
                        .ifPresent(p -> portions.put(
                                identity.label(), measured.of(identity.label(), p.of(opposite(identity.recorded())))));
            }
        }
    }

    /** Mass of each component that went into the run, g. */
    Map<String, Double> broughtGrams() {
        return measured.putGrams();
    }

    /** Phases of contacts and liquors to which no step gives a label, in order of the steps; {@link #portion} knows them by their names. */
    public List<UnlabelledPhase> unlabelledPhases() {
        return List.copyOf(unlabelled);
    }

    /** Liquids to which a step gives no label beside its solids and lots, by a name for them. */
    public Map<String, Ingredients> unnamedLiquors() {
        return liquors.all();
    }

    /** A portion without the drying agents in it that no water has dissolved. */
    public Ingredients withoutUndissolvedAgents(Ingredients portion) {
        Ingredients agents = undissolvedAgents(portion);
        return portion.share(name -> agents.parts().containsKey(name) ? 0 : 1);
    }

    /** The run that is followed. */
    Run run() {
        return run;
    }

    /** The two phases of a contact. */
    public record Phases(Ingredients organic, Ingredients aqueous) {
        Ingredients of(Layer.Phase phase) {
            return phase == Layer.Phase.ORGANIC ? organic : aqueous;
        }
    }

    private void follow(Step step) {
        Ingredients source = Ingredients.EMPTY;
        for (String label : step.from()) {
            source = source.plus(portion(label));
        }
        taken.put(step, source);
        Ingredients added =
                Optional.ofNullable(additions.get(step)).map(materials::of).orElse(Ingredients.EMPTY);
        if (step.quenchTest().filter(t -> t == Step.QuenchTest.NEGATIVE).isPresent()) {
            source = materials.withoutHydrides(source, run);
        }
        if (StepOutputs.isContact(step)) {
            contact(step, source, added);
        } else if (StepOutputs.is(step, Operation.SAMPLE)) {
            Ingredients taken = source;
            step.gives().forEach(label -> portions.put(label, measured.aliquot(label, taken)));
        } else {
            noContact(step, source.plus(added));
        }
    }

    /** What a still takes over, a filter keeps back, and the liquid that goes on, which is there once however many labels share it. */
    private void noContact(Step step, Ingredients all) {
        Ingredients rest = all;
        for (String label : step.gives()) {
            if (outputs.isDistillate(label) || outputs.isSolid(step, label)) {
                Ingredients taken = outputs.isDistillate(label)
                        ? measured.of(label, distilled(label, rest))
                        : measured.solid(label, undissolvedAgents(rest).plus(measured.wetting(step, label, rest)));
                for (Map.Entry<String, Ingredients.Part> part : taken.parts().entrySet()) {
                    rest = rest.without(part.getKey(), part.getValue().grams());
                }
                portions.put(label, taken);
            }
        }
        Ingredients left = isDistilledUnmeasured(step) ? rest.share(n -> substances.isOrganicSolvent(n) ? 0 : 1) : rest;
        List<String> liquids = outputs.liquids(step);
        if (liquids.isEmpty()) {
            boolean goesOn = step.gives().stream().allMatch(l -> outputs.isDistillate(l) || outputs.isSolid(step, l));
            give(goesOn ? step.from() : List.of(), left);
            if (liquors.keep(step, left, isLiquid(left))) {
                leaveUnlabelled(step, Layer.Phase.MOTHER_LIQUOR, left);
            }
            return;
        }
        List<String> organic =
                liquids.stream().filter(step.given().organic()::contains).toList();
        List<String> aqueous =
                liquids.stream().filter(step.given().aqueous()::contains).toList();
        if (organic.isEmpty() || aqueous.isEmpty()) {
            give(liquids, left);
        } else if (StepOutputs.isDistillation(step)) {
            give(organic, left.share(n -> substances.isOrganicSolvent(n) ? 1 : 0));
            give(aqueous, left.share(n -> substances.isOrganicSolvent(n) ? 0 : 1));
        } else {
            PhaseSplit split = new PhaseSplit(substances, this::goesWithWater, left);
            give(organic, split.organic());
            give(aqueous, split.aqueous());
        }
    }

    /** Drying agents that no water has dissolved: there is less of it than their hydrates could bind. */
    private Ingredients undissolvedAgents(Ingredients mixture) {
        Ingredients agents = mixture.share(n -> substances.dryingAgent(n).isPresent() ? 1 : 0);
        double bound = agents.parts().entrySet().stream()
                .mapToDouble(part -> part.getValue().grams()
                        * substances
                                .dryingAgent(part.getKey())
                                .map(agent -> agent.uptake().theoreticalGramsPerGram())
                                .orElse(0.0))
                .sum();
        return mixture.grams(IngredientAccount.WATER) <= bound ? agents : Ingredients.EMPTY;
    }

    /** Distillate of which only the mass or the volume is known: the solvents that were there, in equal shares; nothing where neither is. */
    private Ingredients distilled(String label, Ingredients source) {
        Ingredients solvents = source.share(n -> substances.isOrganicSolvent(n) ? 1 : 0);
        Optional<Double> grams = measured.grams(label);
        double share = grams.isPresent()
                ? grams.get() / solvents.totalGrams()
                : measured.millilitres(label)
                        .map(v -> v / solvents.millilitres())
                        .orElse(0.0);
        return solvents.parts().isEmpty() ? Ingredients.EMPTY : solvents.share(n -> share);
    }

    /** True where solvent was taken off and neither what went over nor what stayed was measured: nothing organic is taken to have stayed. */
    private boolean isDistilledUnmeasured(Step step) {
        return StepOutputs.isDistillation(step)
                && step.gives().stream()
                        .noneMatch(l -> measured.grams(l).isPresent()
                                || measured.millilitres(l).isPresent());
    }

    private void contact(Step step, Ingredients source, Ingredients added) {
        Ingredients all = source.plus(added);
        PhaseSplit split = new PhaseSplit(substances, this::goesWithWater, all);
        Phases both = new Phases(split.organic(), split.aqueous());
        phases.put(step, both);
        volumesInFunnel.put(step, shakes.volumes(step, source, added));
        for (String label : step.given().other()) {
            portions.put(label, measured.of(label, Ingredients.EMPTY));
        }
        give(step.given().organic(), both.organic());
        give(step.given().aqueous(), both.aqueous());
        if (isLiquid(both.organic()) && isLiquid(both.aqueous())) {
            unlabelled(step, both);
        } else if (step.given().organic().isEmpty() && step.given().aqueous().isEmpty()) {
            Optional<String> only = outputs.liquidsAmongOthers(step).stream().findFirst();
            only.or(() -> sourceThatGoesOn(step)).ifPresent(label -> portions.put(label, measured.of(label, all)));
            if (only.isEmpty() && StepOutputs.isShaken(step)) {
                leaveUnlabelled(
                        step, materials.isOrganic(step) ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS, Ingredients.EMPTY);
            }
        }
    }

    /** What stays a liquid without the solids that went into solution. */
    private boolean isLiquid(Ingredients phase) {
        return phase.share(n -> n.equals(IngredientAccount.SOLIDS) ? 0 : 1).millilitres()
                > substances.value(Threshold.LEAST_PHASE);
    }

    private void leaveUnlabelled(Step step, Layer.Phase phase, Ingredients mixture) {
        UnlabelledPhase left = new UnlabelledPhase(step, phase);
        unlabelled.add(left);
        portions.put(left.name(), mixture);
    }

    /**
     * A phase for which the step has no label of its own is the liquid of that phase among the other portions it gives, else what goes on
     * under the label it came from where that is still spoken of; else it stays without a name.
     */
    private void unlabelled(Step step, Phases both) {
        List<String> others = new ArrayList<>(outputs.liquidsAmongOthers(step));
        Layer.Phase goesOn = materials.isOrganic(step) ? Layer.Phase.AQUEOUS : Layer.Phase.ORGANIC;
        List<String> organic = step.given().organic();
        List<String> aqueous = step.given().aqueous();
        boolean oneLabelled = !organic.isEmpty() || !aqueous.isEmpty();
        for (Layer.Phase phase : List.of(goesOn, opposite(goesOn))) {
            if (!(phase == Layer.Phase.ORGANIC ? organic : aqueous).isEmpty()) {
                continue;
            }
            Optional<String> other = others.stream()
                    .filter(label -> !outputs.hasPhase(label, opposite(phase)))
                    .findFirst();
            Optional<String> source = phase == goesOn || oneLabelled ? sourceThatGoesOn(step) : Optional.empty();
            if (other.isPresent()) {
                others.remove(other.get());
                portions.put(other.get(), measured.of(other.get(), both.of(phase)));
            } else if (source.isPresent()) {
                portions.put(source.get(), both.of(phase));
            } else if (Optional.ofNullable(additions.get(step))
                    .filter(Addition::purification)
                    .isEmpty()) {
                leaveUnlabelled(step, phase, both.of(phase));
            }
        }
    }

    private static Layer.Phase opposite(Layer.Phase phase) {
        return phase == Layer.Phase.ORGANIC ? Layer.Phase.AQUEOUS : Layer.Phase.ORGANIC;
    }

    private Optional<String> sourceThatGoesOn(Step step) {
        return step.from().stream()
                .filter(label -> !step.gives().contains(label))
                .filter(label -> step.gives().isEmpty() || isTakenAfter(step, label))
                .findFirst();
    }

    private boolean isTakenAfter(Step step, String label) {
        boolean laterStep = run.orderedSteps().stream()
                .dropWhile(later -> later != step)
                .skip(1)
                .anyMatch(later -> later.from().contains(label));
        return laterStep || run.lots().stream().anyMatch(lot -> lot.from().contains(label));
    }

    private void give(List<String> labels, Ingredients mixture) {
        measured.shared(labels, mixture).forEach((label, part) -> portions.put(label, measured.of(label, part)));
    }

    boolean goesWithWater(String name) {
        return materials.goesWithWater(name, run.charges());
    }
}
