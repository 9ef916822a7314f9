package workuptally.reference.hazards;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Hazards of a material of the workup. A missing statement does not mean a missing hazard.
 *
 * @param key key of the row
 * @param name full name
 * @param aliases other names
 * @param cas registry number
 * @param group kind of material, for example {@code solvent}
 * @param classification its hazard statements
 * @param caution one line of caution
 * @param materialClasses classes of {@link ReactivityGroup}, the coarse ones
 * @param usualWasteStream key of a waste stream; a proposal, local rules decide
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Hazard(
        String key,
        String name,
        List<String> aliases,
        Optional<String> cas,
        String group,
        Classification classification,
        String caution,
        List<String> materialClasses,
        String usualWasteStream,
        List<String> sources,
        Basis basis)
        implements Cited {
    private static final Set<String> SOLIDS = Set.of("sorbent", "drying agent");

    /** Flammable liquids, and what catches fire by itself. */
    private static final Set<String> FIRE = Set.of("H224", "H225", "H226", "H250");

    /** Copies the lists. */
    public Hazard {
        aliases = List.copyOf(aliases);
        materialClasses = List.copyOf(materialClasses);
        sources = List.copyOf(sources);
    }

    /** True for a sorbent or filter aid and for a drying agent: what stays behind as a solid. */
    public boolean isSorbent() {
        return SOLIDS.contains(group);
    }

    static Hazard of(ReferenceCells row) throws IllegalReferenceException {
        return new Hazard(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.optionalText("cas"),
                row.text("group"),
                Classification.of(row),
                row.text("caution"),
                row.list("material classes"),
                row.text("usual waste stream"),
                row.sources("source"),
                row.basis("basis"));
    }

    /**
     * The codes of its hazard statements. What suppliers add on fire is among them: a harmonised entry may be a minimum, and silence about
     * fire reads as if it did not burn.
     */
    public List<String> statements() {
        List<String> added = classification.furtherSupplierStatements().stream()
                .filter(FIRE::contains)
                .filter(code -> !classification.statements().contains(code))
                .toList();
        return added.isEmpty()
                ? classification.statements()
                : Stream.concat(classification.statements().stream(), added.stream())
                        .toList();
    }

    /**
     * The hazard statements of a material.
     *
     * @param statements codes of the harmonised or usual classification
     * @param furtherSupplierStatements codes suppliers often add, from memory
     * @param kind where the codes come from
     * @param note remark
     */
    public record Classification(
            List<String> statements,
            List<String> furtherSupplierStatements,
            StatementKind kind,
            Optional<String> note) {
        /** Copies the lists. */
        public Classification {
            statements = List.copyOf(statements);
            furtherSupplierStatements = List.copyOf(furtherSupplierStatements);
        }

        private static Classification of(ReferenceCells row) throws IllegalReferenceException {
            return new Classification(
                    row.list("h-statements"),
                    row.list("further supplier h-statements (memory)"),
                    StatementKind.of(row),
                    row.optionalText("h-statement note"));
        }
    }

    /** Where the codes of a material come from. */
    public enum StatementKind {
        /** The harmonised classification. */
        HARMONISED,
        /** What suppliers usually write. */
        SUPPLIER,
        /** There are none. */
        NONE;

        static StatementKind of(ReferenceCells row) throws IllegalReferenceException {
            String cell = row.text("h-statement kind");
            return switch (cell) {
                case "harmonised" -> HARMONISED;
                case "supplier" -> SUPPLIER;
                case "none" -> NONE;
                default -> throw row.wrong("h-statement kind", cell, "harmonised, supplier or none");
            };
        }
    }

    @Override
    public String table() {
        return "hazards";
    }
}
