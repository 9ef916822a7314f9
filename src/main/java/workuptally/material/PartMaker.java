package workuptally.material;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.Formula;
import workuptally.material.Strength.Kind;
import workuptally.reference.Reference;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Solutions;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.substances.NameClass;
import workuptally.reference.substances.Solvent;

/** Makes the parts of a material: what the tables say about a substance at the strength and in the form that is written. */
final class PartMaker {
    /** Mass per cent that stands for "dilute" (common practice: bench acids and bases of 1 to 3 mol/L). */
    private static final double DILUTE_PERCENT = 10;

    private static final Set<String> BASES = Set.of(MaterialClass.BASE, MaterialClass.BASE_WEAK);
    private static final String SALT_OF_BASE = MaterialClass.ACID_WEAK;
    /** What of an amine its salts share: nitrite and hypochlorite take them as well. */
    private static final String SALT_OF_AMINE = MaterialClass.AMINE_SALT;

    private final Reactivity reactivity;
    private final Solutions solutions;
    private final ClassWords classWords;
    private final HeavyMetals heavyMetals;

    PartMaker(Reference reference) {
        this.reactivity = reference.reactivity();
        this.solutions = reference.solutions();
        this.classWords = new ClassWords(reference.nameClasses());
        this.heavyMetals = new HeavyMetals(reference.metals());
    }

    /** What stands around the name of a part. */
    record Around(Optional<Strength> strength, Optional<Form> form, boolean inWater, boolean carrier) {
        static final Around NOTHING = new Around(Optional.empty(), Optional.empty(), false, false);

        static Around of(Qualifiers q, boolean inWater) {
            return new Around(q.strength(), q.form(), inWater, false);
        }

        static final Around CARRIER = new Around(Optional.empty(), Optional.empty(), false, true);
    }

    /** A listed substance. */
    Part listed(String written, Substance substance, Around around) {
        Optional<Wash> solution = around.inWater() ? solution(substance, around.strength()) : Optional.empty();
        return listed(written, substance, around, solution);
    }

    /** A listed substance in the solution that a row of the washes describes. */
    Part listed(String written, Substance substance, Around around, Optional<Wash> solution) {
        Optional<Formula> formula = substance.formula().flatMap(SubstanceIndex::formula);
        Set<String> metals = new LinkedHashSet<>();
        substance.row().ifPresent(row -> metals.addAll(row.behaviour().heavyMetals()));
        metals.addAll(heavyMetals.in(formula));
        return new Part(
                written,
                Optional.of(substance),
                around.carrier(),
                around.strength(),
                around.form(),
                solution,
                OptionalDouble.empty(),
                formula,
                membership(substance, around, solution),
                metals,
                List.of(),
                List.of());
    }

    /** A name that no table has, or that means several things; its formula is that of the user or of the name itself. */
    Part unlisted(String written, Optional<Formula> formula, List<Substance> choices, Around around) {
        List<NameClass> words = classWords.in(written);
        Set<String> metals = new LinkedHashSet<>(heavyMetals.in(formula));
        metals.addAll(heavyMetals.in(written));
        Set<String> own = new LinkedHashSet<>();
        words.forEach(word -> own.addAll(word.classes()));
        own.addAll(common(choices));
        if (!metals.isEmpty()) {
            own.add(MaterialClass.HEAVY_METAL);
        }
        return new Part(
                written,
                Optional.empty(),
                around.carrier(),
                around.strength(),
                around.form(),
                Optional.empty(),
                OptionalDouble.empty(),
                formula,
                reactivity.membership(own, List.of()),
                metals,
                List.copyOf(choices),
                List.copyOf(words));
    }

    /** Classes that a name tells whichever of its meanings holds. */
    private Set<String> common(List<Substance> choices) {
        Set<String> common = new LinkedHashSet<>();
        for (int i = 0; i < choices.size(); i++) {
            Set<String> each =
                    membership(choices.get(i), Around.NOTHING, Optional.empty()).classes();
            if (i == 0) {
                common.addAll(each);
            }
            common.retainAll(each);
        }
        return choices.size() > 1 ? common : Set.of();
    }

    /** The same part with its share of a mixture. */
    static Part inMixture(Part part, double volumeFraction) {
        return new Part(
                part.written(),
                part.substance(),
                false,
                part.strength(),
                part.form(),
                part.solution(),
                OptionalDouble.of(volumeFraction),
                part.formula(),
                part.membership(),
                part.heavyMetals(),
                part.choices(),
                part.evidence());
    }

