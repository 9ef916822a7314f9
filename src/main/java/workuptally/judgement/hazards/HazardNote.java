package workuptally.judgement.hazards;

import java.util.List;

/**
 * A caution about a material or an operation of a run. It always defers to the safety data sheet and the local rules.
 *
 * @param subject material or operation
 * @param statements hazard statements with their codes, for example {@code H225 Highly flammable liquid and vapour.}
 * @param caution the caution in a sentence
 * @param source where the statements come from
 * @param ofMaterial true for a note about a material, which says the same in every run
 */
public record HazardNote(String subject, List<String> statements, String caution, String source, boolean ofMaterial) {
    /** Copies the list, and shares words that are equal in many runs. */
    public HazardNote {
        subject = subject.intern();
        statements = List.copyOf(statements);
        caution = caution.intern();
        source = source.intern();
    }

    /** A note about what a run does. */
    public HazardNote(String subject, List<String> statements, String caution, String source) {
        this(subject, statements, caution, source, false);
    }

    /** Of the subject alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return subject.hashCode();
    }
}
