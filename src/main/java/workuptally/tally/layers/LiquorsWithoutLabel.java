package workuptally.tally.layers;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/**
 * Liquids to which a step gives no label beside the solids and lots that it takes out of them: eluates, liquors and filtrates.
 *
 * <p>In the workup such a liquor is a portion like any other and is asked for; a liquid in Layers that no step gives is taken for one of
 * them. What a drying agent or a filter aid is filtered off from is the product's own stream, which the lot is what is left of.
 */
final class LiquorsWithoutLabel {
    /** Operations after which a solid is parted from what it fell out of. */
    private static final Set<Operation> LEAVING_A_LIQUOR = Set.of(
            Operation.FILTER,
            Operation.CRYSTALLISE,
            Operation.ACIDIFY,
            Operation.BASIFY,
            Operation.QUENCH,
            Operation.DILUTE);

    private final Run run;
    private final Substances substances;
    private final StepOutputs outputs;
    private final Map<String, Ingredients> named = new LinkedHashMap<>();
    private final Set<String> unclaimed = new LinkedHashSet<>();

    LiquorsWithoutLabel(Run run, Substances substances, StepOutputs outputs) {
        this.run = run;
        this.substances = substances;
        this.outputs = outputs;
        run.layers().stream()
                .filter(layer -> layer.phase()
                        .filter(p -> p == Layer.Phase.SOLID || p == Layer.Phase.RAG || p == Layer.Phase.DISTILLATE)
                        .isEmpty())
                .map(Layer::label)
                .filter(label -> outputs.graph().givenBy(label).isEmpty())
                .forEach(unclaimed::add);
    }

    /** What each of them is made of, by a name for it, in order of the steps. */
    Map<String, Ingredients> all() {
        return Collections.unmodifiableMap(named);
    }

    /**
     * Keeps the liquid of a step that gives no label for it.
     *
     * @param step the step
     * @param rest what is left beside solids and distillates
     * @param liquid true where that is enough for a liquid
     * @return true where the workup has to be asked for it
     */
    boolean keep(Step step, Ingredients rest, boolean liquid) {
        boolean solidsOnly = step.gives().stream().allMatch(l -> outputs.isDistillate(l) || outputs.isSolid(step, l));
        boolean parted = liquid && isPartedFromSolid(step);
        boolean purified = StepOutputs.is(step, Operation.CHROMATOGRAPH) || StepOutputs.is(step, Operation.CRYSTALLISE);
        if (rest.totalGrams() > 0 && (parted || purified && !solidsOnly)) {
            String name = StepOutputs.is(step, Operation.CHROMATOGRAPH)
                    ? "eluate"
                    : StepOutputs.is(step, Operation.FILTER) ? "filtrate" : "liquor";
            named.put(name + " of step " + step.number(), rest);
        }
        return parted && !outputs.graph().isPurification(step);
    }

    private boolean isPartedFromSolid(Step step) {
        boolean leavesOne = step.operation().filter(LEAVING_A_LIQUOR::contains).isPresent();
        if (!leavesOne || step.gives().isEmpty() || goesOn(step) || isOwnStream(step)) {
            return false;
        }
        return unclaimed.isEmpty() || !unclaimed.remove(unclaimed.iterator().next());
    }

    /** True where the liquid goes on under a label of its source, in a later step or in a lot that is not the solid's. */
    private boolean goesOn(Step step) {
        boolean taken = run.orderedSteps().stream()
                .dropWhile(later -> later != step)
                .skip(1)
                .anyMatch(later -> later.from().stream().anyMatch(step.from()::contains));
        return taken
                || run.lots().stream()
                        .filter(lot -> !step.gives().contains(lot.label()))
                        .anyMatch(lot -> lot.from().stream().anyMatch(step.from()::contains));
    }

    private boolean isOwnStream(Step step) {
        String material = step.added().material();
        return outputs.isDried(step) || substances.dryingAgent(material).isPresent() || substances.isSorbent(material);
    }
}
