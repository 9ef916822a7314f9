package workuptally.material;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.solutions.Solute;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.Oxidant;
import workuptally.reference.substances.Solvent;

/**
 * One listed substance: the rows of all tables that are about it.
 *
 * @param name what is printed
 * @param formula formula, where a row gives one
 * @param row what it is and does
 * @param hazard its hazards
 * @param solvent its properties as a solvent
 * @param liquid its properties as a liquid reagent
 * @param solute what it does in water
 * @param oxidant what quenches it
 * @param dryingAgent its properties as a drying agent
 */
public record Substance(
        String name,
        Optional<String> formula,
        Optional<MaterialRow> row,
        Optional<Hazard> hazard,
        Optional<Solvent> solvent,
        Optional<Liquid> liquid,
        Optional<Solute> solute,
        Optional<Oxidant> oxidant,
        Optional<DryingAgent> dryingAgent) {
    private static final String WATER = "water";

    /** No two substances of the tables share name and formula; see the contributor guide on records as keys. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Substance substance
                        && name.equals(substance.name)
                        && formula.equals(substance.formula);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** Its registry number (CAS), where a table gives one and no other table contradicts it. */
    public Optional<String> registryNumber() {
        List<String> numbers = Stream.of(
                        row.flatMap(r -> r.names().cas()),
                        hazard.flatMap(Hazard::cas),
                        solvent.flatMap(Solvent::cas),
                        liquid.map(Liquid::cas),
                        solute.map(Solute::cas),
                        dryingAgent.map(DryingAgent::cas))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        return numbers.size() == 1 ? Optional.of(numbers.get(0)) : Optional.empty();
    }

    /** True for water. */
    public boolean isWater() {
        return solvent.filter(s -> s.key().equals(WATER)).isPresent();
    }

    /** The same with the hazards of another one. */
    Substance withHazard(Optional<Hazard> other) {
        return new Substance(name, formula, row, other, solvent, liquid, solute, oxidant, dryingAgent);
    }
}
