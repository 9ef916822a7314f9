package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.report.pdf.layout.PdfAttachment;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.firstpage.TopFigure;
import workuptally.report.view.lines.RunFindings;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.NotComputed;

@Tag("slow")
class PdfReportTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 12, 200})
    void everyRunAndWhatIsToSettleInItIsInTheText(int runs) throws IOException {
        Review review = InventedReviews.ofRuns(runs);
        String text = PdfText.dense(PdfText.bytes(review, PdfOptions.standard()));
        for (RunReview run : review.runs()) {
            Run entry = run.tally().run();
            assertTrue(text.contains(PdfText.dense(run.id() + entry.head().reaction())), run.id());
            for (RunFindings line : RunFindings.toSettle(run.findings(), Wording.POINT)) {
                assertTrue(text.contains(PdfText.dense(line.seen())), line.seen());
                assertTrue(text.contains(PdfText.dense(line.action())), line.action());
            }
            for (LayerDecision decision : run.decisions()) {
                assertTrue(text.contains(decision.outcome().word().replace(" ", "")), decision.layer());
            }
            for (NotComputed missing : run.tally().notComputed()) {
                assertTrue(text.contains(PdfText.dense(missing.what() + ", because " + missing.because())));
            }
        }
    }

    @Test
    void detailsOfTheOpeningFiguresAreWhole() throws IOException {
        Review review = InventedReviews.demoWeek();
        String text = PdfText.dense(PdfText.bytes(review, PdfOptions.standard()));
        for (TopFigure figure : TopFigure.of(review, new ReadableNumbers('.'))) {
            assertTrue(text.contains(PdfText.dense(figure.detail())), figure.detail());
        }
    }

    @Test
    void likeFindingsOfARunAreOneLineWithTheirList() {
        Finding one = InventedReviews.finding("R-1", Severity.HOLD, "rag-not-assayed", "rag R1", "Assay it.");
        Finding two = InventedReviews.finding("R-1", Severity.HOLD, "rag-not-assayed", "rag R2", "Assay it.");
        List<RunFindings> lines = RunFindings.toSettle(List.of(one, two), Wording.POINT);
        assertEquals(1, lines.size());
        assertEquals("rag R1; rag R2", lines.get(0).seen());
        assertEquals("Assay it.", lines.get(0).action());
    }

    @Test
    void emptyBookGivesAReportThatSaysSo() throws IOException {
        String text = PdfText.dense(PdfText.bytes(InventedReviews.empty(), PdfOptions.standard()));
        assertTrue(text.contains(PdfText.dense("The book holds no runs.")));
        assertTrue(text.contains(InventedReviews.HASH));
    }

    @Test
    void tenRunsStandOnOnePageForTheSupervisor() throws IOException {
        byte[] pdf = PdfText.bytes(InventedReviews.ofRuns(10), PdfOptions.standard());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            StringBuilder first = new StringBuilder();
            for (TextPosition glyph : PdfText.glyphs(document, 1)) {
                first.append(glyph.getUnicode());
            }
            assertTrue(first.toString().contains("C.Safetycontact"), first.toString());
        }
    }

    @Test
    void equalReviewsHaveEqualBytes() throws IOException {
        byte[] first = PdfText.bytes(InventedReviews.ofRuns(12), PdfOptions.standard());
        byte[] second = PdfText.bytes(InventedReviews.ofRuns(12), PdfOptions.standard());
        assertArrayEquals(first, second);
    }

    @Test
    void reportsWrittenAtTheSameTimeHaveTheBytesOfOneWrittenAlone() throws Exception {
        Review week = InventedReviews.demoWeek();
        byte[] alone = PdfText.bytes(week, PdfOptions.standard());
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Callable<byte[]> one = () -> PdfText.bytes(week, PdfOptions.standard());
            for (Future<byte[]> written : threads.invokeAll(Collections.nCopies(8, one))) {
                assertArrayEquals(alone, written.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void decimalCommaReplacesEveryDecimalPointOfOurNumbers() throws IOException {
        PdfOptions options = new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.COMMA, Optional.empty());
        String text = PdfText.dense(PdfText.bytes(InventedReviews.ofRuns(1), options));
        assertTrue(text.contains("isolatedF-0564,2%"));
        assertFalse(text.contains("isolatedF-0564.2%"));
    }

    @Test
    void moreThanWasChargedIsNoNegativeRest() throws IOException {
        String text = PdfText.dense(PdfText.bytes(InventedReviews.ofRuns(2), PdfOptions.standard()));
        assertTrue(text.contains("over;4.6%toomuch(0.66gtriphenylmethanol)"), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"discard", "dispose", "safe to", "throw away", "ok to bin", "approved"})
    void reportOrdersNobodyToLetGo(String phrase) throws IOException {
        String text = PdfText.dense(PdfText.bytes(InventedReviews.ofRuns(12), PdfOptions.standard()));
        assertFalse(text.toLowerCase(Locale.ROOT).contains(PdfText.dense(phrase)), phrase);
    }

    @ParameterizedTest
    @CsvSource({"0, A4", "1, LETTER", "12, A4", "12, LETTER", "60, A4"})
    void nothingIsClippedAndNothingOverlaps(int runs, PdfOptions.Paper paper) throws IOException {
        assertTidy(InventedReviews.ofRuns(runs), paper);
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void nothingIsClippedOrOverlapsInTheDemoWeek(PdfOptions.Paper paper) throws IOException {
        assertTidy(InventedReviews.demoWeek(), paper);
    }

    static void assertTidy(Review review, PdfOptions.Paper paper) throws IOException {
        PdfOptions options = new PdfOptions(paper, PdfOptions.DecimalMark.POINT, Optional.empty());
        assertTidy(PdfText.bytes(review, options), paper);
    }

    /** Every glyph within the margins, none over another. */
    static void assertTidy(byte[] pdf, PdfOptions.Paper paper) throws IOException {
        assertTidy(pdf, paper, 35);
    }

    /** The same with another margin left and right: sheets of labels reach nearer to the edge. */
    static void assertTidy(byte[] pdf, PdfOptions.Paper paper, float side) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                List<TextPosition> glyphs = PdfText.glyphs(document, page);
                for (TextPosition glyph : glyphs) {
                    assertTrue(glyph.getXDirAdj() >= side, () -> "left " + glyph);
                    assertTrue(
                            glyph.getXDirAdj() + glyph.getWidthDirAdj() <= paper.widthPoints() - side,
                            () -> "right " + glyph);
                    assertTrue(glyph.getYDirAdj() >= 36, () -> "top " + glyph);
                    assertTrue(glyph.getYDirAdj() <= paper.heightPoints() - 15, () -> "bottom " + glyph);
                }
                assertEquals("", overlapping(glyphs), "page " + page);
            }
        }
    }

    private static String overlapping(List<TextPosition> unsorted) {
        List<TextPosition> glyphs = unsorted.stream()
                .sorted(Comparator.comparingDouble(TextPosition::getYDirAdj))
                .toList();
        for (int i = 0; i < glyphs.size(); i++) {
            TextPosition a = glyphs.get(i);
            for (int j = i + 1; j < glyphs.size() && glyphs.get(j).getYDirAdj() - a.getYDirAdj() < 12; j++) {
                if (overlap(a, glyphs.get(j))) {
                    return a + " and " + glyphs.get(j) + " at " + a.getXDirAdj() + ", " + a.getYDirAdj();
                }
            }
        }
        return "";
    }

    private static boolean overlap(TextPosition a, TextPosition b) {
        float width = Math.min(a.getXDirAdj() + a.getWidthDirAdj(), b.getXDirAdj() + b.getWidthDirAdj())
                - Math.max(a.getXDirAdj(), b.getXDirAdj());
        float vertical = Math.abs(a.getYDirAdj() - b.getYDirAdj());
        return width > 0.4f * Math.min(a.getWidthDirAdj(), b.getWidthDirAdj())
                && vertical < 0.6f * Math.min(a.getFontSizeInPt(), b.getFontSizeInPt());
    }

    @Test
    void linksAndBookmarksLeadToTheRuns() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfText.bytes(InventedReviews.ofRuns(12), PdfOptions.standard()))) {
            int links = 0;
            List<PDAnnotation> annotations = new ArrayList<>(document.getPage(0).getAnnotations());
            annotations.addAll(document.getPage(1).getAnnotations());
            for (PDAnnotation annotation : annotations) {
                PDActionGoTo action = (PDActionGoTo) ((PDAnnotationLink) annotation).getAction();
                PDNamedDestination name = (PDNamedDestination) action.getDestination();
                PDPage page = document.getDocumentCatalog()
                        .findNamedDestinationPage(name)
                        .getPage();
                assertTrue(document.getPages().indexOf(page) > 0, name.getNamedDestination());
                links++;
            }
            assertTrue(links >= 12, "a link per run on the first two pages: " + links);
            int bookmarks = 0;
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                assertTrue(item.findDestinationPage(document) != null, item.getTitle());
                bookmarks++;
            }
            assertTrue(bookmarks >= 12 + 2, "top, runs, basis: " + bookmarks);
        }
    }

    @Test
    void figuresInSentencesHaveTheDecimalMarkOfTheNumbers() throws IOException {
        Review week = InventedReviews.demoWeek();
        PdfOptions comma = new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.COMMA, Optional.empty());
        assertTrue(PdfText.dense(PdfText.bytes(week, PdfOptions.standard())).contains(PdfText.dense("net 3.824 g")));
        String text = PdfText.dense(PdfText.bytes(week, comma));
        assertTrue(text.contains(PdfText.dense("net 3,824 g")));
        assertTrue(text.contains(PdfText.dense("gross 87,9250 g")), "what was typed has the mark too");
    }

    @Test
    void attachmentComesOutAsItWentIn(@TempDir Path folder) throws IOException {
        byte[] json = "{\"runs\": [1]}".getBytes(StandardCharsets.UTF_8);
        Path attached = Files.write(folder.resolve("attached.json"), json);
        PdfOptions options = new PdfOptions(
                PdfOptions.Paper.A4,
                PdfOptions.DecimalMark.POINT,
                Optional.of(PdfAttachment.ofFile("week-10-review.json", attached)));
        try (PDDocument document = Loader.loadPDF(PdfText.bytes(InventedReviews.ofRuns(1), options))) {
            PDComplexFileSpecification file = document.getDocumentCatalog()
                    .getNames()
                    .getEmbeddedFiles()
                    .getNames()
                    .get("week-10-review.json");
            assertArrayEquals(json, file.getEmbeddedFile().toByteArray());
            assertEquals("Data", file.getCOSObject().getNameAsString(COSName.getPDFName("AFRelationship")));
        }
    }

    @Test
    void unknownCharactersAreReplacedVisiblyAndNamed() throws IOException {
        RunReview run = InventedReviews.plainRun("R-\u6F22");
        Review review = InventedReviews.review(List.of(run), List.of());
        String text = PdfText.dense(PdfText.bytes(review, PdfOptions.standard()));
        assertTrue(text.contains("R-\uFFFDPhenylmagnesium"), text);
        assertTrue(text.contains(PdfText.dense("Characters that the fonts of this document lack are shown as")));
        String plain = PdfText.dense(PdfText.bytes(InventedReviews.ofRuns(12), PdfOptions.standard()));
        assertFalse(plain.contains("\uFFFD"));
    }
}
