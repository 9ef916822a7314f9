package workuptally.tally.layers;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.solutions.AqueousDensity;
import workuptally.tally.amounts.Substances;

/**
 * Volume of a mixture given by names and masses: liquids by their listed density, volumes added; a solute by what it adds to the volume
 * of all the water (density tables at 20 °C); salts without a table nothing; anything else 1 g/mL (common practice).
 */
public final class NamedVolumes {
    private final Substances substances;

    public NamedVolumes(Substances substances) {
        this.substances = substances;
    }

    /** Volume, mL. */
    public double millilitres(Map<String, Double> grams) {
        double water = grams.getOrDefault(IngredientAccount.WATER, 0.0);
        return grams.entrySet().stream()
                .mapToDouble(e -> millilitres(e.getKey(), e.getValue(), water))
                .sum();
    }

    private double millilitres(String name, double grams, double waterGrams) {
        OptionalDouble density = substances.solvent(name).isPresent()
                ? substances.densityGramsPerMillilitre(name)
                : OptionalDouble.empty();
        if (density.isPresent()) {
            return grams / density.getAsDouble();
        }
        Optional<AqueousDensity> table =
                substances.reference().aqueousDensities().find(name);
        if (table.isPresent() && waterGrams > 0) {
            double solution = waterGrams + grams;
            OptionalDouble ofSolution = table.get().densityGramsPerMillilitre(100 * grams / solution);
            if (ofSolution.isPresent()) {
                return solution / ofSolution.getAsDouble() - waterGrams / AqueousDensity.WATER_GRAMS_PER_MILLILITRE;
            }
        }
        boolean salt =
                table.isPresent() || substances.solute(name).isPresent() || name.equals(LayerMakeUpAccount.SALTS);
        return salt ? 0 : grams;
    }
}
