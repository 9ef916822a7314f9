package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.tally.RunTally;

/** Lot C1 of 18.00 g with 90 % of P (200 g/mol) and 5 % of S by assays. */
class LotContentsTest {
    @Test
    void lotHoldsItsProductAndWhatElseWasAssayed() {
        List<Content> contents = contents(book()).get("C1");
        Content product = contents.get(0);
        assertEquals("P", product.substance());
        assertEquals(16.2, product.massGrams().orElseThrow().value(), 1e-9);
        // 16.2 g over 200 g/mol
        assertEquals(81, product.amountMillimoles().orElseThrow().value(), 1e-9);
        assertEquals(Content.Kind.MEASURED, product.kind());
        assertEquals("assay", product.evidence());
        double u = product.massGrams().orElseThrow().standardUncertainty();
        assertEquals(16.2 + 1.645 * u, product.upperBoundGrams().orElseThrow(), 1e-3 * u);
        Content other = contents.get(1);
        assertEquals("S", other.substance());
        assertEquals(0.9, other.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(2, contents.size());
    }

    @Test
    void assayOfItsProductIsNotASecondContent() {
        SmallBook book = book().row("assays", "Sample", "C1", "Substance", "p", "Method", "HPLC", "Result", "88")
                .but("assays", "Unit", "% w/w");
        assertEquals(
                List.of("P", "S"),
                contents(book).get("C1").stream().map(Content::substance).toList());
    }

    @ParameterizedTest
    @CsvSource({"crude, true", "crop, true", "'', true", "purified, false"})
    void lotThatEndsTheWorkupIsItsCrudeUnlessPurified(String stage, boolean crude) {
        assertEquals(
                crude,
                book().but("isolated", "Stage", stage).tally().lots().get(0).isCrude());
    }

    @Test
    void lotMadeFromAnotherIsNoCrude() {
        SmallBook book =
                book().row("isolated", "Lot", "C2", "Product", "P", "Stage", "crop", "From", "C1", "Net", "15");
        assertEquals(
                List.of(true, false),
                book.tally().lots().stream().map(LotTally::isCrude).toList());
    }

    @Test
    void yieldThatIsABoundIsAContentThatIsOne() {
        SmallBook book = book().but("isolated", "Assay", "").but("isolated", "Stage", "purified");
        Content product = contents(book).get("C1").get(0);
        assertEquals(Content.Kind.BOUND, product.kind());
        assertEquals("assay not recorded", product.evidence());
    }

    @Test
    void productWithoutAMolarMassHasNoAmount() {
        Content product =
                contents(book().first("products", "Molar mass", "")).get("C1").get(0);
        assertEquals(16.2, product.massGrams().orElseThrow().value(), 1e-9);
        assertTrue(product.amountMillimoles().isEmpty());
    }

    @Test
    void crudeWithoutAnAssayHoldsAnUnknownAmountOfItsProduct() {
        List<Content> contents = contents(book().but("isolated", "Assay", "")).get("C1");
        assertEquals(List.of("S"), contents.stream().map(Content::substance).toList());
    }

    @Test
    void rowsOfOneLotAreOneLot() {
        SmallBook book = book().row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "60")
                .row("isolated", "Lot", "C1", "Product", "Q", "Stage", "crude", "Net", "18.00")
                .but("isolated", "Assay", "4")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "crude", "Net", "1.00")
                .but("isolated", "Assay", "50");
        Map<String, List<Content>> contents = contents(book);
        assertEquals(List.of("C1", "C2"), List.copyOf(contents.keySet()));
        assertEquals(
                List.of("P", "Q", "S"),
                contents.get("C1").stream().map(Content::substance).toList());
        assertEquals(0.5, contents.get("C2").get(0).massGrams().orElseThrow().value(), 1e-9);
    }

    private static Map<String, List<Content>> contents(SmallBook book) {
        RunTally tally = book.tally();
        Run run = tally.run();
        Readings readings = new Readings();
        Limits limits = Limits.defaults();
        MolarMassAccount molarMasses = new MolarMassAccount(run, SmallBook.substances());
        Calibrations calibrations = new Calibrations(readings, new InstrumentUncertainty(limits));
        return new LotContents(
                        new ContentsAccount(run, readings, limits, calibrations, molarMasses, new Omissions()),
                        molarMasses)
                .of(tally.lots());
    }

    private static SmallBook book() {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00")
                .but("isolated", "Assay", "90")
                .row("assays", "Sample", "C1", "Substance", "S", "Method", "HPLC", "Result", "5", "Unit", "% w/w");
    }
}
