package workuptally.tally.waste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.ClassBehaviour;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerGraph;

/**
 * Material classes that a layer is taken to hold because of what went into it, each with the material that brings it: every charge, and
 * what the steps on the way to the layer added.
 *
 * <p>Persistent classes stay whatever was done. What only a test shows gone stays where the last test is positive, and where a run that is
 * not only planned records none; what water destroys is gone with the workup. A distillate holds none of them. The table of class
 * behaviours says which is which.
 */
final class LayerClasses {
    /** The class of a heavy metal in the reference data. */
    static final String HEAVY_METAL = "heavy-metal";

    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;
    private final Optional<Step.QuenchTest> lastTest;

    LayerClasses(Run run, Substances substances, LayerGraph graph) {
        this.run = run;
        this.substances = substances;
        this.graph = graph;
        this.lastTest = run.orderedSteps().stream()
                .flatMap(step -> step.quenchTest().stream())
                .filter(test -> test != Step.QuenchTest.NOT_DONE)
                .reduce((earlier, later) -> later);
    }

    /** Class and material, in the order in which the materials came. */
    Map<String, String> of(String label, Layer.Phase phase) {
        Map<String, String> held = new LinkedHashMap<>();
        if (phase == Layer.Phase.DISTILLATE) {
            return held;
        }
        for (Charge charge : run.charges()) {
            Set<String> classes = new LinkedHashSet<>(substances.materialClasses(charge.material()));
            classes.addAll(substances.classesOfElements(charge.formula()));
            classes.stream().filter(this::stays).forEach(c -> held.putIfAbsent(c, charge.material()));
        }
        for (Step step : stepsTo(label)) {
            if (!step.material().isBlank()) {
                substances.materialClasses(step.material()).stream()
                        .filter(this::stays)
                        .forEach(c -> held.putIfAbsent(c, step.material()));
            }
        }
        return held;
    }

    private boolean stays(String materialClass) {
        Optional<ClassBehaviour> behaviour = substances.classBehaviour(materialClass);
        if (behaviour.filter(ClassBehaviour::persistent).isPresent()) {
            return true;
        }
        boolean onlyByTest = behaviour
                .filter(b -> b.shownGoneByTest() && !b.goneWithWater() && !b.reactsWithWater())
                .isPresent();
        boolean positive =
                lastTest.filter(test -> test == Step.QuenchTest.POSITIVE).isPresent();
        return positive && behaviour.filter(ClassBehaviour::shownGoneByTest).isPresent()
                || onlyByTest && lastTest.isEmpty() && run.status() != Run.Status.PLANNED;
    }

    /** The step that gives a layer and every step before it, in order of the run. */
    private List<Step> stepsTo(String label) {
        Set<Step> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(label));
        while (!open.isEmpty()) {
            Optional<Step> step = graph.givenBy(open.remove(open.size() - 1));
            if (step.isPresent() && found.add(step.get())) {
                open.addAll(step.get().from());
            }
        }
        boolean fromReaction =
                found.isEmpty() || found.stream().anyMatch(step -> step.from().contains(Step.REACTION_MIXTURE));
        return run.orderedSteps().stream()
                .filter(step -> found.contains(step) || fromReaction && isInTheFlask(step))
                .toList();
    }

    /** A step that only adds to the reaction mixture, a quench for example, gives no label of its own. */
    private static boolean isInTheFlask(Step step) {
        return step.gives().isEmpty() && (step.from().isEmpty() || step.from().contains(Step.REACTION_MIXTURE));
    }
}
