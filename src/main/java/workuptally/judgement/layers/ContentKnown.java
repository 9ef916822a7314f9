package workuptally.judgement.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Phrase;
import workuptally.tally.amounts.Content;

/** R3: product in this layer measured or bounded, by its own assay, a real non-detect, or conservation, and no two readings gainsay each other. */
final class ContentKnown implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<Content> wanted = evidence.wanted();
        Optional<Content> disputed = wanted.stream()
                .filter(c -> c.rests() == Content.Rests.DISPUTED_READINGS)
                .findFirst();
        if (disputed.isPresent()) {
            return new Condition(
                    Criterion.CONTENT_KNOWN,
                    State.NOT_MET,
                    Phrase.of(
                            "{}: {}", disputed.get().substance(), disputed.get().evidence()));
        }
        if (wanted.stream().noneMatch(LayerEvidence::isBounded)) {
            return new Condition(
                    Criterion.CONTENT_KNOWN,
                    State.MISSING,
                    Phrase.of("assay of {}", evidence.layer().label()));
        }
        Content known =
                wanted.stream().filter(LayerEvidence::isBounded).findFirst().orElseThrow();
        return new Condition(
                Criterion.CONTENT_KNOWN, State.MET, Phrase.of("{}: {}", known.substance(), known.evidence()));
    }
}
