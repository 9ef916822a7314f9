package workuptally.material;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.Formula;
import workuptally.material.Strength.Kind;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.tables.Cited;

/**
 * One part of a material: what is dissolved, its solvent, or one of the solvents of a mixture.
 *
 * @param written name as typed, without what stood around it
 * @param substance what the tables know it as; empty where they do not
 * @param carrier true for the solvent in which another part is dissolved
 * @param strength how much of it is there, where the text says so
 * @param form its form, where the text says so
 * @param solution its solution in water as the tables know it at this strength
 * @param volumeFraction its share of a mixture made up by volume
 * @param formula its formula: of the tables, of its own name, or given by the user
 * @param membership classes it belongs to at this strength, with those that are coarser
 * @param heavyMetals symbols of the heavy metals in it, by its row, its formula or its name
 * @param choices what its name can mean, where it means more than one thing
 * @param evidence rows beside those of the substance that say something about it
 */
public record Part(
        String written,
        Optional<Substance> substance,
        boolean carrier,
        Optional<Strength> strength,
        Optional<Form> form,
        Optional<Wash> solution,
        OptionalDouble volumeFraction,
        Optional<Formula> formula,
        Membership membership,
        Set<String> heavyMetals,
        List<Substance> choices,
        List<Cited> evidence) {
    /** Name as it is printed: that of the tables, else as typed. */
    public String name() {
        return substance.map(Substance::name).orElse(written);
    }

    /** How far it is understood. */
    public State state() {
        return substance.isPresent()
                ? State.LISTED
                : formula.isPresent() && choices.isEmpty() ? State.DESCRIBED : State.UNLISTED;
    }

    /** What it is and does, where a row says so. */
    public Optional<MaterialRow> row() {
        return substance.flatMap(Substance::row);
    }

    /** True for water. */
    public boolean isWater() {
        return substance.filter(Substance::isWater).isPresent();
    }

    /** Classes it belongs to, its own ones first. */
    public Set<String> classes() {
        return membership.classes();
    }

    /** Mass per cent, by its figure or by the tables; empty where it is not known. */
    public OptionalDouble massPercent() {
        OptionalDouble listed =
                solution.map(w -> w.concentration().massPercent()).orElse(OptionalDouble.empty());
        return listed.isPresent() ? listed : figure(Kind.MASS_PERCENT);
    }

    /** mol/L, by its figure or by the tables; empty where it is not known. */
    public OptionalDouble molesPerLitre() {
        OptionalDouble listed =
                solution.map(w -> w.concentration().molarityMolesPerLitre()).orElse(OptionalDouble.empty());
        OptionalDouble typed = figure(Kind.MOLES_PER_LITRE);
        return listed.isPresent() ? listed : typed.isPresent() ? typed : ofEquivalents();
    }

    private OptionalDouble ofEquivalents() {
        OptionalDouble normality = figure(Kind.EQUIVALENTS_PER_LITRE);
        double equivalents =
                Math.max(acidMolesPerMole().orElse(0), baseMolesPerMole().orElse(0));
        return normality.isPresent() && equivalents > 0
                ? OptionalDouble.of(normality.getAsDouble() / equivalents)
                : OptionalDouble.empty();
    }

    private OptionalDouble figure(Kind kind) {
        return strength.filter(s -> s.kind() == kind).map(Strength::value).orElse(OptionalDouble.empty());
    }

    /** Protons it gives to strong base, mol/mol; empty where no row says so. */
    public OptionalDouble acidMolesPerMole() {
        OptionalDouble ofSolute = ofSolute(s -> s.acidBase().acidMolesPerMole());
        return ofSolute.isPresent()
                ? ofSolute
                : row().map(r -> r.behaviour().acidMolesPerMole()).orElse(OptionalDouble.empty());
    }

    /** Protons it takes from strong acid, mol/mol; empty where no row says so. */
    public OptionalDouble baseMolesPerMole() {
        OptionalDouble ofSolute = ofSolute(s -> s.acidBase().baseMolesPerMole());
        return ofSolute.isPresent()
                ? ofSolute
                : row().map(r -> r.behaviour().baseMolesPerMole()).orElse(OptionalDouble.empty());
    }

    private interface PerMole {
        double of(Solute solute);
    }

    private OptionalDouble ofSolute(PerMole figure) {
        return substance
                .flatMap(Substance::solute)
                .map(s -> OptionalDouble.of(figure.of(s)))
                .orElse(OptionalDouble.empty());
    }

    /** True where water in excess leaves nothing of what makes it reactive. */
    public boolean isDestroyedByWater() {
        return row().filter(r -> r.behaviour().destroyedByWater()).isPresent();
    }

    /** True where it follows the layers until it is destroyed. */
    public boolean isPersistent() {
        return row().filter(r -> r.behaviour().persistent()).isPresent();
    }
}
