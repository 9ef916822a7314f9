package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
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

/** An actual amount that differs from the plan by a power of ten, within 10 % (common practice). */
public final class UnitSlip implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public UnitSlip(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.UNIT_SLIP, FindingCode.AMOUNT_FAR_FROM_PLAN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double one = OneEquivalent.of(tally.amounts()).map(MeasuredValue::value).orElse(0.0);
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            if (charge.quantity().planned().isPresent()
                    && charge.quantity().actual().isPresent()) {
                judge(
                        findings,
                        amount,
                        charge.quantity().planned().get(),
                        charge.quantity().actual().get(),
                        one);
            }
        }
        return findings.list();
    }

    /** What was planned in mmol or equivalents is compared as an amount of substance with what was weighed or measured. */
    private void judge(
            FindingList findings, ChargeAmount amount, Amount planned, Amount actual, double oneEquivalentMillimoles) {
        Charge charge = amount.charge();
        boolean alike = planned.dimension() == actual.dimension();
        double inMillimoles = switch (planned.dimension()) {
            case AMOUNT -> 1;
            case EQUIVALENTS -> oneEquivalentMillimoles;
            default -> 0;
        };
        double p = planned.value().entered().map(Entered::value).orElse(0.0) * (alike ? 1 : inMillimoles);
        double a = alike
                ? actual.value().entered().map(Entered::value).orElse(0.0)
                : amount.amountMillimoles().map(MeasuredValue::value).orElse(0.0);
        if (!(p > 0 && a > 0)) {
            return;
        }
        double power = Math.pow(10, Math.rint(Math.log10(a / p)));
        if (power != 1 && Math.abs(a / p / power - 1) <= substances.value(Threshold.UNIT_SLIP_WITHIN)) {
            findings.add(
                    FindingCode.UNIT_SLIP,
                    Severity.CHECK,
                    charge.row().at("Actual amount"),
                    Phrase.of(
                            "actual amount of {} is {} times the planned one ({} against {})",
                            charge.material(),
                            Figure.digits(a / p, 3, ""),
                            words(actual),
                            words(planned)),
                    Phrase.of("amounts that differ by less than a power of ten"),
                    FindingList.PRACTICE,
                    Phrase.of("Check the unit (g or mg, mL or µL) of both entries."));
        } else if (Math.max(a / p, p / a) > substances.value(Threshold.FAR_FROM_PLAN)) {
            findings.add(
                    FindingCode.AMOUNT_FAR_FROM_PLAN,
                    Severity.CHECK,
                    charge.row().at("Actual amount"),
                    Phrase.of(
                            "actual amount of {} is {} times the planned one ({} against {})",
                            charge.material(),
                            Figure.digits(a / p, 3, ""),
                            words(actual),
                            words(planned)),
                    Phrase.of("an amount near the plan, or a plan that was changed"),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "See whether a portion is entered twice or missing, digits are swapped, or the row above was meant; if it"
                                    + " was weighed like this, correct the plan."));
        }
    }

    private static Phrase words(Amount amount) {
        return Phrase.of("{} {}", amount.value().entered().map(Entered::asTyped).orElse(""), amount.unitAsTyped());
    }
}
