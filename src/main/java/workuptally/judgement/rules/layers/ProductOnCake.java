package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.HeldOnCake;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** Solution that a drying-agent cake may hold back, above 0.5 % of theory (common practice). A range, since part of the gain is water. */
public final class ProductOnCake implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public ProductOnCake(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PRODUCT_ON_CAKE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (HeldOnCake held : HeldOnCake.of(tally)) {
            if (held.highPercent() > substances.value(Threshold.CAKE_NOTE)) {
                tally.run()
                        .layer(held.cake())
                        .ifPresent(
                                cake -> findings.add(
                                        FindingCode.PRODUCT_ON_CAKE,
                                        Severity.NOTE,
                                        cake.row().at("Net"),
                                        Phrase.of(
                                                "cake {} ({}) may hold {} to {} of {}, {} to {} of theory (estimate)",
                                                held.cake(),
                                                held.rinsed() ? "rinsed" : "not rinsed",
                                                Figure.digits(held.lowGrams(), 2, ""),
                                                Figure.digits(held.highGrams(), 2, "g"),
                                                held.product(),
                                                Figure.decimals(held.lowPercent(), 1, ""),
                                                Figure.decimals(held.highPercent(), 1, "%")),
                                        Phrase.of(
                                                "{} of theory at most",
                                                Figure.brief(substances.value(Threshold.CAKE_NOTE), "%")),
                                        "held = cake − agent − water, a third of it left after a rinse: common practice",
                                        Phrase.of(
                                                "Rinse the cake with a little solvent and weigh what that brings, if the balance is open.")));
            }
        }
        return findings.list();
    }
}
