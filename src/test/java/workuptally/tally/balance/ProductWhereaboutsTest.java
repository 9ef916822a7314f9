package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;
import workuptally.tally.balance.Closure.Candidate;
import workuptally.tally.balance.Closure.Looked;

/**
 * Where 2.00 g of P may be, of a theory of 20.00 g and 18.00 g in the lot. What is missing is 2.00 g and 1.645·u, with u of the closure √(0.2² +
 * 0.3² + 1² + 0.1111²) % of 90 % = 0.96192 %, 0.19238 g; less the 0.00005 g that half of a limit counts for: 2.31642 g.
 */
class ProductWhereaboutsTest {
    private static final double MISSING = 2.31642;

    private static SmallBook lot() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.0001", "Unit", "g")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "100")
                .but("isolated", "From", "O1")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static Optional<Candidate> at(SmallBook book, String place) {
        List<Candidate> all = book.tally().closures().get(0).candidates();
        return all.stream().filter(c -> c.place().equals(place)).findFirst();
    }

    /** 90 % converted leaves 10 % of theory, 2.00 g, 40 % more than is missing; all, none and limits leave nothing to tell of. */
    @ParameterizedTest
    @CsvSource({"90, 2.0", "99, 0.2", "60, 2.31642", "100, -1", "0, -1", "'', -1", ">95, -1", "<90, -1"})
    void startingMaterialMayBeLeftAsTheConversionSays(String conversion, double high) {
        Optional<Candidate> left =
                at(lot().first("runs", "Conversion", conversion), "starting material that did not react");
        assertEquals(high >= 0, left.isPresent());
        left.ifPresent(c -> {
            assertEquals(0, c.lowGrams());
            assertEquals(high, c.highGrams(), 1e-4);
            assertEquals("assay the crude for the starting material", c.settledBy());
        });
    }

    @Test
    void whoAssayedTheStartingMaterialKnowsWhatIsLeft() {
        SmallBook book = lot().first("runs", "Conversion", "90")
                .row("assays", "Sample", "A1", "Substance", "S", "Method", "HPLC", "Result", "0.01", "Unit", "g");
        assertTrue(at(book, "starting material that did not react").isEmpty());
        assertTrue(at(book, "unreacted S").isEmpty());
        assertTrue(at(lot(), "unreacted S").isPresent());
    }

    /** 1 to 2 % of 20 g. */
    @Test
    void someIsLostOnGlass() {
        Candidate glass = at(lot(), "transfer and glassware").orElseThrow();
        assertEquals(0.2, glass.lowGrams(), 1e-9);
        assertEquals(0.4, glass.highGrams(), 1e-9);
    }

    /** Nobody assayed A1 for S: the lot can hold 0.5922 g of what is missing, glass 0.4 g, and the balance says that this is not all. */
    @Test
    void layersNobodyAssayedForAPartnerAreNamed() {
        Candidate left = at(lot(), "unreacted S").orElseThrow();
        assertTrue(left.evidence().endsWith("more may be in A1"), left.evidence());
        // the lot has room for a quarter of the 2.32 g at most: its assay would settle nothing
        assertEquals("assay A1 for S", left.settledBy());
        assertEquals(2.31642, left.settlesGrams(), 1e-4);
        Closure closure = lot().tally().closures().get(0);
        // at least 2.00 g − 1.645·u, with 1.645·u as above 2.31642 − 2.00 g = 0.31642 g
        assertEquals(2 - 0.31642 - 0.5922 - 0.4, closure.withoutPlaceGrams(), 2e-3);
        RunReview run = lot().reviewOfRun();
        String seen = run.findings().stream()
                .filter(f -> f.code() == FindingCode.CLOSURE_OPEN)
                .map(f -> Wording.POINT.of(f.seen()))
                .findFirst()
                .orElseThrow();
        assertTrue(seen.endsWith("but at least 0.69 g is more than every place named can hold"), seen);
    }

    /** The lot is P to the last gram: what it may hold of S is what its weighing and assay leave open, as P twice as much as S. */
    @Test
    void partnerNobodyLookedForIsInTheLotForWhatItWeighsBeyondItsProduct() {
        // 1.645 × u of 18.00 g − 18.00 g × 1.00, 1 % of 18 g = 0.18 g: 0.2961 g S, 0.5922 g as P.
        assertEquals(0.5922, at(lot(), "unreacted S").orElseThrow().highGrams(), 1e-3);
        // 95 %: 0.9 g and 1.645 × 1 % of 17.1 g, = 1.1813 g S at most: as P 2.3626 g, more than is missing, which is
        // (20 − 17.1) g and more
        SmallBook impure = lot().but("isolated", "Assay", "95");
        assertEquals(2.3626, at(impure, "unreacted S").orElseThrow().highGrams(), 2e-3);
        assertEquals(Looked.NOWHERE, at(impure, "unreacted S").orElseThrow().looked());
    }

