package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Drying;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.substances.DryingAgent;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.CakeContents;
import workuptally.tally.layers.DryingCake;

/** Drying of organic layers: water to bind against the agent, and the product that the filtered cake holds. Estimates, as ranges. */
public final class DryingAccount {
    private final Run run;
    private final Substances substances;
    private final CakeContents cakeContents;

    private DryingAccount(Run run, Substances substances, CakeContents cakeContents) {
        this.run = run;
        this.substances = substances;
        this.cakeContents = cakeContents;
    }

    /** Every drying step with a weighed, listed agent, over a layer that holds water. */
    public static List<DriedLayer> of(
            Run run, Substances substances, CakeContents cakeContents, List<DryingCake> cakes) {
        return new DryingAccount(run, substances, cakeContents).list(cakes);
    }

    private List<DriedLayer> list(List<DryingCake> cakes) {
        List<DriedLayer> dried = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            boolean dries = step.operation().filter(o -> o == Operation.DRY).isPresent();
            Optional<DryingAgent> agent =
                    dries ? substances.dryingAgent(step.added().material()) : Optional.empty();
            Optional<Double> grams = cakeContents.agentGrams(step);
            double water = agent.isPresent() ? cakeContents.waterToBindGrams(step) : 0;
            if (water > 0 && grams.isPresent()) {
                dried.add(dried(step, agent.orElseThrow(), grams.get(), water, cakeOf(step, cakes)));
            }
        }
        return dried;
    }

    /** The cake that carries the agent of a step; of several portions of agent on one cake, the last step tells of it. */
    private static Optional<DryingCake> cakeOf(Step step, List<DryingCake> cakes) {
        return cakes.stream()
                .filter(cake -> cake.dryingSteps().get(cake.dryingSteps().size() - 1) == step)
                .findFirst();
    }

    private DriedLayer dried(
            Step step, DryingAgent agent, double agentGrams, double waterGrams, Optional<DryingCake> cake) {
        Optional<String> product =
                cake.flatMap(c -> c.productGramsInSolution().keySet().stream().findFirst());
        Optional<Drying.Range> held = cake.flatMap(c -> product.flatMap(c::productGrams));
        return new DriedLayer(
                step,
                agent.name(),
                agentGrams,
                waterGrams,
                cakeContents.assumesDrops(step),
                agent.uptake().practicalHighGramsPerGram(),
                cake.map(DryingCake::label).orElse(""),
                held.map(h -> OptionalDouble.of(h.low())).orElse(OptionalDouble.empty()),
                held.map(h -> OptionalDouble.of(h.high())).orElse(OptionalDouble.empty()),
                cake.filter(DryingCake::rinsed).isPresent(),
                product.orElse(""));
    }
}
