package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import workuptally.judgement.Review;
import workuptally.report.pdf.layout.PageFlowTest;
import workuptally.report.pdf.layout.PdfAttachment;
import workuptally.report.pdf.layout.PdfOptions;

/** The machine-checkable rules of ISO 19005-3 (level A) and ISO 14289-1, by an independent validator. */
@Tag("slow")
class PdfReportConformanceTest {
    @ParameterizedTest
    @CsvSource({"0, A4", "1, A4", "12, LETTER", "60, A4", "-1, A4", "-24, LETTER", "-3, A4"})
    void reportIsArchivableAtLevelAAndAccessible(int runs, PdfOptions.Paper paper)
            throws IOException, VeraPDFException {
        byte[] report = bytes(runs, paper);
        assertEquals("", broken(report, PDFAFlavour.PDFA_3_A));
        assertEquals("", broken(report, PDFAFlavour.PDFUA_1));
    }

    /** Sections behind the first hundred pages are written while the document goes on. */
    @Test
    void longDocumentIsArchivableAtLevelAAndAccessible() throws IOException, VeraPDFException {
        byte[] document = PageFlowTest.longDocument();
        assertEquals("", broken(document, PDFAFlavour.PDFA_3_A));
        assertEquals("", broken(document, PDFAFlavour.PDFUA_1));
    }

    /** Proves that the validator does refuse: PDF/A-1 allows no attachment. */
    @Test
    void validatorRefusesTheSameFileAsPdfA1() throws IOException, VeraPDFException {
        assertTrue(broken(bytes(1, PdfOptions.Paper.A4), PDFAFlavour.PDFA_1_A).startsWith("not compliant"));
    }

    private static byte[] bytes(int runs, PdfOptions.Paper paper) throws IOException {
        Review review = switch (runs) {
            case -1 -> InventedReviews.demoWeek();
            case -3 -> CourseBook.withASignal();
            case -24 -> CourseBook.ofTwentyFour();
            default -> InventedReviews.ofRuns(runs);
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Path attached = Files.createTempFile("attached", ".json");
        try {
            PdfAttachment json =
                    PdfAttachment.ofFile("week-10-review.json", Files.writeString(attached, "{\"runs\": []}"));
            PdfReport.write(review, new PdfOptions(paper, PdfOptions.DecimalMark.COMMA, Optional.of(json)), out);
        } finally {
            Files.delete(attached);
        }
        return out.toByteArray();
    }

    static String broken(byte[] pdf, PDFAFlavour flavour) throws IOException, VeraPDFException {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(flavour, 20, false, false, false)) {
            ValidationResult result = validator.validate(parser);
            TreeSet<String> rules = new TreeSet<>();
            for (TestAssertion assertion : result.getTestAssertions()) {
                rules.add(assertion.getRuleId().getClause() + "-"
                        + assertion.getRuleId().getTestNumber() + " " + assertion.getMessage());
            }
            return result.isCompliant() ? "" : "not compliant: " + String.join("; ", rules);
        }
    }
}
