package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.LabelGrid;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.view.LabelText;
import workuptally.report.view.PlannedLabels;

/** Labels to cut out, of portions that a planned run will give or of what is kept. */
final class LabelSheet {
    private final Look look;

    LabelSheet(Look look) {
        this.look = look;
    }

    /** Of the portions that a planned run will give. */
    List<Block> planned(RunReview run) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(look.heading("Labels for " + run.id()));
        blocks.add(new Paragraph(
                look,
                "Contents and hazard words follow from the plan and the reference data; compare with the safety data sheets and the"
                        + " local label rules before use.",
                look.caption()));
        blocks.addAll(grid(PlannedLabels.of(run, look.figures())));
        return blocks;
    }

    /** Frames of labels. */
    List<Block> grid(List<LabelText> labels) {
        return LabelGrid.of(
                look,
                labels.stream()
                        .map(l -> new LabelGrid.Label(l.name(), l.contents(), l.hazards(), l.made(), l.owner()))
                        .toList());
    }
}
