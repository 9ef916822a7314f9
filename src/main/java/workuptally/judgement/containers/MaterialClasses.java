package workuptally.judgement.containers;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.layers.LayerMakeUp;

/**
 * Material classes of what an addition brings, each with the material it comes from, judged by its make-up and by what its run contained.
 *
 * <p>Acid and base go by the recorded pH where there is one (below 5, above 9). Azide, cyanide, sulfide, nitrite, fluoride and the like are
 * taken to be in every layer of a run that met them, distillates excepted. Oxidants, peroxides, hydrides and other reactive goods are taken
 * to be gone where the last quench test is negative; goods that react with water where the workup brought it. Sulfuric acid counts as
 * oxidising only where it is strong. All of that is common practice; where a test is missing, the class stays and says so.
 */
final class MaterialClasses {
    private static final double ACID_BELOW_PH = 5;
    private static final double BASE_ABOVE_PH = 9;
    private static final double LEAST_PERCENT = 1;
    private static final double OXIDISING_SULFURIC_PERCENT = 50;
    private static final String ACID = "acid";
    private static final String BASE = "base";
    private static final String CARBONATE = "carbonate";
    private static final String OXIDISING_ACID = "oxidising-acid";
    private static final String SULFURIC_ACID = "sulfuric acid";

    private static final Set<String> PERSISTENT =
            Set.of("azide", "cyanide", "sulfide", "nitrite", "fluoride", "thiol", "azo", "nitroalkane");
    private static final Set<String> QUENCHED =
            Set.of("oxidiser", "peroxide", "hypochlorite", "halogen", "hydride", "alkali-metal");
    private static final Set<String> GONE_WITH_WATER = Set.of("organometallic", "acid-chloride", "water-reactive");

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

    /** Classes of named contents and the words of a container's label. */
    Map<String, Origin> ofContainer(String label, Set<String> contents) {
        Map<String, Origin> classes = new LinkedHashMap<>();
        contents.forEach(name ->
                substances.materialClasses(name).forEach(c -> classes.putIfAbsent(c, new Origin(name, true))));
        String words = label.toLowerCase(Locale.ROOT);
        if (words.contains("aqueous") && words.contains("acid")) {
            classes.putIfAbsent(ACID, new Origin(label, true));
        }
        if (words.contains("aqueous") && (words.contains("basic") || words.contains("alkali"))) {
            classes.putIfAbsent(BASE, new Origin(label, true));
        }
        PERSISTENT.stream()
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
            boolean dissolvedSolvent = substances.reference().solvent(name).isPresent();
            if (!dissolvedSolvent || percent >= LEAST_PERCENT) {
                substances.materialClasses(name).stream()
                        .filter(c -> !(c.equals(OXIDISING_ACID)
                                && name.equals(SULFURIC_ACID)
                                && percent < OXIDISING_SULFURIC_PERCENT))
                        .forEach(c -> classes.putIfAbsent(c, new Origin(name, true)));
            }
        }));
        // Salts of the make-up may be what a reactive charge was called before its quench.
        QUENCHED.forEach(classes::remove);
        GONE_WITH_WATER.forEach(classes::remove);
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
                boolean stays = PERSISTENT.contains(c)
                        || (QUENCHED.contains(c) && !shownQuenched)
                        || (GONE_WITH_WATER.contains(c) && !metWater && !shownQuenched);
                if (stays) {
                    classes.putIfAbsent(c, new Origin(name, PERSISTENT.contains(c) || positive));
                }
            }
        }
        return classes;
    }

    private static boolean bringsWater(Step step) {
        return !step.givesAqueous().isEmpty()
                || step.operation().filter(o -> o == Step.Operation.QUENCH).isPresent();
    }

    private static void byPh(RunTally run, String label, Map<String, Origin> classes) {
        Optional<Entered> pH = run.layer(label).flatMap(l -> l.entry()).flatMap(l -> l.pH().entered());
        if (pH.isEmpty()) {
            return;
        }
        classes.remove(ACID);
        classes.remove(BASE);
        String words = "layer " + label + " at pH " + pH.get().asTyped();
        if (pH.get().value() < ACID_BELOW_PH) {
            classes.put(ACID, new Origin(words, true));
            classes.remove(CARBONATE);
        }
        if (pH.get().value() > BASE_ABOVE_PH) {
            classes.put(BASE, new Origin(words, true));
        }
    }
}
