package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.model.Charge;
import workuptally.model.CompositionPart;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.substances.ClassBehaviour;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.Present.Share;

/**
 * What each portion of a run may still hold, by kind and not by amount.
 *
 * <p>At a contact salts, mineral acids and bases follow the water, all else the organic phase; heavy metals, peroxides and organic acids
 * follow both. What persists leaves a trace in the other phase, which the next contact with fresh liquid of that other phase takes away.
 * Water destroys what its row says, a negative quench test what has a test, unless it persists: then only where a step brought what the
 * pairs name as its planned end. Acid and base put an end to each other where the recorded pH or the operation says so. All of that is
 * common practice. A layer whose density fits the other phase of its contact gets what that phase holds.
 */
public final class PortionContents {
    private static final Set<Operation> CONTACTS = Set.of(
            Operation.QUENCH,
            Operation.DILUTE,
            Operation.EXTRACT,
            Operation.WASH,
            Operation.BACK_EXTRACT,
            Operation.ACIDIFY,
            Operation.BASIFY);
    private static final Set<Operation> IN_THE_FLASK =
            Set.of(Operation.QUENCH, Operation.DILUTE, Operation.ACIDIFY, Operation.BASIFY);
    private static final Set<Operation> NEUTRALISING = Set.of(Operation.QUENCH, Operation.WASH, Operation.BACK_EXTRACT);
    private static final String WATER = "water";
    private static final String ACID = "acid";
    private static final String AMMONIUM_SALT = "ammonium-salt";
    static final String HEAVY_METAL = "heavy-metal";
    private static final Set<String> BASES = Set.of("base", "carbonate", "base-weak");

    private final Run run;
    private final Set<String> swapped;
    private final Substances substances;
    private final Reactivity reactivity;
    private final TakenApart apart;
    private final Map<String, List<Present>> byLabel = new LinkedHashMap<>();

    /** Names of what was charged: a quench test is about these, not about what quenches them. */
    private final Set<String> charged = new LinkedHashSet<>();

    /** Names of persistent materials to which something was added that the pairs name as their planned end. */
    private final Set<String> treated = new LinkedHashSet<>();

    /**
     * Of a run.
     *
     * @param swapped labels of layers that stand for each other
     */
    public PortionContents(Run run, Substances substances, Reactivity reactivity, Set<String> swapped) {
        this.run = run;
        this.swapped = swapped;
        this.substances = substances;
        this.reactivity = reactivity;
        this.apart = new TakenApart(run, reactivity);
    }

    /** The reaction mixture at the beginning: what was charged, and what came of it. */
    void start(List<Present> present, List<Present> products) {
        List<Present> mixture = new ArrayList<>(present);
        mixture.addAll(products);
        byLabel.put(Step.REACTION_MIXTURE, List.copyOf(mixture));
        present.forEach(p -> charged.add(p.name()));
        for (Layer layer : run.layers()) {
            List<Present> stated = new ArrayList<>();
            for (CompositionPart part : layer.composition()) {
                stated.addAll(presents(
                        part.substance(),
                        substances.material(part.substance()),
                        OptionalDouble.empty(),
                        Optional.empty()));
            }
            byLabel.put(layer.label(), List.copyOf(stated));
        }
    }

    Map<String, List<Present>> byLabel() {
        return byLabel;
    }

    List<Present> of(String label) {
        return byLabel.getOrDefault(label, List.of());
    }

    /** What a charge brings, part by part. */
    public List<Present> ofCharge(Charge charge, OptionalDouble millimoles) {
        Material material = charge.formula().isBlank()
                ? atStrength(
                        charge.material(),
                        charge.goods()
                                .titreMolesPerLitre()
                                .entered()
                                .or(() -> charge.goods().molarityMolesPerLitre().entered()))
                : substances.material(charge.material(), charge.formula());
        return presents(charge.material(), material, millimoles, Optional.of(charge));
    }

    /** What a step adds; a liquid that is a solution in water by habit brings its water. */
    List<Present> ofStep(Step step) {
        if (step.added().material().isBlank()) {
            return List.of();
        }
        Material material = atStrength(
                step.added().material(), step.added().molarityMolesPerLitre().entered());
        List<Present> added =
                new ArrayList<>(presents(step.added().material(), material, OptionalDouble.empty(), Optional.empty()));
        boolean liquid = step.added().volumeMillilitres().entered().isPresent();
        boolean aqueous = added.stream().noneMatch(Present::prefersOrganic)
                && added.stream().noneMatch(p -> p.is(WATER) || p.part().carrier());
        if (liquid
                && aqueous
                && material.parts().stream().anyMatch(p -> !p.classes().isEmpty())) {
            added.addAll(presents(WATER, substances.material(WATER), OptionalDouble.empty(), Optional.empty()));
        }
        return added;
    }

