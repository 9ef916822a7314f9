package workuptally.judgement.layers;

import workuptally.judgement.layers.LayerDecision.Condition;

/** One condition on the evidence about a layer. */
interface LayerCondition {
    /** Whether it is met, not met, missing or not asked, with the figure or entry it rests on. */
    Condition judge(LayerEvidence evidence);
}
