package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.Incompatibility;

/**
 * What acid must not meet in the layers of a run: any material that the run used and that gives a toxic or explosive gas with acid, whether
 * or not a quench came between, since nothing says in which layer it is. Goods that water has used up are left out.
 */
public final class AcidGases {
    private static final String ACID = "acid";
    private static final String FUNNEL = "funnel";
    private static final Set<String> USED_UP_BY_WATER = Set.of("hydride", "organometallic", "alkali-metal");

    private AcidGases() {}

    /** The materials, in order of the table of incompatible pairs. */
    public static List<AcidGas> of(Run run, Substances substances) {
        Set<String> materials = new LinkedHashSet<>();
        run.charges().stream().map(Charge::material).forEach(materials::add);
        run.orderedSteps().stream()
                .map(Step::material)
                .filter(m -> !m.isBlank())
                .forEach(materials::add);
        List<AcidGas> gases = new ArrayList<>();
        for (Incompatibility pair : substances.reference().incompatibilities()) {
            if (pair.gas().isEmpty()
                    || pair.severity() == Incompatibility.Severity.CAUTION
                    || !pair.appliesTo().contains(FUNNEL)) {
                continue;
            }
            for (String material : materials) {
                boolean meets = substances.materialClasses(material).stream()
                        .anyMatch(c -> !USED_UP_BY_WATER.contains(c) && pair.concerns(ACID, c));
                if (meets) {
                    gases.add(new AcidGas(
                            material, pair.consequence() + " (" + pair.gas().get() + ")"));
                }
            }
        }
        return gases;
    }
}
