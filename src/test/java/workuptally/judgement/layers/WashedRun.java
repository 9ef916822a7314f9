package workuptally.judgement.layers;

import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Condition;

/**
 * A run in which every condition about layer A1 is met: theory 20.0 g, lot C1 19.80 g, and 0.10 g of product (0.5 %) in A1 by its own assay;
 * A2 holds at most 0.02 g.
 */
final class WashedRun {
    private WashedRun() {}

    static SmallBook book() {
        return SmallBook.reaction()
                .but("products", "Character", "neutral")
                .row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "100",
                        "Actual unit",
                        "mL")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "O2", "Gives other", "D1+C1")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row(
                        "isolated",
                        "Lot",
                        "C1",
                        "Product",
                        "P",
                        "Stage",
                        "crude",
                        "From",
                        "O2",
                        "Net",
                        "19.80",
                        "Assay",
                        "100")
                .but("isolated", "Relative standard uncertainty", "1")
                .but("isolated", "Identity by", "NMR")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "70.00", "Status", "to reuse")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "<0.02", "Unit", "g")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.10", "Unit", "g");
    }

    static LayerDecision decision(SmallBook book) {
        return decision(book, "A1");
    }

    static LayerDecision decision(SmallBook book, String layer) {
        RunReview review = book.reviewOfRun();
        return review.decision(layer).orElseThrow();
    }

    static Condition condition(SmallBook book, String id) {
        return decision(book).conditions().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
