package workuptally.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Drying;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.DryingAgent;

/** Drying of organic layers: water to bind against the agent, and the product that the filtered cake holds. Estimates, as ranges. */
final class DryingAccount {
    private final RunTally tally;
    private final Substances substances;
    private final CakeContents cakeContents;

    private DryingAccount(RunTally tally, Substances substances, LayerFlow flow) {
        this.tally = tally;
        this.substances = substances;
        this.cakeContents = new CakeContents(tally.run(), substances, LayerGraph.of(tally.run()), flow);
    }

    /** Every drying step with a weighed, listed agent, over a layer that holds water. */
    static List<DriedLayer> of(RunTally tally, Substances substances, LayerFlow flow) {
        return new DryingAccount(tally, substances, flow).list();
    }

    private List<DriedLayer> list() {
        List<DryingCake> cakes = cakeContents.of(tally.layers(), tally.lots());
        List<DriedLayer> dried = new ArrayList<>();
        for (Step step : tally.run().orderedSteps()) {
            boolean dries = step.operation().filter(o -> o == Operation.DRY).isPresent();
            Optional<DryingAgent> agent = dries ? substances.dryingAgent(step.material()) : Optional.empty();
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

    private static DriedLayer dried(
            Step step, DryingAgent agent, double agentGrams, double waterGrams, Optional<DryingCake> cake) {
        Optional<String> product =
                cake.flatMap(c -> c.productGramsInSolution().keySet().stream().findFirst());
        Optional<Drying.Range> held = cake.flatMap(c -> product.flatMap(c::productGrams));
        return new DriedLayer(
                step,
                agent.name(),
                agentGrams,
                waterGrams,
                agent.practicalUptakeHighGramsPerGram(),
                cake.map(DryingCake::label).orElse(""),
                held.map(h -> OptionalDouble.of(h.low())).orElse(OptionalDouble.empty()),
                held.map(h -> OptionalDouble.of(h.high())).orElse(OptionalDouble.empty()),
                cake.filter(DryingCake::rinsed).isPresent(),
                product.orElse(""));
    }
}
