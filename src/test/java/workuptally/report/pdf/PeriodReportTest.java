package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.PeriodReview;
import workuptally.report.pdf.layout.PdfAttachment;
import workuptally.report.pdf.layout.PdfOptions;

@Tag("slow")
class PeriodReportTest {
    private static final String LONG = "a-group-with-a-very-long-name-indeed/and a folder of its own/week ";
    private static final byte[] JSON = "{\"runs\": []}".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private static byte[] bytes(PeriodReview review, PdfOptions options) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PeriodReport.write(review, options, out);
        return out.toByteArray();
    }

    private static String text(PeriodReview review) throws IOException {
        return PdfText.dense(bytes(review, PdfOptions.standard()));
    }

    private static void assertHas(String text, String part) {
        assertTrue(text.contains(PdfText.dense(part)), part);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 8, 60})
    void everyRowOfTheAccountsIsInTheText(int books) throws IOException {
        PeriodReview review = InventedPeriods.ofBooks(books, "week-");
        String text = text(review);
        review.totals().solvents().forEach(s -> assertHas(text, s.solvent()));
        review.totals().waste().forEach(w -> assertHas(text, w.streamName() + w.layers()));
        review.containers().forEach(c -> assertHas(text, c.container() + c.wasteStream()));
        review.before().earlier().stream()
                .filter(e -> review.before().earlier().stream().anyMatch(other -> other.runs() > 0))
                .forEach(
                        e -> assertHas(text, e.span().from() + " to " + e.span().to()));
        for (PeriodReview.BookLine book : review.books()) {
            book.files().forEach(f -> assertHas(text, f.sha256()));
            assertHas(text, book.book());
            assertHas(text, book.remark());
        }
        review.corrections().forEach(c -> assertHas(text, c.book() + c.when() + c.record()));
        review.limits().stream()
                .filter(l -> l.limit().set())
                .forEach(l -> assertHas(text, l.limit().limit().title()));
        review.basis().stream().filter(b -> b.kind() == BasisRow.Kind.EQUATION).forEach(b -> assertHas(text, b.name()));
        long references = review.basis().stream()
                .filter(b -> b.kind() == BasisRow.Kind.REFERENCE)
                .count();
        assertHas(text, references + " reference value");
        assertFalse(text.contains("(memory)"), text);
        review.classes().forEach(c -> assertHas(text, c.series() + c.together().runs()));
    }

    /** A container last listed in March whose limit ends in between: for a later period nobody knows that it is within it. */
    @Test
    void limitThatPassedSinceTheLastBookIsNotKept() throws IOException {
        ContainerShare container = InventedPeriods.ofBooks(8, "week-").containers().stream()
                .filter(c -> !c.overdue()
                        && c.open().dueOn().isPresent()
                        && !c.fill().isAboveLimit())
                .findFirst()
                .orElseThrow();
        LocalDate due = container.open().dueOn().orElseThrow();
        assertFalse(PeriodAccountBlocks.standing(container, due).contains("limit passed"));
        assertTrue(
                PeriodAccountBlocks.standing(container, due.plusDays(1)).startsWith("limit passed unless collected"));
    }

    @Test
    void rowsInAreRowsOut() throws IOException {
        PeriodReview review = InventedPeriods.ofBooks(60, "week-");
        String text = text(review);
        long containers = PdfText.count(text, "2026-03-06within")
                + PdfText.count(text, "2026-03-06overdue")
                + PdfText.count(text, "2026-03-06above")
                + PdfText.count(text, "2026-03-06due");
        assertEquals(30, review.containers().size());
        assertEquals(review.containers().size(), containers, "containers");
        int runs = review.books().get(0).runs();
        assertEquals(61, PdfText.count(text, "of" + runs + "000000"), "a hash for each book that was read");
        String body = text.replace("period2026-03-02to2026-03-08·", "");
        assertEquals(5, PdfText.count(body.substring(body.indexOf("Solventputin(kg)")), "to2026-"), "periods");
    }

    @Test
    void pageOneSetsTheTwoIntensitiesSideBySide() throws IOException {
        String text = text(InventedPeriods.ofBooks(1, "week-"));
        // sum over sum and mean of the same runs, as the key of the invented week has them
        assertHas(text, "Process mass intensity, sum over sum 22.7 g/g");
        assertHas(text, "Mean of the runs' intensities 46.7 g/g");
        assertHas(text, "a separation, recovery instead of yield 1 R26-041");
        assertHas(text, SafetyWording.WASTE_DETERMINATION);
    }

    @Test
    void folderWithoutBooksGivesADocumentThatSaysSo() throws IOException {
        String text = text(InventedPeriods.ofBooks(0, ""));
        assertHas(text, "The folder holds no book.");
        assertHas(text, "there is no trend to show");
        assertHas(text, "Solvent put in none recorded");
    }

    @Test
    void periodWithoutRunsIsNoZeroInTheTrend() throws IOException {
        String text = text(InventedPeriods.ofBooks(60, "week-"));
        assertHas(text, "2026-02-02 to 2026-02-08 0 – no run – no run");
        assertHas(text, "Waste by stream: this period beside the mean of the");
    }

    @Test
    void noPersonIsNamed() throws IOException {
        Review demo = InventedReviews.demoWeek();
        String text = PdfText.spaced(bytes(InventedPeriods.ofBooks(8, "week-"), PdfOptions.standard()));
        Set<String> persons = new TreeSet<>();
        demo.runs().forEach(r -> persons.add(r.tally().run().head().chemist()));
        demo.book().corrections().forEach(c -> persons.add(c.who()));
        assertTrue(persons.size() > 1, persons::toString);
        persons.forEach(p -> assertFalse(text.contains(" " + p + " "), p));
    }

    @Test
    void decimalCommaReplacesTheDecimalPoint() throws IOException {
        PdfOptions comma = new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.COMMA, Optional.empty());
        String text = PdfText.dense(bytes(InventedPeriods.ofBooks(8, "week-"), comma));
        assertHas(text, "sum over sum 22,7 g/g");
        assertFalse(text.contains("22.7"));
    }

    @Test
    void reportOrdersNobodyToLetGo() throws IOException {
        String text = text(InventedPeriods.ofBooks(8, "week-")).toLowerCase(Locale.ROOT);
        for (String phrase : List.of("discard", "dispose", "safe to", "throw away", "ok to bin", "approved")) {
            assertFalse(text.contains(PdfText.dense(phrase)), phrase);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, A4", "1, A4", "1, LETTER", "60, A4", "60, LETTER"})
    void nothingIsClippedAndNothingOverlaps(int books, PdfOptions.Paper paper) throws IOException {
        PdfOptions options = new PdfOptions(paper, PdfOptions.DecimalMark.POINT, Optional.empty());
        PdfReportTest.assertTidy(bytes(InventedPeriods.ofBooks(books, "week-"), options), paper);
        PdfReportTest.assertTidy(bytes(InventedPeriods.ofBooks(books, LONG), options), paper);
    }

    @Test
    void equalPeriodsHaveEqualBytes() throws IOException {
        PeriodReview review = InventedPeriods.ofBooks(8, "week-");
        assertArrayEquals(bytes(review, attached()), bytes(InventedPeriods.ofBooks(8, "week-"), attached()));
    }

    private PdfOptions attached() throws IOException {
        Path file = Files.write(folder.resolve("staged.json"), JSON);
        return new PdfOptions(
                PdfOptions.Paper.A4,
                PdfOptions.DecimalMark.POINT,
                Optional.of(PdfAttachment.ofFile("period.json", file)));
    }

    @Test
    void fileAttachedFromTheDiskComesOutAsItWentIn() throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(InventedPeriods.ofBooks(1, "week-"), attached()))) {
            assertArrayEquals(
                    JSON,
                    document.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getNames()
                            .get("period.json")
                            .getEmbeddedFile()
                            .toByteArray());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 8})
    void reportIsArchivableAndAccessible(int books) throws IOException, VeraPDFException {
        byte[] pdf = bytes(InventedPeriods.ofBooks(books, LONG), attached());
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFA_3_A));
        assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFUA_1));
    }
}
