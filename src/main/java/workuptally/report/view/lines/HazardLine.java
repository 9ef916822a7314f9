package workuptally.report.view.lines;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.hazards.HazardNote;
import workuptally.report.view.wording.Words;

/** The hazard notes of a run in two lines that say what to read first. */
public final class HazardLine {
    private static final int OPERATIONS_CHARACTERS = 70;
    private static final int MATERIALS_CHARACTERS = 80;

    private HazardLine() {}

    /** The lines; empty for a run without notes. */
    public static Optional<String> of(List<HazardNote> notes) {
        if (notes.isEmpty()) {
            return Optional.empty();
        }
        String silence = notes.stream()
                .filter(HazardNote::isSilence)
                .map(n -> "There is " + n.subject() + ". ")
                .collect(Collectors.joining());
        String operations = listed(notes, false, OPERATIONS_CHARACTERS);
        String materials = listed(notes, true, MATERIALS_CHARACTERS);
        StringJoiner of = new StringJoiner("; and of ", "Read in the account for safety staff what is said of ", ". ");
        of.setEmptyValue("");
        Stream.of(operations, materials).filter(words -> !words.isEmpty()).forEach(of::add);
        return Optional.of(silence + of + "Safety data sheets and local rules come first.");
    }

    private static String listed(List<HazardNote> notes, boolean ofMaterial, int most) {
        List<String> subjects = notes.stream()
                .filter(n -> n.ofMaterial() == ofMaterial && !n.isSilence())
                .map(HazardNote::subject)
                .distinct()
                .toList();
        return Words.listed(subjects, "; ", most, more -> "and " + more + " more");
    }
}
