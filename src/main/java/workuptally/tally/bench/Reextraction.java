package workuptally.tally.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.tally.amounts.AcidGas;

/**
 * What a further extraction of a layer would bring.
 *
 * @param layer label
 * @param substance product
 * @param solvent solvent
 * @param portions number of portions
 * @param volumeMillilitres volume of each, mL
 * @param distributionRatio D used
 * @param distributionRatioUncertainty its standard uncertainty where it comes from assays; empty for a table value, which is a guide
 * @param origin where D comes from
 * @param pH pH to bring the layer to first; empty where it stays as it is
 * @param gainGrams product it would bring, g
 * @param gainPercentOfTheory the same, % of theory
 * @param acidMillimoles acid needed for that pH, mmol; negative for base; 0 where the pH stays
 * @param carbonDioxideMillimoles carbon dioxide that this acid can set free from carbonate in the layer, mmol
 * @param acidGases what this acid must not meet in the run; empty where no acid is needed
 * @param solventGrams solvent it costs, g
 */
public record Reextraction(
        String layer,
        String substance,
        String solvent,
        int portions,
        double volumeMillilitres,
        double distributionRatio,
        OptionalDouble distributionRatioUncertainty,
        String origin,
        OptionalDouble pH,
        double gainGrams,
        double gainPercentOfTheory,
        double acidMillimoles,
        double carbonDioxideMillimoles,
        List<AcidGas> acidGases,
        double solventGrams) {
    /** Strength of the acid or base that is reckoned with to set the pH, mol/L (common practice). */
    public static final double ACID_MOLES_PER_LITRE = 6;

    /** Carbon dioxide from which on a caution goes with the acid, mmol; 1 mmol is about 24 mL (common practice). */
    public static final double SMALLEST_GAS_MILLIMOLES = 1;

    /** Copies the list. */
    public Reextraction {
        acidGases = List.copyOf(acidGases);
    }

    /** What the acid must not meet, as a clause; empty if nothing stands against it. */
    public String acidCaution() {
        return acidGases.stream()
                .map(gas -> gas.material() + ": " + gas.consequence())
                .collect(Collectors.joining("; "));
    }

    /** Volume that setting the pH adds to the layer, mL. */
    public double addedMillilitres() {
        return Math.abs(acidMillimoles) / ACID_MOLES_PER_LITRE;
    }
}
