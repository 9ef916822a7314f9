package workuptally.reference;

import java.util.List;
import java.util.Optional;

/**
 * Two classes of material that must not meet.
 *
 * @param classA material class
 * @param classB material class, or a step or bookkeeping word
 * @param consequence what happens
 * @param gas gas set free
 * @param severity how grave
 * @param appliesTo funnel, waste, concentration
 * @param message one sentence for the reader
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Incompatibility(
        String classA,
        String classB,
        String consequence,
        Optional<String> gas,
        Severity severity,
        List<String> appliesTo,
        String message,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Incompatibility {
        appliesTo = List.copyOf(appliesTo);
        sources = List.copyOf(sources);
    }

    static Incompatibility of(Cells row) throws IllegalReferenceException {
        return new Incompatibility(
                row.text("class a"),
                row.text("class b"),
                row.text("consequence"),
                row.optionalText("gas"),
                Severity.of(row),
                row.list("applies to"),
                row.text("message"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "incompatibilities";
    }

    @Override
    public String key() {
        return classA + " | " + classB;
    }

    /** Whether the pair speaks about these two classes, in either order. */
    public boolean concerns(String one, String other) {
        return classA.equals(one) && classB.equals(other) || classA.equals(other) && classB.equals(one);
    }

    /** How grave a meeting is. */
    public enum Severity {
        /** Heat, some gas, or a bookkeeping matter. */
        CAUTION,
        /** Toxic gas or strong heat. */
        HIGH,
        /** Deadly gas, fire or explosion. */
        CRITICAL;

        static Severity of(Cells row) throws IllegalReferenceException {
            String cell = row.text("severity");
            return switch (cell) {
                case "caution" -> CAUTION;
                case "high" -> HIGH;
                case "critical" -> CRITICAL;
                default -> throw row.wrong("severity", cell, "caution, high or critical");
            };
        }
    }
}
