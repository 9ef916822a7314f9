package workuptally.tally.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Masses;
import workuptally.tally.layers.PhaseDensities;

/**
 * What to expect of a run that is only planned. Every figure is an estimate from planned amounts and reference values, never data; contacts
 * and gas stand with the contacts of the run and with {@link WorkupEvidence#reactions}.
 *
 * @param weighings what to weigh or measure out, in order of the Charges table
 * @param products theory and expected mass of each product
 * @param steps what to expect of each step, in order
 * @param layers each portion that the steps give, in order; a label for each
 * @param waste expected mass of terminal layers by suggested stream
 */
public record Plan(
        List<Weighing> weighings,
        List<ExpectedProduct> products,
        List<PlannedStep> steps,
        List<ExpectedLayer> layers,
        List<ExpectedWaste> waste) {
    /** Copies the lists. */
    public Plan {
        weighings = List.copyOf(weighings);
        products = List.copyOf(products);
        steps = List.copyOf(steps);
        layers = List.copyOf(layers);
        waste = List.copyOf(waste);
    }

    /**
     * A material to weigh or measure out.
     *
     * @param material name as typed
     * @param role what it is for; empty if not stated
     * @param massGrams planned mass, g
     * @param volumeMillilitres planned volume, mL
     * @param amountMillimoles planned amount, mmol
     * @param tolerancePercent how close to the plan is close enough, %; what was weighed is entered, not the plan
     */
    public record Weighing(
            String material,
            String role,
            OptionalDouble massGrams,
            OptionalDouble volumeMillilitres,
            OptionalDouble amountMillimoles,
            double tolerancePercent) {
        /** The tolerance as mass, g. */
        public OptionalDouble toleranceGrams() {
            return part(massGrams);
        }

        /** The tolerance as volume, mL. */
        public OptionalDouble toleranceMillilitres() {
            return part(volumeMillilitres);
        }

        private OptionalDouble part(OptionalDouble whole) {
            return whole.isPresent()
                    ? OptionalDouble.of(whole.getAsDouble() * tolerancePercent / 100)
                    : OptionalDouble.empty();
        }
    }

    /**
     * A product of the plan.
     *
     * @param product name
     * @param theoryGrams theory, g
     * @param theoryMillimoles theory, mmol
     * @param expectedGrams theory times planned yield, g; empty without a planned yield
     */
    public record ExpectedProduct(
            String product, double theoryGrams, double theoryMillimoles, OptionalDouble expectedGrams) {}

    /**
     * What to expect of a step.
     *
     * @param step the step
     * @param densities densities of the two phases; empty where the step is no contact or nothing is known
     * @param drying drying agent; empty for other steps
     * @param splits how the volume of an extraction is best divided, one for each wanted product whose distribution is known
     */
    public record PlannedStep(
            Step step, Optional<PhaseDensities> densities, Optional<DryingNeed> drying, List<ExtractionSplit> splits) {
        /** Copies the list. */
        public PlannedStep {
            splits = List.copyOf(splits);
        }
    }

    /**
     * Drying agent for an organic layer.
     *
     * @param agent name in the reference data
     * @param waterGrams water to bind, g
     * @param assumption what that rests on, in words
     * @param leastGrams agent at least, g: 1.5 times the water over the high end of its practical uptake
     * @param mostGrams agent at most, g: twice the water over the low end of its practical uptake
     */
    public record DryingNeed(String agent, double waterGrams, String assumption, double leastGrams, double mostGrams) {}

    /**
     * A portion that a step will give.
     *
     * @param label label
     * @param step the step that gives it
     * @param phase phase, if the step tells
     * @param terminal true where no later step consumes it
     * @param volumeMillilitres volume, mL: liquids of the mixture, volumes added; empty where not followed
     * @param massGrams mass, g
     * @param grams solvents, water and salts by full name, g, the largest first; empty where not followed
     * @param mayHold full names of what a portion that is not followed may hold of what its step takes, the largest first; else empty
     * @param streamName stream that the make-up suggests; empty for portions that go on
     * @param why what suggests it
     */
    public record ExpectedLayer(
            String label,
            Step step,
            Optional<Layer.Phase> phase,
            boolean terminal,
            OptionalDouble volumeMillilitres,
            OptionalDouble massGrams,
            Map<String, Double> grams,
            List<String> mayHold,
            String streamName,
            String why) {
        /** Copies the map in its order, and the list. */
        public ExpectedLayer {
            grams = Masses.copyOf(grams);
            mayHold = List.copyOf(mayHold);
        }

        /** Names of what it holds or may hold, the largest first. */
        public List<String> substances() {
            return grams.isEmpty() ? mayHold : List.copyOf(grams.keySet());
        }
    }

    /** What may be left of what went in wherever its portions go: substrates and reagents, in order of the table. */
    public static List<Charge> leftOver(Run run) {
        return run.charges().stream()
                .filter(c -> c.role()
                        .filter(r -> r == Charge.Role.SUBSTRATE || r == Charge.Role.REAGENT)
                        .isPresent())
                .toList();
    }

    /**
     * Waste to expect.
     *
     * @param streamName stream that the make-up suggests
     * @param massGrams mass, g
     * @param volumeMillilitres volume, mL
     */
    public record ExpectedWaste(String streamName, double massGrams, double volumeMillilitres) {}
}
