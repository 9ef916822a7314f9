package workuptally.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Repeated extraction of an aqueous layer with organic solvent, at constant distribution ratio D = c(organic)/c(aqueous), immiscible layers
 * and equilibrium in every contact. Source: mass balance and the definition of D, any analytical chemistry text.
 */
public final class Extraction {
    /** More portions than this are not proposed; common practice stops long before. */
    private static final int MOST_PORTIONS = 100;

    private Extraction() {}

    /**
     * D from the concentrations in both layers of one equilibrated contact.
     *
     * @param organicConcentration any unit, 0 or more
     * @param aqueousConcentration same unit, above 0
     * @throws IllegalArgumentException if out of range
     */
    public static double distributionRatio(double organicConcentration, double aqueousConcentration) {
        return Require.notNegative(organicConcentration, "organic concentration")
                / Require.positive(aqueousConcentration, "aqueous concentration");
    }

    /**
     * D from the masses in two successive extracts of equal volume, D = (m₁/m₂ − 1)·Va/Vo. Needs no assay of the aqueous layer.
     *
     * @param firstMass m₁, any unit, more than {@code secondMass}
     * @param secondMass m₂, same unit, above 0
     * @param organicMillilitres Vo, each portion, mL, above 0
     * @param aqueousMillilitres Va, mL, above 0
     * @throws IllegalArgumentException if out of range: a second extract as rich as the first has no D
     */
    public static double distributionRatioFromSuccessiveExtracts(
            double firstMass, double secondMass, double organicMillilitres, double aqueousMillilitres) {
        Require.positive(secondMass, "second extract");
        double excess = Require.positive(firstMass / secondMass - 1, "first over second extract less 1");
        return excess
                * Require.positive(aqueousMillilitres, "aqueous volume")
                / Require.positive(organicMillilitres, "organic volume");
    }

    /**
     * Share left in the aqueous layer after n equal portions, q = (1 + D·Vo/Va)^(−n).
     *
     * @param distributionRatio D, 0 or more
     * @param organicMillilitres Vo, each portion, mL, 0 or more
     * @param aqueousMillilitres Va, mL, above 0
     * @param portions n, 1 or more
     * @return 0 to 1
     * @throws IllegalArgumentException if out of range
     */
    public static double fractionLeft(
            double distributionRatio, double organicMillilitres, double aqueousMillilitres, int portions) {
        double factor = factor(distributionRatio, organicMillilitres, aqueousMillilitres);
        return Math.pow(1 + factor, -Require.atLeastOne(portions, "portions"));
    }

    /**
     * Share left when a total volume is used in ever more, ever smaller portions, exp(−D·V/Va): what no split can beat.
     *
     * @param distributionRatio D, 0 or more
     * @param totalOrganicMillilitres V, all portions together, mL, 0 or more
     * @param aqueousMillilitres Va, mL, above 0
     * @return 0 to 1
     * @throws IllegalArgumentException if out of range
     */
    public static double fractionLeftAtTheLimit(
            double distributionRatio, double totalOrganicMillilitres, double aqueousMillilitres) {
        return Math.exp(-factor(distributionRatio, totalOrganicMillilitres, aqueousMillilitres));
    }

