package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.CompositionPart;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** A distillate of which the composition tells the smaller part: water has no need to be told in a water layer, but this is all solvent. */
public final class CompositionIncomplete implements RunRule {
    private final Substances substances;

    /** With the thresholds in force. */
    public CompositionIncomplete(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COMPOSITION_INCOMPLETE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Layer layer : tally.run().layers()) {
            double stated = layer.composition().stream()
                    .mapToDouble(CompositionPart::massPercent)
                    .sum();
            if (layer.phase().filter(p -> p == Layer.Phase.DISTILLATE).isPresent()
                    && !layer.composition().isEmpty()
                    && stated < substances.value(Threshold.COMPOSITION_LEAST)) {
                findings.add(
                        FindingCode.COMPOSITION_INCOMPLETE,
                        Severity.CHECK,
                        layer.row().at("Composition"),
                        Phrase.of(
                                "the composition of distillate {} tells {} of it; nobody knows what the rest is",
                                layer.label(),
                                Figure.decimals(stated, 0, "%")),
                        Phrase.of(
                                "the larger part of it, from {}",
                                Figure.decimals(substances.value(Threshold.COMPOSITION_LEAST), 0, "%")),
                        FindingList.PRACTICE,
                        Phrase.of("Correct the figure, or name what else it holds: 'ethyl acetate 97 %, rest water'."));
            }
        }
        return findings.list();
    }
}
