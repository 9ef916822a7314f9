package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/** A reagent without a coefficient, of which there is less than the reaction can turn over: with coefficient 1 it would limit the theory. */
public final class BelowOneEquivalent implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public BelowOneEquivalent(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.BELOW_ONE_EQUIVALENT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        tally.theory().ifPresent(theory -> {
            MeasuredValue extent = theory.extentMillimoles();
            for (ChargeAmount amount : tally.amounts()) {
                amount.amountMillimoles()
                        .filter(n -> isReagent(amount.charge()) && extent.value() > 0)
                        .filter(n -> {
                            MeasuredValue shortBy = extent.minus(n);
                            return shortBy.value()
                                    > substances.value(Threshold.LIMITING_TOLD_APART) * shortBy.standardUncertainty();
                        })
                        .ifPresent(n -> findings.add(
                                FindingCode.BELOW_ONE_EQUIVALENT,
                                Severity.CHECK,
                                amount.charge().row().at("Material"),
                                Phrase.of(
                                        "{} {} for {} of substrate, without a coefficient",
                                        amount.charge().material(),
                                        Figure.digits(n.value(), 3, "mmol"),
                                        Figure.digits(extent.value(), 3, "mmol")),
                                Phrase.of("a coefficient where the reagent takes part in the equation"),
                                "n/ν",
                                Phrase.of(
                                        "Enter the coefficient: with 1 this reagent limits the theory, with less it may not; leave it blank, with"
                                                + " the role catalyst or additive, where it is no partner.")));
            }
        });
        return findings.list();
    }

    private static boolean isReagent(Charge charge) {
        return charge.role().filter(r -> r == Charge.Role.REAGENT).isPresent()
                && charge.coefficient().isBlank();
    }
}
