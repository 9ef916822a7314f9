package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.NotComputed;

/** A run whose theory cannot be computed, with the entry that would unlock it. */
public final class TheoryNotComputed implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.THEORY_NOT_COMPUTED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (NotComputed omitted : tally.notComputed()) {
            if (omitted.isTheory()) {
                findings.add(
                        FindingCode.THEORY_NOT_COMPUTED,
                        Severity.CHECK,
                        tally.run().row().at("Run"),
                        Phrase.of("{} is not computed: {}", omitted.what(), omitted.because()),
                        Phrase.quoted(omitted.unlockedBy()),
                        "m = min(nᵢ/νᵢ)·ν·M",
                        Phrase.of("Enter {}; yields and percentages of theory wait for it.", omitted.unlockedBy()));
            }
        }
        return findings.list();
    }
}
