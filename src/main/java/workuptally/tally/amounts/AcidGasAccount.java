package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.material.Part;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.ReactivityPair;

/**
 * What acid must not meet in the layers of a run: any material that the run used and that gives a toxic or explosive gas with acid, whether
 * or not a quench came between, since nothing says in which layer it is. Goods that water has used up are left out.
 */
public final class AcidGasAccount {
    private AcidGasAccount() {}

    /** The materials, each with what acid does to it, in the order in which the run meets them. */
    public static List<AcidGas> of(Run run, Substances substances) {
        Set<String> names = new LinkedHashSet<>();
        run.charges().stream().map(Charge::material).forEach(names::add);
        run.orderedSteps().stream()
                .map(s -> s.added().material())
                .filter(m -> !m.isBlank())
                .forEach(names::add);
        Reactivity reactivity = substances.reference().reactivity();
        Reactivity.Membership acid = reactivity.membership(List.of("acid"), List.of());
        List<AcidGas> gases = new ArrayList<>();
        for (String name : names) {
            for (Part part : substances.material(name).parts()) {
                if (!part.isDestroyedByWater()) {
                    reactivity.between(part.membership(), acid, Set.of()).stream()
                            .filter(AcidGasAccount::isToxic)
                            .map(pair -> new AcidGas(name, pair.consequence() + pair.gasInBrackets()))
                            .forEach(gases::add);
                }
            }
        }
        return gases;
    }

    private static boolean isToxic(ReactivityPair pair) {
        return !pair.ofChart()
                && !pair.gases().isEmpty()
                && pair.severity() != ReactivityPair.Severity.CAUTION
                && pair.where().contains(ReactivityPair.FUNNEL);
    }
}
