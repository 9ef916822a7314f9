package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Drying;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.model.SubstanceName;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.DryingAgent;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.bench.Plan.DryingNeed;
import workuptally.tally.bench.Plan.ExpectedLayer;
import workuptally.tally.bench.Plan.ExpectedProduct;
import workuptally.tally.bench.Plan.ExpectedWaste;
import workuptally.tally.bench.Plan.PlannedStep;
import workuptally.tally.bench.Plan.Weighing;
import workuptally.tally.layers.CakeContents;
import workuptally.tally.layers.IdentityAccount;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerMakeUpAccount;
import workuptally.tally.waste.PortionClasses;
import workuptally.tally.waste.WasteAccount;
import workuptally.tally.waste.WasteLine;

/** Turns the entries of a planned run into what its bench work can expect. */
public final class PlanAccount {

    private static final double LEAST_GRAMS = 1e-6;

    private final Run run;
    private final List<ChargeAmount> amounts;
    private final Optional<Theory> theory;
    private final Limits limits;
    private final Substances substances;
    private final LayerFlow flow;
    private final IdentityAccount identities;
    private final CakeContents drying;
    private final WasteAccount waste;
    private final LayerMakeUpAccount names;
    private final IngredientAccount materials;
    private final ExtractionSplitAccount splits;

    public PlanAccount(
            Run run,
            List<ChargeAmount> amounts,
            Optional<Theory> theory,
            Limits limits,
            Substances substances,
            LayerFlow flow,
            PortionClasses classes) {
        this.run = run;
        this.amounts = amounts;
        this.theory = theory;
        this.limits = limits;
        this.substances = substances;
        this.flow = flow;
        this.identities = new IdentityAccount(run, substances, flow);
        this.drying = new CakeContents(run, substances, LayerGraph.of(run), flow, amounts);
        this.waste = new WasteAccount(run, limits, substances, classes);
        this.names = new LayerMakeUpAccount(substances, flow);
        this.materials = new IngredientAccount(substances);
        this.splits = new ExtractionSplitAccount(run, substances, flow);
    }

    /** What the planned entries lead to. */
    public Plan plan() {
        List<ExpectedLayer> layers = layers();
        return new Plan(weighings(), products(), steps(), layers, waste(layers));
    }

    private List<Weighing> weighings() {
        return amounts.stream()
                .map(a -> new Weighing(
                        a.charge().material(),
                        a.charge().role().map(r -> SubstanceName.key(r.name())).orElse(""),
                        number(a.massGrams()),
                        number(a.volumeMillilitres()),
                        number(a.amountMillimoles()),
                        limits.value(Limit.WEIGHING_TOLERANCE)))
                .toList();
    }

    private static OptionalDouble number(Optional<MeasuredValue> value) {
        return value.map(v -> OptionalDouble.of(v.value())).orElse(OptionalDouble.empty());
    }

    private List<ExpectedProduct> products() {
        return theory.stream()
                .flatMap(t -> t.products().stream())
                .map(p -> new ExpectedProduct(
                        p.product().name(),
                        p.massGrams().value(),
                        p.amountMillimoles().value(),
                        p.product()
                                .plannedYieldPercent()
                                .entered()
                                .map(Entered::value)
                                .map(y -> OptionalDouble.of(p.massGrams().value() * y / 100))
                                .orElse(OptionalDouble.empty())))
                .toList();
    }

    private List<PlannedStep> steps() {
        return run.orderedSteps().stream()
                .map(s -> new PlannedStep(s, identities.densities(s, amounts), drying(s), splits.of(s)))
                .toList();
    }

    private Optional<DryingNeed> drying(Step step) {
        Optional<DryingAgent> agent = isOperation(step, Operation.DRY)
                ? substances.dryingAgent(step.added().material())
                : Optional.empty();
        double water = agent.isPresent() ? drying.waterToBindGrams(step) : 0;
        return water <= 0
                ? Optional.empty()
                : agent.map(a -> new DryingNeed(
                        a.name(),
                        water,
                        DriedLayer.assumption(drying.assumesDrops(step)),
                        Drying.agentGrams(
                                water, a.uptake().practicalHighGramsPerGram(), substances.value(Threshold.AGENT_LEAST)),
                        Drying.agentGrams(
                                water, a.uptake().practicalLowGramsPerGram(), substances.value(Threshold.AGENT_MOST))));
    }

    private static boolean isOperation(Step step, Operation operation) {
        return step.operation().filter(o -> o == operation).isPresent();
    }

