package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;

/** A solvent charged without an amount: what went in is a least figure, and nothing in the account shows it. */
public final class SolventAmountMissing implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.SOLVENT_AMOUNT_MISSING);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        if (tally.run().status() == Run.Status.PLANNED) {
            return findings.list();
        }
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            boolean blank = charge.quantity().actual().isEmpty()
                    && charge.quantity().statedMillimoles().isBlank();
            boolean known =
                    amount.massGrams().isPresent() || amount.volumeMillilitres().isPresent();
            if (amount.isSolvent() && blank && !known) {
                findings.add(
                        FindingCode.SOLVENT_AMOUNT_MISSING,
                        Severity.CHECK,
                        charge.row().at("Actual amount"),
                        Phrase.of(
                                "{} is charged without an amount; solvent and mass in are least figures",
                                charge.material()),
                        Phrase.of("mass or volume of every solvent"),
                        FindingList.PRACTICE,
                        Phrase.of("Enter how much was used; ca. will do."));
            }
        }
        return findings.list();
    }
}
