package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.InputFile;
import workuptally.model.Limit;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.PdfDocument;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.lines.BareRuns;

/**
 * The review as a document to read, sign and file: archivable (PDF/A-3a) and accessible (PDF/UA-1). The same review and options give
 * the same bytes.
 */
public final class PdfReport {
    private static final float GOOD_PART = 0.38f;

    private PdfReport() {}

    /**
     * Writes the report.
     *
     * @param review what is reported
     * @param options paper, decimal mark, attachment
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(Review review, PdfOptions options, OutputStream out) throws IOException {
        String title = "Workup review: " + review.book().name();
        write(review, options, title, flow -> fill(flow, review, title), out);
    }

    /** Writes a document about a review: what every document has around what the caller fills in. */
    static void write(Review review, PdfOptions options, String title, Consumer<PageFlow> content, OutputStream out)
            throws IOException {
        String hashes = review.book().files().stream().map(InputFile::sha256).collect(Collectors.joining());
        new PdfDocument(title, review.toolVersion(), about(review), date(review), hashes).write(options, content, out);
    }

    private static void fill(PageFlow flow, Review review, String title) {
        Look look = flow.look();
        BareRuns bare = BareRuns.of(review);
        List<RunReview> runs = bare.others(review);
        RunPlaces places = new RunPlaces(runs);
        section(flow, new FirstPage(look, review, places, title).blocks(flow.fullHeight()));
        List<Block> second = new SecondPage(look, review, runs, places).blocks(flow.fullHeight());
        boolean onOnePage = fits(flow, second);
        if (!onOnePage) {
            flow.turn();
        }
        section(flow, second);
        if (!runs.isEmpty() && !(onOnePage && fits(flow, new RunBlocks(look, review, runs.get(0), places).blocks()))) {
            flow.turn();
        }
        for (RunReview run : runs) {
            flow.openSection();
            flow.addTogether(new RunBlocks(look, review, run, places).blocks());
            flow.closeSection();
        }
        section(flow, new BareRunsTable(look, bare, review.period().coverageFactor()).blocks());
        section(flow, new SeriesPage(look, review, places).blocks());
        section(flow, new BasisSummary(look, review).blocks());
    }

    /** True where a good part of the page is free and holds what comes. */
    private static boolean fits(PageFlow flow, List<Block> next) {
        float height = 0;
        for (Block block : next) {
            height += block.height();
        }
        return flow.remaining() > flow.fullHeight() * GOOD_PART && height <= flow.remaining();
    }

    static void section(PageFlow flow, List<Block> blocks) {
        if (blocks.isEmpty()) {
            return;
        }
        flow.openSection();
        flow.add(blocks);
        flow.closeSection();
    }

    private static String about(Review review) {
        String inputs = review.book().files().stream()
                .map(f -> f.sha256().substring(0, Math.min(12, f.sha256().length())))
                .limit(1)
                .collect(Collectors.joining());
        String more = review.book().files().size() > 1
                ? " (first of " + review.book().files().size() + " files)"
                : "";
        String hash = inputs.isEmpty() ? "" : " · input SHA-256 " + inputs + "…" + more;
        return "a person decides · " + review.book().name() + hash;
    }

    private static Optional<LocalDate> date(Review review) {
        try {
            return Optional.of(
                    LocalDate.parse(review.book().limits().text(Limit.AS_OF).strip()));
        } catch (DateTimeParseException e) {
            return review.book().runs().stream()
                    .flatMap(r -> r.head().date().stream())
                    .max(Comparator.naturalOrder());
        }
    }
}
