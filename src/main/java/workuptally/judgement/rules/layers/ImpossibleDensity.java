package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerTally;

/**
 * A liquid layer whose net mass over volume is that of no liquid of a laboratory: mass or volume is wrong, and with it what every assay in
 * mg/mL finds in the layer.
 */
public final class ImpossibleDensity implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public ImpossibleDensity(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_DENSITY_IMPOSSIBLE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LayerTally layer : tally.layers()) {
            if (layer.entry().isPresent()
                    && layer.phase().filter(Layer.Phase.SOLID::equals).isEmpty()
                    && isOfNoLiquid(layer)) {
                findings.add(
                        FindingCode.LAYER_DENSITY_IMPOSSIBLE,
                        Severity.STOP,
                        layer.entry().get().row().at("Volume"),
                        Phrase.of(
                                "layer {}: {} in {} is {}",
                                layer.label(),
                                Figure.digits(layer.massGrams().orElseThrow().value(), 4, "g"),
                                Figure.digits(
                                        layer.volumeMillilitres().orElseThrow().value(), 4, "mL"),
                                Figure.digits(
                                        layer.densityGramsPerMillilitre()
                                                .orElseThrow()
                                                .value(),
                                        3,
                                        "g/mL")),
                        Phrase.of(
                                "{} to {} for a liquid",
                                Figure.brief(substances.value(Threshold.DENSITY_LOW), ""),
                                Figure.brief(substances.value(Threshold.DENSITY_HIGH), "g/mL")),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Read the volume again, look for a slip of the decimal point or of the unit, and check gross and tare."));
            }
        }
        return findings.list();
    }

    /**
     * True where the mass lies beyond what the volume can weigh by more than the readings leave open. Asked of the mass at a density that a
     * liquid can have, since 3u of a quotient grows with the very slip that made its volume too small.
     */
    private boolean isOfNoLiquid(LayerTally layer) {
        if (layer.massGrams().isEmpty() || layer.volumeMillilitres().isEmpty()) {
            return false;
        }
        MeasuredValue grams = layer.massGrams().get();
        MeasuredValue millilitres = layer.volumeMillilitres().get();
        MeasuredValue tooHeavy = grams.minus(millilitres.times(substances.value(Threshold.DENSITY_HIGH)));
        MeasuredValue tooLight =
                millilitres.times(substances.value(Threshold.DENSITY_LOW)).minus(grams);
        return isClear(tooHeavy) || isClear(tooLight);
    }

    private boolean isClear(MeasuredValue excess) {
        return excess.value() > substances.value(Threshold.DENSITY_FIT) * excess.standardUncertainty();
    }
}
