package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.FindingCode;
import workuptally.model.NamedIn;
import workuptally.report.view.firstpage.TopFigure;
import workuptally.report.view.wording.ReadableNumbers;

/** Mother liquors of X1 and X2, 1.50 and 1.00 g P in them, worked up together as X3. */
class PortionsOfOtherRunsTest {
    private static final ReadableNumbers NUMBERS = new ReadableNumbers('.');

    @ParameterizedTest
    @CsvSource({
        "X1 ML1+X2 ML1,'','',consumed",
        "RM,X1 ML1 + X2 ML1,'',consumed",
        "RM,'X1 ML1, ML2 and X2 ML1','',used up",
        "RM,'',liquors X1 ML1 and x2-ml1,consumed",
    })
    void liquorsThatAnotherRunNamesHaveGoneThere(String from, String lot, String material, String status) {
        Review review = pooled(from, lot, material, status).review();
        assertEquals(List.of(), codes(review, "X1"), "X1");
        assertEquals(List.of(), codes(review, "X2"), "X2");
        assertFalse(codes(review, "X3").contains(FindingCode.LAYER_UNKNOWN_SOURCE));
        assertTrue(review.runs().get(0).decisions().isEmpty(), "no kept layer of X1");
        double found = review.runs().get(0).tally().closures().get(0).percent().value();
        assertEquals(100 * (17.0 + 1.5) / 20, found, 0.01, "the liquor counts as found in its own run");
    }

    /** 17.0, 18.0 and 2.00 g of lots; of 2.50 g in the liquors nothing is in a layer any more. */
    @ParameterizedTest
    @CsvSource({"X1 ML1+X2 ML1,''", "RM,X1 ML1 + X2 ML1", "RM,''"})
    void whatCameFromLiquorsIsSubtractedFromNoLot(String from, String lot) {
        TopFigure recovered = TopFigure.of(pooled(from, lot, "", "consumed").review(), NUMBERS)
                .get(2);
        assertEquals("37.0\u00A0g", recovered.value());
        assertTrue(recovered.detail().endsWith("in layers 0\u00A0g"), recovered.detail());
    }

    @ParameterizedTest
    @CsvSource({"RM,''", "RM,X2 ML1", "RM,X11 ML1", "RM,X1 ML11"})
    void liquorThatNoOtherRunNamesStaysWanting(String from, String lot) {
        assertTrue(codes(pooled(from, lot, "", "consumed").review(), "X1").contains(FindingCode.LAYER_SAID_CONSUMED));
    }

    @Test
    void portionOfAnotherRunBesideOwnOnesIsAskedAbout() {
        SmallBook book = pooled("O1+X1 ML1", "", "", "consumed");
        assertTrue(codes(book.review(), "X3").contains(FindingCode.LAYER_UNKNOWN_SOURCE));
    }

    @Test
    void textBelongsToTheNameBeforeIt() {
        NamedIn<String> names = new NamedIn<>(List.of("PC-1", "PC-2"), n -> n);
        assertEquals(
                Map.of("PC-2", " ml3 + ", "PC-1", " ml1, ml2"), names.behindNames("from PC-2 ML3 + pc-1 ML1, ML2"));
    }

    private static List<FindingCode> codes(Review review, String run) {
        return review.findings().stream()
                .filter(f -> f.run().equals(run))
                .map(f -> f.code())
                .filter(c -> c == FindingCode.LAYER_SAID_CONSUMED
                        || c == FindingCode.LAYER_LEFT_EARLY
                        || c == FindingCode.LAYER_UNKNOWN_SOURCE)
                .toList();
    }

    private static SmallBook pooled(String from, String lot, String material, String status) {
        SmallBook book = SmallBook.reaction();
        liquor(book, "X1", "17.00", "1.50", status);
        book.row("runs", "Run", "X2", "Date", "2026-03-03", "Chemist", "C1", "Reaction", "again", "Kind", "reaction")
                .but("runs", "Status", "isolated")
                .row("products", "Run", "X2", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row("charges", "Run", "X2", "Material", "S", "Role", "substrate", "Molar mass", "100")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", "10.00")
                .but("charges", "Actual unit", "g");
        liquor(book, "X2", "18.00", "1.00", status);
        return book.row("runs", "Run", "X3", "Date", "2026-03-04", "Chemist", "C1", "Reaction", "liquors")
                .but("runs", "Kind", "separation")
                .but("runs", "Status", "isolated")
                .row("products", "Run", "X3", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row("charges", "Run", "X3", "Material", "P", "Role", "component", "Molar mass", "200")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", "2.50")
                .but("charges", "Actual unit", "g")
                .but("charges", "Supplier lot", lot)
                .row("workup", "Run", "X3", "Step", "1", "Operation", "strip", "From", from, "Gives other", "R1")
                .row("workup", "Run", "X3", "Step", "2", "Operation", "dilute", "From", "R1", "Material", material)
                .but("workup", "Gives other", "O1")
                .row("isolated", "Run", "X3", "Lot", "C2", "Product", "P", "Stage", "crop", "From", "O1")
                .but("isolated", "Net", "2.00")
                .but("isolated", "Assay", "100");
    }

    private static void liquor(SmallBook book, String run, String lotGrams, String liquorGrams, String status) {
        book.row("workup", "Run", run, "Step", "1", "Operation", "crystallise", "From", "RM", "Gives other", "C1+ML1")
                .row("layers", "Run", run, "Layer", "ML1", "Phase", "mother liquor", "Net", "50.00", "Status", status)
                .row("assays", "Run", run, "Sample", "ML1", "Substance", "P", "Method", "HPLC", "Unit", "g")
                .but("assays", "Result", liquorGrams)
                .row("isolated", "Run", run, "Lot", "C1", "Product", "P", "Stage", "crop", "Net", lotGrams)
                .but("isolated", "Assay", "100")
                .but("isolated", "From", "RM");
    }
}
