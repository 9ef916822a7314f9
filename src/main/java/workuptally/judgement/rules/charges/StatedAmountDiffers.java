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
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;

/**
 * An amount of substance that was typed beside a mass or volume and is not what that gives: by more than half of its last digit, twice the
 * uncertainty and 2 % (common practice: what rounding explains).
 */
public final class StatedAmountDiffers implements RunRule {

    private static final double ROUNDING_FRACTION = 0.02;

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.STATED_AMOUNT_DIFFERS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ChargeAmount amount : tally.amounts()) {
            Optional<Entered> stated = amount.charge().statedMillimoles().entered();
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

    private static boolean differs(Entered stated, MeasuredValue own) {
        double halfDigit = 0.5 * Math.pow(10, -stated.decimals());
        return Math.abs(stated.value() - own.value())
                > Math.max(ROUNDING_FRACTION * own.value(), halfDigit + 2 * own.standardUncertainty());
    }
}
