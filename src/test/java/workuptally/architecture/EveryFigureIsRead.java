package workuptally.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.junit.ArchTest;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import workuptally.reference.bench.Threshold;
import workuptally.reference.tables.Cited;

/** What the reference tables hold is read by code beside the loader; where a figure comes from is for people. Part of {@link ArchitectureTest}. */
final class EveryFigureIsRead {
    /** For people who read the tables, and for the line that names a row. */
    private static final Set<String> FOR_PEOPLE = Set.of("note", "cas", "basis", "sources", "meaning", "key");

    /** Columns that say what a row is about, for people, and no account uses. */
    private static final Set<String> DESCRIPTIONS = Set.of(
            "AtomicWeightRow.element",
            "DryForm.character",
            "DryForm.formula",
            "DryForm.molarMassGramsPerMole",
            "DryingAgent.dryForm",
            "HStatement.group",
            "Oxidant.acid",
            "PartitionRow.formula",
            "PartitionRow.molarMassGramsPerMole",
            "PartitionRow.temperatureCelsius",
            "ReactivityGroup.definition",
            "ReactivityGroup.name",
            "Hazards.statements",
            "Wash.caution");

    private EveryFigureIsRead() {}

    @ArchTest
    static void everyColumnOfARowIsReadOutsideTheRow(JavaClasses program) {
        Set<String> unread = new TreeSet<>();
        for (JavaClass row : program) {
            if (row.isRecord() && isPartOfARow(row)) {
                for (RecordComponent part : row.reflect().getRecordComponents()) {
                    JavaMethod accessor = row.getMethod(part.getName());
                    boolean read = Stream.concat(
                                    accessor.getAccessesToSelf().stream().map(a -> a.getOriginOwner()),
                                    accessor.getReferencesToSelf().stream().map(a -> a.getOriginOwner()))
                            .anyMatch(owner -> !owner.equals(row));
                    boolean readInside = row.getFieldAccessesToSelf().stream()
                            .anyMatch(a -> a.getTarget().getName().equals(part.getName())
                                    && !List.of(part.getName(), "<init>", "of", "toString", "hashCode", "equals")
                                            .contains(a.getOrigin().getName()));
                    if (!read && !readInside && !FOR_PEOPLE.contains(part.getName())) {
                        unread.add(row.getSimpleName() + "." + part.getName());
                    }
                }
            }
        }
        assertEquals(new TreeSet<>(DESCRIPTIONS), unread);
    }

    /** A row, or a group of its columns. */
    private static boolean isPartOfARow(JavaClass each) {
        return each.isAssignableTo(Cited.class)
                || each.getEnclosingClass()
                        .filter(row -> row.isAssignableTo(Cited.class))
                        .isPresent();
    }

    @ArchTest
    static void everyFigureOfTheBenchIsRead(JavaClasses program) {
        Set<String> unread = new TreeSet<>();
        JavaClass thresholds = program.get(Threshold.class);
        for (Threshold threshold : Threshold.values()) {
            boolean read = thresholds.getField(threshold.name()).getAccessesToSelf().stream()
                    .anyMatch(access -> !access.getOriginOwner().equals(thresholds));
            if (!read) {
                unread.add(threshold.name());
            }
        }
        assertEquals(Set.of(), unread);
    }
}
