package workuptally.tally.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Extraction;
import workuptally.model.Field.Entered;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.PartitionModel;

/**
 * Works out the best split of the volume of a planned extraction from the partition ratio of the product. Washes are left out: there a split
 * takes product away. So are contacts in which the reaction's own solvent is a good part of the extracting phase, since its volume is not
 * the planner's to divide.
 */
final class ExtractionSplitAccount {

    private static final double NOT_USED = 7;

    private final Run run;
    private final Substances substances;
    private final IngredientAccount materials;
    private final LayerFlow flow;

    ExtractionSplitAccount(Run run, Substances substances, LayerFlow flow) {
        this.substances = substances;
        this.run = run;
        this.materials = new IngredientAccount(substances);
        this.flow = flow;
    }

    /** One for each wanted product with a partition ratio, and a pH after the step where it is an acid or a base. */
    List<ExtractionSplit> of(Step step) {
        List<ExtractionSplit> splits = new ArrayList<>();
        Optional<LayerFlow.Phases> phases = flow.phases(step).filter(p -> isExtraction(step));
        Optional<Double> each = step.added().volumeMillilitres().entered().map(Entered::value);
        if (phases.isEmpty() || each.isEmpty() || each.get() <= 0) {
            return splits;
        }
        boolean organicAdded = materials.isOrganic(step);
        int portions = (int) Math.max(1, Math.round(step.added().portionCount()));
        double total = portions * each.get();
        double extracting =
                (organicAdded ? phases.get().organic() : phases.get().aqueous()).millilitres();
        double extracted = (organicAdded ? phases.get().aqueous() : phases.get().organic()).millilitres();
        if (extracted <= 0 || extracting > substances.value(Threshold.PHASE_SWELLING) * total) {
            return splits;
        }
        Optional<String> solvent = organicAdded
                ? Optional.of(step.added().material())
                : solventOf(phases.get().organic());
        for (Product product : run.products()) {
            Optional<PartitionModel> model =
                    solvent.filter(s -> product.wanted()).flatMap(s -> PartitionModel.of(product, s, materials));
            OptionalDouble ratio = model.map(m -> ratio(m, step, organicAdded)).orElse(OptionalDouble.empty());
            if (ratio.isPresent()) {
                splits.add(new ExtractionSplit(
                        product.name(),
                        ratio.getAsDouble(),
                        model.get().factor(),
                        model.get().origin(),
                        total,
                        extracted,
                        portions,
                        Extraction.bestSplit(
                                ratio.getAsDouble(), total, extracted, substances.value(Threshold.SPLIT_GAIN) / 100)));
            }
        }
        return splits;
    }

    private static boolean isExtraction(Step step) {
        return step.operation()
                .filter(o -> o == Operation.EXTRACT || o == Operation.BACK_EXTRACT)
                .isPresent();
    }

    private Optional<String> solventOf(Ingredients organic) {
        return organic.parts().entrySet().stream()
                .filter(e -> substances.isOrganicSolvent(e.getKey()))
                .max((a, b) -> Double.compare(a.getValue().grams(), b.getValue().grams()))
                .map(java.util.Map.Entry::getKey);
    }

    private static OptionalDouble ratio(PartitionModel model, Step step, boolean organicAdded) {
        Optional<Double> pH = step.pHAfter().entered().map(Entered::value);
        if (model.isIonisable() && pH.isEmpty()) {
            return OptionalDouble.empty();
        }
        double distribution = model.distributionRatio(pH.orElse(NOT_USED));
        if (organicAdded) {
            return OptionalDouble.of(distribution);
        }
        return distribution > 0 ? OptionalDouble.of(1 / distribution) : OptionalDouble.empty();
    }
}