    /** The material at the strength of its own cell, where its name tells none. */
    private Material atStrength(String written, Optional<Entered> molarity) {
        Material named = substances.material(written);
        boolean told =
                named.main().strength().isPresent() || named.main().solution().isPresent();
        return molarity.isPresent() && molarity.get().value() > 0 && !told
                ? substances.material(molarity.get().asTyped() + " M " + written)
                : named;
    }

    static List<Present> presents(
            String written, Material material, OptionalDouble millimoles, Optional<Charge> charge) {
        List<Present> list = new ArrayList<>();
        for (Part part : material.parts()) {
            boolean main = part == material.main();
            list.add(new Present(
                    main ? written : part.name(),
                    part,
                    part.membership(),
                    Share.MAIN,
                    main ? millimoles : OptionalDouble.empty(),
                    part.carrier() || isSolvent(part, charge)));
        }
        return list;
    }

    /** By its role where it was charged with one, DMSO as a reagent; else by the table of solvents. */
    private static boolean isSolvent(Part part, Optional<Charge> charge) {
        Optional<Charge.Role> role = charge.flatMap(Charge::role);
        return role.isPresent() ? role.get() == Charge.Role.SOLVENT : isListedSolvent(part);
    }

    private static boolean isListedSolvent(Part part) {
        return part.substance().flatMap(s -> s.solvent()).isPresent();
    }

    /** Two lists as one, each name once, with the larger share. */
    static List<Present> union(List<Present> one, List<Present> other) {
        Map<String, Present> byName = new LinkedHashMap<>();
        one.forEach(p -> byName.put(p.name(), p));
        other.forEach(p -> byName.merge(p.name(), p, (a, b) -> a.share() == Share.MAIN ? a : b));
        return List.copyOf(byName.values());
    }

    /** Hands on what a step leaves to the labels it gives. */
    void follow(Step step, List<Present> there, List<Present> added) {
        noteTreatment(there, added);
        List<Present> all = afterAcidAndBase(step, there, added);
        boolean water = all.stream().anyMatch(p -> p.is(WATER));
        List<Present> left = new ArrayList<>();
        for (Present present : all) {
            afterWaterAndTest(present, water, Dilution.waterMillilitres(step, added), step)
                    .ifPresent(left::add);
        }
        Operation operation = step.operation().orElse(Operation.COMBINE);
        boolean contact = CONTACTS.contains(operation)
                && !(step.given().organic().isEmpty() && step.given().aqueous().isEmpty())
                && !goesOnWhole(step, operation);
        if (step.gives().isEmpty()) {
            step.from().forEach(label -> put(step, label, left));
        } else if (contact) {
            step.given().organic().forEach(label -> put(step, label, phase(left, added, !swapped.contains(label))));
            step.given().aqueous().forEach(label -> put(step, label, phase(left, added, swapped.contains(label))));
            step.given().other().forEach(label -> put(step, label, left));
        } else {
            step.gives().forEach(label -> put(step, label, apart.in(step, label, left)));
        }
    }

    /** Diluted, quenched or set to a pH under its own label: nothing was parted, in whichever column of the book the label stands. */
    private static boolean goesOnWhole(Step step, Operation operation) {
        return IN_THE_FLASK.contains(operation) && step.from().containsAll(step.gives());
    }

    /** A portion that goes on under its label is what is left of it; one that is given twice is both. */
    private void put(Step step, String label, List<Present> content) {
        if (step.from().contains(label)) {
            byLabel.put(label, List.copyOf(content));
        } else {
            byLabel.merge(label, List.copyOf(content), PortionContents::union);
        }
    }

    private void noteTreatment(List<Present> there, List<Present> added) {
        for (Present present : there) {
            boolean ended = present.persists()
                    && added.stream()
                            .flatMap(a -> reactivity.between(present.membership(), a.membership(), Set.of()).stream())
                            .anyMatch(pair -> !pair.ofChart()
                                    && pair.inWorkup()
                                            == workuptally.reference.hazards.ReactivityPair.InWorkup.PLANNED_QUENCH);
            if (ended) {
                treated.add(present.name());
            }
        }
    }

