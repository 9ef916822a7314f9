package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.hazards.HazardNote;
import workuptally.model.Severity;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.pdf.pictures.RunMaps;
import workuptally.report.view.labels.LabelText;
import workuptally.report.view.labels.PlannedLabels;
import workuptally.tally.bench.Plan;

/**
 * A sheet for the bench: for each planned run what to weigh, the steps, what to expect, boxes to fill in for each layer, and labels. Archivable
 * and accessible as the review is.
 */
public final class BenchSheet {
    private BenchSheet() {}

    /**
     * Writes the sheet.
     *
     * @param review the review of a book; only its planned runs are used
     * @param options paper and decimal mark
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(Review review, PdfOptions options, OutputStream out) throws IOException {
        String title = "Bench sheet: " + review.book().name();
        PdfReport.write(review, options, title, flow -> fill(flow, options.paper(), review, title), out);
    }

    /** The runs that a sheet is about. */
    public static List<RunReview> planned(Review review) {
        return review.runs().stream().filter(r -> r.tally().plan().isPresent()).toList();
    }

    private static void fill(PageFlow flow, PdfOptions.Paper paper, Review review, String title) {
        Look look = flow.look();
        List<RunReview> runs = planned(review);
        RunPlaces places = new RunPlaces(review.runs());
        List<Block> head = new ArrayList<>();
        head.add(new Heading(look, Heading.Level.TITLE, title, Optional.of("top")));
        head.add(new Paragraph(
                look,
                runs.isEmpty()
                        ? "The book has no planned run."
                        : "Filled in by hand: each row of boxes is a row of the Charges, Workup, Layers or Isolated table of the book, under the"
                                + " same headings. "
                                + SafetyWording.DEFERS));
        flow.add(head);
        for (int i = 0; i < runs.size(); i++) {
            RunReview run = runs.get(i);
            if (i > 0) {
                flow.turn();
            }
            flow.openSection();
            flow.add(blocks(look, places, run));
            BenchForms forms =
                    new BenchForms(look, run.tally().run(), run.tally().plan().orElseThrow());
            flow.addTogether(forms.steps());
            flow.addTogether(forms.layers());
            flow.addTogether(forms.lots());
            flow.closeSection();
        }
        labels(flow, paper, runs);
    }

    /** Labels of all runs together: sheets to cut up, of which few are half empty. */
    private static void labels(PageFlow flow, PdfOptions.Paper paper, List<RunReview> runs) {
        List<LabelText> labels = new ArrayList<>();
        runs.forEach(run -> labels.addAll(PlannedLabels.of(run, flow.look().figures())));
        if (labels.isEmpty()) {
            return;
        }
        String title = "Labels for " + runs.get(0).id()
                + (runs.size() > 1 ? " to " + runs.get(runs.size() - 1).id() : "");
        PdfReport.section(
                flow,
                List.of(LabelSheet.of(
                        flow.look(),
                        paper,
                        Heading.Level.SECTION,
                        title,
                        "By the plan and the reference data",
                        labels)));
    }

    private static List<Block> blocks(Look look, RunPlaces places, RunReview run) {
        Plan plan = run.tally().plan().orElseThrow();
        String reaction = run.tally().run().head().reaction();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(
                look,
                Heading.Level.SECTION,
                reaction.isBlank() ? run.id() : run.id() + "  " + reaction,
                places.of(run.id())));
        blocks.add(new Paragraph(look, who(run), look.body().in(look.palette().soft())));
        stops(look, run, blocks);
        PlanBlocks parts = new PlanBlocks(look, run, plan);
        blocks.addAll(parts.amounts(true));
        blocks.addAll(parts.steps());
        blocks.add(look.subheading("Where the layers go"));
        blocks.addAll(new RunMaps(look, run).blocks());
        blocks.addAll(parts.funnels());
        // what is to be said of a portion as a whole stands on its label
        blocks.addAll(new HazardBlocks(look)
                .of(run.hazards().stream().filter(n -> !isOnALabel(plan, n)).toList()));
        return blocks;
    }

    private static boolean isOnALabel(Plan plan, HazardNote note) {
        return plan.layers().stream().anyMatch(layer -> note.isOfPortion(layer.label()));
    }

    private static String who(RunReview run) {
        StringJoiner who = new StringJoiner(" · ");
        run.tally().run().head().date().ifPresent(d -> who.add("planned for " + d));
        if (!run.tally().run().head().chemist().isBlank()) {
            who.add(run.tally().run().head().chemist());
        }
        who.add("begun on: ____________");
        who.add("by: ____________");
        return who.toString();
    }

    private static void stops(Look look, RunReview run, List<Block> blocks) {
        run.findings().stream()
                .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.HOLD)
                .forEach(f -> blocks.add(new Paragraph(
                        look,
                        "Settle first (" + f.severity().word() + "): "
                                + look.wording().of(f.seen()) + ". "
                                + look.wording().of(f.action()),
                        look.body().inBold())));
    }
}
