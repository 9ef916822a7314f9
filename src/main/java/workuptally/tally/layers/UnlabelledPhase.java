package workuptally.tally.layers;

import workuptally.model.Layer;
import workuptally.model.Step;

/**
 * One of the two phases of a contact, to which the step gives no label and which no later entry takes up: it exists, and nothing records it.
 *
 * @param step the contact
 * @param phase organic or aqueous
 */
public record UnlabelledPhase(Step step, Layer.Phase phase) {
    /** How it is spoken of, for example {@code aqueous layer of step 3}. */
    public String name() {
        return phase.word() + " layer of step " + step.number();
    }
}