    private List<ExpectedLayer> layers() {
        Map<String, ExpectedLayer> layers = new LinkedHashMap<>();
        for (Step step : run.orderedSteps()) {
            for (String label : step.gives()) {
                if (!label.equals(Step.REACTION_MIXTURE)) {
                    layers.put(label, layer(label, step));
                }
            }
        }
        return List.copyOf(layers.values());
    }

    /** What a filter keeps and what a still takes over is not followed in a plan: which label is which only the bench can tell. */
    private ExpectedLayer layer(String label, Step step) {
        boolean followed = !step.given().other().contains(label);
        Ingredients mixture =
                followed ? withReactants(flow.withoutUndissolvedAgents(flow.portion(label))) : Ingredients.EMPTY;
        Optional<Layer.Phase> phase = phase(label, step);
        boolean terminal = run.orderedSteps().stream()
                .noneMatch(s -> s.from().contains(label) && !isOperation(s, Operation.SAMPLE));
        Optional<WasteLine> line = terminal && mixture.totalGrams() > 0
                ? Optional.of(waste.expected(label, phase, mixture))
                : Optional.empty();
        return new ExpectedLayer(
                label,
                step,
                phase,
                terminal,
                mixture.millilitres() > 0 ? OptionalDouble.of(mixture.millilitres()) : OptionalDouble.empty(),
                mixture.totalGrams() > 0 ? OptionalDouble.of(mixture.totalGrams()) : OptionalDouble.empty(),
                named(mixture),
                followed ? List.of() : taken(step),
                line.map(WasteLine::streamName).orElse(""),
                line.map(WasteLine::why).orElse(""));
    }

    /** Full names of what a step takes, the largest first; a drying agent stays in the filter. */
    private List<String> taken(Step step) {
        Ingredients mixture = flow.taken(step);
        if (!isOperation(step, Operation.FILTER)) {
            mixture = flow.withoutUndissolvedAgents(mixture);
        }
        return List.copyOf(named(mixture).keySet());
    }

    /** Organic reactants, which the layer map follows by their volume alone, with their mass, so that mass and volume are of the same things. */
    private Ingredients withReactants(Ingredients mixture) {
        double reactants = materials.reactantMillilitres(mixture);
        double charged = 0;
        double grams = 0;
        for (ChargeAmount amount : amounts) {
            double volume = materials.reactantMillilitres(materials.of(amount));
            charged += volume;
            grams += volume > 0 ? amount.massGrams().map(MeasuredValue::value).orElse(0.0) : 0;
        }
        return charged > 0 && reactants > 0
                ? materials
                        .withoutReactants(mixture)
                        .plus(Ingredients.of(IngredientAccount.REACTANTS, grams * reactants / charged, reactants))
                : mixture;
    }

    private Optional<Layer.Phase> phase(String label, Step step) {
        if (step.given().organic().contains(label)) {
            return Optional.of(Layer.Phase.ORGANIC);
        }
        if (step.given().aqueous().contains(label)) {
            return Optional.of(Layer.Phase.AQUEOUS);
        }
        return run.layer(label).flatMap(Layer::phase);
    }

    private Map<String, Double> named(Ingredients mixture) {
        Map<String, Double> sum = new LinkedHashMap<>();
        mixture.parts().forEach((name, part) -> sum.merge(names.fullName(name), part.grams(), Double::sum));
        Map<String, Double> largestFirst = new LinkedHashMap<>();
        sum.entrySet().stream()
                .filter(e -> e.getValue() > LEAST_GRAMS)
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(e -> largestFirst.put(e.getKey(), e.getValue()));
        return largestFirst;
    }

    private static List<ExpectedWaste> waste(List<ExpectedLayer> layers) {
        Map<String, ExpectedWaste> streams = new LinkedHashMap<>();
        for (ExpectedLayer layer : layers) {
            if (!layer.streamName().isEmpty()) {
                ExpectedWaste own = new ExpectedWaste(
                        layer.streamName(),
                        layer.massGrams().orElse(0),
                        layer.volumeMillilitres().orElse(0));
                streams.merge(
                        layer.streamName(),
                        own,
                        (a, b) -> new ExpectedWaste(
                                a.streamName(),
                                a.massGrams() + b.massGrams(),
                                a.volumeMillilitres() + b.volumeMillilitres()));
            }
        }
        return new ArrayList<>(streams.values());
    }
}
