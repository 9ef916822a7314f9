package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Substances;

/**
 * A yield that the chemist typed, away from mass over theory and from the yield by assay alike: by more than half of its last digit, twice the
 * uncertainty and one percentage point (common practice: what rounding of molar masses and amounts explains).
 */
public final class StatedYieldDiffers implements RunRule {

    private static final double SLIP_AGREES = 0.05;

    private final Substances substances;

    /** With the reference data in force. */
    public StatedYieldDiffers(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.STATED_YIELD_DIFFERS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (LotTally lot : tally.lots()) {
            Optional<Entered> stated = lot.lot().statedYieldPercent().entered();
            Optional<MeasuredValue> overTheory = lot.overTheoryPercent();
            if (stated.isPresent()
                    && overTheory.isPresent()
                    && differs(stated.get(), overTheory.get())
                    && byAssay(tally, lot, overTheory.get()).allMatch(own -> differs(stated.get(), own))) {
                findings.add(
                        FindingCode.STATED_YIELD_DIFFERS,
                        Severity.CHECK,
                        stated.get().place(),
                        Phrase.of(
                                "typed yield {} % where lot {} weighs {} of theory{}",
                                stated.get().asTyped().replace("%", "").strip(),
                                lot.lot().label(),
                                Figure.digits(overTheory.get().value(), 3, "%"),
                                slip(stated.get().value(), overTheory.get().value())),
                        Phrase.of("the yield that mass, amounts and molar masses give"),
                        "m / m(theory)",
                        Phrase.of("Look which of weight, amount, molar mass and typed yield is wrong."));
            }
        }
        return findings.list();
    }

    /** A weight in another unit, or with its point one place off, would agree within a twentieth. */
    private static Phrase slip(double stated, double own) {
        for (double factor : new double[] {1000, 10}) {
            if (Math.abs(own * factor / stated - 1) < SLIP_AGREES) {
                return Phrase.of("; the weight × {} would fit", Figure.brief(factor, ""));
            }
            if (Math.abs(own / factor / stated - 1) < SLIP_AGREES) {
                return Phrase.of("; the weight / {} would fit", Figure.brief(factor, ""));
            }
        }
        return Phrase.NONE;
    }

    private boolean differs(Entered stated, MeasuredValue own) {
        double halfDigit = 0.5 * Math.pow(10, -stated.decimals());
        return Math.abs(stated.value() - own.value())
                > Math.max(
                        substances.value(Threshold.STATED_YIELD_ROUNDING),
                        halfDigit + substances.value(Threshold.READINGS_AGREE) * own.standardUncertainty());
    }

    /** With its assay: of the lot alone, and of all lots that count as one yield with it. */
    private static Stream<MeasuredValue> byAssay(RunTally tally, LotTally lot, MeasuredValue overTheory) {
        return Stream.concat(
                lot.productFraction().map(overTheory::times).stream(),
                tally.yields().stream()
                        .filter(y -> y.lots().contains(lot.lot().label())
                                && lot.isOf(y.product().name()))
                        .map(ProductYield::percent));
    }
}
