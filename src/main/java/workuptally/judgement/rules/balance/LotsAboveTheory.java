package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;

/**
 * Crops of the workup that are more than theory where no assay says how much of them is product: they are wet, or something that was weighed
 * or the theory is wrong. A crude is told of as such, a purified lot by its yield.
 */
public final class LotsAboveTheory implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.LOT_ABOVE_THEORY);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double factor = book.limits().value(Limit.COVERAGE_FACTOR);
        for (ProductYield yield : tally.yields()) {
            if (tally.run().kind() != Run.Kind.RESOLUTION
                    && yield.stage() == ProductYield.Stage.WORKUP
                    && yield.basis().isUpperBound()
                    && yield.isAboveAll(factor)) {
                List<LotTally> lots = tally.lots().stream()
                        .filter(l -> yield.lots().contains(l.lot().label())
                                && l.isOf(yield.product().name()))
                        .toList();
                if (lots.stream().noneMatch(l -> isToldAsCrude(l, factor))) {
                    add(yield, lots.get(0), factor, findings);
                }
            }
        }
        return findings.list();
    }

    private static boolean isToldAsCrude(LotTally lot, double factor) {
        return lot.endsWorkup()
                && lot.lot().stage().filter(s -> s != Lot.Stage.CRUDE).isEmpty()
                && lot.overTheoryPercent()
                        .filter(over -> over.value() > 100 + over.expandedUncertainty(factor))
                        .isPresent();
    }

    private static void add(ProductYield yield, LotTally first, double factor, FindingList findings) {
        String labels = String.join(", ", yield.lots());
        double percent = yield.percent().value();
        boolean one = yield.lots().size() == 1;
        findings.add(
                FindingCode.LOT_ABOVE_THEORY,
                Severity.CHECK,
                first.lot().row().at(first.lot().weighing().heading()),
                Phrase.of(
                        "{} {} ({}): {} of what {}; at least {} of it is not {}",
                        one ? "lot" : "lots",
                        labels,
                        yield.basis().word(),
                        Figure.pair(percent, yield.percent().expandedUncertainty(factor), 1, "%"),
                        yield.percentOf() == ProductYield.PercentOf.CHARGED ? "was charged" : "theory allows",
                        Figure.decimals(100 - 10_000 / percent, 1, "%"),
                        yield.product().name()),
                Phrase.of("100 % at most for dry product"),
                "conservation of mass",
                Phrase.of(
                        "Look at unit, gross and tare of {}; dry {} to constant mass and assay {}.",
                        labels,
                        one ? "it" : "them",
                        one ? "it" : "them"));
    }
}
