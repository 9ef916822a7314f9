package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.HazardNote;
import workuptally.judgement.SafetyWording;

/** Hazard notes, never without the sentence that defers to those who know better. */
final class HazardBlocks {
    private final Look look;

    HazardBlocks(Look look) {
        this.look = look;
    }

    List<Block> of(List<HazardNote> notes) {
        List<Block> blocks = new ArrayList<>();
        if (notes.isEmpty()) {
            return blocks;
        }
        blocks.add(look.subheading("Hazard notes"));
        blocks.add(Paragraph.lead(look, SafetyWording.DEFERS, look.caption()));
        List<List<TableCell>> rows = new ArrayList<>();
        for (HazardNote note : notes) {
            rows.add(List.of(TableCell.bold(note.subject()), TableCell.of(words(note))));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(TableColumn.word("Material or operation"), TableColumn.text("Statements, caution (source)")),
                rows));
        return blocks;
    }

    private static String words(HazardNote note) {
        String statements = note.statements().isEmpty() ? "No statement listed." : String.join(" ", note.statements());
        return statements + " " + note.caution() + (note.source().isBlank() ? "" : " (" + note.source() + ")");
    }
}
