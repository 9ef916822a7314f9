package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/** A name that speaks of a salt or hydrate beside a formula of another form; for a product this stops the yield. */
public final class FormContradictsName implements RunRule {
    static final String CHARGE = "charge-form-mismatch";
    static final String PRODUCT = "product-form-mismatch";

    @Override
    public List<String> codes() {
        return List.of(CHARGE, PRODUCT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Charge charge : tally.run().charges()) {
            contradiction(charge.material(), charge.formula())
                    .ifPresent(form -> findings.add(
                            CHARGE,
                            Severity.CHECK,
                            charge.row().at("Formula"),
                            "read '" + charge.material() + "' with formula " + charge.formula() + ", which shows no "
                                    + form.sign(),
                            "the formula of the form weighed, with " + form.sign(),
                            FindingList.PRACTICE,
                            "Compare with the label of the bottle and correct name or formula."));
        }
        for (Product product : tally.run().products()) {
            contradiction(product.name(), product.formula())
                    .ifPresent(form -> findings.add(
                            PRODUCT,
                            Severity.STOP,
                            product.row().at("Formula"),
                            "read product '" + product.name() + "' with formula " + product.formula()
                                    + ", which shows no " + form.sign(),
                            "theory in the form that is isolated",
                            "definition of theory",
                            "Enter the formula of the form isolated; the yield rests on it."));
        }
        for (Lot lot : tally.run().lots()) {
            Optional<Product> product = tally.run().product(lot.product());
            Optional<SaltForm> said = SaltForm.in(lot.label()).or(() -> SaltForm.in(lot.notes()));
            if (product.isPresent()
                    && said.filter(f -> !f.isShownBy(product.get().formula())).isPresent()) {
                findings.add(
                        PRODUCT,
                        Severity.STOP,
                        lot.row().at("Product"),
                        "lot " + lot.label() + " is called a " + said.get().word() + "; theory is in the form "
                                + product.get().formula(),
                        "theory in the form that is isolated",
                        "definition of theory",
                        "Settle which form was weighed and enter its formula in Products; the yield rests on it.");
            }
        }
        return findings.list();
    }

    private static Optional<SaltForm> contradiction(String name, String formula) {
        return SaltForm.in(name).filter(form -> !form.isShownBy(formula));
    }
}
