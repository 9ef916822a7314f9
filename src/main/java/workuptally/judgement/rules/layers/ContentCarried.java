package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
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
                            FindingList.say(
                                    "layer %s was not assayed for %s, which was in the portion it was made from: %.3f g, %.1f %% (%s)",
                                    layer.label(),
                                    content.substance(),
                                    content.massGrams().get().value(),
                                    content.percentOf().orElse(0),
                                    content.evidence()),
                            "an assay of the layer for it",
                            FindingList.PRACTICE,
                            "Counted as an estimate; assay " + layer.label() + " for " + content.substance()
                                    + " if it matters.");
                }
            }
        }
        return findings.list();
    }
}
