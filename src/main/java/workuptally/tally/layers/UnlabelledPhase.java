package workuptally.tally.layers;

import workuptally.model.Layer;
import workuptally.model.Step;

/**
 * One of the two phases of a contact, or the liquor that a solid was parted from, to which the step gives no label and which no later entry
 * takes up: it exists, and nothing records it.
 *
 * @param step the step
 * @param phase organic or aqueous; a mother liquor where a solid was parted from it
 */
public record UnlabelledPhase(Step step, Layer.Phase phase) {
    /** True for what a solid was parted from. */
    public boolean isLiquor() {
        return phase == Layer.Phase.MOTHER_LIQUOR;
    }

    /** How it is spoken of, for example {@code aqueous layer of step 3} or {@code filtrate of step 3}. */
    public String name() {
        return (isLiquor() ? "filtrate" : phase.word() + " layer") + " of step " + step.number();
    }
}
