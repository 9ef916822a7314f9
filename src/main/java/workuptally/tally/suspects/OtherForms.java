package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import workuptally.chemistry.Formula;
import workuptally.model.Field.Entered;
import workuptally.model.Place;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.substances.AddedForm;
import workuptally.reference.substances.SaltForm;
import workuptally.tally.amounts.SaidForm;
import workuptally.tally.amounts.Substances;

/** Products whose name speaks of a salt or hydrate that the formula beside it does not show: the formula of the form named is meant. */
final class OtherForms {
    private final Run run;
    private final Substances substances;
    private final EntryChecks checks;

    OtherForms(Run run, Substances substances, EntryChecks checks) {
        this.run = run;
        this.substances = substances;
        this.checks = checks;
    }

    List<Hypothesis> list() {
        List<Hypothesis> all = new ArrayList<>();
        for (Product product : run.products()) {
            SaidForm.contradicted(substances, product.name(), product.formula()).stream()
                    .flatMap(this::adding)
                    .forEach(added -> added.numbers().forEach(n -> named(product, added, n, all)));
        }
        return all;
    }

    /** The first form of the table that shows what the name speaks of: hydrogen chloride before the solvates that hold chlorine. */
    private Stream<AddedForm> adding(SaltForm said) {
        return substances.reference().addedForms().stream()
                .filter(f -> f.added().equals(said.shows())
                        || !said.shows().equals("H2O")
                                && Formula.parse(f.added()).count(said.shows()) > 0)
                .limit(1);
    }

    private void named(Product product, AddedForm form, double number, List<Hypothesis> all) {
        Map<String, Double> atoms = new TreeMap<>();
        add(atoms, product.formula(), 1);
        add(atoms, form.added(), number);
        form.removed().ifPresent(r -> add(atoms, r, -number));
        if (atoms.values().stream().anyMatch(n -> n < 0 || n != Math.rint(n))) {
            return;
        }
        String formula = hill(atoms);
        OptionalDouble molarMass = checks.molarMass(formula);
        List<Place> places = new ArrayList<>(List.of(product.row().at("Formula")));
        List<Changes.Number> numbers = new ArrayList<>();
        product.molarMassGramsPerMole()
                .entered()
                .filter(typed -> molarMass.isPresent())
                .ifPresent(typed -> {
                    Entered meant = new Entered(
                            new TypedNumber(typed).with(molarMass.getAsDouble()), product.row(), typed.heading());
                    numbers.add(new Changes.Number(BookCell.of(typed), meant));
                    places.add(BookCell.of(typed).place());
                });
        all.add(new Hypothesis(
                Changes.ofForm(product.row(), formula, numbers),
                UsualSlip.SALT_FOR_BASE,
                places,
                product.row(),
                "formula of " + product.name(),
                product.formula(),
                formula));
    }

    private void add(Map<String, Double> atoms, String formula, double times) {
        Formula parsed = Formula.parse(formula);
        parsed.composition().forEach((element, n) -> atoms.merge(element, times * n, Double::sum));
    }

    /** Carbon and hydrogen first, then by the alphabet, as formulas are indexed. */
    private static String hill(Map<String, Double> atoms) {
        StringBuilder formula = new StringBuilder();
        Stream.concat(
                        Stream.of("C", "H").filter(atoms::containsKey),
                        atoms.keySet().stream().filter(e -> !e.equals("C") && !e.equals("H")))
                .filter(e -> atoms.get(e) > 0)
                .forEach(e ->
                        formula.append(atoms.get(e) == 1 ? e : String.format(Locale.ROOT, "%s%.0f", e, atoms.get(e))));
        return formula.toString();
    }
}
