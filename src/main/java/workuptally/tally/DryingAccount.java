package workuptally.tally;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.Drying;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.DryingAgent;
import workuptally.reference.Solvent;
import workuptally.reference.Wash;

/** Drying of organic layers: water to bind against the agent, and the solution that a filtered cake holds. Estimates, as ranges. */
final class DryingAccount {
    private final RunTally tally;
    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;
    private final LayerFlow flow;

    DryingAccount(RunTally tally, Substances substances, LayerFlow flow) {
        this.tally = tally;
        this.run = tally.run();
        this.substances = substances;
        this.graph = LayerGraph.of(run);
        this.flow = flow;
    }

    /** Every drying step with a weighed, listed agent. */
    static List<DriedLayer> of(RunTally tally, Substances substances, LayerFlow flow) {
        return new DryingAccount(tally, substances, flow).list();
    }

    private List<DriedLayer> list() {
        List<DriedLayer> dried = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            boolean dries = step.operation().filter(o -> o == Operation.DRY).isPresent();
            Optional<DryingAgent> agent = dries ? substances.dryingAgent(step.material()) : Optional.empty();
            Optional<Double> grams =
                    step.massGrams().entered().map(Entered::value).map(g -> g * step.portionCount());
            if (agent.isPresent() && grams.isPresent() && !step.from().isEmpty()) {
                dried(step, agent.get(), grams.get()).ifPresent(dried::add);
            }
        }
        return dried;
    }

    private Optional<DriedLayer> dried(Step step, DryingAgent agent, double agentGrams) {
        Mixture layer = layer(step);
        double water = waterGrams(layer, step);
        if (water <= 0) {
            return Optional.empty();
        }
        Set<String> downstream = downstream(step);
        Optional<LayerTally> cake = downstream.stream()
                .flatMap(l -> tally.layer(l).stream())
                .filter(l -> l.phase().filter(p -> p == Layer.Phase.SOLID).isPresent())
                .findFirst();
        Optional<LotTally> lot = tally.lots().stream()
                .filter(LotTally::endsWorkup)
                .filter(l -> l.lot().from().stream().anyMatch(downstream::contains))
                .findFirst();
        boolean rinsed = run.orderedSteps().stream()
                .anyMatch(s -> s.operation().filter(o -> o == Operation.RINSE).isPresent()
                        && s.from().stream().anyMatch(downstream::contains));
        Optional<Drying.Range> held = held(cake, lot, layer, agentGrams, water, rinsed);
        return Optional.of(new DriedLayer(
                step,
                agent.name(),
                agentGrams,
                water,
                agent.practicalUptakeHighGramsPerGram(),
                cake.map(LayerTally::label).orElse(""),
                held.map(h -> OptionalDouble.of(h.low())).orElse(OptionalDouble.empty()),
                held.map(h -> OptionalDouble.of(h.high())).orElse(OptionalDouble.empty()),
                rinsed,
                lot.map(l -> l.lot().product()).orElse("")));
    }

    private Mixture layer(Step step) {
        Mixture layer = Mixture.EMPTY;
        for (String label : step.from()) {
            layer = layer.plus(flow.portion(label));
        }
        return layer;
    }

    /** Water to bind in a drying step, g; 0 where no organic solvent is known to be there. */
    double waterToBindGrams(Step step) {
        return waterGrams(layer(step), step);
    }

    private double waterGrams(Mixture layer, Step step) {
        double water = 0;
        double organicMillilitres = 0;
        Drying.Before before = washedWithBrine(step) ? Drying.Before.BRINE : Drying.Before.NO_BRINE;
        for (Map.Entry<String, Mixture.Part> part : layer.parts().entrySet()) {
            if (substances.isOrganicSolvent(part.getKey())) {
                Solvent solvent = substances.solvent(part.getKey()).orElseThrow();
                double percent =
                        solvent.waterMixing().waterInSolventMassPercent().orElse(0);
                water += Drying.waterToBindGrams(
                        part.getValue().grams(), part.getValue().millilitres(), percent, before);
                organicMillilitres += part.getValue().millilitres();
            }
        }
        return organicMillilitres == 0 ? 0 : water;
    }

    private boolean washedWithBrine(Step step) {
        return step.from().stream()
                .flatMap(l -> graph.givenBy(l).stream())
                .map(Step::material)
                .flatMap(m -> substances.wash(m).stream())
                .anyMatch(w -> isBrine(w));
    }

    private static boolean isBrine(Wash wash) {
        return wash.formula().equals("NaCl");
    }

    private Set<String> downstream(Step step) {
        Set<String> seen = new LinkedHashSet<>(step.from());
        List<String> open = new ArrayList<>(step.gives());
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (seen.add(next) && run.lot(next).isEmpty()) {
                open.addAll(graph.children(next));
            }
        }
        return seen;
    }

    private static Optional<Drying.Range> held(
            Optional<LayerTally> cake,
            Optional<LotTally> lot,
            Mixture layer,
            double agentGrams,
            double waterGrams,
            boolean rinsed) {
        Optional<Double> cakeGrams = cake.flatMap(LayerTally::massGrams).map(MeasuredValue::value);
        Optional<Double> pure = lot.flatMap(LotTally::pureGrams).map(MeasuredValue::value);
        if (cakeGrams.isEmpty() || pure.isEmpty()) {
            return Optional.empty();
        }
        double fraction = pure.get() / (layer.totalGrams() + pure.get());
        return Optional.of(Drying.productOnCakeGrams(
                cakeGrams.get(), agentGrams, waterGrams, fraction, rinsed ? Drying.LEFT_AFTER_RINSE_FRACTION : 1));
    }
}
