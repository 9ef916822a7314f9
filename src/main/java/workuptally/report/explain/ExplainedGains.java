package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.layers.LayerTally;

/** What a further extraction of a layer would bring. */
final class ExplainedGains {
    private final Numbers numbers;

    ExplainedGains(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (Reextraction gain : tally.evidence().reextractions()) {
            all.add(of(tally, gain));
        }
        return all;
    }

    private Explanation of(RunTally tally, Reextraction gain) {
        Optional<LayerTally> layer = tally.layer(gain.layer());
        Optional<MeasuredValue> there = layer.stream()
                .flatMap(l -> l.contents().stream())
                .filter(c -> c.isOf(gain.substance()))
                .findFirst()
                .flatMap(Content::massGrams);
        double volume = layer.flatMap(LayerTally::volumeMillilitres)
                        .map(MeasuredValue::value)
                        .orElse(0.0)
                + gain.phSetting().addedMillilitres();
        String aqueous = numbers.plain(volume);
        String title = "Gain from extracting layer " + gain.layer() + " with "
                + gain.extractant().portions() + " × "
                + numbers.plain(gain.extractant().volumeMillilitres()) + " mL "
                + gain.extractant().solvent()
                + (gain.phSetting().pH().isPresent()
                        ? " at pH " + numbers.plain(gain.phSetting().pH().getAsDouble())
                        : "");
        Draft draft = new Draft(FigureKind.GAINS, title)
                .equation("gain = m·(1 − (V(aq)/(V(aq) + D·V(org)))^n)")
                .equation("gain = " + numbers.plain(there) + " g × (1 − (" + aqueous + " / (" + aqueous + " + "
                        + numbers.plain(gain.partition().distributionRatio()) + " × "
                        + numbers.plain(gain.extractant().volumeMillilitres())
                        + "))^" + gain.extractant().portions() + ")")
                .note("D = " + numbers.plain(gain.partition().distributionRatio()) + " from "
                        + gain.partition().origin()
                        + (gain.partition().standardUncertainty().isPresent()
                                ? ", u = "
                                        + numbers.plain(gain.partition()
                                                .standardUncertainty()
                                                .getAsDouble())
                                : "")
                        + ".");
        if (gain.phSetting().acidMillimoles() != 0) {
            draft.note(
                    "Needs about " + numbers.decimals(Math.abs(gain.phSetting().acidMillimoles()), 1) + " mmol "
                            + (gain.phSetting().acidMillimoles() > 0 ? "acid" : "base") + ", "
                            + numbers.decimals(gain.phSetting().addedMillilitres(), 1) + " mL of "
                            + numbers.plain(gain.phSetting().addedMolesPerLitre()) + " mol/L, counted in V(aq).");
        }
        if (gain.phSetting().carbonDioxideMillimoles() > 0) {
            draft.note("Sets free up to " + numbers.decimals(gain.phSetting().carbonDioxideMillimoles(), 1)
                    + " mmol of carbon dioxide: add the acid slowly to the open vessel, before any shaking.");
        }
        if (!gain.phSetting().acidGases().isEmpty()) {
            draft.note("No acid before this is settled with the person responsible: "
                    + gain.phSetting().acidCaution() + ".");
        }
        return draft.note(numbers.decimals(gain.gain().percentOfTheory(), 1) + " % of theory, for "
                        + numbers.plain(gain.extractant().solventGrams()) + " g of solvent.")
                .result(numbers.decimals(gain.gain().grams(), 3) + " g");
    }
}
