package workuptally.judgement.containers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.hazards.ReactivityGroup;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.waste.ContainerLabel;
import workuptally.reference.waste.WasteStream;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.layers.LayerMakeUpAccount;
import workuptally.tally.layers.Present;

/**
 * The materials that an addition brings or a container holds.
 *
 * <p>A layer brings what the account of meetings says it may still hold; solvents where they are a hundredth of it at least, of less for what must never meet. Acid and base
 * go by the recorded pH where there is one (below 5, above 9). What only a missing quench test keeps in is marked so. All of that is
 * common practice.
 */
final class CarriedMaterials {
    /** Ammonia and its salts react with bleach and halogens at any pH. */
    private static final String AMMONIA = MaterialClass.AMMONIA;

    private final Substances substances;
    private final Reactivity reactivity;
    private final Map<String, RunTally> runs;

    /** Classes of which a listed material persists; found once, since a book may have thousands of containers. */
    private final List<String> persistentClasses;

    CarriedMaterials(Substances substances, Map<String, RunTally> runs) {
        this.substances = substances;
        this.reactivity = substances.reference().reactivity();
        this.runs = runs;
        Set<String> persistent = new HashSet<>();
        substances.reference().materials().stream()
                .filter(r -> r.behaviour().persistent())
                .forEach(row -> persistent.addAll(row.behaviour().classes()));
        this.persistentClasses = reactivity.groups().stream()
                .map(ReactivityGroup::key)
                .filter(persistent::contains)
                .toList();
    }

    /**
     * What named contents, the stream of a container and the words of its label say. What a stream stands for is taken to be there unless the
     * contents name one of it: a stream for cyanide or azide whose contents name a cyanide is no azide.
     */
    List<Carried> ofContainer(String label, ContainerLabel read, Map<String, Double> contents) {
        List<Carried> all = new ArrayList<>();
        contents.keySet().forEach(name -> all.addAll(ofContent(name, contents)));
        Set<String> told = new HashSet<>();
        all.forEach(c -> told.addAll(c.membership().classes()));
        read.stream()
                .map(WasteStream::impliedClasses)
                .filter(implied -> implied.stream().noneMatch(told::contains))
                .ifPresent(implied -> implied.forEach(c -> all.add(ofClass(label, c))));
        persistentClasses.stream().filter(read.said()::contains).forEach(c -> all.add(ofClass(label, c)));
        return all;
    }

    private Carried ofClass(String label, String materialClass) {
        return new Carried(label, reactivity.membership(List.of(materialClass), List.of()), true);
    }

    /** Beside water a material is as strong as its share of the whole: an acid of 4 % is no concentrated one. */
    private List<Carried> ofContent(String name, Map<String, Double> contents) {
        double total = contents.values().stream().mapToDouble(g -> g).sum();
        double share = 100 * contents.get(name) / total;
        boolean dissolved = share < 100
                && contents.keySet().stream()
                        .anyMatch(other -> substances.material(other).is(MaterialClass.WATER));
        Material material = substances.material(name);
        if (!dissolved || material.parts().size() != 1 || material.main().row().isEmpty()) {
            return ofMaterial(name);
        }
        return List.of(new Carried(
                material.written(),
                reactivity.membership(material.main().row().get(), OptionalDouble.of(share), OptionalDouble.empty()),
                true));
    }

    private List<Carried> ofMaterial(String name) {
        Material material = substances.material(name);
        List<Carried> parts = new ArrayList<>();
        for (Part part : material.parts()) {
            parts.add(new Carried(
                    part.equals(material.main()) ? material.written() : part.name(), part.membership(), true));
        }
        return parts;
    }

    /** What an addition brings. */
    List<Carried> ofAddition(ContainerAddition addition) {
        List<String> layers = addition.transfer().layers();
        if (layers.isEmpty()) {
            return ofMaterial(addition.transfer().material());
        }
        Map<String, Carried> brought = new LinkedHashMap<>();
        Optional.ofNullable(runs.get(addition.transfer().run()))
                .ifPresent(run -> layers.forEach(
                        label -> ofLayer(run, label).forEach(c -> brought.putIfAbsent(c.material(), c))));
        return List.copyOf(brought.values());
    }

    private List<Carried> ofLayer(RunTally run, String label) {
        Optional<Entered> pH =
                run.layer(label).flatMap(l -> l.entry()).map(l -> l.pH()).flatMap(Field::entered);
        List<Carried> all = new ArrayList<>();
        for (Present present : run.evidence().meetings().in(label)) {
            if (pH.isEmpty() || !isToldByPh(present, pH.get().value())) {
                all.add(new Carried(
                        present.name(),
                        pH.isEmpty()
                                ? present.membership()
                                : atPh(present, pH.get().value()),
                        isShown(run, present),
                        isMinorSolvent(run, label, present)));
            }
        }
        all.addAll(ofMakeUp(run, label, all));
        all.addAll(dissolved(run, label, all));
        pH.ifPresent(reading -> {
            String words = "layer " + label + " at pH " + reading.asTyped();
            if (reading.value() < substances.value(Threshold.ACIDIC_BELOW)) {
                all.add(ofClass(words, MaterialClass.ACID));
            }
            if (reading.value() > substances.value(Threshold.BASIC_ABOVE)) {
                all.add(ofClass(words, MaterialClass.BASE));
            }
        });
        return all;
    }

