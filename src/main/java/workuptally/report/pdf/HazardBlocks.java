package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.HazardNote;
import workuptally.judgement.SafetyWording;

/** Hazard notes, never without the sentence that defers to those who know better. Their sources stand with the basis. */
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
        blocks.add(new HazardColumns(
                look,
                notes.stream().map(HazardNote::subject).toList(),
                notes.stream().map(HazardBlocks::words).toList()));
        return blocks;
    }

    private static String words(HazardNote note) {
        return note.statements().isEmpty()
                ? note.caution()
                : String.join(" ", note.statements()) + " " + note.caution();
    }
}
