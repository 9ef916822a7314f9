package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.LabelText;

/** Labels to cut out for every kept layer and every container of a book, with the hazards of what each holds. */
public final class LabelReport {
    private LabelReport() {}

    /**
     * Writes the labels.
     *
     * @param review what is reported
     * @param options paper, decimal mark
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(Review review, PdfOptions options, OutputStream out) throws IOException {
        String title = "Labels: " + review.book().name();
        PdfReport.write(review, options, title, flow -> fill(flow, review, title), out);
    }

    private static void fill(PageFlow flow, Review review, String title) {
        Look look = flow.look();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(look, Heading.Level.TITLE, title, Optional.of("top")));
        blocks.add(new Paragraph(
                look,
                "Contents and hazard words follow from the record; compare with the safety data sheets and the local label rules"
                        + " before use. " + SafetyWording.DEFERS));
        add(look, blocks, "Kept layers", LabelText.ofLayers(review, look.figures()));
        add(look, blocks, "Containers", LabelText.ofContainers(review, look.figures()));
        if (blocks.size() == 2) {
            blocks.add(new Paragraph(look, "The book has no kept layer and no container."));
        }
        flow.add(blocks);
    }

    private static void add(Look look, List<Block> blocks, String heading, List<LabelText> labels) {
        if (!labels.isEmpty()) {
            blocks.add(look.heading(heading));
            blocks.addAll(new LabelSheet(look).grid(labels));
        }
    }
}
