package workuptally.tally.layers;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.amounts.Substances;

/**
 * What each label that a step gives is: a distillate, a solid, or a liquid that goes on.
 *
 * <p>The row in Layers tells. Without one, what a filter gives beside its filtrate is the solid it kept back, unless a later step takes it
 * as a liquid.
 */
public final class StepOutputs {
    private static final Set<Operation> SHAKEN = Set.of(Operation.EXTRACT, Operation.WASH, Operation.BACK_EXTRACT);

    /** Operations that separate no two liquid phases, whatever columns their outputs stand in. */
    private static final Set<Operation> NO_CONTACT = Set.of(
            Operation.STRIP,
            Operation.CONCENTRATE,
            Operation.DISTIL,
            Operation.FILTER,
            Operation.DRY,
            Operation.RINSE,
            Operation.CRYSTALLISE,
            Operation.CHROMATOGRAPH,
            Operation.SAMPLE,
            Operation.DRY_SOLID);

    /** Operations that only a liquid goes through. */
    private static final Set<Operation> OF_LIQUIDS = Set.of(
            Operation.EXTRACT,
            Operation.WASH,
            Operation.BACK_EXTRACT,
            Operation.CONCENTRATE,
            Operation.STRIP,
            Operation.DISTIL,
            Operation.DRY,
            Operation.DILUTE,
            Operation.QUENCH,
            Operation.ACIDIFY,
            Operation.BASIFY,
            Operation.FILTER);

    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;

    /**
     * Outputs of the steps of a run.
     *
     * @param run the run
     * @param graph its graph
     * @param substances reference data in force
     */
    public StepOutputs(Run run, LayerGraph graph, Substances substances) {
        this.run = run;
        this.graph = graph;
        this.substances = substances;
    }

    LayerGraph graph() {
        return graph;
    }

    static boolean is(Step step, Operation operation) {
        return step.operation().isPresent() && step.operation().get() == operation;
    }

    /** True for an extraction or a wash. */
    static boolean isShaken(Step step) {
        return step.operation().filter(SHAKEN::contains).isPresent();
    }

    /** True where solvent is taken off. */
    static boolean isDistillation(Step step) {
        return step.operation().filter(Operation::takesSolventOff).isPresent();
    }

    /** True where two liquid phases meet: an extraction or a wash, and another step in solution that gives both phases. */
    static boolean isContact(Step step) {
        boolean canBe = step.operation().filter(NO_CONTACT::contains).isEmpty();
        return isShaken(step)
                || (canBe
                        && !step.given().organic().isEmpty()
                        && !step.given().aqueous().isEmpty());
    }

    boolean isDistillate(String label) {
        return hasPhase(label, Layer.Phase.DISTILLATE);
    }

    boolean hasPhase(String label, Layer.Phase phase) {
        return phase(label).filter(p -> p == phase).isPresent();
    }

    /** True for a solid by its row, and without one for what a filter gives beside its filtrate. */
    boolean isSolid(Step step, String label) {
        if (phase(label).isPresent()) {
            return hasPhase(label, Layer.Phase.SOLID);
        }
        boolean keptBack = is(step, Operation.FILTER)
                && step.given().other().contains(label)
                && run.lot(label).isEmpty()
                && !step.from().contains(label);
        if (!keptBack || goesOnAsLiquid(step, label)) {
            return false;
        }
        boolean filtrateHasALabel = step.gives().stream()
                .anyMatch(other -> !other.equals(label) && (isKnownLiquid(other) || goesOnAsLiquid(step, other)));
        return filtrateHasALabel || becomesALot(label) && !isDried(step);
    }

    /** True for a solid that a drying agent was filtered off as, by its row or by the steps before. */
    boolean isDryingCake(Step step, String label) {
        return isSolid(step, label) && isDried(step);
    }

    /** Labels of a step that are neither distillate, solid nor lot; a lot that it also takes goes on as a liquid. */
    List<String> liquids(Step step) {
        return step.gives().stream()
                .filter(label -> !isDistillate(label) && !isSolid(step, label))
                .filter(label -> run.lot(label).isEmpty() || step.from().contains(label))
                .toList();
    }

    /** Liquids of a contact among its other portions. */
    List<String> liquidsAmongOthers(Step step) {
        return step.given().other().stream()
                .filter(label -> run.lot(label).isEmpty())
                .filter(label -> !isDistillate(label)
                        && !hasPhase(label, Layer.Phase.SOLID)
                        && !hasPhase(label, Layer.Phase.RAG))
                .toList();
    }

    private Optional<Layer.Phase> phase(String label) {
        return PartedLiquids.counting(run, label);
    }

    private boolean isKnownLiquid(String label) {
        boolean byColumn = run.steps().stream()
                .anyMatch(s -> s.given().organic().contains(label)
                        || s.given().aqueous().contains(label));
        return phase(label).map(p -> p != Layer.Phase.SOLID).orElse(byColumn);
    }

    private boolean goesOnAsLiquid(Step giver, String label) {
        return run.steps().stream()
                .filter(step -> step != giver && step.from().contains(label))
                .anyMatch(step -> step.operation().filter(OF_LIQUIDS::contains).isPresent());
    }

    private boolean becomesALot(String label) {
        return graph.children(label).stream().anyMatch(child -> run.lot(child).isPresent());
    }

    /** True where a drying agent was added on the way to a step, after the last contact. */
    boolean isDried(Step step) {
        return step.from().stream()
                .flatMap(label -> run.steps().stream()
                        .filter(earlier -> earlier != step && earlier.gives().contains(label)))
                .anyMatch(earlier -> is(earlier, Operation.DRY)
                        || substances.dryingAgent(earlier.added().material()).isPresent());
    }

    /** True for a product that a distillate can hold. */
    boolean goesOver(Product product) {
        return substances.isVolatile(product);
    }
}
