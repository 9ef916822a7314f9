package workuptally.material;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.solutions.Solute;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.Oxidant;
import workuptally.reference.substances.Solvent;
import workuptally.reference.substances.SolventShare;

/**
 * What a written name means.
 *
 * @param written the text as typed
 * @param parts what it is made of, the solute before its solvent; at least one
 * @param wash the wash it names, as the tables know it; the usual solution for a solute whose name is used for it too
 * @param recovered true where the text says that it was used before
 */
public record Material(String written, List<Part> parts, Optional<Wash> wash, boolean recovered) {
    /** Copies the list. */
    public Material {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a material has at least one part");
        }
        parts = List.copyOf(parts);
    }

    /** How far it is understood: as far as its least understood part. */
    public State state() {
        return parts.stream()
                .map(Part::state)
                .max(java.util.Comparator.naturalOrder())
                .orElseThrow();
    }

    /** True where its name means more than one thing, or one of its parts does. */
    public boolean isAmbiguous() {
        return parts.stream().anyMatch(part -> !part.choices().isEmpty());
    }

    /** The part that is meant: what is dissolved, or the first one of a mixture. */
    public Part main() {
        return parts.get(0);
    }

    /** The solvent in which the main part is dissolved or dispersed, water included; empty where none is told. */
    public Optional<Part> carrier() {
        return parts.stream().filter(Part::carrier).findFirst();
    }

    /** The listed solvent of a solution, water included; empty for a mixture of solvents and where none is told. */
    public Optional<Solvent> carrierSolvent() {
        return carrier().flatMap(Part::substance).flatMap(Substance::solvent);
    }

    private Optional<Substance> pure() {
        return parts.size() == 1 && main().strength().isEmpty() ? main().substance() : Optional.empty();
    }

    /** The solvent it is, undiluted; its grade does not matter. */
    public Optional<Solvent> solvent() {
        return pure().flatMap(Substance::solvent);
    }

    /** The liquid reagent or product it is, undiluted. */
    public Optional<Liquid> liquid() {
        return pure().flatMap(Substance::liquid);
    }

    /** The solvents of a mixture made up by volume, shares that sum to 1; empty for anything else. */
    public List<SolventShare> blend() {
        boolean all = parts.size() > 1
                && parts.stream()
                        .allMatch(p -> p.volumeFraction().isPresent()
                                && p.substance().flatMap(Substance::solvent).isPresent());
        return all
                ? parts.stream()
                        .filter(p -> p.volumeFraction().getAsDouble() > 0)
                        .map(p -> new SolventShare(
                                p.substance().flatMap(Substance::solvent).orElseThrow(),
                                p.volumeFraction().getAsDouble()))
                        .toList()
                : List.of();
    }

    /** The drying agent it is. */
    public Optional<DryingAgent> dryingAgent() {
        return pure().flatMap(Substance::dryingAgent);
    }

    /** The oxidant that it is or holds. */
    public Optional<Oxidant> oxidant() {
        return main().substance().flatMap(Substance::oxidant);
    }

    /** Hazards of the main part, of the strong material where it is a solution. */
    public Optional<Hazard> hazard() {
        return main().substance().flatMap(Substance::hazard);
    }

    /** What the main part does in water. */
    public Optional<Solute> solute() {
        return main().substance().flatMap(Substance::solute);
    }

    /** Classes of all parts, those of the main part first; the water of a solution is left out, any other solvent is not. */
    public Set<String> classes() {
        Set<String> classes = new LinkedHashSet<>();
        parts.stream()
                .filter(part -> !part.carrier() || !part.isWater())
                .forEach(part -> classes.addAll(part.classes()));
        return classes;
    }

    /** True where it belongs to a class. */
    public boolean is(String materialClass) {
        for (Part part : parts) {
            if (part.classes().contains(materialClass)) {
                return true;
            }
        }
        return false;
    }

    /** Strength of the main part in water, mass per cent; empty in another solvent and where it is not known. */
    public OptionalDouble massPercentInWater() {
        boolean otherSolvent = carrier().filter(part -> !part.isWater()).isPresent()
                || parts.stream().filter(part -> !part.carrier()).count() > 1;
        return otherSolvent ? OptionalDouble.empty() : main().massPercent();
    }
}
