package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Extraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.AcidGasAccount;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerBuffers;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.PartitionModel;
import workuptally.tally.layers.ProductInWater;

/**
 * What one more extraction of an aqueous layer would bring, with D from the run's own assays on both sides of the contact where there are
 * such, else from the partition model at the layer's pH; and what it would bring at a pH where the product is neutral.
 */
public final class ReextractionAccount {
    private static final Set<Operation> REAGENT_STEPS = Set.of(Operation.QUENCH, Operation.ACIDIFY, Operation.BASIFY);

    private final Run run;
    private final LayerGraph graph;
    private final IngredientAccount materials;
    private final Substances substances;
    private final List<ChargeAmount> amounts;
    private final List<LayerTally> layers;
    private final Optional<Theory> theory;
    private final LayerBuffers buffers;

    public ReextractionAccount(
            Run run,
            LayerGraph graph,
            Substances substances,
            List<ChargeAmount> amounts,
            List<LayerTally> layers,
            Optional<Theory> theory,
            LayerFlow flow) {
        this.run = run;
        this.graph = graph;
        this.materials = new IngredientAccount(substances);
        this.substances = substances;
        this.amounts = amounts;
        this.layers = layers;
        this.theory = theory;
        this.buffers = new LayerBuffers(run, substances, flow);
    }

    /** Gains for every terminal aqueous layer in which a wanted product was measured. */
    public List<Reextraction> list() {
        List<Reextraction> all = new ArrayList<>();
        for (LayerTally layer : layers) {
            for (Content content : ProductInWater.of(layer, run)) {
                all.addAll(reextractions(layer, content));
            }
        }
        return all;
    }

    private List<Reextraction> reextractions(LayerTally layer, Content content) {
        Optional<Step> step = graph.givenBy(layer.label());
        Optional<String> solvent = step.flatMap(this::solventOf);
        double volume = step.map(s -> portionMillilitres(s, layer)).orElse(0.0);
        Optional<ProductTheory> expected = theory.flatMap(t ->
                t.products().stream().filter(p -> p.isOf(content.substance())).findFirst());
        if (solvent.isEmpty() || volume <= 0 || expected.isEmpty()) {
            return List.of();
        }
        Gain gain = new Gain(
                layer,
                content,
                solvent.get(),
                volume,
                expected.get().massGrams().value());
        Optional<PartitionModel> partition = PartitionModel.of(product(content), solvent.get(), materials);
        Optional<Ratio> asItIs = ownRatio(layer, content, step.get()).or(() -> partition.flatMap(p -> atPH(layer, p)));
        List<Reextraction> gains = new ArrayList<>();
        asItIs.ifPresent(ratio -> gains.addAll(gain.byOneAndTwoPortions(ratio, Adjustment.NONE)));
        partition.ifPresent(p -> gains.addAll(afterAdjusting(gain, p, asItIs)));
        return gains.stream()
                .filter(g -> g.gain().percentOfTheory() >= substances.value(Threshold.REEXTRACTION_GAIN))
                .toList();
    }

    /** D at the pH of the layer; empty for an acid or base in a layer of unknown pH. */
    private static Optional<Ratio> atPH(LayerTally layer, PartitionModel partition) {
        Optional<Double> pH = ProductInWater.pH(layer).map(Entered::value);
        return pH.isEmpty() && partition.isIonisable()
                ? Optional.empty()
                : Optional.of(new Ratio(
                        partition.distributionRatio(pH.orElse(AcidBase.NEUTRAL_PH)),
                        OptionalDouble.empty(),
                        partition.origin()));
    }

    /** Gains at the pH where an acid or base is neutral; none where that does not at least double D. */
    private List<Reextraction> afterAdjusting(Gain gain, PartitionModel partition, Optional<Ratio> asItIs) {
        Optional<Double> from = ProductInWater.pH(gain.layer).map(Entered::value);
        if (!partition.isIonisable() || from.isEmpty()) {
            return List.of();
        }
        double to = partition.pHOfNeutralForm(substances.value(Threshold.PH_BEYOND_PKA));
        double acid = buffers.acidMillimoles(gain.layer, from.get(), to);
        boolean rightWay = partition.character() == Product.Character.ACID ? acid > 0 : acid < 0;
        Ratio shifted = new Ratio(partition.distributionRatio(to), OptionalDouble.empty(), partition.origin());
        boolean helps = asItIs.isEmpty()
                || shifted.distributionRatio() > 2 * asItIs.get().distributionRatio();
        return helps && rightWay
                ? gain.byOneAndTwoPortions(
                        shifted,
                        new Adjustment(
                                OptionalDouble.of(to),
                                acid,
                                buffers.carbonDioxideMillimoles(gain.layer, from.get(), to)))
                : List.of();
    }

    /** The portion to reckon with: that of the contact itself, else of the run's extraction, else half the layer (common practice). */
    private double portionMillilitres(Step step, LayerTally layer) {
        boolean contact = step.operation()
                .filter(o -> o == Operation.EXTRACT || o == Operation.WASH || o == Operation.BACK_EXTRACT)
                .isPresent();
        Optional<Double> own =
                step.added().volumeMillilitres().entered().map(Entered::value).filter(v -> contact);
        return own.or(() -> run.orderedSteps().stream()
                        .filter(s -> s.operation()
                                .filter(o -> o == Operation.EXTRACT)
                                .isPresent())
                        .filter(materials::isOrganic)
                        .flatMap(s -> s.added().volumeMillilitres().entered().stream())
                        .map(Entered::value)
                        .findFirst())
                .orElseGet(() -> layer.volumeMillilitres().orElseThrow().value() / 2);
    }

