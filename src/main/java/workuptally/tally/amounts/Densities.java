package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Mixture;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.Solvent;
import workuptally.reference.substances.SolventShare;

/** Densities of named liquids by the reference data, and how they change with temperature; the rows that gave them are remembered. */
final class Densities {
    private final Substances substances;

    Densities(Substances substances) {
        this.substances = substances;
    }

    /** Density at 20 °C of a listed solvent or wash, or near it of a listed liquid, g/mL. */
    OptionalDouble gramsPerMillilitre(String name) {
        Optional<Solvent> solvent = substances.solvent(name);
        if (solvent.isPresent()) {
            substances.use(solvent.get());
            return OptionalDouble.of(solvent.get().density().gramsPerMillilitre());
        }
        Optional<Wash> wash = substances
                .wash(name)
                .filter(w -> w.concentration().densityGramsPerMillilitre().isPresent());
        if (wash.isPresent()) {
            substances.use(wash.get());
            return wash.get().concentration().densityGramsPerMillilitre();
        }
        OptionalDouble blended = ofBlend(name);
        Optional<Liquid> liquid = blended.isPresent() ? Optional.empty() : substances.liquid(name);
        liquid.ifPresent(substances::use);
        return liquid.isPresent() ? OptionalDouble.of(liquid.get().densityGramsPerMillilitre()) : blended;
    }

    /** Standard uncertainty of that density, g/mL; 0 for solvents, their mixtures and washes, whose purity is not in question. */
    double standardUncertaintyGramsPerMillilitre(String name) {
        boolean ofLiquid = substances.solvent(name).isEmpty()
                && substances
                        .wash(name)
                        .filter(w ->
                                w.concentration().densityGramsPerMillilitre().isPresent())
                        .isEmpty()
                && substances.blend(name).isEmpty();
        return ofLiquid
                ? substances
                        .liquid(name)
                        .map(Liquid::standardUncertaintyGramsPerMillilitre)
                        .orElse(0.0)
                : 0;
    }

    /** Density of a mixture of listed solvents, volumes taken as additive, g/mL. */
    private OptionalDouble ofBlend(String name) {
        List<SolventShare> shares = substances.blend(name);
        shares.forEach(share -> substances.use(share.solvent()));
        return shares.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(shares.stream()
                        .mapToDouble(
                                s -> s.volumeFraction() * s.solvent().density().gramsPerMillilitre())
                        .sum());
    }

    /**
     * Density of a liquid at a temperature over that at 20 °C: by the slope of the solvent table, else for an organic solvent by the
     * usual expansion of the bench rules, else by the slope of water.
     *
     * @param celsius within 40 K of 20 °C
     */
    double over20(String name, double celsius) {
        Optional<Solvent> listed = substances
                .solvent(name)
                .filter(s -> s.density().changePerKelvin().isPresent());
        Optional<Solvent> byTable =
                substances.isOrganicSolvent(name) ? listed : listed.or(() -> substances.solvent(Substances.WATER));
        return byTable.map(Solvent::density)
                .filter(d -> d.changePerKelvin().isPresent())
                .map(d -> Mixture.atTemperature(
                                d.gramsPerMillilitre(), d.changePerKelvin().getAsDouble(), celsius)
                        / d.gramsPerMillilitre())
                .orElseGet(() -> Mixture.expanded(1, substances.value(Threshold.EXPANSION), celsius));
    }
}