    private List<Present> afterAcidAndBase(Step step, List<Present> there, List<Present> added) {
        List<Present> all = union(there, added);
        boolean acidAdded = added.stream().anyMatch(p -> p.is(ACID));
        boolean baseAdded = added.stream().anyMatch(p -> p.isAny(BASES));
        Optional<Double> pH = step.pHAfter().entered().map(Entered::value);
        Optional<Operation> operation = step.operation();
        boolean basic = pH.map(v -> v > AcidBase.NEUTRAL_PH)
                .orElse(baseAdded
                        && operation
                                .filter(o -> o == Operation.BASIFY || NEUTRALISING.contains(o))
                                .isPresent());
        boolean acidic = pH.map(v -> v < AcidBase.NEUTRAL_PH)
                .orElse(acidAdded
                        && operation
                                .filter(o -> o == Operation.ACIDIFY || NEUTRALISING.contains(o))
                                .isPresent());
        return all.stream()
                .filter(p -> p.persists() || !(basic && p.is(ACID) || acidic && isPlainBase(p)))
                .toList();
    }

    /** A base that acid turns into a harmless salt; an ammonium salt is one already, hydrides and the like have their own end. */
    private static boolean isPlainBase(Present present) {
        return present.isAny(BASES)
                && !present.is(AMMONIUM_SALT)
                && !present.part().isDestroyedByWater()
                && !present.prefersOrganic();
    }

    private Optional<Present> afterWaterAndTest(
            Present present, boolean water, OptionalDouble waterMillilitres, Step step) {
        Present kept = present;
        if (water && isDestroyedByWater(kept)) {
            if (!kept.persists()) {
                return Optional.empty();
            }
            kept = kept.as(remaining(kept));
        } else if (water && kept.part().row().isPresent() && !kept.is(WATER)) {
            kept = kept.as(new Dilution(reactivity).weakened(kept, waterMillilitres));
        }
        boolean negative =
                step.quenchTest().filter(t -> t == Step.QuenchTest.NEGATIVE).isPresent();
        boolean tested = charged.contains(kept.name()) && substances.hasQuenchTest(kept.part());
        if (negative && tested) {
            boolean ended = !kept.persists() || treated.contains(kept.name());
            if (ended && kept.part().heavyMetals().isEmpty()) {
                return Optional.empty();
            }
            if (!kept.part().heavyMetals().isEmpty()) {
                kept = kept.as(reactivity.membership(List.of(HEAVY_METAL), List.of()));
            }
        }
        return Optional.of(kept);
    }

    /** By its row, else, of a name that no table has, by each of its classes of which the table tells what becomes of it. */
    private boolean isDestroyedByWater(Present present) {
        if (present.part().row().isPresent()) {
            return present.part().isDestroyedByWater();
        }
        List<ClassBehaviour> behaviours = present.membership().classes().stream()
                .flatMap(name -> substances.classBehaviour(name).stream())
                .toList();
        return !behaviours.isEmpty() && behaviours.stream().allMatch(ClassBehaviour::goneWithWater);
    }

    /** What water leaves of something that persists: its parent class, azide of a silyl azide; a heavy metal. */
    private Membership remaining(Present present) {
        List<String> parents = new ArrayList<>();
        present.part()
                .row()
                .ifPresent(
                        row -> row.behaviour().classes().forEach(name -> parents.addAll(reactivity.ancestors(name))));
        if (!present.part().heavyMetals().isEmpty()) {
            parents.add(HEAVY_METAL);
        }
        parents.remove("water-reactive");
        return reactivity.membership(parents, List.of());
    }

    /** One phase of a contact. */
    private static List<Present> phase(List<Present> all, List<Present> added, boolean organic) {
        Set<String> fresh = new LinkedHashSet<>();
        added.forEach(p -> fresh.add(p.name()));
        boolean freshWater = added.stream().anyMatch(p -> p.is(WATER));
        boolean freshOrganic = added.stream().anyMatch(Present::prefersOrganic);
        List<Present> phase = new ArrayList<>();
        for (Present present : all) {
            boolean own = present.goesBothWays() || present.prefersOrganic() == organic;
            if (own) {
                phase.add(present);
            } else if (present.persists()) {
                boolean washedOut = present.share() == Share.TRACE && (organic ? freshWater : freshOrganic);
                if (!washedOut && !fresh.contains(present.name())) {
                    phase.add(present.as(Share.TRACE));
                }
            }
        }
        return phase;
    }
}
