package workuptally.tally.amounts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import workuptally.chemistry.Formula;
import workuptally.reference.solutions.Solute;

/** Tells a listed solute by its composition, where that leaves one substance. */
final class SoluteCompositions {
    /** Isomers of these are many, so that a formula of them alone names nothing. */
    private static final Set<String> ELEMENTS_OF_ORGANIC_MATTER =
            Set.of("C", "H", "N", "O", "S", "P", "F", "Cl", "Br", "I");

    private final List<Map.Entry<Solute, Formula>> formulas;

    /**
     * Over the listed solutes.
     *
     * @param reader reads their formulas
     */
    SoluteCompositions(List<Solute> solutes, Function<String, Formula> reader) {
        formulas = solutes.stream()
                .map(solute -> Map.entry(solute, reader.apply(solute.formula())))
                .toList();
    }

    /** The solute with a composition; nothing for a formula of organic matter, which names nothing by itself. */
    Optional<Solute> of(Formula formula) {
        boolean organic = formula.count("C") > 0
                && formula.count("H") > 0
                && formula.composition().keySet().stream().allMatch(ELEMENTS_OF_ORGANIC_MATTER::contains);
        return organic
                ? Optional.empty()
                : formulas.stream()
                        .filter(solute -> solute.getValue().sameComposition(formula))
                        .map(Map.Entry::getKey)
                        .findFirst();
    }
}
