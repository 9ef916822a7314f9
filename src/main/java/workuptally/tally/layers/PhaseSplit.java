package workuptally.tally.layers;

import java.util.function.Predicate;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/**
 * How what stands in a funnel divides between the organic and the aqueous phase, estimated.
 *
 * <p>Salts go with the water; solvent and water saturate each other (mass % of the reference data, a third of it in a layer that holds a
 * tenth or more of salt: common practice); a solvent that mixes with water stays with the water for the most part (D = 0.3, common
 * practice), but for one that octanol prefers to water, such as tetrahydrofuran: it goes by its octanol ratio, which is a guide.
 */
final class PhaseSplit {

    private final Substances substances;
    private final Predicate<String> goesWithWater;
    private final Ingredients all;
    private final double aqueousGrams;
    private final double aqueousMillilitres;
    private final double organicMillilitres;
    private final double saltFraction;

    /**
     * Of everything in the funnel.
     *
     * @param goesWithWater tells the components that belong with the water
     */
    PhaseSplit(Substances substances, Predicate<String> goesWithWater, Ingredients all) {
        this.substances = substances;
        this.goesWithWater = goesWithWater;
        this.all = all;
        double water = all.grams(Materials.WATER);
        double salt = all.share(name -> goesWithWater.test(name) && !name.equals(Materials.WATER) ? 1 : 0)
                .totalGrams();
        this.aqueousGrams = water + salt;
        this.saltFraction = aqueousGrams > 0 ? salt / aqueousGrams : 0;
        this.aqueousMillilitres =
                all.share(name -> goesWithWater.test(name) ? 1 : 0).millilitres();
        this.organicMillilitres =
                all.share(name -> substances.isOrganicSolvent(name) ? 1 : 0).millilitres();
    }

    Ingredients organic() {
        return all.share(name -> 1 - aqueousShare(name));
    }

    Ingredients aqueous() {
        return all.share(this::aqueousShare);
    }

    private double aqueousShare(String name) {
        if (name.equals(Materials.WATER)) {
            double grams = all.grams(name);
            return grams == 0 ? 0 : 1 - waterInOrganicGrams() / grams;
        }
        if (name.equals(Materials.SOLIDS)) {
            boolean organic = all.share(n -> goesWithWater.test(n) || n.equals(name) ? 0 : 1)
                            .millilitres()
                    > 0;
            return organic ? 0 : 1;
        }
        return substances
                .solvent(name)
                .filter(solvent -> substances.isOrganicSolvent(name))
                .map(solvent -> dissolvedShare(name, solvent.waterMixing()))
                .orElse(goesWithWater.test(name) ? 1.0 : 0.0);
    }

    private double dissolvedShare(String name, Solvent.WaterMixing mixing) {
        if (mixing.miscible() == Solvent.Miscibility.YES) {
            double organic = organicMillilitres
                    * substances
                            .ratioPreferredByOctanol(name)
                            .orElse(substances.value(Threshold.MISCIBLE_DISTRIBUTION));
            return aqueousMillilitres == 0 ? 0 : aqueousMillilitres / (aqueousMillilitres + organic);
        }
        double massPercent = mixing.inWaterMassPercent().orElse(0)
                * (saltFraction >= substances.value(Threshold.SALTING_OUT_FROM)
                        ? substances.value(Threshold.SALTING_OUT_FACTOR)
                        : 1);
        double dissolved = aqueousGrams * massPercent / (100 - massPercent);
        double grams = all.grams(name);
        return grams == 0 ? 0 : Math.min(dissolved, grams) / grams;
    }

    private double waterInOrganicGrams() {
        double water = 0;
        for (var part : all.parts().entrySet()) {
            if (substances.isOrganicSolvent(part.getKey())) {
                double massPercent = substances
                        .solvent(part.getKey())
                        .map(solvent -> solvent.waterMixing()
                                .waterInSolventMassPercent()
                                .orElse(0))
                        .orElse(0.0);
                water += part.getValue().grams()
                        * massPercent
                        / (100 - Math.min(massPercent, substances.value(Threshold.MOST_WATER_IN_SOLVENT)));
            }
        }
        return water;
    }
}
