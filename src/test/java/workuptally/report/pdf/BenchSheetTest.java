package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.wording.Wording;
import workuptally.tally.bench.Plan;

@Tag("slow")
class BenchSheetTest {
    private static final float LABEL_MARGIN = 12;

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
        List<String> rows = BenchSheet.planned(review).stream()
                .flatMap(r -> layers(r).stream().map(BenchSheetTest::row))
                .toList();
        for (Plan.ExpectedLayer layer : plan.layers()) {
            String row = row(layer);
            assertEquals(Collections.frequency(rows, row), PdfText.count(text, PdfText.dense(row)), row);
            String label = planned(review).id()
                    + layer.label()
                    + layer.phase().map(p -> p.word()).orElse("phase: ________");
            assertEquals(1, PdfText.count(text, PdfText.dense(label)), label);
        }
        assertEquals(rows.size(), PdfText.count(text, PdfText.dense("Owner: ________")), "owner lines");
    }

    private static List<Plan.ExpectedLayer> layers(RunReview run) {
        return run.tally().plan().orElseThrow().layers();
    }

    private static String row(Plan.ExpectedLayer layer) {
        String phase = layer.phase().map(p -> p.word()).orElse("________");
        return layer.label() + phase + "(" + layer.step().number() + ")";
    }

    /** Columns of the book left out of a form; the rest must stand in it under the same names in the same order. */
    private static String headings(String table, Set<String> leftOut) throws IOException {
        String header = Files.readAllLines(Path.of("input-templates", "csv", table + ".csv"))
                .get(0)
                .replace("\uFEFF", "");
        return PdfText.dense(
                Stream.of(header.split(",")).filter(c -> !leftOut.contains(c)).collect(Collectors.joining(" ")));
    }

    @Test
    void boxesAreHeadedLikeTheColumnsOfTheBookInTheirOrder() throws IOException {
        String text = PdfText.dense(sheet(InventedReviews.demoWeek(), PdfOptions.Paper.A4));
        Set<String> unsaid = Set.of("Run", "Net (g)", "Composition", "Balance", "Volume uncertainty (mL)");
        Set<String> afterwards = Set.of("Review by", "Status", "Released by");
        Set<String> layers = new HashSet<>(unsaid);
        layers.addAll(afterwards);
        assertTrue(text.contains(headings("layers", layers)), headings("layers", layers));
        String workup = headings(
                "workup",
                Set.of(
                        "Run",
                        "From",
                        "Material",
                        "Portions",
                        "Molarity (mol/L)",
                        "Density (g/mL)",
                        "Gives organic",
                        "Gives aqueous",
                        "Gives other",
                        "Notes"));
        assertTrue(text.contains(workup), workup);
        String isolated = headings(
                "isolated",
                Set.of("Run", "Net (g)", "Assay (% w/w)", "Relative standard uncertainty (%)", "Stated yield (%)"));
        assertTrue(text.contains(isolated), isolated);
    }

    @Test
    void portionWhoseMakeUpIsNotFollowedNamesWhatItMayHoldAndItsHazards() throws IOException {
        String text = PdfText.dense(sheet(InventedReviews.demoWeek(), PdfOptions.Paper.A4));
        int cake = text.indexOf(PdfText.dense("R26-049 K1"));
        String label = text.substring(cake, text.indexOf("Owner", cake));
        assertTrue(label.contains(PdfText.dense("of tert-butyl methyl ether, magnesium sulfate, anhydrous")), label);
        assertTrue(label.contains(PdfText.dense("Highly flammable liquid and vapour.")), label);
        assertTrue(label.contains(PdfText.dense("Causes severe skin burns and eye damage.")), label);
        assertFalse(label.contains(PdfText.dense(". Flammable liquid")), "said by the graver statement");
    }

    /** A run with forty washes; each is one row of the steps, of the steps as done, and gives two layers. */
    private static Review manySteps(Path folder) throws IOException, UnreadableBookException {
        StringBuilder workup = new StringBuilder(
                "Run,Step,Operation,From,Material,Portions,Volume (mL),Funnel (mL),Gives organic,Gives aqueous,Gives other\n"
                        + "X1,1,dilute,RM,toluene,1,50,,,,RM\n");
        for (int i = 2; i <= 41; i++) {
            String from = i == 2 ? "RM" : "O" + (i - 1);
            workup.append("X1,%d,wash,%s,water,1,20,250,O%d,A%d,%n".formatted(i, from, i, i));
        }
        Map<String, String> tables = Map.of(
                "runs", "Run,Date,Reaction,Kind,Status\nX1,2026-03-02,many washes,reaction,planned\n",
                "products", "Run,Product,Wanted,Formula,Coefficient,Skeleton\nX1,acetanilide,yes,C8H9NO,1,aniline 1\n",
                "charges",
                        "Run,Material,Role,Formula,Coefficient,Planned amount,Planned unit\nX1,aniline,substrate,C6H7N,1,4.66,g\n",
                "isolated", "Run,Lot,Product,Stage,From,Gross (g),Tare (g)\n",
                "workup", workup.toString());
        for (Map.Entry<String, String> table : tables.entrySet()) {
            Files.writeString(folder.resolve(table.getKey() + ".csv"), table.getValue());
        }
        return new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void fortyStepsAllStandOnTheSheetAndNothingOverlaps(PdfOptions.Paper paper, @TempDir Path folder) throws Exception {
        byte[] pdf = sheet(manySteps(folder), paper);
        String text = PdfText.dense(pdf);
        for (int i = 2; i <= 41; i++) {
            String from = i == 2 ? "RM" : "O" + (i - 1);
            assertEquals(
                    1, PdfText.count(text, i + "wash" + from + "20\u00A0mLwater".replace("\u00A0", "")), "step " + i);
            assertEquals(1, PdfText.count(text, "O" + i + "organic(" + i + "),"), "layer of step " + i);
        }
        assertEquals(80, PdfText.count(text, PdfText.dense("Owner: ________")));
        PdfReportTest.assertTidy(pdf, paper, LABEL_MARGIN);
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFUA_1));
    }

    /** The demo's plan of isopentyl acetate: 123 and 111 mL in a funnel of 125 mL, limit 75 %. */
    @Test
    void funnelsAboveTheirLimitAreCountedAndDrawn() throws IOException {
        String text = PdfText.dense(sheet(InventedReviews.demoWeek(), PdfOptions.Paper.A4));
        assertTrue(text.contains(PdfText.dense("Funnels: 2 above the limit")), text);
    }

    @Test
    void stopsAreToBeSettledFirstAndCautionsStandWithTheSentenceThatDefers() throws IOException {
        Review review = InventedReviews.demoWeek();
        String text = PdfText.dense(sheet(review, PdfOptions.Paper.A4));
        for (Finding finding : planned(review).findings()) {
            if (finding.severity() == Severity.STOP) {
                assertTrue(
                        text.contains(PdfText.dense("Settle first (stop): " + Wording.POINT.of(finding.seen()))),
                        Wording.POINT.of(finding.seen()));
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
        PdfReportTest.assertTidy(pdf, paper, LABEL_MARGIN);
    }

    @Test
    void emptySheetIsArchivableAndAccessible() throws IOException, VeraPDFException {
        byte[] pdf = sheet(InventedReviews.empty(), PdfOptions.Paper.A4);
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFA_3_A));
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFUA_1));
    }
}
