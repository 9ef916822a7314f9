package workuptally.reference.waste;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the rules for waste streams look at in a layer.
 *
 * @param phase word of the phase as in Layers: organic, aqueous, solid, rag, distillate, mother liquor
 * @param holds material classes that are in it, each with the material it comes from
 * @param aboveHalogenLimit true where its halogenated solvent is above the limit of the book
 * @param halogenatedMassPercent halogenated solvent, mass %
 * @param organicMassPercent organic solvent, mass %
 * @param acidMassPercent organic acid that serves as a solvent, mass %
 * @param pH as measured
 * @param pHAsTyped the same as typed, empty without
 * @param makeUp how much is known of it
 * @param unread parts of its stated composition that no table knows, as typed; where the composition is contradicted, what it leaves out
 * @param origin where a solid comes from
 * @param originWords the same for a reader
 */
public record LayerFacts(
        String phase,
        Map<String, String> holds,
        boolean aboveHalogenLimit,
        double halogenatedMassPercent,
        double organicMassPercent,
        double acidMassPercent,
        OptionalDouble pH,
        String pHAsTyped,
        MakeUp makeUp,
        List<String> unread,
        Optional<Origin> origin,
        String originWords) {

    /** How much is known of a layer. */
    public enum MakeUp {
        /** Its parts are listed. */
        KNOWN,
        /** Its amount is known, its parts are not. */
        UNLISTED,
        /** Neither is known. */
        UNKNOWN,
        /** A part of what is stated has a name that no table knows. */
        UNREAD,
        /** What is stated leaves out what must be in it. */
        CONTRADICTED
    }

    /** Where a solid comes from. */
    public enum Origin {
        /** A drying agent filtered off. */
        DRYING_CAKE,
        /** A sorbent or filter aid. */
        SORBENT,
        /** Any other solid. */
        OTHER
    }
}
