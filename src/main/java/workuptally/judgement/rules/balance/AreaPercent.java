package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Lot;
import workuptally.model.Notes;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/** A share of chromatographic area where an assay is asked for. */
public final class AreaPercent implements RunRule {
    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.AREA_PERCENT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Assay assay : tally.run().assays()) {
            boolean unit =
                    assay.unit().filter(u -> u == Assay.Unit.AREA_PERCENT).isPresent();
            if (unit || assay.notes().say(Notes.Said.AREA_PERCENT)) {
                findings.add(
                        FindingCode.AREA_PERCENT,
                        Severity.CHECK,
                        assay.row().at("Unit"),
                        Phrase.of(
                                "{} in {} is given as area %{}",
                                assay.substance(),
                                assay.sample(),
                                unit ? Phrase.of("; it is not used") : Phrase.of(" in the notes")),
                        Phrase.of("a calibrated result: mg/mL, % w/w or mol/L"),
                        FindingList.PRACTICE,
                        Phrase.of("Calibrate against a weighed standard, or take an internal-standard NMR."));
            }
        }
        for (Lot lot : tally.run().lots()) {
            if (lot.assayPercent().entered().isPresent() && lot.notes().say(Notes.Said.AREA_PERCENT)) {
                findings.add(
                        FindingCode.AREA_PERCENT,
                        Severity.CHECK,
                        lot.row().at("Assay"),
                        Phrase.of("the notes of lot {} call its assay area %", lot.label()),
                        Phrase.of("mass per cent"),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Enter a calibrated assay, or leave the cell blank; area % knows no water, salt or solvent."));
            }
        }
        return findings.list();
    }
}
