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
 * @param extractant what it is extracted with
 * @param partition how the product parts between both
 * @param phSetting what brings the layer to its pH first
 * @param gain product it would bring
 */
public record Reextraction(
        String layer, String substance, Extractant extractant, Partition partition, PhSetting phSetting, Gain gain) {

    /**
     * What the layer is extracted with.
     *
     * @param solvent solvent
     * @param portions number of portions
     * @param volumeMillilitres volume of each, mL
     * @param solventGrams solvent that all of them cost, g
     */
    public record Extractant(String solvent, int portions, double volumeMillilitres, double solventGrams) {}

    /**
     * How the product parts between solvent and water.
     *
     * @param distributionRatio D used
     * @param standardUncertainty that of D where it comes from assays; empty for a table value, which is a guide
     * @param origin where D comes from
     */
    public record Partition(double distributionRatio, OptionalDouble standardUncertainty, String origin) {}

    /**
     * Product that the extraction would bring.
     *
     * @param grams g
     * @param percentOfTheory the same, % of theory
     */
    public record Gain(double grams, double percentOfTheory) {}

    /**
     * What brings the layer to the pH at which it is extracted.
     *
     * @param pH pH to bring the layer to first; empty where it stays as it is
     * @param acidMillimoles acid needed for that pH, mmol; negative for base; 0 where the pH stays
     * @param addedMolesPerLitre strength of the acid or base that is reckoned with, mol/L
     * @param carbonDioxideMillimoles carbon dioxide that this acid can set free from carbonate in the layer, mmol; 0 where it is not worth a
     *     caution
     * @param acidGases what this acid must not meet in the run; empty where no acid is needed
     */
    public record PhSetting(
            OptionalDouble pH,
            double acidMillimoles,
            double addedMolesPerLitre,
            double carbonDioxideMillimoles,
            List<AcidGas> acidGases) {
        /** Copies the list. */
        public PhSetting {
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
            return Math.abs(acidMillimoles) / addedMolesPerLitre;
        }
    }
}
