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
            rows.add(List.of(
                    TableCell.bold(note.subject()),
                    TableCell.of(note.statements().isEmpty() ? "none listed" : String.join(" ", note.statements())),
                    TableCell.of(note.caution()),
                    TableCell.of(note.source())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.text("Material or operation"),
                        TableColumn.text("Statements"),
                        TableColumn.text("Caution"),
                        TableColumn.text("Source")),
                rows));
        return blocks;
    }
}
