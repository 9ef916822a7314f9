package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.material.Part;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.UsualForm;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/** Goods that are never pure, charged at 100 % or without an assay. The usual contents are those of supplier labels, from memory. */
public final class AssayOfChargeForgotten implements RunRule {

    private final Substances substances;

    /** With the reader of names. */
    public AssayOfChargeForgotten(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CHARGE_ASSAY_FORGOTTEN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Charge charge : tally.run().charges()) {
            Part part = substances.material(charge.material(), charge.formula()).main();
            Optional<UsualForm> usual = part.row()
                    .flatMap(MaterialRow::usualForm)
                    .filter(form -> form.most().isPresent())
                    .filter(form -> form.isWeakerThan(substances.value(Threshold.NEARLY_PURE)));
            boolean solution = part.strength().isPresent()
                    || part.massPercent().isPresent()
                    || charge.goods().molarityMolesPerLitre().entered().isPresent()
                    || charge.goods().titreMolesPerLitre().entered().isPresent();
            Optional<Entered> assay = charge.goods().assayPercent().entered();
            boolean takenAsPure = assay.map(a -> a.value() >= substances.value(Threshold.ASSAY_PURE))
                    .orElse(charge.goods().assayPercent().isBlank());
            if (usual.isPresent() && !solution && takenAsPure) {
                findings.add(
                        FindingCode.CHARGE_ASSAY_FORGOTTEN,
                        Severity.CHECK,
                        charge.row().at("Assay"),
                        Phrase.of(
                                "{}{}; it is counted as pure",
                                assay.map(a -> Phrase.of("read assay {} % for ", a.asTyped()))
                                        .orElse(Phrase.of("no assay for ")),
                                charge.material()),
                        Phrase.of("usually {}", usual.get().words()),
                        "supplier labels, from memory",
                        Phrase.of("Enter the assay from the label of the bottle."));
            }
        }
        return findings.list();
    }
}
