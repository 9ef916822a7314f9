package workuptally.tally.layers;

import java.util.OptionalDouble;
import java.util.Set;
import workuptally.material.Part;
import workuptally.model.SubstanceName;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.reference.solutions.Solute;

/**
 * A material that a portion may still hold.
 *
 * @param name name as written, or that of the tables for the solvent of a solution
 * @param part what it is
 * @param membership what it still counts as: water and tests take classes away
 * @param share how much of it the portion holds
 * @param millimoles amount charged, mmol, where known
 * @param solvent true where it was charged as a solvent, or is one and has no role
 */
public record Present(
        String name, Part part, Membership membership, Share share, OptionalDouble millimoles, boolean solvent) {
    private static final Set<String> IN_BOTH_PHASES = Set.of("heavy-metal", "organic-acid", "peroxide");

    /** How much of a material a portion holds. */
    public enum Share {
        /** As much as was put in, as far as the record tells. */
        MAIN,
        /** What the other phase of one separation left in it. */
        TRACE
    }

    /** Its name in the tables, else as written. */
    public String listedName() {
        return part.name();
    }

    /** Whether a component of that name is this material. */
    public boolean isNamed(String component) {
        return SubstanceName.same(component, name)
                || SubstanceName.same(component, listedName())
                || SubstanceName.same(component, dissolvedName());
    }

    /** Whether water in excess leaves nothing of what makes it reactive. */
    public boolean isDestroyedByWater() {
        return part.isDestroyedByWater();
    }

    /** Its name as what is dissolved in a layer, which can be another than that of its solution: hydrogen chloride of hydrochloric acid. */
    public String dissolvedName() {
        return part.substance().flatMap(s -> s.solute()).map(Solute::name).orElse(listedName());
    }

    public Present as(Share other) {
        return new Present(name, part, membership, other, millimoles, solvent);
    }

    Present as(Membership other) {
        return new Present(name, part, other, share, millimoles, solvent);
    }

    /** Whether it belongs to the class. */
    public boolean is(String materialClass) {
        return membership.classes().contains(materialClass);
    }

    boolean isAny(Set<String> classes) {
        for (String own : membership.classes()) {
            if (classes.contains(own)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it is to be found in both phases of a contact. */
    boolean goesBothWays() {
        return isAny(IN_BOTH_PHASES);
    }

    /** Whether it prefers the organic phase. */
    boolean prefersOrganic() {
        return is("organic");
    }

    /** Whether the table of solvents has it, whatever it was charged as. */
    public boolean isListedSolvent() {
        return part.substance().flatMap(s -> s.solvent()).isPresent();
    }

    /** Whether the table of drying agents has it. */
    public boolean isDryingAgent() {
        return part.substance().flatMap(s -> s.dryingAgent()).isPresent();
    }

    /** Whether a drying cake holds it only as what the solution on the cake has dissolved: neither the agent nor the liquid. */
    public boolean isDissolvedOnCake() {
        return !isDryingAgent() && !isListedSolvent() && !(persists() && share == Share.MAIN);
    }

    /** Whether nothing but its destruction takes it from the layers: azide, cyanide, heavy metals. */
    public boolean persists() {
        return part.isPersistent() || !part.heavyMetals().isEmpty();
    }
}
