package workuptally.judgement.rules.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.bench.ContactMixture;

/** More than 10 % w/w alcohol in the aqueous phase while pH, pKa and partition are used: the pKa is not the one in water. */
public final class PkaShifted implements RunRule {
    static final String CODE = "pka-shifted";

    private static final double NOTE_PERCENT = 10;

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Optional<Product> ionised = tally.run().products().stream()
                .filter(p -> p.wanted()
                        && p.pKa().entered().isPresent()
                        && (p.partitionRatio().entered().isPresent()
                                || p.logP().entered().isPresent()))
                .findFirst();
        if (ionised.isEmpty()) {
            return findings.list();
        }
        for (ContactMixture contact : tally.evidence().contactMixtures()) {
            if (contact.alcoholInAqueousPercent() > NOTE_PERCENT
                    && contact.step().pHAfter().entered().isPresent()) {
                findings.add(
                        CODE,
                        Severity.NOTE,
                        contact.step().row().at("pH after"),
                        FindingList.say(
                                "step %s: about %.0f %% w/w alcohol in the aqueous phase (estimate); the pKa %s of %s"
                                        + " is that in water",
                                contact.step().number(),
                                contact.alcoholInAqueousPercent(),
                                ionised.get()
                                        .pKa()
                                        .entered()
                                        .map(Entered::asTyped)
                                        .orElse(""),
                                ionised.get().name()),
                        "10 % at most where pH and pKa predict the distribution",
                        "benzoic acid 4.21 in water, 4.44 with 12 % and 4.92 with 25 % w/w ethanol:"
                                + " J. Res. Natl. Bur. Stand. 1967, from memory",
                        "Take the prediction as a wide band and rely on an assay.");
            }
        }
        return findings.list();
    }
}
