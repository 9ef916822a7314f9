package workuptally.tally.layers;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.MiscibleSolvents;
import workuptally.tally.amounts.Substances;

/**
 * How what stands in a funnel divides between the organic and the aqueous phase, estimated.
 *
 * <p>Salts go with the water; solvent and water saturate each other (mass % of the reference data, a third of it in a layer that holds a
 * tenth or more of salt: common practice); a solvent that mixes with water goes by {@link MiscibleSolvents}, and adds to the volume of the
 * phase that it is in: a little water with much methanol takes up nearly all of it from petroleum ether.
 */
final class PhaseSplit {
    /** Halving the distance each round would already leave less than a millionth. */
    private static final int ROUNDS = 60;

    private final Substances substances;
    private final Predicate<String> goesWithWater;
    private final Ingredients all;
    private final double aqueousGrams;
    private final double saltFraction;
    private final Map<String, Double> miscibleInWater;

    /**
     * Of everything in the funnel.
     *
     * @param goesWithWater tells the components that belong with the water
     */
    PhaseSplit(Substances substances, Predicate<String> goesWithWater, Ingredients all) {
        this.substances = substances;
        this.goesWithWater = goesWithWater;
        this.all = all;
        double water = all.grams(IngredientAccount.WATER);
        double salt = all.share(name -> goesWithWater.test(name) && !name.equals(IngredientAccount.WATER) ? 1 : 0)
                .totalGrams();
        this.aqueousGrams = water + salt;
        this.saltFraction = aqueousGrams > 0 ? salt / aqueousGrams : 0;
        this.miscibleInWater = miscibleInWater();
    }

    /** Share of each solvent that mixes with water in the aqueous phase: the volumes of the phases and these shares rest on each other. */
    private Map<String, Double> miscibleInWater() {
        Map<String, Double> organic = new LinkedHashMap<>();
        Map<String, Double> miscible = new LinkedHashMap<>();
        double water = 0;
        for (Map.Entry<String, Ingredients.Part> part : all.parts().entrySet()) {
            String name = part.getKey();
            double millilitres = part.getValue().millilitres();
            if (goesWithWater.test(name)) {
                water += millilitres;
            } else if (isMiscible(name)) {
                miscible.put(name, millilitres);
            } else if (substances.isOrganicSolvent(name)) {
                organic.put(name, millilitres);
            }
        }
        if (water == 0) {
            miscible.replaceAll((name, millilitres) -> 0.0);
            return miscible;
        }
        MiscibleSolvents ratios = new MiscibleSolvents(substances);
        Map<String, Double> ratio = new LinkedHashMap<>();
        miscible.keySet().forEach(name -> ratio.put(name, ratios.ratio(name, organic)));
        double ofOrganic =
                organic.values().stream().mapToDouble(Double::doubleValue).sum();
        double ofMiscible =
                miscible.values().stream().mapToDouble(Double::doubleValue).sum();
        // without a solvent that makes a phase of its own, those that mix with water are taken for it
        double inWater = 0;
        double inOrganic = ofOrganic > 0 ? 0 : ofMiscible;
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int i = 0; i < (ofOrganic > 0 ? ROUNDS : 1); i++) {
            double aqueousPhase = water + inWater;
            double organicPhase = ofOrganic + inOrganic;
            for (Map.Entry<String, Double> d : ratio.entrySet()) {
                shares.put(d.getKey(), aqueousPhase / (aqueousPhase + d.getValue() * organicPhase));
            }
            inWater = 0;
            for (Map.Entry<String, Double> share : shares.entrySet()) {
                inWater += share.getValue() * miscible.get(share.getKey());
            }
            inOrganic = ofMiscible - inWater;
        }
        return shares;
    }

    private boolean isMiscible(String name) {
        if (!substances.isOrganicSolvent(name)) {
            return false;
        }
        Optional<Solvent> solvent = substances.solvent(name);
        return solvent.isPresent() && solvent.get().waterMixing().miscible() == Solvent.Miscibility.YES;
    }

    Ingredients organic() {
        return all.share(name -> 1 - aqueousShare(name));
    }

    Ingredients aqueous() {
        return all.share(this::aqueousShare);
    }

    private double aqueousShare(String name) {
        if (name.equals(IngredientAccount.WATER)) {
            double grams = all.grams(name);
            return grams == 0 ? 0 : 1 - waterInOrganicGrams() / grams;
        }
        if (name.equals(IngredientAccount.SOLIDS)) {
            boolean organic = all.share(n -> goesWithWater.test(n) || n.equals(name) ? 0 : 1)
                            .millilitres()
                    > 0;
            return organic ? 0 : 1;
        }
        Double miscible = miscibleInWater.get(name);
        if (miscible != null) {
            return miscible;
        }
        return substances
                .solvent(name)
                .filter(solvent -> substances.isOrganicSolvent(name))
                .map(solvent -> dissolvedShare(name, solvent.waterMixing()))
                .orElse(goesWithWater.test(name) ? 1.0 : 0.0);
    }

    private double dissolvedShare(String name, Solvent.WaterMixing mixing) {
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
