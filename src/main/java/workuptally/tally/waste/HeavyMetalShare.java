package workuptally.tally.waste;

import java.util.List;
import java.util.Set;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.measure.MeasuredValue;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/**
 * The heavy metal that an organic liquid of a run can hold at most: all that was charged, as the element. A complex dissolves in organic
 * solvents, and what was charged as a salt may have become one.
 */
final class HeavyMetalShare {
    private final double grams;

    /** Of what was charged. */
    HeavyMetalShare(List<ChargeAmount> amounts, Substances substances) {
        double sum = 0;
        for (ChargeAmount amount : amounts) {
            Material material = substances.material(
                    amount.charge().material(), amount.charge().formula());
            for (Part part : material.parts()) {
                if (!part.heavyMetals().isEmpty()) {
                    sum += grams(amount, part, substances);
                }
            }
        }
        this.grams = sum;
    }

    /** By the formula; without one, or without an amount of substance, all of the mass. */
    private static double grams(ChargeAmount amount, Part part, Substances substances) {
        Set<String> metals = part.heavyMetals();
        double perMole = part.formula().stream()
                .flatMap(formula -> metals.stream()
                        .filter(symbol -> formula.count(symbol) > 0)
                        .map(symbol -> formula.count(symbol)
                                * substances.molarMassIn(symbol).orElse(0)))
                .mapToDouble(Double::doubleValue)
                .sum();
        return perMole > 0 && amount.amountMillimoles().isPresent()
                ? amount.amountMillimoles().get().value() / 1000 * perMole
                : amount.massGrams().map(MeasuredValue::value).orElse(0.0);
    }

    /** At most so much of a portion, mass %; 100 where the mass of the portion is not known. */
    double atMostPercent(double portionGrams) {
        return portionGrams > 0 ? Math.min(100, 100 * grams / portionGrams) : grams > 0 ? 100 : 0;
    }
}
