package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Extraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.AcidsAndBases;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Equivalents;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.PutIn;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.PartitionModel;
import workuptally.tally.layers.ProductInWater;

/**
 * Independent routes to the product in an aqueous layer: its assay, the charge balance after acidification, the partition at its pH.
 *
 * <p>The band of a partition figure is that of P and of a pH ± 0.1; the band of a charge balance that of 1 % in each strength.
 */
public final class RouteAccount {

    private final Run run;
    private final Limits limits;
    private final LayerGraph graph;
    private final Substances substances;
    private final AcidsAndBases acidsAndBases;
    private final IngredientAccount materials;
    private final MolarMassAccount molarMasses;
    private final List<ChargeAmount> amounts;
    private final List<Addition> additions;
    private final List<LayerTally> layers;
    private final Found found;
    private final ExtractionChain chain;

    public RouteAccount(
            Run run,
            Limits limits,
            LayerGraph graph,
            Substances substances,
            MolarMassAccount molarMasses,
            PutIn putIn,
            Portions portions) {
        this.run = run;
        this.limits = limits;
        this.graph = graph;
        this.substances = substances;
        this.acidsAndBases = new AcidsAndBases(run, substances);
        this.materials = new IngredientAccount(substances);
        this.molarMasses = molarMasses;
        this.amounts = putIn.charges();
        this.additions = putIn.additions();
        this.layers = portions.layers();
        this.found = portions.found();
        this.chain = new ExtractionChain(graph, materials, layers);
    }

    /** Routes for every terminal aqueous layer in which a wanted product was measured, where there are two or more. */
    public List<Route> list() {
        List<Route> all = new ArrayList<>();
        for (LayerTally layer : layers) {
            for (Content content : ProductInWater.of(layer, run)) {
                List<Route> routes = new ArrayList<>();
                routes.add(byAssay(layer, content));
                byChargeBalance(layer, content).ifPresent(routes::add);
                byPartition(layer, content).ifPresent(routes::add);
                if (routes.size() > 1) {
                    all.addAll(routes);
                }
            }
        }
        return all;
    }

    private Route byAssay(LayerTally layer, Content content) {
        MeasuredValue mass = content.massGrams().orElseThrow();
        double expanded = mass.expandedUncertainty(limits.value(Limit.COVERAGE_FACTOR));
        return new Route(
                layer.label(),
                content.substance(),
                Route.Way.ASSAY,
                mass.value(),
                mass.value() - expanded,
                mass.value() + expanded,
                Phrase.of("{}{}", content.evidence(), times(layer, content)));
    }

    /** What the assay is multiplied with, by its unit. */
    private String times(LayerTally layer, Content content) {
        Optional<Assay.Unit> unit = run.assays().stream()
                .filter(a -> a.sample().equals(layer.label()) && a.isOf(content.substance()))
                .findFirst()
                .flatMap(Assay::unit);
        return switch (unit.orElse(Assay.Unit.MILLIGRAMS_PER_MILLILITRE)) {
            case GRAMS, MILLIMOLES -> "";
            case MASS_PERCENT -> " × mass";
            default -> " × volume";
        };
    }

    /** n(A⁻) = n(strong base) − n(strong acid) over everything that reached the layer; needs an acid and a layer made by acidifying. */
    private Optional<Route> byChargeBalance(LayerTally layer, Content content) {
        Optional<Entered> pH = ProductInWater.pH(layer);
        if (product(content)
                        .partitioning()
                        .character()
                        .filter(c -> c == Product.Character.ACID)
                        .isEmpty()
                || pH.isEmpty()) {
            return Optional.empty();
        }
        if (comesFromOrganic(layer.label())) {
            return Optional.empty();
        }
        Set<Step> reached = stepsBefore(layer.label());
        if (reached.stream()
                .noneMatch(
                        s -> s.operation().filter(o -> o == Operation.ACIDIFY).isPresent())) {
            return Optional.empty();
        }
        Reached all = reached(reached);
        Equivalents sum = all.sum();
        OptionalDouble molarMass = molarMasses.of(content.substance());
        double salt = AcidBase.residualSaltMillimoles(sum.strongBase(), sum.strongAcid());
        double volume = layer.volumeMillilitres().orElseThrow().value();
        boolean clean = sum.isOfStrongAcidsAndBases();
        if (molarMass.isEmpty()
                || salt <= 0
                || !clean
                || !AcidBase.chargeBalanceHolds(salt, pH.get().value(), volume)) {
            return Optional.empty();
        }
        double gramsPerMillimole = molarMass.getAsDouble() / 1000;
        double half = limits.value(Limit.COVERAGE_FACTOR)
                * substances.value(Threshold.EQUIVALENT_STRENGTH)
                * Math.hypot(sum.strongBase(), sum.strongAcid());
        return Optional.of(new Route(
                layer.label(),
                content.substance(),
                Route.Way.CHARGE_BALANCE,
                salt * gramsPerMillimole,
                Math.max(0, salt - half) * gramsPerMillimole,
                (salt + half) * gramsPerMillimole,
                Phrase.of(
                        "{} strong base − {} strong acid = {} salt ({})",
                        Figure.decimals(sum.strongBase(), 1, "mmol"),
                        Figure.decimals(sum.strongAcid(), 1, "mmol"),
                        Figure.decimals(salt, 1, "mmol"),
                        Phrase.join(", ", all.parts()))));
    }

