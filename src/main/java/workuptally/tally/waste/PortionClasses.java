package workuptally.tally.waste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.substances.ClassBehaviour;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.Meetings;
import workuptally.tally.layers.PortionContents;
import workuptally.tally.layers.Present;
import workuptally.tally.layers.Present.Share;

/**
 * Classes of what the portions of a run may still hold that decide a waste stream: those that the table of class behaviours calls
 * persistent, in whatever amount, and in a run that is not only planned those that water or a test have not taken away. A layer that no
 * step gives is taken to hold what persists of the charges, and what neither water nor a negative test has taken away. A distillate holds none of them.
 */
public final class PortionClasses {
    /** The class of a heavy metal in the reference data. */
    static final String HEAVY_METAL = "heavy-metal";

    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;
    private final Meetings meetings;

    /** Over what each portion may still hold. */
    public PortionClasses(Run run, Substances substances, LayerGraph graph, Meetings meetings) {
        this.run = run;
        this.substances = substances;
        this.graph = graph;
        this.meetings = meetings;
    }

    /**
     * Material classes that a layer may still hold, each with the material that brings it, in a fixed order.
     *
     * @param label label of the layer
     * @param phase its phase
     */
    public Map<String, String> in(String label, Layer.Phase phase) {
        Map<String, String> held = new LinkedHashMap<>();
        if (phase == Layer.Phase.DISTILLATE) {
            return held;
        }
        for (Present present : presents(label)) {
            Set<String> classes = new LinkedHashSet<>(present.membership().classes());
            present.part().heavyMetals().forEach(symbol -> classes.addAll(substances.classesOfElement(symbol)));
            for (String c : classes) {
                if (decides(c, present.share())) {
                    held.putIfAbsent(c, present.name());
                }
            }
        }
        return held;
    }

    private List<Present> presents(String label) {
        List<Present> followed = meetings.in(label);
        if (graph.givenBy(label).isPresent()) {
            return followed;
        }
        PortionContents contents =
                new PortionContents(run, substances, substances.reference().reactivity(), Set.of());
        List<Present> all = new ArrayList<>(followed);
        run.charges().stream()
                .flatMap(charge -> contents.ofCharge(charge, OptionalDouble.empty()).stream())
                .map(present ->
                        present.part().isDestroyedByWater() || isShownGone() ? present.as(Share.TRACE) : present)
                .forEach(all::add);
        return all;
    }

    private boolean isShownGone() {
        return run.orderedSteps().stream()
                .flatMap(step -> step.quenchTest().stream())
                .filter(test -> test != Step.QuenchTest.NOT_DONE)
                .reduce((earlier, later) -> later)
                .filter(test -> test == Step.QuenchTest.NEGATIVE)
                .isPresent();
    }

    private boolean decides(String materialClass, Share share) {
        Optional<ClassBehaviour> behaviour = substances.classBehaviour(materialClass);
        return behaviour.filter(ClassBehaviour::persistent).isPresent()
                || behaviour.filter(ClassBehaviour::isTransient).isPresent()
                        && share == Share.MAIN
                        && run.status() != Run.Status.PLANNED;
    }
}
