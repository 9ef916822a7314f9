package workuptally.tally.amounts;

import java.util.HashSet;
import java.util.Set;
import workuptally.material.Part;
import workuptally.reference.Reference;
import workuptally.reference.substances.ClassBehaviour;
import workuptally.reference.substances.MaterialRow;

/**
 * Which materials a quench test shows gone: by their row, or, of a name that no table has, by the classes that its words tell, since an
 * unlisted hydroperoxide is as little gone untested as a listed one.
 */
final class QuenchTests {
    private final Reference reference;
    private Set<String> testedClasses = Set.of();

    QuenchTests(Reference reference) {
        this.reference = reference;
    }

    /** Whether there is a test for it at all. */
    boolean existsFor(Part part) {
        return part.row().isPresent()
                ? part.row().get().behaviour().quenchTest().isPresent()
                : isShownGoneByTest(part) && part.classes().stream().anyMatch(testedClasses()::contains);
    }

    /** Whether nothing but a negative test takes it away: a silver salt is an oxidiser by its counter-ion and has no test. */
    boolean isNeededFor(Part part) {
        return existsFor(part) && isShownGoneByTest(part);
    }

    private boolean isShownGoneByTest(Part part) {
        return part.classes().stream()
                .flatMap(name -> reference.classBehaviours().find(name).stream())
                .anyMatch(ClassBehaviour::shownGoneByTest);
    }

    /** Classes of which every listed material has a test. Nitrates are none: what an unlisted one does beside its metal is not told. */
    private synchronized Set<String> testedClasses() {
        if (testedClasses.isEmpty()) {
            Set<String> tested = new HashSet<>();
            Set<String> untested = new HashSet<>();
            for (MaterialRow row : reference.materials()) {
                boolean test = row.behaviour().quenchTest().isPresent();
                (test ? tested : untested).addAll(row.behaviour().classes());
            }
            tested.removeAll(untested);
            testedClasses = tested;
        }
        return testedClasses;
    }
}