    /** The solution in water at a strength, where the tables know the solute. */
    Optional<Wash> solution(Substance substance, Optional<Strength> strength) {
        if (substance.solute().isEmpty() || strength.isEmpty()) {
            return Optional.empty();
        }
        Solute solute = substance.solute().get();
        OptionalDouble value = strength.get().value();
        return switch (strength.get().kind()) {
            case MASS_PERCENT, VOLUME_PERCENT -> positive(value).flatMap(v -> solutions.atMassPercent(solute, v));
            case MOLES_PER_LITRE -> positive(value).flatMap(v -> solutions.atMolesPerLitre(solute, v));
            case EQUIVALENTS_PER_LITRE -> positive(value).flatMap(v -> solutions.atEquivalentsPerLitre(solute, v));
            case GRAMS_PER_100_MILLILITRES ->
                positive(value)
                        .flatMap(v -> solutions.atMolesPerLitre(solute, 10 * v / solute.molarMassGramsPerMole()));
            case SATURATED -> solutions.saturated(solute);
            case HALF_SATURATED -> solutions.saturated(solute).flatMap(solutions::halved);
            case CONCENTRATED -> solutions.concentrated(solute);
            case DILUTE -> Optional.empty();
        };
    }

    private static Optional<Double> positive(OptionalDouble value) {
        return value.isPresent() && value.getAsDouble() > 0 ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private Membership membership(Substance substance, Around around, Optional<Wash> solution) {
        boolean salt = around.form().filter(f -> f.kind() == Form.Kind.SALT).isPresent();
        if (substance.row().isPresent() && !salt) {
            return reactivity.membership(
                    substance.row().get(), massPercent(around, solution), molesPerLitre(around, solution));
        }
        Set<String> own = new LinkedHashSet<>(
                substance.row().map(r -> r.behaviour().classes()).orElseGet(() -> withoutRow(substance)));
        List<String> parents =
                substance.row().map(r -> r.behaviour().parentClasses()).orElse(List.of());
        if (salt) {
            boolean amine = own.stream()
                    .anyMatch(each -> each.equals(MaterialClass.AMINE)
                            || reactivity.ancestors(each).contains(MaterialClass.AMINE));
            own.removeIf(this::isBase);
            parents = parents.stream().filter(p -> !isBase(p)).toList();
            own.add(amine ? SALT_OF_AMINE : SALT_OF_BASE);
        }
        return reactivity.membership(own, parents);
    }

    private boolean isBase(String name) {
        return BASES.contains(name) || reactivity.ancestors(name).stream().anyMatch(BASES::contains);
    }

    /** Classes by the other tables, for what stands in those alone. */
    private static List<String> withoutRow(Substance substance) {
        List<String> classes =
                new ArrayList<>(substance.hazard().map(Hazard::materialClasses).orElse(List.of()));
        if (classes.isEmpty()) {
            substance
                    .solute()
                    .filter(s -> s.acidBase().acidMolesPerMole() > 0)
                    .ifPresent(s -> classes.add(MaterialClass.ACID));
            substance
                    .solute()
                    .filter(s -> s.acidBase().baseMolesPerMole() > 0)
                    .ifPresent(s -> classes.add(MaterialClass.BASE));
        }
        Optional<Solvent> solvent = substance.solvent().filter(s -> !substance.isWater());
        if (solvent.isPresent() && !classes.contains(MaterialClass.ORGANIC)) {
            classes.add(MaterialClass.ORGANIC);
        }
        return classes;
    }

    private static OptionalDouble massPercent(Around around, Optional<Wash> solution) {
        OptionalDouble listed =
                solution.map(w -> w.concentration().massPercent()).orElse(OptionalDouble.empty());
        if (listed.isPresent()) {
            return listed;
        }
        Optional<Strength> strength = around.strength();
        return strength.filter(s -> s.kind() == Kind.DILUTE).isPresent()
                ? OptionalDouble.of(DILUTE_PERCENT)
                : strength.filter(s -> s.kind() == Kind.MASS_PERCENT)
                        .map(Strength::value)
                        .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble molesPerLitre(Around around, Optional<Wash> solution) {
        OptionalDouble listed =
                solution.map(w -> w.concentration().molarityMolesPerLitre()).orElse(OptionalDouble.empty());
        return listed.isPresent()
                ? listed
                : around.strength()
                        .filter(s -> s.kind() == Kind.MOLES_PER_LITRE || s.kind() == Kind.EQUIVALENTS_PER_LITRE)
                        .map(Strength::value)
                        .orElse(OptionalDouble.empty());
    }
}
