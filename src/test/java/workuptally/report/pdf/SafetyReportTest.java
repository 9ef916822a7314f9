package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.hazards.MixtureStatements;
import workuptally.model.Severity;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.labels.LabelText;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.wording.ReadableNumbers;

/** The account for safety staff, and the labels. */
@Tag("slow")
class SafetyReportTest {
    private static final float LABEL_MARGIN = 12;

    private static byte[] safety(Review review, PdfOptions.Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SafetyReport.write(review, new PdfOptions(paper, PdfOptions.DecimalMark.COMMA, Optional.empty()), out);
        return out.toByteArray();
    }

    private static byte[] labels(Review review, PdfOptions.Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LabelReport.write(review, new PdfOptions(paper, PdfOptions.DecimalMark.POINT, Optional.empty()), out);
        return out.toByteArray();
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void bothAreArchivableAccessibleAndTidy(PdfOptions.Paper paper) throws IOException, VeraPDFException {
        for (Review review : List.of(InventedReviews.demoWeek(), InventedReviews.empty(), InventedReviews.ofRuns(12))) {
            for (byte[] pdf : List.of(safety(review, paper), labels(review, paper))) {
                if (paper == PdfOptions.Paper.A4) { // what the standards ask does not depend on the size of the paper
                    assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFA_3_A));
                    assertEquals("", PdfReportConformanceTest.broken(pdf, PDFAFlavour.PDFUA_1));
                }
                PdfReportTest.assertTidy(pdf, paper, LABEL_MARGIN);
            }
        }
    }

    /** A transfer that fits and brings solvent says what the label lacks, where it is said that it fits. */
    @Test
    void transferThatFitsSaysWhatTheLabelLacks() throws IOException {
        String text = PdfText.dense(safety(InventedReviews.demoWeek(), PdfOptions.Paper.A4));
        assertTrue(
                text.contains("nothingrecordedstandsagainstit.Shouldtheresponsiblepersondecideforit,addtothelabel:"),
                text);
    }

    /** Twelve labels of 99.1 mm × 42.3 mm, fourteen of 4 in × 1⅓ in: nothing is set smaller than 8 pt, nothing is left out. */
    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void labelsStandWholeOnCommonSheetsInLegibleType(PdfOptions.Paper paper) throws IOException {
        Review week = InventedReviews.demoWeek();
        byte[] pdf = labels(week, paper);
        String text = PdfText.dense(pdf);
        ReadableNumbers numbers = new ReadableNumbers('.');
        List<LabelText> all = new ArrayList<>(LabelText.ofLayers(week, numbers));
        all.addAll(LabelText.ofContainers(week, numbers));
        for (LabelText label : all) {
            assertTrue(text.contains(PdfText.dense(label.name())), label.name());
            for (String word : (label.contents() + " " + label.hazards()).split(" ")) {
                assertTrue(text.contains(PdfText.dense(word)), label.name() + ": " + word);
            }
        }
        int places = paper == PdfOptions.Paper.A4 ? 12 : 14;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertTrue(document.getNumberOfPages() <= Math.ceil(1.15 * all.size() / places), "sheets");
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PdfText.glyphs(document, page).stream()
                        .filter(g -> g.getYDirAdj() < paper.heightPoints() - 40)
                        .forEach(g -> assertTrue(g.getFontSizeInPt() > 7.99, () -> g + " " + g.getFontSizeInPt()));
            }
        }
    }

    @Test
    void everyContainerHazardAndTransferIsInTheAccount() throws IOException {
        Review week = InventedReviews.demoWeek();
        String text = PdfText.dense(safety(week, PdfOptions.Paper.A4));
        assertTrue(text.contains(PdfText.dense(SafetyWording.DEFERS)));
        assertTrue(text.contains(PdfText.dense(SafetyWording.WASTE_DETERMINATION)));
        for (ContainerReview container : week.containers()) {
            assertTrue(text.contains("Container" + container.id() + ","), container.id());
        }
        week.runs().stream()
                .flatMap(r -> r.hazards().stream())
                .forEach(n -> assertTrue(
                        text.contains(PdfText.dense(new ReadableNumbers(',').inWords(n.caution()))), n.subject()));
        week.book().transfers().forEach(t -> assertTrue(text.contains(PdfText.dense(t.id())), t.id()));
    }

    @ParameterizedTest
    @EnumSource(PdfOptions.Paper.class)
    void aContainerAndTheFormToSignStandOnOnePage(PdfOptions.Paper paper) throws IOException {
        Review week = InventedReviews.demoWeek();
        int containers = 0;
        try (PDDocument document = Loader.loadPDF(safety(week, paper))) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = PdfText.dense(stripper.getText(document));
                int here = 0;
                for (ContainerReview container : week.containers()) {
                    here += PdfText.count(text, "Container" + container.id() + ",");
                }
                assertEquals(here, PdfText.count(text, "Localwastecode:"), "forms on page " + page);
                assertEquals(here, PdfText.count(text, "Safetycontactatcollection"), "signatures on page " + page);
                containers += here;
            }
        }
        assertEquals(week.containers().size(), containers);
    }

    @Test
    void purificationIsALineBesideTheAccountOfSolvents() throws IOException {
        String text = PdfText.dense(safety(InventedReviews.demoWeek(), PdfOptions.Paper.A4));
        assertTrue(text.contains(PdfText.dense("Used in purifications, beside this account: 2-propanol")), "line");
        assertFalse(text.contains(PdfText.dense("Not found (kg) Purification")), "column");
    }

    @Test
    void noProposalWithAStopOrHoldCountsAmongThoseThatFit() throws IOException {
        Review week = InventedReviews.demoWeek();
        List<ProposalLine> lines = ProposalLine.of(week);
        for (ProposalLine line : lines) {
            boolean urgent = week.findings().stream()
                    .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.HOLD)
                    .anyMatch(f -> f.subject().transfer().equals(line.transfer()));
            assertEquals(urgent, line.group() != ProposalLine.Group.FITS && urgent, line.transfer());
        }
        assertTrue(lines.stream().anyMatch(l -> l.group() == ProposalLine.Group.FITS));
        assertTrue(lines.stream().anyMatch(l -> l.group() == ProposalLine.Group.DO_NOT));
    }

    /** A wash with a few per cent of a solvent is no highly flammable liquid; the organic layer of the same run is. */
    @Test
    void labelBearsTheHazardsOfWhatTheLayerHolds() throws IOException {
        List<LabelText> labels = LabelText.ofLayers(InventedReviews.demoWeek(), new ReadableNumbers('.'));
        LabelText wash = labels.stream()
                .filter(l -> l.name().equals("R26-042  A2"))
                .findFirst()
                .orElseThrow();
        LabelText organic = labels.stream()
                .filter(l -> l.name().equals("R26-042  O0"))
                .findFirst()
                .orElseThrow();
        assertFalse(wash.hazards().contains("Highly flammable"), wash.hazards());
        assertTrue(wash.hazards().contains("flammable vapour"), wash.hazards());
        assertTrue(organic.hazards().contains("Highly flammable"), organic.hazards());
    }

    /** Bottled liquid of which no step tells: a blank hazard line would read as no hazard. */
    @Test
    void labelOfALayerOfUnknownMakeUpNamesWhatWentIn() {
        Review review = SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "diethyl ether",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "50",
                        "Actual unit",
                        "mL")
                .row("layers", "Layer", "X9", "Phase", "rag", "Net", "20.00", "Status", "kept")
                .review();
        LabelText label = LabelText.ofLayers(review, new ReadableNumbers('.')).stream()
                .filter(l -> l.name().endsWith("  X9"))
                .findFirst()
                .orElseThrow();
        assertTrue(label.hazards().startsWith("Make-up not known: label by what went in ("), label.hazards());
        assertTrue(label.hazards().contains("diethyl ether"), label.hazards());
        assertTrue(label.hazards().contains("Extremely flammable"), label.hazards());
    }

    @Test
    void graverStatementTakesTheMilderOfItsKindAway() {
        HazardNote solvent = new HazardNote(
                "ether", List.of("H224 Extremely flammable.", "H302 Harmful if swallowed."), "", "", true, List.of());
        HazardNote other = new HazardNote("spirit", List.of("H225 Highly flammable."), "", "", true, List.of());
        Map<String, Double> grams = new LinkedHashMap<>();
        grams.put("ether", 50.0);
        grams.put("spirit", 40.0);
        grams.put("water", 10.0);
        assertEquals(
                List.of("Extremely flammable.", "Harmful if swallowed."),
                MixtureStatements.of(grams, List.of(solvent, other), List.of()));
        grams.put("water", 5000.0);
        assertEquals(List.of(), MixtureStatements.of(grams, List.of(solvent, other), List.of()), "below 1 % of each");
    }
}
