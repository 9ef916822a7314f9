package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Substances;

/**
 * Which stream a solid suggests by where it came from: a drying cake or sorbent, a catalyst filtered off, or a solid that nobody said the
 * make-up of. A by-product or a salt is no drying agent.
 */
public final class SolidStream {
    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;

    public SolidStream(Run run, Substances substances) {
        this.run = run;
        this.substances = substances;
        this.graph = LayerGraph.of(run);
    }

    /**
     * Stream and reason.
     *
     * @param label label of the solid
     * @param metal heavy metal that the run was charged with
     * @param noble true where that metal is one of a supported catalyst
     */
    public Suggestion of(String label, Optional<String> metal, boolean noble) {
        Optional<Step> filter = graph.givenBy(label);
        Optional<Step> drying = filter.flatMap(this::dryingBefore);
        if (drying.isPresent()) {
            return new Suggestion(
                    "drying-agents-silica", "drying cake, step " + drying.get().number());
        }
        if (noble) {
            return new Suggestion("catalyst-noble", "may hold " + metal.orElseThrow() + ": keep it wet");
        }
        if (filter.filter(this::isOnSorbent).isPresent() || isSaidToBeSorbent(label)) {
            return new Suggestion(
                    "drying-agents-silica",
                    metal.map(m -> "sorbent or filter aid, may hold " + m).orElse("sorbent or filter aid"));
        }
        boolean stated =
                run.layer(label).filter(layer -> !layer.composition().isEmpty()).isPresent();
        String what = stated ? "no drying agent or sorbent" : "composition not recorded, organic or inorganic";
        return new Suggestion(
                "solids-other",
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
                || substances.dryingAgent(step.material()).isPresent();
    }

    /** A drying agent does not outlast a contact with water. */
    private static boolean isLiquidContact(Step step) {
        return !step.givesAqueous().isEmpty();
    }

    private boolean isOnSorbent(Step step) {
        return substances.isSorbent(step.material())
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
     * A stream by its key, with the reason.
     *
     * @param stream key of the stream
     * @param why what speaks for it
     */
    public record Suggestion(String stream, String why) {}
}
