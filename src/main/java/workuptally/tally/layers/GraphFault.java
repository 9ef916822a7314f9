package workuptally.tally.layers;

import workuptally.model.Place;

/**
 * Something in the steps that does not fit together.
 *
 * @param kind what
 * @param label layer label concerned
 * @param by the step or lot that shows it, {@code step 3}; empty where the layer's own row does
 * @param place where it shows
 */
public record GraphFault(Kind kind, String label, String by, Place place) {

    /** Kinds of fault. */
    public enum Kind {
        /** A step or lot takes a label that nothing gives. */
        UNKNOWN_SOURCE,
        /** A step takes a label that only a later step gives. */
        TAKEN_BEFORE_GIVEN,
        /** A step takes a label that an earlier step has used up. */
        TAKEN_AFTER_CONSUMED,
        /** Two steps give the same label. */
        GIVEN_TWICE,
        /** A row of Layers that no step gives. */
        NEVER_GIVEN,
        /** The status says consumed, but no step consumes it. */
        SAID_CONSUMED,
        /** The status says it is still there, but a step consumed it. */
        SAID_KEPT,
        /** A portion is made from itself. */
        CYCLE
    }
}