    @Test
    void byProductNobodyAssayedMayHoldAllOfIt() {
        SmallBook book = lot().row("products", "Product", "B", "Wanted", "no", "Molar mass", "200", "Skeleton", "S 2");
        assertEquals(MISSING, at(book, "B").orElseThrow().highGrams(), 1e-3);
        assertTrue(at(
                        book.row("assays", "Sample", "A1", "Substance", "B", "Method", "HPLC", "Result", "0.01")
                                .but("assays", "Unit", "g"),
                        "B")
                .isEmpty());
        assertTrue(at(lot(), "P").isEmpty(), "a wanted product is none");
    }

    @Test
    void layersThatNobodyAssayedMayHoldIt() {
        SmallBook book = lot().but("workup", "Gives other", "I1")
                .row("layers", "Layer", "I1", "Phase", "organic", "Volume", "5", "Net", "5.00", "Status", "kept");
        Candidate layer = at(book, "layer I1").orElseThrow();
        assertEquals("assay I1", layer.settledBy());
        assertEquals(MISSING, layer.highGrams(), 1e-3);
        assertEquals(Looked.IN_NO_KEPT_PORTION, layer.looked());
        Candidate lost = at(book.but("layers", "Status", "lost"), "layer I1").orElseThrow();
        assertEquals("say in Corrections what became of I1", lost.settledBy());
        assertEquals(Looked.BOUNDED, lost.looked());
        Candidate unrecorded =
                at(lot().but("workup", "Gives other", "I1"), "layer I1").orElseThrow();
        assertEquals("given by a step, never recorded", unrecorded.evidence());
        assertTrue(at(lot(), "layer A1").isEmpty(), "assayed");
    }

    @Test
    void ofSeveralProductsTheLayerIsAssayedForTheOneThatIsMissing() {
        SmallBook book = lot().row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .but("workup", "Gives other", "I1")
                .row("layers", "Layer", "I1", "Phase", "organic", "Volume", "5", "Net", "5.00", "Status", "kept")
                .row("isolated", "Lot", "C2", "Product", "Q", "Stage", "crude", "Net", "0.10", "Assay", "100");
        assertEquals("assay I1 for P", at(book, "layer I1").orElseThrow().settledBy());
    }

    /** Below 150 °C by the bench rules a product goes over with the solvent. */
    @ParameterizedTest
    @CsvSource({"80, true", "200, false", "'', false"})
    void volatileProductIsLookedForInTheDistillate(String boiling, boolean named) {
        SmallBook book = distilled().first("products", "Boiling point", boiling);
        assertEquals(named, at(book, "distillate D1").isPresent());
        at(book, "distillate D1").ifPresent(c -> {
            assertEquals("P boils at 80 °C", c.evidence());
            assertEquals(MISSING, c.highGrams(), 1e-3);
        });
        assertTrue(at(
                        book.row(
                                "assays",
                                "Sample",
                                "D1",
                                "Substance",
                                "P",
                                "Method",
                                "GC",
                                "Result",
                                "0.001",
                                "Unit",
                                "g"),
                        "distillate D1")
                .isEmpty());
    }

    private static SmallBook distilled() {
        return lot().row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "30.00", "Status", "kept");
    }

    @Test
    void likeliestPlacesStandFirst() {
        List<Candidate> all = lot().first("runs", "Conversion", "90")
                .tally()
                .closures()
                .get(0)
                .candidates();
        assertEquals(
                List.of("starting material that did not react", "unreacted S", "transfer and glassware"),
                all.stream().map(Candidate::place).toList());
    }

    /** An amine goes into the water of an acid wash, whatever room the crude has; without that wash nobody knows. */
    @ParameterizedTest
    @CsvSource({"1 M HCl, assay A1 for benzylamine", "water, 'assay crude, A1 for benzylamine'"})
    void amineIsLookedForInTheWaterOfAnAcidWash(String wash, String test) {
        SmallBook book = SmallBook.reaction()
                .first("charges", "Material", "benzylamine")
                .first("charges", "Molar mass", "107.15")
                .first("charges", "Actual amount", "10.715")
                .first("products", "Character", "neutral")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", wash, "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.0001", "Unit", "g")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.50", "Assay", "96")
                .but("isolated", "From", "O1")
                .but("isolated", "Relative standard uncertainty", "1");
        assertEquals(test, at(book, "unreacted benzylamine").orElseThrow().settledBy());
    }

    /** What a lot weighs beyond its product bounds a by-product too: S named in Products as what is left of the charge. */
    @Test
    void lotWithoutRoomForAByProductIsNotAssayedForIt() {
        SmallBook book = lot().row("products", "Product", "S", "Wanted", "no", "Molar mass", "100");
        assertEquals("assay A1 for S", at(book, "unreacted S").orElseThrow().settledBy());
    }
}
