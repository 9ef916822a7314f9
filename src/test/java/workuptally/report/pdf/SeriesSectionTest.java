package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import workuptally.judgement.Review;
import workuptally.tally.series.SeriesTally;

class SeriesSectionTest {
    private static String text(Review review) throws IOException {
        return PdfText.dense(PdfText.bytes(review, PdfOptions.standard()));
    }

    private static String section(Review review) throws IOException {
        String text = text(review);
        return text.substring(text.lastIndexOf("Repeatedpreparations"));
    }

    private static String firstPage(Review review) throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfText.bytes(review, PdfOptions.standard()))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            return PdfText.dense(stripper.getText(document));
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
    void signalHasALineOnPageOne() throws IOException {
        String first = firstPage(CourseBook.withASignal());
        assertTrue(first.contains("SeriesM-07:R-356.0%,outsidethelimits"), first);
    }

    @Test
    void seriesWithoutASignalHasNoneOnPageOneButItsChartBehindTheRuns() throws IOException {
        Review review = InventedReviews.demoWeek();
        assertFalse(firstPage(review).contains("Repeatedpreparations"));
        assertTrue(section(review).contains(PdfText.dense("SeriesM-03No. 1 to 10: earlier results")));
        assertTrue(section(review).contains("upperlimit91.8"));
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
        String line = "SeriesCourseB:outliers" + together.outliers().get(0) + ";";
        assertTrue(text(review).contains(line), line);
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void nothingIsClippedOrOverlapsWithAClassOrASignal(PdfOptions.Paper paper) throws IOException {
        PdfReportTest.assertTidy(CourseBook.ofTwentyFour(), paper);
        PdfReportTest.assertTidy(CourseBook.withASignal(), paper);
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void nothingIsClippedOrOverlapsWithNamesLongerThanALine(PdfOptions.Paper paper) throws IOException {
        PdfReportTest.assertTidy(CourseBook.withLongNames(), paper);
    }
}
