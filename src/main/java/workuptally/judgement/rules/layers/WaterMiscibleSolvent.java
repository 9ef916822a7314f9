package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
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

/**
 * Water-miscible solvent left in at the first contact: above 10 % v/v of the organic solvent a note, above 30 % a check (common practice).
 *
 * <p>Nothing where the aqueous layer was assayed, which is what it asks for.
 */
public final class WaterMiscibleSolvent implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public WaterMiscibleSolvent(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.WATER_MISCIBLE_SOLVENT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        tally.evidence().contactMixtures().stream()
                .filter(c -> c.waterMisciblePercent() > substances.value(Threshold.MISCIBLE_NOTE))
                .findFirst()
                .filter(contact -> !isAssayed(tally, contact))
                .ifPresent(contact -> judge(findings, contact));
        return findings.list();
    }

    /** True where every aqueous layer of the contact was assayed for every wanted product: what went into the water is known. */
    private static boolean isAssayed(RunTally tally, ContactMixture contact) {
        List<String> aqueous = contact.step().given().aqueous();
        return !aqueous.isEmpty()
                && aqueous.stream()
                        .allMatch(label -> tally.run().products().stream()
                                .filter(Product::wanted)
                                .allMatch(product -> tally.layer(label).stream()
                                        .flatMap(layer -> layer.contents().stream())
                                        .anyMatch(c -> c.isOf(product.name()) && c.isOwnEvidence())));
    }

    private void judge(FindingList findings, ContactMixture contact) {
        findings.add(
                FindingCode.WATER_MISCIBLE_SOLVENT,
                contact.waterMisciblePercent() > substances.value(Threshold.MISCIBLE_CHECK)
                        ? Severity.CHECK
                        : Severity.NOTE,
                contact.step().row().at("From"),
                Phrase.of(
                        "step {}: about {} v/v of the organic solvent is {}, which mixes with water (estimate)",
                        contact.step().number(),
                        Figure.decimals(contact.waterMisciblePercent(), 0, "%"),
                        contact.waterMiscible()),
                Phrase.of("{} at most", Figure.brief(substances.value(Threshold.MISCIBLE_NOTE), "%")),
                FindingList.PRACTICE,
                Phrase.of(
                        "Expect product in the water: assay the aqueous layer, or take such solvents off before extracting."));
    }
}
