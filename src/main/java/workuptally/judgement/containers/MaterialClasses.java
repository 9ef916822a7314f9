package workuptally.judgement.containers;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.reference.ClassBehaviour;
import workuptally.reference.Threshold;
import workuptally.reference.WasteStream;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.layers.LayerMakeUp;

/**
 * Material classes of what an addition brings, each with the material it comes from, judged by its make-up and by what its run contained.
 *
 * <p>Acid and base go by the recorded pH where there is one. By the table of class behaviours, persistent classes are taken to be in every
 * layer of a run that met them, distillates excepted; others are gone where the last quench test is negative, or where the workup brought
 * water. Sulfuric acid counts as
 * oxidising only where it is strong. All of that is common practice; where a test is missing, the class stays and says so.
 */
final class MaterialClasses {
    static final String ACID = "acid";
    static final String BASE = "base";
    private static final String CARBONATE = "carbonate";
    private static final String OXIDISING_ACID = "oxidising-acid";
    private static final String SULFURIC_ACID = "sulfuric acid";

    private final Substances substances;
    private final Map<String, RunTally> runs;

    MaterialClasses(Substances substances, Map<String, RunTally> runs) {
        this.substances = substances;
        this.runs = runs;
    }

    /**
     * A class with the material it comes from.
     *
     * @param material name
     * @param shown false where only a missing test keeps it in
     */
    record Origin(String material, boolean shown) {}

    /** Classes of named contents, and those that the container's stream and its label imply. */
    Map<String, Origin> ofContainer(String label, Optional<WasteStream> stream, Set<String> contents) {
        Map<String, Origin> classes = new LinkedHashMap<>();
        contents.forEach(name ->
                substances.materialClasses(name).forEach(c -> classes.putIfAbsent(c, new Origin(name, true))));
        stream.ifPresent(s -> s.impliedClasses().forEach(c -> classes.putIfAbsent(c, new Origin(label, true))));
        String words = label.toLowerCase(Locale.ROOT);
        substances.reference().classBehaviours().stream()
                .filter(ClassBehaviour::persistent)
                .map(ClassBehaviour::materialClass)
                .filter(words::contains)
                .sorted()
                .forEach(c -> classes.putIfAbsent(c, new Origin(label, true)));
        return classes;
    }

    /** Classes of an addition. */
    Map<String, Origin> ofAddition(ContainerAddition addition) {
        Map<String, Origin> classes = new LinkedHashMap<>();
        List<String> layers = addition.transfer().layers();
        if (layers.isEmpty()) {
            String material = addition.transfer().material();
            substances.materialClasses(material).forEach(c -> classes.putIfAbsent(c, new Origin(material, true)));
            return classes;
        }
        Optional<RunTally> run =
                Optional.ofNullable(runs.get(addition.transfer().run()));
        run.ifPresent(r -> layers.forEach(label -> ofLayer(r, label).forEach(classes::putIfAbsent)));
        return classes;
    }

    private Map<String, Origin> ofLayer(RunTally run, String label) {
        Map<String, Origin> classes = new LinkedHashMap<>();
        Optional<LayerMakeUp> makeUp = run.makeUp(label);
        makeUp.ifPresent(m -> m.materials().stream().sorted().forEach(name -> {
            double percent = m.totalGrams() == 0 ? 0 : 100 * m.grams().getOrDefault(name, 0.0) / m.totalGrams();
            boolean dissolvedSolvent = substances.material(name).solvent().isPresent();
            if (!dissolvedSolvent || percent >= substances.value(Threshold.LEAST_CLASS_SHARE)) {
                substances.materialClasses(name).stream()
                        .filter(c -> !(c.equals(OXIDISING_ACID)
                                && name.equals(SULFURIC_ACID)
                                && percent < substances.value(Threshold.OXIDISING_SULFURIC)))
                        .forEach(c -> classes.putIfAbsent(c, new Origin(name, true)));
            }
        }));
        // Salts of the make-up may be what a reactive charge was called before its quench.
        classes.keySet().removeIf(c -> is(c, ClassBehaviour::isTransient));
        boolean distillate = run.layer(label)
                .flatMap(l -> l.phase())
                .filter(p -> p == Layer.Phase.DISTILLATE)
                .isPresent();
        if (!distillate) {
            ofRun(run, label).forEach(classes::putIfAbsent);
        }
        byPh(run, label, classes);
        return classes;
    }

    private Map<String, Origin> ofRun(RunTally run, String label) {
        Map<String, Origin> classes = new LinkedHashMap<>();
        Set<String> names = new LinkedHashSet<>();
        run.run().charges().stream().map(Charge::material).forEach(names::add);
        run.run().orderedSteps().stream()
                .map(Step::material)
                .filter(m -> !m.isBlank())
                .forEach(names::add);
        Optional<Step.QuenchTest> test = run.run().orderedSteps().stream()
                .flatMap(s -> s.quenchTest().stream())
                .filter(t -> t != Step.QuenchTest.NOT_DONE)
                .reduce((earlier, later) -> later);
        boolean shownQuenched = test.filter(t -> t == Step.QuenchTest.NEGATIVE).isPresent();
        boolean positive = test.filter(t -> t == Step.QuenchTest.POSITIVE).isPresent();
        boolean metWater = run.run().steps().stream().anyMatch(MaterialClasses::bringsWater);
        for (String name : names) {
            for (String c : substances.materialClasses(name)) {
                boolean persistent = is(c, ClassBehaviour::persistent);
                boolean stays = persistent
                        || (is(c, ClassBehaviour::shownGoneByTest) && !shownQuenched)
                        || (is(c, ClassBehaviour::goneWithWater) && !metWater && !shownQuenched);
                if (stays) {
                    classes.putIfAbsent(c, new Origin(name, persistent || positive));
                }
            }
        }
        return classes;
    }

    private boolean is(String materialClass, Predicate<ClassBehaviour> what) {
        return substances.reference().classBehaviour(materialClass).filter(what).isPresent();
    }

    private static boolean bringsWater(Step step) {
        return !step.givesAqueous().isEmpty()
                || step.operation().filter(o -> o == Step.Operation.QUENCH).isPresent();
    }

    private void byPh(RunTally run, String label, Map<String, Origin> classes) {
        Optional<Entered> pH = run.layer(label).flatMap(l -> l.entry()).flatMap(l -> l.pH().entered());
        if (pH.isEmpty()) {
            return;
        }
        classes.remove(ACID);
        classes.remove(BASE);
        String words = "layer " + label + " at pH " + pH.get().asTyped();
        if (pH.get().value() < substances.value(Threshold.ACIDIC_BELOW)) {
            classes.put(ACID, new Origin(words, true));
            classes.remove(CARBONATE);
        }
        if (pH.get().value() > substances.value(Threshold.BASIC_ABOVE)) {
            classes.put(BASE, new Origin(words, true));
        }
    }
}
