package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.Plan;

class BenchSheetTest {
    private static byte[] sheet(Review review, PdfOptions.Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BenchSheet.write(review, new PdfOptions(paper, PdfOptions.DecimalMark.POINT, Optional.empty()), out);
        return out.toByteArray();
    }

    private static RunReview planned(Review review) {
        return BenchSheet.planned(review).get(0);
    }

    @Test
    void everyAmountStepLayerAndLabelOfThePlanIsOnTheSheet() throws IOException {
        Review review = InventedReviews.demoWeek();
        String text = PdfText.dense(sheet(review, PdfOptions.Paper.A4));
        Plan plan = planned(review).tally().plan().orElseThrow();
        plan.weighings().forEach(w -> assertTrue(text.contains(PdfText.dense(w.material() + w.role())), w.material()));
        plan.steps()
                .forEach(s -> assertTrue(
                        text.contains(PdfText.dense(s.step().number()
                                + s.step().operation().orElseThrow().word())),
                        s.step().number()));
        for (Plan.ExpectedLayer layer : plan.layers()) {
            String phase = layer.phase().map(p -> p.word()).orElse("phase: ________");
            String row = layer.label() + phase + ", step " + layer.step().number();
            assertEquals(1, PdfText.count(text, PdfText.dense(row)), row);
            String label = planned(review).id() + layer.label() + phase;
            assertEquals(1, PdfText.count(text, PdfText.dense(label)), label);
        }
        assertEquals(
                plan.layers().size(), PdfText.count(text, PdfText.dense("Owner: ________________")), "owner lines");
    }

    @Test
    void boxesAreHeadedLikeTheColumnsOfTheLayersTable() throws IOException {
        String text = PdfText.dense(sheet(InventedReviews.demoWeek(), PdfOptions.Paper.A4));
        assertTrue(text.contains(PdfText.dense("Position Vessel Volume (mL) Gross (g) Tare (g) Temp. (°C) pH")));
    }

    @Test
    void stopsAreToBeSettledFirstAndCautionsStandWithTheSentenceThatDefers() throws IOException {
        Review review = InventedReviews.demoWeek();
        String text = PdfText.dense(sheet(review, PdfOptions.Paper.A4));
        for (Finding finding : planned(review).findings()) {
            if (finding.severity() == Severity.STOP) {
                assertTrue(text.contains(PdfText.dense("Settle first (stop): " + finding.seen())), finding.seen());
            }
        }
        assertTrue(text.contains(PdfText.dense(SafetyWording.DEFERS)));
    }

    @Test
    void runsWithMeasurementsAreNotOnTheSheet() throws IOException {
        assertFalse(PdfText.dense(sheet(InventedReviews.demoWeek(), PdfOptions.Paper.A4))
                .contains("R26-042"));
    }

    @Test
    void bookWithoutPlannedRunsGivesASheetThatSaysSo() throws IOException {
        String text = PdfText.dense(sheet(InventedReviews.empty(), PdfOptions.Paper.A4));
        assertTrue(text.contains(PdfText.dense("The book has no planned run.")));
    }

    @Test
    void equalReviewsHaveEqualSheets() throws IOException {
        Review review = InventedReviews.demoWeek();
        assertArrayEquals(sheet(review, PdfOptions.Paper.A4), sheet(review, PdfOptions.Paper.A4));
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void sheetIsArchivableAndAccessible(PdfOptions.Paper paper) throws IOException, VeraPDFException {
        byte[] pdf = sheet(InventedReviews.demoWeek(), paper);
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFA_3_A));
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFUA_1));
        PdfReportTest.assertTidy(pdf, paper);
    }

    @Test
    void emptySheetIsArchivableAndAccessible() throws IOException, VeraPDFException {
        byte[] pdf = sheet(InventedReviews.empty(), PdfOptions.Paper.A4);
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFA_3_A));
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFUA_1));
    }
}
