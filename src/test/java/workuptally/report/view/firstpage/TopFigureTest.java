package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.report.view.lines.YieldAverages;
import workuptally.report.view.wording.ReadableNumbers;

/** What page one says was recovered and put in, over runs that go on in each other. */
class TopFigureTest {
    private static final ReadableNumbers NUMBERS = new ReadableNumbers('.');

    /**
     * X1: 10.00 g S to 18.0 of 20.0 g P, 90 %. X2: 8.00 g of its lot, 40 mmol, to 9.60 of 12.0 g Q (300 g/mol), 80 %. X3: all of the
     * Q purified to 9.00 g, no yield of a reaction. By hand 10.0 g P and 9.0 g Q are still there; (90 + 32) of (100 + 40) mmol were found.
     */
    private static SmallBook campaign(String lotOfX2, String lotOfX3) {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "CR1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "100");
        next(book, "X2", "reaction", "P", "200", "8.00", lotOfX2, "Q");
        book.row(
                "isolated", "Run", "X2", "Lot", "CR1", "Product", "Q", "Stage", "crude", "Net", "9.60", "Assay", "100");
        next(book, "X3", "separation", "Q", "300", "9.60", lotOfX3, "Q");
        return book.row(
                "isolated", "Run", "X3", "Lot", "P1", "Product", "Q", "Stage", "crude", "Net", "9.00", "Assay", "100");
    }

    private static void next(
            SmallBook book,
            String run,
            String kind,
            String from,
            String molarMass,
            String grams,
            String lot,
            String to) {
        book.row(
                        "runs",
                        "Run",
                        run,
                        "Date",
                        "2026-03-03",
                        "Chemist",
                        "C1",
                        "Reaction",
                        from,
                        "Kind",
                        kind,
                        "Status",
                        "isolated")
                .row("products", "Run", run, "Product", to, "Wanted", "yes", "Molar mass", "300", "Coefficient", "1")
                .row(
                        "charges",
                        "Run",
                        run,
                        "Material",
                        from,
                        "Role",
                        kind.equals("separation") ? "component" : "substrate",
                        "Molar mass",
                        molarMass,
                        "Coefficient",
                        "1",
                        "Actual amount",
                        grams,
                        "Actual unit",
                        "g",
                        "Supplier lot",
                        lot);
    }

    @ParameterizedTest
    @CsvSource({"X1 CR1,X2 CR1", "'X1 CR1, part',x2-cr1", "ex X1,''"})
    void whatGoesOnInTheBookIsCountedOnce(String lotOfX2, String lotOfX3) {
        TopFigure recovered =
                TopFigure.of(campaign(lotOfX2, lotOfX3).review(), NUMBERS).get(2);
        assertEquals("19.0\u00A0g", recovered.value());
        assertTrue(recovered.detail().startsWith("not carried on in this book; "), recovered.detail());
    }

    /** A lot number of a supplier, and a number that only begins with the name of a run, are no lots of the book. */
    @ParameterizedTest
    @CsvSource({"K-88,K-89", "X11 CR1,X22 CR1"})
    void boughtMaterialIsNotCarriedOn(String lotOfX2, String lotOfX3) {
        TopFigure recovered =
                TopFigure.of(campaign(lotOfX2, lotOfX3).review(), NUMBERS).get(2);
        assertEquals("36.6\u00A0g", recovered.value());
        assertFalse(recovered.detail().contains("carried on"), recovered.detail());
    }

    /** Released by somebody, or all of it transferred under whatever status: neither is kept. */
    @ParameterizedTest
    @CsvSource({
        "kept,'',of 2 kept; a person decides",
        "released,'','of 1 kept, 1 gone; a person decides'",
        "kept,50.00,'of 1 kept, 1 gone; a person decides'",
        "kept,20.00,of 2 kept; a person decides",
    })
    void layerThatHasGoneIsNotKept(String status, String transferredGrams, String detail) {
        SmallBook book = campaign("", "")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", status)
                .but("layers", "Released by", "N1")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Net", "50.00", "Status", "kept");
        if (!transferredGrams.isEmpty()) {
            book.row("containers", "Container", "W1", "Waste stream", "aqueous, neutral", "Capacity", "10")
                    .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W1", "Status", "done")
                    .but("transfers", "Amount", transferredGrams);
        }
        assertEquals(detail, TopFigure.of(book.review(), NUMBERS).get(1).detail());
    }

    @Test
    void shareIsTheOneThatStandsBesideTheYields() {
        Review review = campaign("X1 CR1", "X2 CR1").review();
        String detail = TopFigure.of(review, NUMBERS).get(2).detail();
        assertTrue(detail.contains("87.1\u00A0% of theory over 2 yields"), detail);
        assertTrue(YieldAverages.of(review, NUMBERS, 200).contains("87.1\u00A0%"));
    }

    /** 600 mL of an eluent of 0.792 g/mL: 475 g, which stand in no other figure of page one. */
    @Test
    void solventOfAPurificationIsSaid() {
        Review review = campaign("", "")
                .row("workup", "Run", "X1", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "CR1")
                .row(
                        "workup",
                        "Run",
                        "X1",
                        "Step",
                        "2",
                        "Operation",
                        "crystallise",
                        "From",
                        "CR1",
                        "Material",
                        "methanol",
                        "Volume",
                        "600",
                        "Gives other",
                        "S1")
                .row("workup", "Run", "X1", "Step", "3", "Operation", "filter", "From", "S1", "Gives other", "P1+ML1")
                .row(
                        "isolated",
                        "Run",
                        "X1",
                        "Lot",
                        "P1",
                        "Product",
                        "P",
                        "Stage",
                        "purified",
                        "From",
                        "P1",
                        "Net",
                        "17.00",
                        "Assay",
                        "100")
                .review();
        TopFigure solvent = TopFigure.of(review, NUMBERS).get(3);
        assertTrue(
                solvent.detail().replace('\u00A0', ' ').contains("+ 0.475 kg in purifications"),
                solvent + " " + review.period().solvents());
    }

    /** A list of yields tells no step and no layer: what nobody wrote down is not nothing. */
    @Test
    void whatIsNotRecordedIsNotZero() {
        SmallBook list = SmallBook.reaction()
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "20", "Actual unit", "mL")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "purified", "Net", "12.00");
        List<TopFigure> top = TopFigure.of(list.review(), NUMBERS);
        assertTrue(
                top.get(2).detail().endsWith("layers not recorded"), top.get(2).detail());
        assertTrue(
                top.get(3).detail().startsWith("what became of it is not recorded"),
                top.get(3).detail());
    }

    /** Seven lots without an assay: the reason is said, and not that there is one. */
    @Test
    void reasonOfManyYieldsLeftOutIsSaid() {
        SmallBook list = SmallBook.empty();
        for (int i = 1; i <= 7; i++) {
            String run = "X" + i;
            if (i > 1) {
                list.row("runs", "Run", run, "Kind", "reaction", "Status", "isolated");
            }
            list.row("products", "Run", run, "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                    .row("charges", "Run", run, "Material", "S", "Role", "substrate", "Molar mass", "100")
                    .but("charges", "Coefficient", "1")
                    .but("charges", "Actual amount", "10.00")
                    .but("charges", "Actual unit", "g")
                    .row("isolated", "Run", run, "Lot", "C1", "Product", "P", "Stage", "purified", "Net", "12.00");
        }
        assertEquals(
                "Yields that can be stated: 0. Left out of these: 7 yields (assay not recorded).",
                YieldAverages.of(list.review(), NUMBERS, 60));
    }
}