    /** The solvent of the contact itself, else the run's extraction solvent, else another of its solvents that water does not mix with. */
    private Optional<String> solventOf(Step step) {
        if (materials.isOrganic(step) && !addsReagent(step)) {
            return Optional.of(step.added().material());
        }
        List<String> extracts = organicMaterials(
                s -> s.operation().filter(o -> o == Step.Operation.EXTRACT).isPresent());
        List<String> added = organicMaterials(s -> !addsReagent(s));
        Stream<String> charged = amounts.stream()
                .filter(ChargeAmount::isSolvent)
                .map(a -> a.charge().material());
        return Stream.of(extracts.stream(), charged, added.stream())
                .flatMap(solvents -> solvents)
                .filter(substances::isOrganicSolvent)
                .filter(name -> substances
                        .solvent(name)
                        .filter(s -> s.waterMixing().miscible() != Solvent.Miscibility.YES)
                        .isPresent())
                .findFirst();
    }

    /** True where what is added, acetic acid or methanol, is there to react and not to extract. */
    private static boolean addsReagent(Step step) {
        return step.operation().filter(REAGENT_STEPS::contains).isPresent();
    }

    private List<String> organicMaterials(Predicate<Step> counts) {
        return run.orderedSteps().stream()
                .filter(counts)
                .map(s -> s.added().material())
                .toList();
    }

    /** D from a sample of the organic layer of the same contact: c(organic)/c(aqueous). */
    private Optional<Ratio> ownRatio(LayerTally layer, Content content, Step step) {
        for (LayerTally other : layers) {
            boolean sampleOfOrganic = step.given().organic().contains(other.label())
                    || (other.aliquot()
                            && graph.parents(other.label()).stream()
                                    .anyMatch(step.given().organic()::contains));
            if (!sampleOfOrganic || other.volumeMillilitres().isEmpty()) {
                continue;
            }
            for (Content there : other.contents()) {
                if (there.kind() == Content.Kind.MEASURED && there.isOf(content.substance())) {
                    MeasuredValue organic = there.massGrams()
                            .orElseThrow()
                            .over(other.volumeMillilitres().get());
                    MeasuredValue aqueous = content.massGrams()
                            .orElseThrow()
                            .over(layer.volumeMillilitres().orElseThrow());
                    MeasuredValue ratio = organic.over(aqueous);
                    return Optional.of(new Ratio(
                            ratio.value(),
                            OptionalDouble.of(ratio.standardUncertainty()),
                            "assays of " + other.label() + " and " + layer.label()));
                }
            }
        }
        return Optional.empty();
    }

    private Product product(Content content) {
        return run.product(content.substance()).orElseThrow();
    }

    private record Ratio(double distributionRatio, OptionalDouble standardUncertainty, String origin) {}

    /** A change of pH first: where to, the acid it takes (negative for base) and the carbon dioxide that sets free, mmol. */
    private record Adjustment(OptionalDouble pH, double acidMillimoles, double carbonDioxideMillimoles) {
        static final Adjustment NONE = new Adjustment(OptionalDouble.empty(), 0, 0);
    }

    /** Gains of one layer in one solvent. */
    private final class Gain {
        private final LayerTally layer;
        private final Content content;
        private final String solvent;
        private final double portionMillilitres;
        private final double theoryGrams;

        Gain(LayerTally layer, Content content, String solvent, double portionMillilitres, double theoryGrams) {
            this.layer = layer;
            this.content = content;
            this.solvent = solvent;
            this.portionMillilitres = portionMillilitres;
            this.theoryGrams = theoryGrams;
        }

        List<Reextraction> byOneAndTwoPortions(Ratio ratio, Adjustment adjustment) {
            return List.of(of(1, ratio, adjustment), of(2, ratio, adjustment));
        }

        private Reextraction of(int portions, Ratio ratio, Adjustment adjustment) {
            double strength = substances.value(Threshold.PH_SETTING_STRENGTH);
            double added = Math.abs(adjustment.acidMillimoles()) / strength;
            double gas = adjustment.carbonDioxideMillimoles();
            double grams = Extraction.gainGrams(
                    content.massGrams().orElseThrow().value(),
                    ratio.distributionRatio(),
                    portionMillilitres,
                    layer.volumeMillilitres().orElseThrow().value() + added,
                    portions);
            return new Reextraction(
                    layer.label(),
                    content.substance(),
                    new Reextraction.Extractant(
                            solvent,
                            portions,
                            portionMillilitres,
                            portions
                                    * portionMillilitres
                                    * substances
                                            .densityGramsPerMillilitre(solvent)
                                            .orElse(1)),
                    new Reextraction.Partition(ratio.distributionRatio(), ratio.standardUncertainty(), ratio.origin()),
                    new Reextraction.PhSetting(
                            adjustment.pH(),
                            adjustment.acidMillimoles(),
                            strength,
                            gas >= substances.value(Threshold.PH_SETTING_GAS) ? gas : 0,
                            adjustment.acidMillimoles() > 0 ? AcidGasAccount.of(run, substances) : List.of()),
                    new Reextraction.Gain(grams, 100 * grams / theoryGrams));
        }
    }
}
