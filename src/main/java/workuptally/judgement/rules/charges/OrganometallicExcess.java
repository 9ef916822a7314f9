package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.reference.Solvent;
import workuptally.reference.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;

/** An organomagnesium or organolithium reagent in excess: its quench gives R–H, which goes with the solvent and the layers. */
public final class OrganometallicExcess implements RunRule {

    private static final String ORGANOMETALLIC = "organometallic";
    private static final Pattern METAL = Pattern.compile("(Mg(Br|Cl|I)|(Br|Cl|I)Mg|Li)");

    private final Reference reference;
    private final Substances substances;

    public OrganometallicExcess(Substances substances) {
        this.reference = substances.reference();
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.QUENCH_BY_PRODUCT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            // An alkoxide of lithium and a salt of magnesium hold the metal too, but no bond from carbon to it.
            boolean organometallic =
                    substances.material(charge.material(), charge.formula()).is(ORGANOMETALLIC);
            Optional<Solvent> byProduct = organometallic ? byProduct(charge.formula()) : Optional.empty();
            if (byProduct.isEmpty() || amount.amountMillimoles().isEmpty()) {
                continue;
            }
            double charged = amount.amountMillimoles().get().value();
            double used = usedMillimoles(tally, charge);
            double left = charged - used;
            if (used > 0 && left > reference.value(Threshold.EXCESS_NOTE)) {
                double grams = left * byProduct.get().molarMassGramsPerMole().orElse(0) / 1000;
                findings.add(
                        FindingCode.QUENCH_BY_PRODUCT,
                        Severity.NOTE,
                        charge.row().at("Material"),
                        Phrase.of(
                                "{} {} charged, {} found in products: the quench of the rest gives up to {} {} ({})",
                                Figure.decimals(charged, 1, "mmol"),
                                charge.material(),
                                Figure.decimals(used, 1, "mmol"),
                                Figure.decimals(left, 1, "mmol"),
                                byProduct.get().name().toLowerCase(Locale.ROOT),
                                Figure.decimals(grams, 2, "g")),
                        Phrase.of("no more of it than the run needs"),
                        "stoichiometry of the quench",
                        Phrase.of(
                                "Expect it in the distillate and the layers and name it for the waste; follow its safety data sheet and"
                                        + " the local rules."));
            }
        }
        return findings.list();
    }

    /** R–H by the formula of R–MgX or R–Li, where it is a listed solvent. */
    private Optional<Solvent> byProduct(String formula) {
        Matcher metal = METAL.matcher(formula);
        if (!metal.find()) {
            return Optional.empty();
        }
        String rest = metal.replaceFirst("");
        Matcher hydrogens = Pattern.compile("H(\\d*)").matcher(rest);
        if (!hydrogens.find()) {
            return Optional.empty();
        }
        int count = hydrogens.group(1).isEmpty() ? 1 : Integer.parseInt(hydrogens.group(1));
        String protonated = hydrogens.replaceFirst("H" + (count + 1));
        return reference.solvents().stream()
                .filter(s -> s.formula().filter(protonated::equals).isPresent())
                .findFirst();
    }

    /** Units of the reagent in its products: by their skeleton where they name it, else one in each wanted product. */
    private static double usedMillimoles(RunTally tally, Charge charge) {
        double used = 0;
        for (Closure closure : tally.closures()) {
            for (Closure.Term term : closure.terms()) {
                Optional<Product> product = tally.run().product(term.substance());
                boolean names = product.stream()
                        .flatMap(p -> p.skeleton().stream())
                        .anyMatch(s -> s.partner().equalsIgnoreCase(charge.material()));
                boolean wanted = product.filter(Product::wanted).isPresent();
                if (wanted && !names && term.unitsPerMolecule() > 0) {
                    used += term.unitsMillimoles().value() / term.unitsPerMolecule();
                }
            }
        }
        return used;
    }
}
