package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Purification;

/**
 * A purification in which less product is found than went in, beyond U and what is usually lost, though every portion beside the lots is
 * known: a check; where no liquor or fraction is recorded, in which it may simply be, a note.
 */
public final class PurificationOpen implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public PurificationOpen(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PURIFICATION_OPEN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double usual = substances.value(Threshold.PURIFICATION_LOSS);
        for (Purification purification : tally.purifications()) {
            if (!purification.isOpen() && purification.missingAtLeastPercent() > usual) {
                boolean recorded = !purification.portions().isEmpty();
                findings.add(
                        FindingCode.PURIFICATION_OPEN,
                        recorded ? Severity.CHECK : Severity.NOTE,
                        tally.run()
                                .lot(purification.sources().iterator().next())
                                .orElseThrow()
                                .row()
                                .at("Lot"),
                        Phrase.of(
                                "of {} {} in {} the purification found {}; {} ({}) has no place{}",
                                Figure.digits(purification.inGrams().value(), 4, "g"),
                                purification.product(),
                                String.join(", ", purification.sources()),
                                Figure.digits(purification.foundGrams().value(), 4, "g"),
                                Figure.digits(purification.missingGrams().value(), 3, "g"),
                                Figure.decimals(
                                        100
                                                * purification.missingGrams().value()
                                                / purification.inGrams().value(),
                                        0,
                                        "%"),
                                recorded ? Phrase.NONE : Phrase.of("; no liquor or fraction of it is recorded")),
                        Phrase.of(
                                "what was purified, in lots, liquors and fractions, but for {} at most",
                                Figure.decimals(usual, 0, "%")),
                        "conservation of mass",
                        Phrase.of(
                                "Look for a fraction, crop or liquor without a row; enter what was left of {} as a lot from it.",
                                String.join(", ", purification.sources())));
            }
        }
        return findings.list();
    }
}
