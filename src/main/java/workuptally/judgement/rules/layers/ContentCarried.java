package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/** A layer that was assayed for one substance and still carries another that was in the portion it was made from. */
public final class ContentCarried implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONTENT_CARRIED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LayerTally layer : tally.layers()) {
            for (Content content : layer.contents()) {
                if (layer.terminal()
                        && content.kind() == Content.Kind.CARRIED
                        && content.massGrams().isPresent()) {
                    findings.add(
                            FindingCode.CONTENT_CARRIED,
                            Severity.NOTE,
                            layer.entry()
                                    .map(Layer::row)
                                    .map(r -> r.at("Layer"))
                                    .orElse(tally.run().row().at("Run")),
                            Phrase.of(
                                    "layer {} was not assayed for {}, which was in the portion it was made from: {}, {} ({})",
                                    layer.label(),
                                    content.substance(),
                                    Figure.decimals(content.massGrams().get().value(), 3, "g"),
                                    Figure.decimals(content.percentOf().orElse(0), 1, "%"),
                                    content.evidence()),
                            Phrase.of("an assay of the layer for it"),
                            FindingList.PRACTICE,
                            Phrase.of(
                                    "Counted as an estimate; assay {} for {} if it matters.",
                                    layer.label(),
                                    content.substance()));
                }
            }
        }
        return findings.list();
    }
}
