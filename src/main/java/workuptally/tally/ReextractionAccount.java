package workuptally.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Extraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.Theory.ProductTheory;

/**
 * What one more extraction of an aqueous layer would bring, with D from the run's own assays on both sides of the contact where there are
 * such, else from the partition model at the layer's pH; and what it would bring at a pH where the product is neutral.
 */
final class ReextractionAccount {
    private static final double SMALLEST_GAIN_PERCENT = 0.1;
    private static final double NEUTRAL_PH = 7;

    private final Run run;
    private final LayerGraph graph;
    private final Materials materials;
    private final Substances substances;
    private final List<ChargeAmount> amounts;
    private final List<LayerTally> layers;
    private final Optional<Theory> theory;

    ReextractionAccount(
            Run run,
            LayerGraph graph,
            Substances substances,
            List<ChargeAmount> amounts,
            List<LayerTally> layers,
            Optional<Theory> theory) {
        this.run = run;
        this.graph = graph;
        this.materials = new Materials(substances);
        this.substances = substances;
        this.amounts = amounts;
        this.layers = layers;
        this.theory = theory;
    }

    /** Gains for every terminal aqueous layer in which a wanted product was measured. */
    List<Reextraction> list() {
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
        Optional<ProductTheory> expected = theory.flatMap(t -> t.products().stream()
                .filter(p -> p.product().name().equalsIgnoreCase(content.substance()))
                .findFirst());
        if (solvent.isEmpty() || volume <= 0 || expected.isEmpty()) {
            return List.of();
        }
        List<Reextraction> gains = new ArrayList<>();
        Optional<PartitionModel> partition = PartitionModel.of(product(content), solvent.get(), materials);
        Optional<Ratio> ratio = ownRatio(layer, content, step.get())
                .or(() -> partition
                        .filter(p ->
                                !p.isIonisable() || ProductInWater.pH(layer).isPresent())
                        .map(p -> new Ratio(
                                p.distributionRatio(ProductInWater.pH(layer)
                                        .map(Entered::value)
                                        .orElse(NEUTRAL_PH)),
                                p.origin())));
        Gain gain = new Gain(
                layer,
                content,
                solvent.get(),
                volume,
                expected.get().massGrams().value());
        ratio.ifPresent(r -> gains.add(gain.of(1, r, OptionalDouble.empty(), 0)));
        ratio.ifPresent(r -> gains.add(gain.of(2, r, OptionalDouble.empty(), 0)));
        partition
                .filter(PartitionModel::isIonisable)
                .filter(p -> ProductInWater.pH(layer).isPresent())
                .ifPresent(p -> {
                    double pH = p.pHOfNeutralForm();
                    Ratio shifted = new Ratio(p.distributionRatio(pH), p.origin());
                    double reading = ProductInWater.pH(layer).orElseThrow().value();
                    boolean helps = ratio.isEmpty()
                            || shifted.distributionRatio() > 2 * ratio.get().distributionRatio();
                    double millimoles = neutralisingMillimoles(layer, content, p, reading, pH);
                    if (helps && millimoles != 0) {
                        gains.add(gain.of(1, shifted, OptionalDouble.of(pH), millimoles));
                        gains.add(gain.of(2, shifted, OptionalDouble.of(pH), millimoles));
                    }
                });
        return gains.stream()
                .filter(g -> g.gainPercentOfTheory() >= SMALLEST_GAIN_PERCENT)
                .toList();
    }

    /** The portion to reckon with: that of the contact itself, else of the run's extraction, else half the layer (common practice). */
    private double portionMillilitres(Step step, LayerTally layer) {
        boolean contact = step.operation()
                .filter(o -> o == Operation.EXTRACT || o == Operation.WASH || o == Operation.BACK_EXTRACT)
                .isPresent();
        Optional<Double> own =
                step.volumeMillilitres().entered().map(Entered::value).filter(v -> contact);
        return own.or(() -> run.orderedSteps().stream()
                        .filter(s -> s.operation()
                                .filter(o -> o == Operation.EXTRACT)
                                .isPresent())
                        .filter(materials::isOrganic)
                        .flatMap(s -> s.volumeMillilitres().entered().stream())
                        .map(Entered::value)
                        .findFirst())
                .orElseGet(() -> layer.volumeMillilitres().orElseThrow().value() / 2);
    }

    private Optional<String> solventOf(Step step) {
        if (materials.isOrganic(step)) {
            return Optional.of(step.material());
        }
        return amounts.stream()
                .filter(ChargeAmount::isSolvent)
                .map(a -> a.charge().material())
                .filter(substances::isOrganicSolvent)
                .findFirst()
                .or(() -> run.orderedSteps().stream()
                        .map(Step::material)
                        .filter(substances::isOrganicSolvent)
                        .findFirst());
    }

    /** D from a sample of the organic layer of the same contact: c(organic)/c(aqueous). */
    private Optional<Ratio> ownRatio(LayerTally layer, Content content, Step step) {
        for (LayerTally other : layers) {
            boolean sampleOfOrganic = step.givesOrganic().contains(other.label())
                    || (other.aliquot()
                            && graph.parents(other.label()).stream().anyMatch(step.givesOrganic()::contains));
            if (!sampleOfOrganic
                    || other.volumeMillilitres().filter(v -> v.value() > 0).isEmpty()) {
                continue;
            }
            for (Content there : other.contents()) {
                if (there.kind() == Content.Kind.MEASURED && there.substance().equalsIgnoreCase(content.substance())) {
                    double organic = there.massGrams().orElseThrow().value()
                            / other.volumeMillilitres().get().value();
                    double aqueous = content.massGrams().orElseThrow().value()
                            / layer.volumeMillilitres().orElseThrow().value();
                    if (aqueous <= 0) {
                        return Optional.empty();
                    }
                    return Optional.of(new Ratio(
                            Extraction.distributionRatio(organic, aqueous),
                            "assays of " + other.label() + " and " + layer.label()));
                }
            }
        }
        return Optional.empty();
    }

    private double neutralisingMillimoles(
            LayerTally layer, Content content, PartitionModel partition, double fromPH, double toPH) {
        double millimoles = content.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
        double volume = layer.volumeMillilitres().orElseThrow().value();
        double ionised = AcidBase.ionisedAcidFraction(partition.pKa(), fromPH);
        return partition.character() == Product.Character.ACID
                ? Math.max(0, millimoles * ionised + AcidBase.hydrogenIonMolesPerLitre(toPH) * volume)
                : -Math.max(0, millimoles * (1 - ionised) + AcidBase.hydroxideIonMolesPerLitre(toPH) * volume);
    }

    private Product product(Content content) {
        return run.product(content.substance()).orElseThrow();
    }

    private record Ratio(double distributionRatio, String origin) {}

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

        Reextraction of(int portions, Ratio ratio, OptionalDouble pH, double acidMillimoles) {
            double added = Math.abs(acidMillimoles) / Reextraction.ACID_MOLES_PER_LITRE;
            double grams = Extraction.gainGrams(
                    content.massGrams().orElseThrow().value(),
                    ratio.distributionRatio(),
                    portionMillilitres,
                    layer.volumeMillilitres().orElseThrow().value() + added,
                    portions);
            return new Reextraction(
                    layer.label(),
                    content.substance(),
                    solvent,
                    portions,
                    portionMillilitres,
                    ratio.distributionRatio(),
                    ratio.origin(),
                    pH,
                    grams,
                    100 * grams / theoryGrams,
                    acidMillimoles,
                    portions
                            * portionMillilitres
                            * substances.densityGramsPerMillilitre(solvent).orElse(1));
        }
    }
}
