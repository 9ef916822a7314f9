package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.hazards.HazardNote;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.pictures.HazardColumns;
import workuptally.report.view.wording.RunNames;

/** Hazard notes, never without the sentence that defers to those who know better. Sources stand with the basis. */
final class HazardBlocks {
    private final Look look;

    HazardBlocks(Look look) {
        this.look = look;
    }

    /** The notes of one run. */
    List<Block> of(List<HazardNote> notes) {
        if (notes.isEmpty()) {
            return List.of();
        }
        return List.of(
                look.subheading("Hazard notes"),
                Paragraph.lead(look, SafetyWording.DEFERS, look.caption()),
                columns(notes));
    }

    /**
     * Notes about what runs do, in columns: each with its runs, since a step or layer has a name in its run only. Runs of one subject stand
     * behind it as the text does.
     */
    HazardColumns columns(Map<HazardNote, Set<String>> runs) {
        Map<String, Map<String, List<String>>> subjects = new LinkedHashMap<>();
        runs.forEach((note, ids) -> subjects.computeIfAbsent(words(note), w -> new LinkedHashMap<>())
                .computeIfAbsent(note.subject(), s -> new ArrayList<>())
                .addAll(ids));
        List<String> leads = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        subjects.forEach((words, bySubject) -> {
            List<String> each = new ArrayList<>();
            bySubject.forEach((subject, ids) -> each.add(RunNames.listed(ids) + ": " + subject));
            String only = bySubject.size() == 1 ? bySubject.keySet().iterator().next() : "";
            leads.add(look.figures().inWords(only.isEmpty() ? String.join("; ", each) : only));
            texts.add(look.figures()
                    .inWords(only.isEmpty() ? words : "(" + RunNames.listed(bySubject.get(only)) + ") " + words));
        });
        return new HazardColumns(look, leads, texts);
    }

    private HazardColumns bySubjects(Map<String, List<String>> subjects) {
        return new HazardColumns(
                look,
                subjects.values().stream()
                        .map(s -> look.figures().inWords(String.join("; ", s)))
                        .toList(),
                subjects.keySet().stream().map(look.figures()::inWords).toList());
    }

    /** Notes in columns; those with the same words stand together under their subjects. */
    HazardColumns columns(List<HazardNote> notes) {
        Map<String, List<String>> subjects = new LinkedHashMap<>();
        for (HazardNote note : notes) {
            subjects.computeIfAbsent(words(note), w -> new ArrayList<>()).add(note.subject());
        }
        return bySubjects(subjects);
    }

    private static String words(HazardNote note) {
        return note.statements().isEmpty()
                ? note.caution()
                : String.join(" ", note.statements()) + " " + note.caution();
    }
}
