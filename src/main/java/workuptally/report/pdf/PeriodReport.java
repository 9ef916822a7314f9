package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.period.PeriodReview;
import workuptally.model.InputFile;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.PdfDocument;
import workuptally.report.pdf.layout.PdfOptions;

/**
 * The accounts of a period as a document to read, sign and file: what it cost on page one, then solvents, streams, containers, the spans before,
 * and what the figures rest on. Archivable and accessible as the review is; it names no person.
 */
public final class PeriodReport {
    private PeriodReport() {}

    /**
     * Writes the report.
     *
     * @param review what is reported
     * @param options paper, decimal mark, attachment
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public static void write(PeriodReview review, PdfOptions options, OutputStream out) throws IOException {
        String days = review.span().from() + " to " + review.span().to();
        String title = "Period account: " + days;
        String about = "a person decides; settings and sources stand under Basis · period " + days + " · "
                + count(review.books().size(), "book");
        String hashes = review.books().stream()
                .flatMap(b -> b.files().stream())
                .map(InputFile::sha256)
                .collect(Collectors.joining());
        new PdfDocument(
                        title,
                        review.toolVersion(),
                        about,
                        Optional.of(review.span().to()),
                        hashes)
                .write(options, flow -> fill(flow, review, title), out);
    }

    private static void fill(PageFlow flow, PeriodReview review, String title) {
        Look look = flow.look();
        PdfReport.section(flow, new PeriodPage(look, review, title).blocks());
        PdfReport.section(flow, new PeriodAccountBlocks(look, review).blocks());
        PdfReport.section(flow, new PeriodTrend(look, review).blocks());
        PdfReport.section(flow, new PeriodBasis(look, review).blocks());
    }

    /** A number with its noun, {@code 1 run}, {@code 2 runs}. */
    static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
