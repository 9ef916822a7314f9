package workuptally.judgement.rules.balance;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Purification;

/**
 * A purification in which less product is found than went in, beyond U and what is usually lost: a check where every portion beside the lots
 * is known, where those that nobody assayed weigh too little for it, or where it may be in one of them; where no liquor or fraction is
 * recorded, in which it may simply be, a note. A liquor without an assay is asked for as such.
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
            if (purification.inIsAtMost() || purification.missingAtLeastPercent() <= usual) {
                continue;
            }
            String unknown = String.join(", ", purification.unknown());
            String sources = String.join(", ", purification.sources());
            boolean hasNoPlace = purification.withoutPlaceAtLeastPercent() > usual;
            if (hasNoPlace && purification.isOpen()) {
                add(
                        tally,
                        purification,
                        Phrase.of("has no place, as {} cannot hold so much", unknown),
                        Severity.CHECK,
                        Phrase.of("Look for a portion without a row, and assay {}.", unknown),
                        findings);
            } else if (hasNoPlace) {
                boolean recorded = !purification.portions().isEmpty();
                add(
                        tally,
                        purification,
                        recorded
                                ? Phrase.of("has no place")
                                : Phrase.of("has no place; no liquor or fraction of it is recorded"),
                        recorded ? Severity.CHECK : Severity.NOTE,
                        Phrase.of(
                                "Look for a fraction, crop or liquor without a row; enter what was left of {} as a lot from it.",
                                sources),
                        findings);
            } else if (purification.unknown().stream().noneMatch(label -> isLiquor(tally, label))) {
                add(
                        tally,
                        purification,
                        Phrase.of("may be in {}, which nobody assayed", unknown),
                        Severity.CHECK,
                        Phrase.of("Assay {}, or weigh what is left of it when dry.", unknown),
                        findings);
            }
        }
        return findings.list();
    }

    private static boolean isLiquor(RunTally tally, String label) {
        return tally.layer(label)
                .flatMap(layer -> layer.phase())
                .filter(p -> p == Layer.Phase.MOTHER_LIQUOR)
                .isPresent();
    }

    private void add(
            RunTally tally,
            Purification purification,
            Phrase where,
            Severity severity,
            Phrase action,
            FindingList findings) {
        double missing = purification.missingGrams().value();
        findings.add(
                FindingCode.PURIFICATION_OPEN,
                severity,
                tally.run()
                        .lot(purification.sources().iterator().next())
                        .orElseThrow()
                        .row()
                        .at("Lot"),
                Phrase.of(
                        "of {} {} in {} the purification found {}; {} ({}) {}",
                        Figure.digits(purification.inGrams().value(), 4, "g"),
                        purification.product(),
                        String.join(", ", purification.sources()),
                        Figure.digits(purification.foundGrams().value(), 4, "g"),
                        Figure.digits(missing, 3, "g"),
                        Figure.decimals(100 * missing / purification.inGrams().value(), 0, "%"),
                        where),
                Phrase.of(
                        "what was purified, in lots, liquors and fractions, but for {} at most",
                        Figure.decimals(substances.value(Threshold.PURIFICATION_LOSS), 0, "%")),
                "conservation of mass",
                action);
    }
}
