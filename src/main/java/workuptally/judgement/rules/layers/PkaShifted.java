package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.ContactMixture;

/** More than 10 % w/w alcohol in the aqueous phase while pH, pKa and partition are used: the pKa is not the one in water. */
public final class PkaShifted implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public PkaShifted(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PKA_SHIFTED);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<Product> ionised = tally.run().products().stream()
                .filter(p -> p.wanted()
                        && p.partitioning().pKa().entered().isPresent()
                        && (p.partitioning().partitionRatio().entered().isPresent()
                                || p.partitioning().logP().entered().isPresent()))
                .findFirst();
        if (ionised.isEmpty()) {
            return findings.list();
        }
        for (ContactMixture contact : tally.evidence().contactMixtures()) {
            if (contact.alcoholInAqueousPercent() > substances.value(Threshold.PKA_SHIFT_NOTE)
                    && contact.step().pHAfter().entered().isPresent()) {
                findings.add(
                        FindingCode.PKA_SHIFTED,
                        Severity.NOTE,
                        contact.step().row().at("pH after"),
                        Phrase.of(
                                "step {}: about {} w/w alcohol in the aqueous phase (estimate); the pKa {} of {} is that in water",
                                contact.step().number(),
                                Figure.decimals(contact.alcoholInAqueousPercent(), 0, "%"),
                                ionised.get()
                                        .partitioning()
                                        .pKa()
                                        .entered()
                                        .map(Entered::asTyped)
                                        .orElse(""),
                                ionised.get().name()),
                        Phrase.of(
                                "{} at most where pH and pKa predict the distribution",
                                Figure.brief(substances.value(Threshold.PKA_SHIFT_NOTE), "%")),
                        "benzoic acid 4.21 in water, 4.44 with 12 % and 4.92 with 25 % w/w ethanol:"
                                + " J. Res. Natl. Bur. Stand. 1967, from memory",
                        Phrase.of("Take the prediction as a wide band and rely on an assay."));
                break; // later contacts of the same portion hold less of it
            }
        }
        return findings.list();
    }
}
