package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.tally.series.SeriesTally;

class SeriesPageTest {
    private static String text(Review review) throws IOException {
        return PdfText.dense(PdfText.bytes(review, PdfOptions.standard()));
    }

    private static String section(Review review) throws IOException {
        String text = text(review);
        return text.substring(text.lastIndexOf("Repeatedpreparations"));
    }

    /** The pages in front of the runs: of a few runs one, else two. */
    private static String inFront(Review review) throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfText.bytes(review, PdfOptions.standard()))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(2);
            String text = PdfText.dense(stripper.getText(document));
            RunReview first = review.runs().get(0);
            int run = text.indexOf(
                    PdfText.dense(first.id() + first.tally().run().head().reaction()));
            return run < 0 ? text : text.substring(0, run);
        }
    }

    @Test
    void everyResultOfASeriesStandsWithItsNumberOnTheChartAndItsSignal() throws IOException {
        Review review = CourseBook.withASignal();
        String section = section(review);
        SeriesTally series = review.series().get(0);
        for (int i = 0; i < series.results().size(); i++) {
            SeriesTally.Result result = series.results().get(i);
            String signals = result.signals().isEmpty() ? "no signal" : String.join("; ", result.signals());
            String number = Integer.toString(series.history().size() + i + 1);
            assertTrue(section.contains(PdfText.dense(result.run() + number + result.product())), section);
            assertTrue(section.contains(PdfText.dense(signals)), signals);
        }
    }

    @Test
    void signalIsTheTitleOfItsChartInFront() throws IOException {
        String second = inFront(CourseBook.withASignal());
        assertTrue(second.contains(PdfText.dense("Series M-07: R-3 with 56.0 %: outside the limits")), second);
    }

    @Test
    void seriesWithoutASignalIsToldInFrontAlone() throws IOException {
        Review review = InventedReviews.demoWeek();
        assertTrue(SeriesPage.isQuiet(review.series().stream()
                .filter(s -> s.series().equals("M-03"))
                .findFirst()
                .orElseThrow()));
        String second = inFront(review);
        assertTrue(second.contains("SeriesM-03:") && second.contains("to91.8%"), second);
        assertFalse(text(review).contains("Repeatedpreparations"));
    }

    @Test
    void classNamesMedianSpreadOutliersAndEqualNumbers() throws IOException {
        Review review = CourseBook.ofTwentyFour();
        SeriesTally.Together together = review.series().get(0).together().orElseThrow();
        assertEquals(1, together.outliers().size(), "the case needs an outlier");
        assertEquals(1, together.copies().size(), "the case needs equal numbers");
        String section = section(review);
        assertTrue(section.contains("Classof24runs:" + together.yields() + "yieldscount"), section);
        assertTrue(section.contains("fromthemedian:" + together.outliers().get(0) + "."), section);
        assertTrue(section.contains("tothelastdigit:" + together.copies().get(0) + "."), section);
        for (String left : together.leftOut()) {
            assertTrue(section.contains(PdfText.dense(left)), left);
        }
        for (SeriesTally.Material material : together.materials()) {
            assertTrue(section.contains(PdfText.dense(material.material() + material.unit())), material.material());
        }
        String line = "outliers:" + together.outliers().get(0) + ";samenumbersasanearlierrun:";
        String second = inFront(review);
        assertTrue(second.contains("ClassCourseB:") && second.contains(line), second);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void nothingIsClippedOrOverlapsWithAClassOrASignal(PdfOptions.Paper paper) throws IOException {
        PdfReportTest.assertTidy(CourseBook.ofTwentyFour(), paper);
        PdfReportTest.assertTidy(CourseBook.withASignal(), paper);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void nothingIsClippedOrOverlapsWithNamesLongerThanALine(PdfOptions.Paper paper) throws IOException {
        PdfReportTest.assertTidy(CourseBook.withLongNames(), paper);
    }
}
