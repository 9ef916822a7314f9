package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
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
import workuptally.tally.amounts.Substances;

/** A reagent with a coefficient, charged at many times what the coefficient asks for; listed solvents, which may be both, are left out. */
public final class ReagentInExcess implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public ReagentInExcess(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.REAGENT_IN_LARGE_EXCESS);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double extent = tally.theory().map(t -> t.extentMillimoles().value()).orElse(0.0);
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            double coefficient =
                    charge.coefficient().entered().map(Entered::value).orElse(0.0);
            if (extent <= 0
                    || coefficient <= 0
                    || amount.amountMillimoles().isEmpty()
                    || substances.solvent(charge.material()).isPresent()) {
                continue;
            }
            double equivalents = amount.amountMillimoles().get().value() / coefficient / extent;
            if (equivalents > substances.value(Threshold.LARGE_EXCESS)) {
                findings.add(
                        FindingCode.REAGENT_IN_LARGE_EXCESS,
                        Severity.CHECK,
                        charge.row().at(amount.planned() ? "Planned amount" : "Actual amount"),
                        Phrase.of(
                                "{} is charged at {} times what its coefficient {} and the limiting reagent ask for",
                                charge.material(),
                                Figure.digits(equivalents, 3, ""),
                                charge.coefficient()
                                        .entered()
                                        .map(Entered::asTyped)
                                        .orElse("")),
                        Phrase.of(
                                "{} equivalents at most, or no coefficient",
                                Figure.decimals(substances.value(Threshold.LARGE_EXCESS), 0, "")),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Check its unit and coefficient, and those of the limiting reagent; a deliberate flood needs no"
                                        + " coefficient."));
            }
        }
        return findings.list();
    }
}
