package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.hazards.HazardNote;

/**
 * Hazard notes, never without the sentence that defers to those who know better. In a document about several runs the notes about
 * materials stand once, behind the runs, and each run names them. Sources stand with the basis.
 */
final class HazardBlocks {
    private static final String PLACE = "hazards";
    private static final String TITLE = "Hazard notes about materials";

    private final Look look;
    private final Set<HazardNote> shared;

    /** For a document in which each run has its notes to itself. */
    HazardBlocks(Look look) {
        this.look = look;
        this.shared = Set.of();
    }

    /** For a document about all runs of a review. */
    HazardBlocks(Look look, Review review) {
        this.look = look;
        this.shared = review.runs().size() < 2
                ? Set.of()
                : review.runs().stream()
                        .flatMap(r -> r.hazards().stream())
                        .filter(HazardNote::ofMaterial)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The notes of one run. */
    List<Block> of(List<HazardNote> notes) {
        List<Block> blocks = new ArrayList<>();
        if (notes.isEmpty()) {
            return blocks;
        }
        blocks.add(look.subheading("Hazard notes"));
        blocks.add(Paragraph.lead(look, SafetyWording.DEFERS, look.caption()));
        List<HazardNote> own = notes.stream().filter(n -> !shared.contains(n)).toList();
        if (!own.isEmpty()) {
            blocks.add(columns(own));
        }
        StringJoiner elsewhere = new StringJoiner("; ", "Materials, in full under “" + TITLE + "”: ", ".");
        notes.stream()
                .filter(shared::contains)
                .distinct()
                .map(HazardNote::subject)
                .forEach(elsewhere::add);
        if (own.size() < notes.size()) {
            blocks.add(Paragraph.link(
                    look, elsewhere.toString(), look.caption().in(look.palette().link()), PLACE));
        }
        return blocks;
    }

    /** The notes about materials; empty if there are none. */
    List<Block> shared() {
        if (shared.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Gap(8),
                new Heading(look, Heading.Level.SECTION, TITLE, Optional.of(PLACE)),
                Paragraph.lead(look, SafetyWording.DEFERS, look.caption()),
                columns(List.copyOf(shared)));
    }

    /** Notes with the same words stand together under their subjects. */
    private HazardColumns columns(List<HazardNote> notes) {
        Map<String, List<String>> subjects = new LinkedHashMap<>();
        for (HazardNote note : notes) {
            subjects.computeIfAbsent(words(note), w -> new ArrayList<>()).add(note.subject());
        }
        return new HazardColumns(
                look,
                subjects.values().stream().map(s -> String.join("; ", s)).toList(),
                List.copyOf(subjects.keySet()));
    }

    private static String words(HazardNote note) {
        return note.statements().isEmpty()
                ? note.caution()
                : String.join(" ", note.statements()) + " " + note.caution();
    }
}