    /**
     * Fewest equal portions of a given size that leave no more than a share.
     *
     * @param distributionRatio D, 0 or more
     * @param organicMillilitres each portion, mL, 0 or more
     * @param aqueousMillilitres mL, above 0
     * @param largestFractionLeft share allowed to stay, above 0 and below 1
     * @return 1 to 100; empty where more would be needed
     * @throws IllegalArgumentException if out of range
     */
    public static OptionalInt portionsNeeded(
            double distributionRatio,
            double organicMillilitres,
            double aqueousMillilitres,
            double largestFractionLeft) {
        if (!(largestFractionLeft > 0 && largestFractionLeft < 1)) {
            throw new IllegalArgumentException("share allowed to stay: " + largestFractionLeft);
        }
        for (int n = 1; n <= MOST_PORTIONS; n++) {
            if (fractionLeft(distributionRatio, organicMillilitres, aqueousMillilitres, n) <= largestFractionLeft) {
                return OptionalInt.of(n);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Fewest equal portions of a fixed total volume after which one portion more would gain less than a share of the substance.
     *
     * <p>Equal portions are the best split of a fixed volume; more of them always gain, but ever less.
     *
     * @param distributionRatio D, 0 or more
     * @param totalOrganicMillilitres mL, 0 or more
     * @param aqueousMillilitres mL, above 0
     * @param smallestGainFraction gain that is still worth a portion, above 0, for example 0.01
     * @return 1 to 100
     * @throws IllegalArgumentException if out of range
     */
    public static int bestSplit(
            double distributionRatio,
            double totalOrganicMillilitres,
            double aqueousMillilitres,
            double smallestGainFraction) {
        Require.positive(smallestGainFraction, "smallest gain");
        double left = fractionLeft(distributionRatio, totalOrganicMillilitres, aqueousMillilitres, 1);
        for (int n = 1; n < MOST_PORTIONS; n++) {
            double next = fractionLeft(distributionRatio, totalOrganicMillilitres / (n + 1), aqueousMillilitres, n + 1);
            if (left - next < smallestGainFraction) {
                return n;
            }
            left = next;
        }
        return MOST_PORTIONS;
    }

    /**
     * What n further portions would take from a layer, gain = m·(1 − (1 + D·VE/Vl)^(−n)).
     *
     * @param massGrams m in the layer, g, 0 or more
     * @param distributionRatio D, 0 or more
     * @param portionMillilitres VE, mL, 0 or more
     * @param layerMillilitres Vl, mL, above 0
     * @param portions n, 1 or more
     * @return g
     * @throws IllegalArgumentException if out of range
     */
    public static double gainGrams(
            double massGrams,
            double distributionRatio,
            double portionMillilitres,
            double layerMillilitres,
            int portions) {
        return Require.notNegative(massGrams, "mass")
                * (1 - fractionLeft(distributionRatio, portionMillilitres, layerMillilitres, portions));
    }

    /** The layer that goes on to the next contact. */
    public enum Carried {
        /** The organic layer goes on, as in washing. */
        ORGANIC,
        /** The aqueous layer goes on, as in extracting. */
        AQUEOUS
    }

    /**
     * One contact of a chain.
     *
     * @param distributionRatio D at this contact's pH and salt, 0 or more
     * @param organicMillilitres organic layer after mutual saturation, mL, above 0
     * @param aqueousMillilitres aqueous layer after mutual saturation, mL, above 0
     * @param carried the layer that goes on; the other is set aside
     */
    public record Contact(
            double distributionRatio, double organicMillilitres, double aqueousMillilitres, Carried carried) {
        /** Checks the numbers. */
        public Contact {
            Require.notNegative(distributionRatio, "distribution ratio");
            Require.positive(organicMillilitres, "organic volume");
            Require.positive(aqueousMillilitres, "aqueous volume");
        }

        /** Share in the aqueous layer, q = 1/(1 + D·Vo/Va). */
        public double aqueousFraction() {
            return 1 / (1 + distributionRatio * organicMillilitres / aqueousMillilitres);
        }
    }

    /**
     * What one contact of a chain leaves in its two layers.
     *
     * @param organicAmount unit of the amount put in
     * @param aqueousAmount unit of the amount put in
     */
    public record Split(double organicAmount, double aqueousAmount) {}

    /**
     * Follows an amount through contacts; each shares out what the layer carried on from the one before brings, the other layer being fresh.
     *
     * @param amount any unit, 0 or more
     * @param contacts in order
     * @return one split per contact
     * @throws IllegalArgumentException if the amount is negative
     */
    public static List<Split> chain(double amount, List<Contact> contacts) {
        double carried = Require.notNegative(amount, "amount");
        List<Split> splits = new ArrayList<>();
        for (Contact contact : contacts) {
            double aqueous = carried * contact.aqueousFraction();
            Split split = new Split(carried - aqueous, aqueous);
            splits.add(split);
            carried = contact.carried() == Carried.ORGANIC ? split.organicAmount() : split.aqueousAmount();
        }
        return List.copyOf(splits);
    }

    private static double factor(double distributionRatio, double organicMillilitres, double aqueousMillilitres) {
        return Require.notNegative(distributionRatio, "distribution ratio")
                * Require.notNegative(organicMillilitres, "organic volume")
                / Require.positive(aqueousMillilitres, "aqueous volume");
    }
}
