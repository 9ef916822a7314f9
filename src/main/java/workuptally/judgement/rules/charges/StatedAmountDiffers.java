package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
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
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.OneEquivalent;
import workuptally.tally.amounts.Substances;

/**
 * An amount of substance that was typed beside a mass or volume and is not what that gives: by more than half of its last digit, twice the
 * uncertainty and 2 % (common practice: what rounding explains).
 */
public final class StatedAmountDiffers implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public StatedAmountDiffers(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.STATED_AMOUNT_DIFFERS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<MeasuredValue> one = OneEquivalent.of(tally.amounts());
        for (ChargeAmount amount : tally.amounts()) {
            one.ifPresent(reference -> equivalents(findings, amount, reference));
            Optional<Entered> stated =
                    amount.charge().quantity().statedMillimoles().entered();
            Optional<MeasuredValue> own = amount.amountMillimoles();
            if (stated.isPresent() && own.isPresent() && !amount.planned() && differs(stated.get(), own.get())) {
                findings.add(
                        FindingCode.STATED_AMOUNT_DIFFERS,
                        Severity.CHECK,
                        stated.get().place(),
                        Phrase.of(
                                "{} mmol of {} as typed where the amount charged gives {}",
                                stated.get().asTyped().replace("mmol", "").strip(),
                                amount.charge().material(),
                                Figure.digits(own.get().value(), 3, "mmol")),
                        Phrase.of("the amount of substance that mass or volume, content and molar mass give"),
                        "n = m·w/M",
                        Phrase.of(
                                "Look which of amount, molar mass, content and typed mmol is wrong; the amount charged was used."));
            }
        }
        return findings.list();
    }

    private void equivalents(FindingList findings, ChargeAmount amount, MeasuredValue reference) {
        Optional<Entered> stated =
                amount.charge().quantity().statedEquivalents().entered();
        Optional<MeasuredValue> own = amount.amountMillimoles()
                .filter(n -> reference.value() > 0 && n != reference)
                .map(n -> n.over(reference));
        if (stated.isPresent() && own.isPresent() && !amount.planned() && differs(stated.get(), own.get())) {
            findings.add(
                    FindingCode.STATED_AMOUNT_DIFFERS,
                    Severity.CHECK,
                    stated.get().place(),
                    Phrase.of(
                            "{} equivalents of {} as typed where the amount charged gives {}",
                            Figure.digits(stated.get().value(), 3, ""),
                            amount.charge().material(),
                            Figure.digits(own.get().value(), 3, "")),
                    Phrase.of("the equivalents that the amounts charged give"),
                    "n = m·w/M, over that of the substrate",
                    Phrase.of(
                            "Look which of amount, molar mass, content and typed equivalents is wrong, here and in the row of the"
                                    + " substrate; the amount charged was used."));
        }
    }

    private boolean differs(Entered stated, MeasuredValue own) {
        double halfDigit = 0.5 * Math.pow(10, -stated.decimals());
        return Math.abs(stated.value() - own.value())
                > Math.max(
                        substances.value(Threshold.STATED_AMOUNT_ROUNDING) * own.value(),
                        halfDigit + substances.value(Threshold.READINGS_AGREE) * own.standardUncertainty());
    }
}
