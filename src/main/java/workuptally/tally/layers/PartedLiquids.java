package workuptally.tally.layers;

import java.util.Optional;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Layer.Phase;
import workuptally.model.Run;
import workuptally.model.Step;

/** The two liquids into which a contact parts what it was made of: what the step gives as organic and as aqueous. */
public final class PartedLiquids {
    /** What neither of two liquids from a funnel can be. */
    private static final Set<Phase> NO_LIQUID_OF_A_FUNNEL = Set.of(Phase.SOLID, Phase.DISTILLATE);

    private PartedLiquids() {}

    /** The contact that gives a label as one of its two liquids, if one does. */
    public static Optional<Step> contact(Run run, String label) {
        return run.orderedSteps().stream()
                .filter(StepOutputs::isContact)
                .filter(step -> !step.from().contains(label))
                .filter(step -> step.given().organic().contains(label)
                        || step.given().aqueous().contains(label))
                .findFirst();
    }

    /** The phase as which a step gives a label that stands in one of its two columns. */
    public static Phase given(Step step, String label) {
        return step.given().organic().contains(label) ? Phase.ORGANIC : Phase.AQUEOUS;
    }

    /** True for a phase in Layers that a liquid from a funnel cannot be. */
    public static boolean cannotBe(Phase recorded) {
        return NO_LIQUID_OF_A_FUNNEL.contains(recorded);
    }

    /** The phase that counts for a label: as recorded, but as its contact gives it where a liquid from a funnel cannot be what is recorded. */
    static Optional<Phase> counting(Run run, String label) {
        Optional<Phase> recorded = run.layer(label).flatMap(Layer::phase);
        return recorded.filter(PartedLiquids::cannotBe)
                .flatMap(impossible -> contact(run, label))
                .map(step -> given(step, label))
                .or(() -> recorded);
    }
}
