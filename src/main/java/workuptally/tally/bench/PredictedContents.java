package workuptally.tally.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.AcidBase;
import workuptally.chemistry.Extraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.balance.ExtractionChain;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.PartitionModel;
import workuptally.tally.layers.ProductInWater;

/**
 * What the partition model leaves at most of a product in an aqueous layer that nobody assayed, after the extraction that gave it and those
 * before it: m = m(theory)·Π (V/(V + D·Vs))ⁿ, all at the upper end. V is the layer with its one-sided reach, D by P over its factor and by the
 * pH that ionises more, and all of theory is taken to have been in the water. It is shown always, and counts as evidence only where the
 * laboratory says so ({@link Limit#PREDICTION_COUNTS}).
 *
 * <p>None where a solvent that mixes with water, or alcohol, stood in one of the contacts, where the pH of an acid or base is not a plain
 * reading, and where a portion is not known: the model then says nothing.
 */
public final class PredictedContents {
    private static final double WHOLE_UNIT = 0.5;

    private final Run run;
    private final Limits limits;
    private final Substances substances;
    private final LayerGraph graph;
    private final IngredientAccount materials;
    private final Optional<Theory> theory;

    public PredictedContents(Run run, Limits limits, Substances substances, LayerGraph graph, Optional<Theory> theory) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.graph = graph;
        this.materials = new IngredientAccount(substances);
        this.theory = theory;
    }

    /**
     * The layers with what is predicted beside a content that nobody looked for, as evidence where the laboratory says so.
     *
     * @param contacts what stood in the funnel at each contact
     */
    public List<LayerTally> beside(List<LayerTally> layers, List<ContactMixture> contacts) {
        if (run.products().stream().noneMatch(PredictedContents::isKnownInWater)) {
            return layers;
        }
        Set<Step> mixed = new HashSet<>();
        contacts.stream().filter(this::isMixed).map(ContactMixture::step).forEach(mixed::add);
        ExtractionChain chain = new ExtractionChain(graph, materials, layers);
        List<LayerTally> shown = new ArrayList<>();
        for (LayerTally layer : layers) {
            List<Content> contents = new ArrayList<>();
            for (Content content : layer.contents()) {
                boolean notLookedFor = content.massGrams().isEmpty()
                        && (content.kind() == Content.Kind.UNKNOWN || content.isBoundedByConservation());
                OptionalDouble most =
                        notLookedFor ? atMostGrams(layer, content, chain, mixed, layers) : OptionalDouble.empty();
                contents.add(most.isPresent() ? with(content, most.getAsDouble()) : content);
            }
            shown.add(layer.withContents(contents));
        }
        return shown;
    }

    private static boolean isKnownInWater(Product product) {
        return product.wanted()
                && (product.partitioning().partitionRatio().entered().isPresent()
                        || product.partitioning().logP().entered().isPresent());
    }

    private Content with(Content content, double grams) {
        boolean counts = limits.isYes(Limit.PREDICTION_COUNTS)
                && grams < content.upperBoundGrams().orElse(Double.POSITIVE_INFINITY);
        String words = content.evidence() + "; partition at the pH predicts at most "
                + new BigDecimal(grams)
                        .round(new MathContext(2, RoundingMode.UP))
                        .toPlainString() + " g"
                + (counts ? "" : ", which does not count here");
        return counts ? content.atMostByPrediction(grams, words) : content.saying(words);
    }

    private boolean isMixed(ContactMixture contact) {
        return contact.waterMisciblePercent() > substances.value(Threshold.MISCIBLE_NOTE)
                || contact.alcoholInAqueousPercent() > substances.value(Threshold.PKA_SHIFT_NOTE);
    }

    private OptionalDouble atMostGrams(
            LayerTally layer, Content content, ExtractionChain chain, Set<Step> mixed, List<LayerTally> layers) {
        boolean aqueous = layer.phase().filter(p -> p == Layer.Phase.AQUEOUS).isPresent();
        Optional<Product> product = run.product(content.substance()).filter(Product::wanted);
        Optional<Step> step = graph.givenBy(layer.label()).filter(materials::isOrganic);
        if (!aqueous
                || !layer.terminal()
                || !layer.endsWorkup()
                || layer.aliquot()
                || product.isEmpty()
                || step.isEmpty()
                || layer.volumeMillilitres().isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<PartitionModel> model =
                PartitionModel.of(product.get(), step.get().added().material(), materials);
        Optional<MeasuredValue> whole = theory.flatMap(t -> t.products().stream()
                .filter(p -> p.product() == product.get())
                .findFirst()
                .map(ProductTheory::massGrams));
        List<Step> earlier = chain.before(step.get());
        OptionalDouble pH = model.isPresent() ? pH(layer, model.get()) : OptionalDouble.empty();
        boolean apart = !mixed.contains(step.get()) && earlier.stream().noneMatch(mixed::contains);
        double portion = step.get()
                .added()
                .volumeMillilitres()
                .entered()
                .map(Entered::value)
                .orElse(0.0);
        if (model.isEmpty() || whole.isEmpty() || pH.isEmpty() || !apart || portion <= 0) {
            return OptionalDouble.empty();
        }
        double volume = layer.volumeMillilitres().get().oneSidedUpperBound();
        double factor = 1 / model.get().factor();
        double left =
                Extraction.fractionLeft(model.get().distributionRatio(pH.getAsDouble()) * factor, portion, volume, (int)
                        Math.round(step.get().added().portionCount()));
        boolean followed = !model.get().isIonisable() && earlier.stream().allMatch(e -> isMeasured(e, layers));
        double before = followed ? chain.left(earlier, model.get(), pH.getAsDouble(), factor, volume) : 1;
        return OptionalDouble.of(whole.get().oneSidedUpperBound() * left * before);
    }

    /** True where the water that an extraction left was measured: without its volume the next one gets no credit for it. */
    private static boolean isMeasured(Step step, List<LayerTally> layers) {
        return step.given().aqueous().stream()
                .anyMatch(label -> layers.stream()
                        .anyMatch(l ->
                                l.label().equals(label) && l.volumeMillilitres().isPresent()));
    }

    /** The pH at the end of its reading that ionises more; a pH to the whole unit may be half a unit off. */
    private OptionalDouble pH(LayerTally layer, PartitionModel model) {
        if (!model.isIonisable()) {
            return OptionalDouble.of(AcidBase.NEUTRAL_PH);
        }
        return ProductInWater.pH(layer)
                .filter(p -> p.qualifier() == Qualifier.EXACT)
                .map(p -> {
                    double reach = p.decimals() > 0 ? substances.value(Threshold.PH_READING) : WHOLE_UNIT;
                    return OptionalDouble.of(
                            p.value() + (model.character() == Product.Character.ACID ? reach : -reach));
                })
                .orElse(OptionalDouble.empty());
    }
}
