package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.model.Charge;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/**
 * The hydrocarbon R–H that the quench of an organomagnesium or organolithium reagent gives from what no product holds; it goes with the
 * solvent and the layers. Stoichiometry; only where R–H is a listed solvent and some of the reagent was found in products.
 *
 * @param charge the reagent
 * @param name what it gives, in lower case
 * @param chargedMillimoles reagent charged, mmol
 * @param usedMillimoles reagent found in products, mmol
 * @param grams the most that the quench gives, g
 */
public record QuenchByProduct(
        Charge charge, String name, double chargedMillimoles, double usedMillimoles, double grams) {
    private static final String ORGANOMETALLIC = "organometallic";
    private static final Pattern METAL = Pattern.compile("(Mg(Br|Cl|I)|(Br|Cl|I)Mg|Li)");

    /** What the rest of the reagent comes to, mmol. */
    public double leftMillimoles() {
        return chargedMillimoles - usedMillimoles;
    }

    /** Those of a run, in order of its charges. */
    public static List<QuenchByProduct> of(
            Run run, List<ChargeAmount> amounts, List<Closure> closures, Substances substances) {
        List<QuenchByProduct> all = new ArrayList<>();
        for (ChargeAmount amount : amounts) {
            Charge charge = amount.charge();
            // An alkoxide of lithium and a salt of magnesium hold the metal too, but no bond from carbon to it.
            boolean organometallic =
                    substances.material(charge.material(), charge.formula()).is(ORGANOMETALLIC);
            Optional<Solvent> byProduct = organometallic ? byProduct(charge.formula(), substances) : Optional.empty();
            if (byProduct.isEmpty() || amount.amountMillimoles().isEmpty()) {
                continue;
            }
            double charged = amount.amountMillimoles().get().value();
            double used = usedMillimoles(run, closures, charge);
            if (used > 0 && charged - used > substances.value(Threshold.EXCESS_NOTE)) {
                all.add(new QuenchByProduct(
                        charge,
                        byProduct.get().name().toLowerCase(Locale.ROOT),
                        charged,
                        used,
                        (charged - used)
                                * byProduct.get().molarMassGramsPerMole().orElse(0)
                                / 1000));
            }
        }
        return all;
    }

    /** R–H by the formula of R–MgX or R–Li, where it is a listed solvent. */
    private static Optional<Solvent> byProduct(String formula, Substances substances) {
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
        return substances.reference().solvents().stream()
                .filter(s -> s.formula().filter(protonated::equals).isPresent())
                .findFirst();
    }

    /** Units of the reagent in its products: by their skeleton where they name it, else one in each wanted product. */
    private static double usedMillimoles(Run run, List<Closure> closures, Charge charge) {
        double used = 0;
        for (Closure closure : closures) {
            for (Closure.Term term : closure.terms()) {
                Optional<Product> product = run.product(term.substance());
                boolean names =
                        product.stream().flatMap(p -> p.skeleton().stream()).anyMatch(s -> s.isOf(charge.material()));
                boolean wanted = product.filter(Product::wanted).isPresent();
                if (wanted && !names && term.unitsPerMolecule() > 0) {
                    used += term.unitsMillimoles().value() / term.unitsPerMolecule();
                }
            }
        }
        return used;
    }
}
