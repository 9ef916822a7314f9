package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.junit.ArchTest;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import workuptally.reference.Reference;

/** Names of materials are looked up in {@code material} alone. Part of {@link ArchitectureTest}. */
final class LookUpsOfNames {
    private static final Set<String> LOOK_UPS = Set.of(
            "solvent", "liquid", "wash", "hazard", "oxidant", "dryingAgent", "solventBlend", "solute", "material");

    private LookUpsOfNames() {}

    @ArchTest
    static void noPackageButMaterialAndReferenceLooksNamesUp(JavaClasses program) {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : program) {
            boolean leaf = each.getPackageName().startsWith("workuptally.material")
                    || each.getPackageName().startsWith("workuptally.reference");
            for (JavaMethodCall call : each.getMethodCallsFromSelf()) {
                boolean looksUp = call.getTargetOwner().isEquivalentTo(Reference.class)
                        && LOOK_UPS.contains(call.getTarget().getName())
                        && !call.getTarget().getRawParameterTypes().isEmpty();
                if (looksUp && !leaf) {
                    found.add(outermost(each.getName()));
                }
            }
        }
        assertEquals(Set.of(), found);
    }

    /** Beside {@code SubstanceName}: labels and vessels, names as they stand in tables, and words of other lists. */
    private static final Set<String> COMPARE_OTHER_NAMES = Set.of(
            "AssayFitsNothing",
            "ContainerContents",
            "HeldLayers",
            "NamedEntries",
            "OpenLayers",
            "RegulatoryFactChoice",
            "Slips");

    @ArchTest
    static void namesOfARunAreComparedInOnePlace(JavaClasses program) {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : program) {
            boolean computes = each.getPackageName().startsWith("workuptally.tally")
                    || each.getPackageName().startsWith("workuptally.judgement");
            boolean compares = Stream.concat(
                            each.getMethodCallsFromSelf().stream(), each.getMethodReferencesFromSelf().stream())
                    .anyMatch(access -> access.getTargetOwner().isEquivalentTo(String.class)
                            && access.getTarget().getName().equals("equalsIgnoreCase"));
            if (computes && compares) {
                found.add(outermost(each.getName()));
            }
        }
        assertEquals(new TreeSet<>(COMPARE_OTHER_NAMES), found);
    }

    private static String outermost(String name) {
        String simple = name.substring(name.lastIndexOf('.') + 1);
        int nested = simple.indexOf('$');
        return nested > 0 ? simple.substring(0, nested) : simple;
    }
}
