package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.waste.LayerFacts;
import workuptally.tally.amounts.Substances;

/**
 * Where a solid came from: a drying cake or sorbent, a catalyst filtered off, or a solid that nobody said the
 * make-up of. A by-product or a salt is no drying agent.
 */
public final class SolidOrigin {
    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;

    /** Over the steps of a run. */
    public SolidOrigin(Run run, Substances substances, LayerGraph graph) {
        this.run = run;
        this.substances = substances;
        this.graph = graph;
    }

    /**
     * Where a solid comes from, with what a reader is told.
     *
     * @param label label of the solid
     * @param metal material that brings a heavy metal, if one does
     */
    public Origin of(String label, Optional<String> metal) {
        Optional<Step> filter = graph.givenBy(label);
        Optional<Step> drying = filter.flatMap(this::dryingBefore);
        if (drying.isPresent()) {
            return new Origin(
                    LayerFacts.Origin.DRYING_CAKE,
                    "drying cake, step " + drying.get().number());
        }
        if (filter.filter(this::isOnSorbent).isPresent() || isSaidToBeSorbent(label)) {
            return new Origin(
                    LayerFacts.Origin.SORBENT,
                    metal.map(m -> "sorbent or filter aid, may hold " + m).orElse("sorbent or filter aid"));
        }
        boolean stated =
                run.layer(label).filter(layer -> !layer.composition().isEmpty()).isPresent();
        String what = stated ? "no drying agent or sorbent" : "composition not recorded, organic or inorganic";
        return new Origin(
                LayerFacts.Origin.OTHER,
                "solid, " + what + metal.map(m -> "; may hold " + m).orElse(""));
    }

    /** The step that added a drying agent to what was filtered, back to the last solid filtered off. */
    private Optional<Step> dryingBefore(Step filter) {
        Set<Step> seen = new LinkedHashSet<>();
        List<Step> open = new ArrayList<>(List.of(filter));
        while (!open.isEmpty()) {
            Step step = open.remove(open.size() - 1);
            if (!seen.add(step) || (step != filter && step.gives().stream().anyMatch(this::isSolid))) {
                continue;
            }
            if (isDrying(step)) {
                return Optional.of(step);
            }
            if (step == filter || !isLiquidContact(step)) {
                step.from().stream().flatMap(l -> graph.givenBy(l).stream()).forEach(open::add);
            }
        }
        return Optional.empty();
    }

    private boolean isDrying(Step step) {
        return step.operation().filter(o -> o == Step.Operation.DRY).isPresent()
                || substances.dryingAgent(step.added().material()).isPresent();
    }

    /** A drying agent does not outlast a contact with water. */
    private static boolean isLiquidContact(Step step) {
        return !step.given().aqueous().isEmpty();
    }

    private boolean isOnSorbent(Step step) {
        return substances.isSorbent(step.added().material())
                || step.operation()
                        .filter(o -> o == Step.Operation.CHROMATOGRAPH)
                        .isPresent();
    }

    /** By the make-up that the layer's row states. */
    private boolean isSaidToBeSorbent(String label) {
        return run.layer(label).stream()
                .flatMap(layer -> layer.composition().stream())
                .anyMatch(part -> substances.isSorbent(part.substance())
                        || substances.dryingAgent(part.substance()).isPresent());
    }

    private boolean isSolid(String label) {
        return run.layer(label)
                .flatMap(Layer::phase)
                .filter(p -> p == Layer.Phase.SOLID)
                .isPresent();
    }

    /**
     * Where a solid comes from.
     *
     * @param kind for the rules of waste streams
     * @param words for a reader
     */
    public record Origin(LayerFacts.Origin kind, String words) {}
}
