package workuptally.tally.waste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.Formula;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
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

    /**
     * The same of an organic liquid, which counts as one with heavy metals where enough of a metal was charged: some milligrams of a
     * catalyst do not make it one, and metal salts that a wash brings stay in the water. What was charged counts whole, since nothing
     * tells how it parted; a metal whose amount is not known counts.
     *
     * @param grams mass of the layer, g; empty where not known
     */
    Map<String, String> inOrganic(String label, Layer.Phase phase, OptionalDouble grams) {
        Map<String, String> held = in(label, phase);
        held.remove(HEAVY_METAL);
        if (phase == Layer.Phase.DISTILLATE) {
            return held;
        }
        double metal = 0;
        boolean open = grams.isEmpty();
        String most = "";
        double mostGrams = -1;
        for (Present present : presents(label)) {
            if (present.share() == Share.MAIN
                    && isCharged(present)
                    && !heavy(present).isEmpty()) {
                open |= present.millimoles().isEmpty();
                double one = metalGrams(present);
                metal += one;
                most = one > mostGrams ? present.name() : most;
                mostGrams = Math.max(one, mostGrams);
            }
        }
        if (!most.isEmpty() && (open || isEnough(metal, grams.getAsDouble()))) {
            held.put(HEAVY_METAL, most);
        }
        return held;
    }

    private boolean isEnough(double metalGrams, double grams) {
        return 100 * metalGrams >= substances.value(Threshold.ORGANIC_METAL_LEAST) * grams;
    }

    private boolean isCharged(Present present) {
        return run.charges().stream().anyMatch(charge -> present.isNamed(charge.material()));
    }

    private List<String> heavy(Present present) {
        return present.part().heavyMetals().stream()
                .filter(symbol -> substances.classesOfElement(symbol).contains(HEAVY_METAL))
                .toList();
    }

    /** What of a material is metal, g; one atom each where its formula is not known. */
    private double metalGrams(Present present) {
        double gramsPerMole = 0;
        for (String symbol : heavy(present)) {
            double atoms = present.part()
                    .formula()
                    .map(formula -> formula.count(symbol))
                    .filter(count -> count > 0)
                    .orElse(1.0);
            gramsPerMole += atoms * substances.molarMassGramsPerMole(Formula.parse(symbol));
        }
        return present.millimoles().orElse(0) / 1000 * gramsPerMole;
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
                .flatMap(charge -> contents.ofCharge(charge, millimoles(charge)).stream())
                .map(present ->
                        present.part().isDestroyedByWater() || isShownGone() ? present.as(Share.TRACE) : present)
                .forEach(all::add);
        return all;
    }

    private OptionalDouble millimoles(Charge charge) {
        return meetings.in(Step.REACTION_MIXTURE).stream()
                .filter(present -> present.isNamed(charge.material()))
                .map(Present::millimoles)
                .findFirst()
                .orElse(OptionalDouble.empty());
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
