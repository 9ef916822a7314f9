package workuptally.tally;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.balance.Closure;
import workuptally.tally.bench.DriedLayer;

/**
 * Product that the solution on a drying cake may hold, while no balance that counts it closes. An estimate: part of what the cake gained is
 * water.
 *
 * @param cake label of the cake
 * @param rinsed true where a rinse went over it
 * @param product product it would be
 * @param lowGrams least mass, g
 * @param highGrams most mass, g
 * @param theoryGrams theory of the product, g
 */
public record HeldOnCake(
        String cake, boolean rinsed, String product, double lowGrams, double highGrams, double theoryGrams) {

    /** One for each drying cake with a row in Layers; two portions of agent for one layer end on one cake. */
    public static List<HeldOnCake> of(RunTally tally) {
        List<HeldOnCake> held = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (DriedLayer dried : tally.evidence().dried()) {
            Optional<Double> theory = tally.theory().stream()
                    .flatMap(t -> t.products().stream())
                    .filter(p -> p.isOf(dried.product()))
                    .findFirst()
                    .map(ProductTheory::massGrams)
                    .map(mass -> mass.value());
            boolean closes = tally.closures().stream()
                    .filter(c -> c.counts(dried.product()))
                    .anyMatch(c -> c.verdict() == Closure.Verdict.CLOSES);
            if (!closes
                    && theory.isPresent()
                    && tally.run().layer(dried.cake()).isPresent()
                    && dried.productHighGrams().isPresent()
                    && seen.add(dried.cake())) {
                held.add(new HeldOnCake(
                        dried.cake(),
                        dried.rinsed(),
                        dried.product(),
                        dried.productLowGrams().getAsDouble(),
                        dried.productHighGrams().getAsDouble(),
                        theory.get()));
            }
        }
        return held;
    }

    /** Least share, % of theory. */
    public double lowPercent() {
        return 100 * lowGrams / theoryGrams;
    }

    /** Most share, % of theory. */
    public double highPercent() {
        return 100 * highGrams / theoryGrams;
    }
}
