package workuptally.judgement.layers;

import java.util.List;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.tally.amounts.Content;

/** R3: product in this layer measured or bounded, by its own assay, a real non-detect, conservation or the strongest solution. */
final class ContentKnown implements LayerCondition {
    private static final String ID = "R3";
    private static final String TITLE = "product measured or bounded";

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<Content> wanted = evidence.wanted();
        if (wanted.stream().noneMatch(c -> c.upperBoundGrams().isPresent())) {
            return new Condition(
                    ID, TITLE, State.MISSING, "assay of " + evidence.layer().label());
        }
        Content known = wanted.stream()
                .filter(c -> c.upperBoundGrams().isPresent())
                .findFirst()
                .orElseThrow();
        return new Condition(ID, TITLE, State.MET, known.substance() + ": " + known.evidence());
    }
}
