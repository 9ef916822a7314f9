package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.hazards.Reactivity;
import workuptally.tally.amounts.Substances;

/** Products of a run that are bases by their character and hold nitrogen: for what they meet in the workup they count as amines. */
final class OwnAmines {
    private static final List<String> AMINE = List.of("amine");
    private static final List<String> ORGANIC = List.of("organic");

    private OwnAmines() {}

    /** Each with the classes of an amine, but for one that is one by its name, or was charged itself. */
    static List<Present> of(Run run, Substances substances, Reactivity reactivity) {
        List<Present> products = new ArrayList<>();
        for (Product product : run.products()) {
            boolean base = product.partitioning()
                    .character()
                    .filter(c -> c == Product.Character.BASE)
                    .isPresent();
            boolean alsoCharged = run.charges().stream().anyMatch(c -> c.isOf(product.name()));
            if (base && !alsoCharged && holdsNitrogen(product.formula(), substances)) {
                PortionContents.presents(
                                product.name(),
                                substances.material(product.name(), product.formula()),
                                OptionalDouble.empty(),
                                Optional.empty())
                        .stream()
                        .map(p -> p.is(AMINE.get(0)) ? p : p.as(reactivity.membership(AMINE, ORGANIC)))
                        .forEach(products::add);
            }
        }
        return products;
    }

    private static boolean holdsNitrogen(String formula, Substances substances) {
        return substances.formulaIn(formula).filter(f -> f.count("N") > 0).isPresent();
    }
}