    /**
     * Acids and bases that reached a layer.
     *
     * @param sum all together
     * @param parts each of them in words
     */
    private record Reached(Equivalents sum, List<Phrase> parts) {}

    /** All charges, and what the steps on the way to a layer added. */
    private Reached reached(Set<Step> steps) {
        Equivalents sum = Equivalents.NONE;
        List<Phrase> parts = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            Equivalents part = acidsAndBases.of(amount);
            sum = sum.plus(part);
            inWords(amount.charge().material(), part).ifPresent(parts::add);
        }
        for (Addition addition : additions) {
            if (steps.contains(addition.step())) {
                Equivalents part = acidsAndBases.of(addition);
                sum = sum.plus(part);
                inWords(addition.material(), part).ifPresent(parts::add);
            }
        }
        return new Reached(sum, parts);
    }

    private static Optional<Phrase> inWords(String material, Equivalents part) {
        double millimoles = part.strongBase() + part.strongAcid();
        return millimoles > 0
                ? Optional.of(Phrase.of("{} {}", material, Figure.decimals(millimoles, 1, "mmol")))
                : Optional.empty();
    }

    /** True where the layer was in contact with a portion drawn off as organic: the salt stayed in the layer that portion came from. */
    private boolean comesFromOrganic(String label) {
        return graph.parents(label).stream()
                .anyMatch(parent -> graph.givenBy(parent)
                        .filter(s -> s.given().organic().contains(parent))
                        .isPresent());
    }

    private Set<Step> stepsBefore(String label) {
        Set<Step> steps = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(label));
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (!seen.add(next)) {
                continue;
            }
            for (Step step : run.orderedSteps()) {
                if (step.gives().contains(next)) {
                    steps.add(step);
                }
            }
            open.addAll(graph.parents(next));
        }
        return steps;
    }

    /** Product that stays in the aqueous layer after the extraction that gave it, by D at its pH. */
    private Optional<Route> byPartition(LayerTally layer, Content content) {
        Optional<Step> step = graph.givenBy(layer.label()).filter(s -> materials.isOrganic(s));
        Optional<PartitionModel> partition =
                step.flatMap(s -> PartitionModel.of(product(content), s.added().material(), materials));
        Optional<Entered> pH = ProductInWater.pH(layer);
        if (partition.isEmpty() || (pH.isEmpty() && partition.get().isIonisable())) {
            return Optional.empty();
        }
        double portionMillilitres = step.get()
                .added()
                .volumeMillilitres()
                .entered()
                .map(Entered::value)
                .orElse(0.0);
        if (portionMillilitres <= 0) {
            return Optional.empty();
        }
        int portions = (int) Math.round(step.get().added().portionCount());
        double reading = pH.map(Entered::value).orElse(AcidBase.NEUTRAL_PH);
        double volume = layer.volumeMillilitres().orElseThrow().value();
        double shift = Math.pow(10, partition.get().isIonisable() ? substances.value(Threshold.PH_READING) : 0);
        List<Step> earlier = chain.before(step.get());
        double there = productAfter(earlier.isEmpty() ? step.get() : earlier.get(0), content.substance());
        double d = partition.get().distributionRatio(reading);
        double left = Extraction.fractionLeft(d, portionMillilitres, volume, portions);
        double factor = partition.get().factor() * shift;
        double low = Extraction.fractionLeft(d * factor, portionMillilitres, volume, portions);
        double high = Extraction.fractionLeft(d / factor, portionMillilitres, volume, portions);
        double before = chain.left(earlier, partition.get(), reading, 1, volume);
        double leftBefore = there * before;
        return Optional.of(new Route(
                layer.label(),
                content.substance(),
                Route.Way.PARTITION,
                leftBefore * left,
                there * chain.left(earlier, partition.get(), reading, factor, volume) * low,
                there * chain.left(earlier, partition.get(), reading, 1 / factor, volume) * high,
                Phrase.of(
                        "{} = {} at pH {}; ({} / ({} + D × {}))^{} = {} left of {}{}",
                        partition.get().equation(reading),
                        Figure.digits(d, 3, ""),
                        Figure.decimals(reading, 1, ""),
                        Figure.decimals(volume, 0, ""),
                        Figure.decimals(volume, 0, ""),
                        Figure.decimals(portionMillilitres, 0, ""),
                        portions,
                        Figure.decimals(left, 3, ""),
                        Figure.digits(leftBefore, 4, "g"),
                        earlier.isEmpty()
                                ? ""
                                : Phrase.of(
                                        ", what step {} left of {}",
                                        earlier.stream().map(Step::number).collect(Phrase.joining(", ")),
                                        Figure.digits(there, 4, "g")))));
    }

    /** Product in everything that came out of a step or after it, g. */
    private double productAfter(Step step, String substance) {
        Set<String> after = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(step.gives());
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (after.add(next)) {
                open.addAll(graph.children(next));
            }
        }
        return found.terms().stream()
                .filter(t -> t.isOf(after) && t.content().isOf(substance))
                .flatMap(t -> t.content().massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
    }

    private Product product(Content content) {
        return run.product(content.substance()).orElseThrow();
    }
}
