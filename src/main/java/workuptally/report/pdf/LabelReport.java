package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.labels.LabelText;

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
        PdfReport.write(review, options, title, flow -> fill(flow, options.paper(), review, title), out);
    }

    private static void fill(PageFlow flow, PdfOptions.Paper paper, Review review, String title) {
        Look look = flow.look();
        List<LabelText> labels = new ArrayList<>(LabelText.ofLayers(review, look.figures()));
        labels.addAll(LabelText.ofContainers(review, look.figures()));
        if (labels.isEmpty()) {
            flow.add(List.of(
                    new Heading(look, Heading.Level.TITLE, title, Optional.of("top")),
                    new Paragraph(look, "The book has no kept layer and no container."),
                    new Paragraph(look, SafetyWording.DEFERS)));
            return;
        }
        flow.add(List.of(LabelSheet.of(look, paper, Heading.Level.TITLE, title, "By the record", labels)));
    }
}
