package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import workuptally.chemistry.Drying;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;

/**
 * The drying cakes of a run, and the water that a drying step has to bind. The closure, the solvent account and the notes on drying all
 * ask here, so that one cake holds the same for each of them. Estimates, never data.
 *
 * <p>A cake carries the agent of the steps before it back to the last cake that was filtered off, and at most the water that saturates the
 * solvents of the layer plus the drops that no brine wash took out ({@link Drying#waterToBindGrams}), no more than its agent can bind as
 * its highest hydrate. Where the amount of a solvent is not known, neither is the strength of the solution on a cake: what product it holds
 * is then not estimated.
 */
public final class CakeContents {
    private static final String BRINE = "brine";

    private final Run run;
    private final Substances substances;
    private final LayerGraph graph;
    private final LayerFlow flow;
    private final List<Step> steps;
    private final boolean solventsKnown;

    /** With the charges of the run, whose solvents dilute what a cake holds. */
    public CakeContents(Run run, Substances substances, LayerGraph graph, LayerFlow flow, List<ChargeAmount> amounts) {
        this.solventsKnown = amounts.stream()
                        .filter(a -> a.isSolvent()
                                || substances.isOrganicSolvent(a.charge().material()))
                        .allMatch(a -> a.massGrams().isPresent())
                && run.steps().stream()
                        .filter(s -> substances.isOrganicSolvent(s.added().material()))
                        .allMatch(CakeContents::isMeasured);
        this.run = run;
        this.substances = substances;
        this.graph = graph;
        this.flow = flow;
        this.steps = run.orderedSteps();
    }

    /** Every weighed solid that a step filtered off a layer with a weighed, listed drying agent in it, in order of the layers. */
    public List<DryingCake> of(List<LayerTally> layers, List<LotTally> lots) {
        List<DryingCake> cakes = new ArrayList<>();
        for (LayerTally layer : layers) {
            if (layer.endsWorkup()
                    && isSolid(layer.label())
                    && layer.massGrams().isPresent()) {
                graph.givenBy(layer.label())
                        .flatMap(filter -> cake(layer, filter, lots))
                        .ifPresent(cakes::add);
            }
        }
        return cakes;
    }

    private static boolean isMeasured(Step step) {
        boolean byVolume = step.added().volumeMillilitres().entered().isPresent()
                && !step.added().densityGramsPerMillilitre().isUnreadable();
        return byVolume || step.added().massGrams().entered().isPresent();
    }

    private Optional<DryingCake> cake(LayerTally layer, Step filter, List<LotTally> lots) {
        List<Step> drying = dryingStepsOf(filter);
        if (drying.isEmpty()) {
            return Optional.empty();
        }
        boolean stated =
                layer.entry().filter(entry -> !entry.composition().isEmpty()).isPresent();
        return Optional.of(new DryingCake(
                layer.label(),
                drying,
                layer.massGrams().map(MeasuredValue::value).orElseThrow(),
                drying.stream().mapToDouble(s -> agentGrams(s).orElse(0.0)).sum(),
                drying.stream().mapToDouble(this::waterTakenUpGrams).max().orElse(0),
                organic(layerOf(filter)),
                solventsKnown ? productsOf(filter, lots) : Map.of(),
                isRinsed(layer.label(), filter) ? substances.value(Threshold.LEFT_AFTER_RINSE) : 1,
                stated ? Optional.of(organic(flow.portion(layer.label()))) : Optional.empty()));
    }

    /** Water to bind in a drying step, g; 0 where no organic solvent is known to be there. */
    public double waterToBindGrams(Step drying) {
        double drops = assumesDrops(drying) ? substances.value(Threshold.ENTRAINED_WATER) : 0;
        double water = 0;
        for (Map.Entry<String, Ingredients.Part> part :
                organic(layerOf(drying)).parts().entrySet()) {
            double massPercent = substances
                    .solvent(part.getKey())
                    .map(Solvent::waterMixing)
                    .map(mixing -> mixing.waterInSolventMassPercent().orElse(0))
                    .orElse(0.0);
            water += Drying.waterToBindGrams(
                    part.getValue().grams(), part.getValue().millilitres(), massPercent, drops);
        }
        return water;
    }

    /** True where drops of water are assumed in the layer beside what saturates its solvent, since no brine wash went before. */
    public boolean assumesDrops(Step drying) {
        return !washedWithBrine(drying);
    }

