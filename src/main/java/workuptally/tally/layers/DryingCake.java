package workuptally.tally.layers;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.chemistry.Drying;
import workuptally.model.Step;
import workuptally.tally.amounts.Ingredients;

/**
 * What the filtered cake of a drying agent holds beside the agent: water that the agent took up, and solution. How the gain divides between
 * the two nobody measures, so the solution is a range; its middle serves where an account needs one figure.
 *
 * @param label label of the cake in Layers
 * @param dryingSteps steps whose agent is on it, in order
 * @param wetGrams cake as weighed, g
 * @param agentGrams dry agent, g
 * @param mostWaterGrams most water that the agent can have taken out of its layer, g
 * @param solvents organic solvents of the layer that was filtered
 * @param productGramsInSolution products that the filtrate gave, g by the name in Products, in order of the lots
 * @param leftFraction of the product that it held what a rinse left, 0 to 1; 1 where none went over it
 * @param stated organic solvents on the cake by a composition entered in Layers, if there is one
 */
public record DryingCake(
        String label,
        List<Step> dryingSteps,
        double wetGrams,
        double agentGrams,
        double mostWaterGrams,
        Ingredients solvents,
        Map<String, Double> productGramsInSolution,
        double leftFraction,
        Optional<Ingredients> stated) {
    /** Copies the collections. */
    public DryingCake {
        dryingSteps = List.copyOf(dryingSteps);
        productGramsInSolution = Collections.unmodifiableMap(new LinkedHashMap<>(productGramsInSolution));
    }

    /** True where a rinse went over it. */
    public boolean rinsed() {
        return leftFraction < 1;
    }

    /** Mass over the dry agent, g; not below 0. */
    public double gainGrams() {
        return Math.max(0, wetGrams - agentGrams);
    }

    /** Mass fraction of a product in the solution that was filtered, 0 to 1. */
    public double productFraction(String product) {
        double solutes = productGramsInSolution.values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        double solution = solvents.totalGrams() + solutes;
        return solution > 0 ? productGramsInSolution.getOrDefault(product, 0.0) / solution : 0;
    }

    /** A product on the cake, g; empty where the filtrate gave none or the cake gained nothing. */
    public Optional<Drying.Range> productGrams(String product) {
        double fraction = productFraction(product);
        return fraction > 0 && gainGrams() > 0
                ? Optional.of(Drying.productOnCakeGrams(wetGrams, agentGrams, mostWaterGrams, fraction, leftFraction))
                : Optional.empty();
    }

    /** Organic solvents on the cake: as stated, else the middle of the range of held solution without what is dissolved in it. */
    public Ingredients heldSolvents() {
        if (stated.isPresent()) {
            return stated.get();
        }
        double total = solvents.totalGrams();
        Drying.Range held = Drying.solutionOnCakeGrams(wetGrams, agentGrams, mostWaterGrams);
        double dissolved = productGramsInSolution.keySet().stream()
                .mapToDouble(this::productFraction)
                .sum();
        double grams = held.middle() * (1 - dissolved * leftFraction);
        return total > 0 ? solvents.share(n -> grams / total) : Ingredients.EMPTY;
    }
}
