package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Notes;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** A recovered solvent without a composition: product, water or acid that it carries enters the balance unseen. */
public final class RecoveredSolventTakenAsPure implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public RecoveredSolventTakenAsPure(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.RECOVERED_SOLVENT_AS_PURE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Charge charge : tally.run().charges()) {
            boolean recovered =
                    substances.isRecovered(charge.material(), charge.goods().supplierLot());
            if (recovered && charge.goods().assayPercent().isBlank()) {
                findings.add(
                        FindingCode.RECOVERED_SOLVENT_AS_PURE,
                        Severity.CHECK,
                        charge.row().at("Assay"),
                        Phrase.of("{} is recovered solvent and is counted as pure", charge.material()),
                        Phrase.of("its content in % w/w"),
                        FindingList.PRACTICE,
                        Phrase.of("Enter its content (GC, density, Karl Fischer) before it goes into a balance."));
            }
        }
        for (Step step : tally.run().orderedSteps()) {
            if (substances.isRecovered(step.added().material(), "")
                    && !step.notes().say(Notes.Said.PERCENT)) {
                findings.add(
                        FindingCode.RECOVERED_SOLVENT_AS_PURE,
                        Severity.CHECK,
                        step.row().at("Material"),
                        Phrase.of(
                                "step {} uses {}, which is counted as pure",
                                step.number(),
                                step.added().material()),
                        Phrase.of("its content in the notes, for example 97 % ethyl acetate"),
                        FindingList.PRACTICE,
                        Phrase.of("Note its content, and whether it carries product, acid or water."));
            }
        }
        return findings.list();
    }
}
