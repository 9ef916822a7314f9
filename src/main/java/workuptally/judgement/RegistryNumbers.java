package workuptally.judgement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.chemistry.Formula;
import workuptally.judgement.containers.ContainerReview;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.material.Substance;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;

/**
 * Registry numbers (CAS) of what the accounts of a book name, so that ledgers of many laboratories can be joined. A name that the tables do
 * not know, that means more than one thing, or that stands with another form or formula has none: none is guessed.
 */
final class RegistryNumbers {
    private final Substances substances;
    private final Map<String, Optional<String>> byName = new LinkedHashMap<>();

    private RegistryNumbers(Substances substances) {
        this.substances = substances;
    }

    /** The numbers by the names as the accounts write them. */
    static Map<String, String> of(Substances substances, List<RunTally> runs, List<ContainerReview> containers) {
        RegistryNumbers numbers = new RegistryNumbers(substances);
        for (RunTally run : runs) {
            run.run().products().forEach(numbers::add);
            run.layers().stream().flatMap(layer -> layer.contents().stream()).forEach(c -> numbers.add(c.substance()));
        }
        containers.forEach(c -> c.tally().now().grams().keySet().forEach(numbers::add));
        Map<String, String> known = new LinkedHashMap<>();
        numbers.byName.forEach((name, number) -> number.ifPresent(n -> known.put(name, n)));
        return known;
    }

    private void add(String name) {
        byName.computeIfAbsent(name, n -> substance(substances.material(n)).flatMap(Substance::registryNumber));
    }

    /** One row that says that it is something else takes the number from the name, for every run. */
    private void add(Product product) {
        add(product.name());
        if (substance(substances.material(product.name()))
                .filter(substance -> agrees(substance, product.formula()))
                .isEmpty()) {
            byName.put(product.name(), Optional.empty());
        }
    }

    private static Optional<Substance> substance(Material material) {
        return material.parts().size() == 1
                        && !material.isAmbiguous()
                        && material.wash().isEmpty()
                ? Optional.of(material.main()).filter(p -> p.form().isEmpty()).flatMap(Part::substance)
                : Optional.empty();
    }

    /** A salt or solvate under the name of its parent is another substance. */
    private boolean agrees(Substance substance, String formula) {
        if (formula.isBlank() || substance.formula().isEmpty()) {
            return true;
        }
        Optional<Formula> listed = substances.formulaIn(substance.formula().get());
        return substances
                .formulaIn(formula)
                .filter(f -> listed.filter(f::sameComposition).isPresent())
                .isPresent();
    }
}