    /** Dry agent of a step, g; empty for a step that adds no listed agent or none that was weighed. */
    public Optional<Double> agentGrams(Step step) {
        boolean agent = substances.dryingAgent(step.added().material()).isPresent();
        return step.added()
                .massGrams()
                .entered()
                .filter(grams -> agent)
                .map(Entered::value)
                .map(grams -> grams * step.added().portionCount());
    }

    private double waterTakenUpGrams(Step drying) {
        double most = substances
                .dryingAgent(drying.added().material())
                .map(agent -> agent.uptake().theoreticalGramsPerGram()
                        * agentGrams(drying).orElse(0.0))
                .orElse(0.0);
        return Math.min(waterToBindGrams(drying), most);
    }

    /** The step itself and those before it whose agent is still in the layer. */
    private List<Step> dryingStepsOf(Step filter) {
        List<Step> before =
                before(filter, step -> step != filter && step.gives().stream().anyMatch(this::isSolid));
        return steps.stream()
                .filter(step -> before.stream().anyMatch(b -> b == step))
                .filter(step -> agentGrams(step).isPresent())
                .toList();
    }

    /** True where the last wash before the step was brine. */
    private boolean washedWithBrine(Step drying) {
        Predicate<Step> washed =
                step -> step != drying && isAqueous(step.added().material());
        return before(drying, washed).stream()
                .filter(washed)
                .flatMap(step -> substances.wash(step.added().material()).stream())
                .flatMap(wash -> wash.solute().stream())
                .anyMatch(solute -> substances
                        .wash(BRINE)
                        .flatMap(Wash::solute)
                        .filter(solute::equals)
                        .isPresent());
    }

    private boolean isAqueous(String material) {
        boolean water = substances.solvent(material).isPresent() && !substances.isOrganicSolvent(material);
        return water || substances.wash(material).isPresent();
    }

    /** A step and those that its portions came from, not going beyond a step that ends the search. */
    private List<Step> before(Step last, Predicate<Step> ends) {
        List<Step> steps = new ArrayList<>();
        List<Step> open = new ArrayList<>(List.of(last));
        while (!open.isEmpty()) {
            Step step = open.remove(open.size() - 1);
            if (steps.stream().noneMatch(s -> s == step)) {
                steps.add(step);
                if (!ends.test(step)) {
                    step.from().forEach(label -> giverBefore(step, label).ifPresent(open::add));
                }
            }
        }
        return steps;
    }

    /** The last step before another that gives a label, since a label may go on through several steps. */
    private Optional<Step> giverBefore(Step later, String label) {
        return steps.stream()
                .takeWhile(step -> step != later)
                .filter(step -> step.gives().contains(label))
                .reduce((first, second) -> second);
    }

    private Ingredients layerOf(Step step) {
        return step.from().stream().map(flow::portion).reduce(Ingredients.EMPTY, Ingredients::plus);
    }

    private Ingredients organic(Ingredients mixture) {
        return mixture.share(name -> substances.isOrganicSolvent(name) ? 1 : 0);
    }

    /** What the lots made of the filtrate hold of their products; a lot that does not say where it is from counts with them. */
    private Map<String, Double> productsOf(Step filter, List<LotTally> lots) {
        Set<String> filtrate = downstream(filter);
        Map<String, Double> grams = new LinkedHashMap<>();
        for (LotTally lot : lots) {
            boolean origin = lot.lot().from().isEmpty()
                    && graph.givenBy(lot.lot().label()).isEmpty();
            boolean made = origin
                    || filtrate.contains(lot.lot().label())
                    || lot.lot().from().stream().anyMatch(filtrate::contains);
            if (lot.endsWorkup() && made) {
                String product = run.product(lot.product()).map(Product::name).orElse(lot.product());
                lot.pureGrams().ifPresent(pure -> grams.merge(product, pure.value(), Double::sum));
            }
        }
        return grams;
    }

    private boolean isRinsed(String cake, Step filter) {
        Set<String> after = downstream(filter);
        return steps.stream()
                .dropWhile(step -> step != filter)
                .anyMatch(step ->
                        step.operation().filter(o -> o == Operation.RINSE).isPresent()
                                && step.from().stream().anyMatch(label -> label.equals(cake) || after.contains(label)));
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

    private boolean isSolid(String label) {
        return run.layer(label)
                .flatMap(Layer::phase)
                .filter(p -> p == Layer.Phase.SOLID)
                .isPresent();
    }
}
