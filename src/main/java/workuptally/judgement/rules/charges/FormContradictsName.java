package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.reference.substances.SaltForm;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.SaidForm;
import workuptally.tally.amounts.Substances;

/** A name that speaks of a salt or hydrate beside a formula of another form; for a product this stops the yield. */
public final class FormContradictsName implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public FormContradictsName(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CHARGE_FORM_MISMATCH, FindingCode.PRODUCT_FORM_MISMATCH);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Charge charge : tally.run().charges()) {
            contradiction(charge.material(), charge.formula())
                    .ifPresent(form -> findings.add(
                            FindingCode.CHARGE_FORM_MISMATCH,
                            Severity.CHECK,
                            charge.row().at("Formula"),
                            Phrase.of(
                                    "read '{}' with formula {}, which shows no {}",
                                    charge.material(),
                                    charge.formula(),
                                    form.shows()),
                            Phrase.of("the formula of the form weighed, with {}", form.shows()),
                            FindingList.PRACTICE,
                            Phrase.of("Compare with the label of the bottle and correct name or formula.")));
        }
        for (Product product : tally.run().products()) {
            contradiction(product.name(), product.formula())
                    .ifPresent(form -> findings.add(
                            FindingCode.PRODUCT_FORM_MISMATCH,
                            Severity.STOP,
                            product.row().at("Formula"),
                            Phrase.of(
                                    "read product '{}' with formula {}, which shows no {}",
                                    product.name(),
                                    product.formula(),
                                    form.shows()),
                            Phrase.of("theory in the form that is isolated"),
                            "definition of theory",
                            Phrase.of("Enter the formula of the form isolated; the yield rests on it.")));
        }
        for (Lot lot : tally.run().lots()) {
            Optional<Product> product = tally.run().product(lot.product());
            Reference reference = substances.reference();
            Optional<SaltForm> said = reference
                    .saltForm(lot.label())
                    .or(() -> reference.saltForm(lot.notes().text()));
            if (product.isPresent()
                    && said.filter(f -> !SaidForm.isShownBy(f, product.get().formula()))
                            .isPresent()) {
                findings.add(
                        FindingCode.PRODUCT_FORM_MISMATCH,
                        Severity.STOP,
                        lot.row().at("Product"),
                        Phrase.of(
                                "lot {} is called a {}; theory is in the form {}",
                                lot.label(),
                                said.get().word(),
                                product.get().formula()),
                        Phrase.of("theory in the form that is isolated"),
                        "definition of theory",
                        Phrase.of(
                                "Settle which form was weighed and enter its formula in Products; the yield rests on it."));
            }
        }
        return findings.list();
    }

    private Optional<SaltForm> contradiction(String name, String formula) {
        return SaidForm.contradicted(substances, name, formula);
    }
}
