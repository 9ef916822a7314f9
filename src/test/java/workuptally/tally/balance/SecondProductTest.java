package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.Closure.Verdict;

/** 10.00 g each of P and Q are separated; layer A1 was assayed for P only. */
class SecondProductTest {
    @Test
    void productNotLookedForIsUnknownBesideTheOneThatWas() {
        // 10.00 g less 9.50 g of lot Q1, u: 0.02 g and 0.3 % of 10.00 g, 0.02 g and 1 % of 9.50 g: √(0.02² + 0.03² +
        // 0.02² + 0.095²) =
        // 0.1035616 g; 0.50 + 1.645 × 0.1035616 = 0.670 g.
        Content q = content(separated("9.50"), "Q");
        assertEquals(Content.Kind.UNKNOWN, q.kind());
        assertEquals(0.670, q.upperBoundGrams().orElseThrow(), 5e-4);
        assertEquals("not assayed for it; at most theory less what was found elsewhere", q.evidence());
        assertEquals(Content.Kind.MEASURED, content(separated("9.50"), "P").kind());
    }

    @Test
    void openBalanceOfTheOtherProductMayBeInTheLayer() {
        // 100·(1 − 9.50/10.00) = 5.0 % unaccounted.
        Closure closure = closure(separated("9.50"), "Q");
        assertEquals(Verdict.OPEN, closure.verdict());
        assertEquals(5.0, closure.unaccountedPercent(), 1e-9);
        Closure.Candidate candidate = closure.candidates().get(0);
        assertEquals("layer A1", candidate.place());
        assertEquals("assay A1 for Q", candidate.settledBy());
        assertEquals(Verdict.CLOSES, closure(separated("9.50"), "P").verdict());
    }

    @Test
    void balanceOfTheOtherProductIsUndecidedWhereItsLotIsOnlyAnUpperBound() {
        SmallBook book = separated("9.50").but("isolated", "Assay", "<100");
        assertEquals("not assayed for it", content(book, "Q").evidence());
        assertEquals(Verdict.CANNOT_DECIDE, closure(book, "Q").verdict());
    }

    @Test
    void sampleAssayedForOneProductIsNotUnknownForTheOther() {
        SmallBook book = separated("9.50")
                .row("workup", "Step", "2", "Operation", "sample", "From", "O1", "Gives other", "S1")
                .row("layers", "Layer", "S1", "Phase", "organic", "Volume", "0.5", "Net", "0.45", "Status", "consumed")
                .row("assays", "Sample", "S1", "Substance", "P", "Method", "HPLC", "Result", "10", "Unit", "mg/mL");
        assertEquals(1, book.tally().layer("S1").orElseThrow().contents().size());
    }

    @Test
    void layerIsNotSettledWhileTheOtherProductIsOpen() {
        LayerDecision decision = decision(separated("9.50"));
        assertEquals(State.MISSING, condition(decision, "R8").state());
        assertTrue(
                decision.missing().stream()
                        .map(Wording.POINT::of)
                        .toList()
                        .contains("an assay for Q, of which at most 6.8 % of theory is unaccounted for; limit 2.0 %"),
                decision.missing().toString());
    }

    @Test
    void assayThatWasNotMadeIsNamedAlsoWhereTheOtherProductIsFound() {
        LayerDecision decision = decision(separated("9.90"));
        assertEquals(State.MET, condition(decision, "R6").state());
        Condition second = condition(decision, "R8");
        // 0.10 g and its uncertainty are 2.7 % of the 10.00 g charged, above the limit of 2.0 %.
        assertEquals(State.MISSING, second.state());
        assertTrue(
                decision.missing().stream()
                        .map(Wording.POINT::of)
                        .toList()
                        .contains("an assay for Q, of which at most 2.8 % of theory is unaccounted for; limit 2.0 %"),
                decision.missing().toString());
    }

    private static Content content(SmallBook book, String substance) {
        return book.tally().layer("A1").orElseThrow().contents().stream()
                .filter(c -> c.substance().equals(substance))
                .findFirst()
                .orElseThrow();
    }

    private static Closure closure(SmallBook book, String partner) {
        return book.tally().closures().stream()
                .filter(c -> c.skeleton().equals(partner))
                .findFirst()
                .orElseThrow();
    }

    private static LayerDecision decision(SmallBook book) {
        return book.reviewOfRun().decisions().stream()
                .filter(d -> d.layer().equals("A1"))
                .findFirst()
                .orElseThrow();
    }

    private static Condition condition(LayerDecision decision, String id) {
        return decision.conditions().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static SmallBook separated(String gramsOfQ) {
        return component(component(SmallBook.empty().first("runs", "Kind", "separation"), "P"), "Q")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1", "Unit", "mg/mL")
                .row(
                        "isolated",
                        "Lot",
                        "P1",
                        "Product",
                        "P",
                        "Stage",
                        "crude",
                        "From",
                        "O1",
                        "Net",
                        "9.95",
                        "Assay",
                        "100")
                .but("isolated", "Relative standard uncertainty", "1")
                .row(
                        "isolated",
                        "Lot",
                        "Q1",
                        "Product",
                        "Q",
                        "Stage",
                        "crude",
                        "From",
                        "O1",
                        "Net",
                        gramsOfQ,
                        "Assay",
                        "100")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static SmallBook component(SmallBook book, String name) {
        return book.row("products", "Product", name, "Wanted", "yes", "Molar mass", "200")
                .row("charges", "Material", name, "Role", "component", "Molar mass", "200", "Actual amount", "10.00")
                .but("charges", "Actual unit", "g");
    }
}
