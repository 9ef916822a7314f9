package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;

/** Layers that are said to be released while no person is named who decided it. */
public final class ReleasedByNobody implements RunRule {
    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LAYER_RELEASED_BY_NOBODY);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        List<Layer> unnamed = tally.run().layers().stream()
                .filter(layer -> layer.custody()
                                .status()
                                .filter(s -> s == Layer.Status.RELEASED)
                                .isPresent()
                        && layer.custody().releasedBy().isBlank())
                .toList();
        if (!unnamed.isEmpty()) {
            List<String> labels = unnamed.stream().map(Layer::label).toList();
            findings.add(
                    FindingCode.LAYER_RELEASED_BY_NOBODY,
                    Severity.CHECK,
                    Subject.ofRun(tally.run().id()).withLayers(labels),
                    unnamed.get(0).row().at("Released by"),
                    Phrase.of("released, and nobody is named who released it: {}", String.join(", ", labels)),
                    Phrase.of("the person who decided that a layer may leave the bench"),
                    FindingList.PRACTICE,
                    Phrase.of("Enter who released it under Released by, or correct Status."));
        }
        return findings.list();
    }
}