    /** Oxidants that the make-up still counts, though the reaction was to use them up: a nitration leaves nitric acid behind. */
    private List<Carried> ofMakeUp(RunTally run, String label, List<Carried> known) {
        List<Carried> oxidants = new ArrayList<>();
        run.makeUp(label)
                .filter(m -> m.totalGrams() > 0)
                .ifPresent(makeUp -> makeUp.grams().forEach((name, grams) -> {
                    if (100 * grams / makeUp.totalGrams() >= substances.value(Threshold.LEAST_CLASS_SHARE)) {
                        for (Carried part : ofMaterial(name)) {
                            boolean named = known.stream().anyMatch(c -> c.isOf(part.material()));
                            if (!named && part.membership().classes().contains(MaterialClass.OXIDISER)) {
                                oxidants.add(part);
                            }
                        }
                    }
                }));
        return oxidants;
    }

    /** Solvents that a layer has taken up of what it was shaken with. */
    private List<Carried> dissolved(RunTally run, String label, List<Carried> known) {
        List<Carried> solvents = new ArrayList<>();
        run.makeUp(label)
                .ifPresent(makeUp -> makeUp.grams().forEach((name, grams) -> {
                    boolean named = known.stream().anyMatch(c -> c.isOf(name));
                    if (grams > 0 && !named && substances.isOrganicSolvent(name)) {
                        ofMaterial(name)
                                .forEach(part -> solvents.add(new Carried(
                                        part.material(),
                                        part.membership(),
                                        part.shown(),
                                        100 * grams
                                                < substances.value(Threshold.LEAST_CLASS_SHARE)
                                                        * makeUp.totalGrams())));
                    }
                }));
        return solvents;
    }

    /** Acids and hydroxides of the water: what is left of them is told by the pH, and that carbonate is gone from acid. */
    private boolean isToldByPh(Present present, double pH) {
        Set<String> classes = present.membership().classes();
        boolean own = !present.persists()
                && !classes.contains(MaterialClass.ORGANIC)
                && !classes.contains(MaterialClass.OXIDISER);
        return own
                && !classes.contains(AMMONIA)
                && (classes.contains(MaterialClass.CARBONATE)
                        ? pH < substances.value(Threshold.ACIDIC_BELOW)
                        : classes.contains(MaterialClass.ACID) || classes.contains(MaterialClass.BASE));
    }

    /** An organic acid that the pH shows to be a salt is no acid any more, but organic still. */
    private Membership atPh(Present present, double pH) {
        Membership membership = present.membership();
        boolean salt = pH > substances.value(Threshold.POOLED_BASIC_ABOVE)
                && membership.classes().contains(MaterialClass.ACID)
                && membership.classes().contains(MaterialClass.ORGANIC);
        return salt
                ? reactivity.membership(
                        membership.classes().stream()
                                .filter(c -> !c.equals(MaterialClass.ACID)
                                        && !reactivity.ancestors(c).contains(MaterialClass.ACID))
                                .toList(),
                        List.of())
                : membership;
    }

    private boolean isMinorSolvent(RunTally run, String label, Present present) {
        Optional<LayerMakeUp> makeUp = run.makeUp(label);
        if (makeUp.isEmpty() || makeUp.get().totalGrams() <= 0 || !present.isListedSolvent()) {
            return false;
        }
        String name = SubstanceName.key(present.part().name());
        double grams = makeUp.get().grams().entrySet().stream()
                .filter(e -> SubstanceName.key(e.getKey()).equals(name)
                        || SubstanceName.same(e.getKey(), name + LayerMakeUpAccount.AS_SALT))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        return 100 * grams / makeUp.get().totalGrams() < substances.value(Threshold.LEAST_CLASS_SHARE);
    }

    /** A reagent with a test of its own is shown only by a positive one; it may have been used up. */
    private boolean isShown(RunTally run, Present present) {
        boolean testable = substances.hasQuenchTest(present.part());
        boolean charged = run.run().charges().stream().map(Charge::material).anyMatch(present.name()::equals);
        if (present.persists() || !testable || !charged) {
            return true;
        }
        return run.run().orderedSteps().stream()
                .flatMap(step -> step.quenchTest().stream())
                .filter(test -> test != Step.QuenchTest.NOT_DONE)
                .reduce((earlier, later) -> later)
                .filter(test -> test == Step.QuenchTest.POSITIVE)
                .isPresent();
    }
}
