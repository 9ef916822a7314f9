package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.chemistry.Extraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Step;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.PartitionModel;

/** Extractions of one aqueous stream with organic solvent, one after the other, and what they leave in the water. */
public final class ExtractionChain {
    private final LayerGraph graph;
    private final IngredientAccount materials;
    private final List<LayerTally> layers;

    public ExtractionChain(LayerGraph graph, IngredientAccount materials, List<LayerTally> layers) {
        this.graph = graph;
        this.materials = materials;
        this.layers = layers;
    }

    /** Extractions that the aqueous stream went through before a step, the first one first. */
    public List<Step> before(Step step) {
        List<Step> chain = new ArrayList<>();
        Optional<Step> before = extractionOfSource(step);
        while (before.isPresent() && !chain.contains(before.get())) {
            chain.add(0, before.get());
            before = extractionOfSource(before.get());
        }
        return chain;
    }

    /** The extraction with an organic solvent that gave a step its one aqueous source. */
    private Optional<Step> extractionOfSource(Step step) {
        return step.from().size() == 1
                ? graph.givenBy(step.from().get(0))
                        .filter(s -> s != step
                                && s.given().aqueous().contains(step.from().get(0)))
                        .filter(materials::isOrganic)
                        .filter(s -> s.added()
                                        .volumeMillilitres()
                                        .entered()
                                        .map(Entered::value)
                                        .orElse(0.0)
                                > 0)
                : Optional.empty();
    }

    /** Share that the earlier extractions leave in the water, D times a factor; the volume of the layer stands in where none was read. */
    public double left(
            List<Step> earlier, PartitionModel partition, double layerPH, double factor, double layerMillilitres) {
        double share = 1;
        for (Step step : earlier) {
            double pH = step.pHAfter().entered().map(Entered::value).orElse(layerPH);
            double volume = step.given().aqueous().stream()
                    .flatMap(label -> layers.stream().filter(l -> l.label().equals(label)))
                    .flatMap(l -> l.volumeMillilitres().stream())
                    .mapToDouble(MeasuredValue::value)
                    .findFirst()
                    .orElse(layerMillilitres);
            share *= Extraction.fractionLeft(
                    partition.distributionRatio(pH) * factor,
                    step.added().volumeMillilitres().entered().orElseThrow().value(),
                    volume,
                    (int) Math.round(step.added().portionCount()));
        }
        return share;
    }
}
