package workuptally.judgement.hazards;

import java.util.List;
import workuptally.reference.hazards.FlashPoint;

/**
 * A caution about a material or an operation of a run. It always defers to the safety data sheet and the local rules.
 *
 * @param subject material or operation
 * @param statements hazard statements with their codes, for example {@code H225 Highly flammable liquid and vapour.}
 * @param caution the caution in a sentence
 * @param source where the statements come from
 * @param ofMaterial true for a note about a material, which says the same in every run
 * @param inWater flash points of its mixtures with water, in order of strength; empty where none are listed
 */
public record HazardNote(
        String subject,
        List<String> statements,
        String caution,
        String source,
        boolean ofMaterial,
        List<FlashPoint> inWater) {
    /** Source of a note that says that no row is held. */
    static final String NO_ROW = "reference table of hazards, no row";

    /** Copies the list, and shares words that are equal in many runs. */
    public HazardNote {
        subject = subject.intern();
        statements = List.copyOf(statements);
        inWater = List.copyOf(inWater);
        caution = caution.intern();
        source = source.intern();
    }

    /** True for a note that says that nothing is known: no reader may leave it out. */
    public boolean isSilence() {
        return source.equals(NO_ROW);
    }

    /** A note about what a run does. */
    public HazardNote(String subject, List<String> statements, String caution, String source) {
        this(subject, statements, caution, source, false, List.of());
    }

    /** Subject of a note about one portion of the run. */
    static String subjectOfPortion(String label) {
        return "layer " + label;
    }

    /** True for a note about that portion as a whole: what its label has to say beside the statements of its parts. */
    public boolean isOfPortion(String label) {
        return !ofMaterial && subject.equals(subjectOfPortion(label));
    }

    /** Of the subject alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return subject.hashCode();
    }
}
