package workuptally.tally.layers;

import java.util.List;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.tally.layers.Present.Share;

/**
 * What of a portion goes where without two liquids that part: over with the vapour, or through a filter. A distillate takes the solvents. A
 * catalyst on its support stays in the cake, where it goes on igniting vapour; the filtrate has a trace of its metal. Where no solid is
 * recorded of the step, nobody knows which outcome is the cake, and each may hold everything (common practice).
 */
final class TakenApart {
    /** Class of hydrogenation catalysts, solids that no solvent dissolves. */
    static final String CATALYST = "pyrophoric-catalyst";

    private static final Set<Operation> THROUGH_A_FILTER = Set.of(Operation.FILTER, Operation.RINSE);

    private final Run run;
    private final Membership metal;

    TakenApart(Run run, Reactivity reactivity) {
        this.run = run;
        this.metal = reactivity.membership(List.of(PortionContents.HEAVY_METAL), List.of());
    }

    /** What a label that a step gives holds of what the step leaves. */
    List<Present> in(Step step, String label, List<Present> left) {
        if (is(label, Layer.Phase.DISTILLATE)) {
            return left.stream().filter(Present::isListedSolvent).toList();
        }
        return isFiltrate(step, label)
                ? left.stream()
                        .map(p -> p.is(CATALYST) ? p.as(metal).as(Share.TRACE) : p)
                        .toList()
                : left;
    }

    private boolean isFiltrate(Step step, String label) {
        return step.operation().filter(THROUGH_A_FILTER::contains).isPresent()
                && !is(label, Layer.Phase.SOLID)
                && run.lot(label).isEmpty()
                && (step.gives().stream().anyMatch(other -> is(other, Layer.Phase.SOLID))
                        || step.from().stream().anyMatch(from -> is(from, Layer.Phase.SOLID)));
    }

    private boolean is(String label, Layer.Phase phase) {
        return run.layer(label).flatMap(Layer::phase).filter(p -> p == phase).isPresent();
    }
}
