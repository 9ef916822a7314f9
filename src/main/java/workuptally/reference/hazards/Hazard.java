package workuptally.reference.hazards;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cells;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.waste.WasteStream;

/**
 * Hazards of a material of the workup. A missing statement does not mean a missing hazard.
 *
 * @param key key of the row
 * @param name full name
 * @param aliases other names
 * @param cas registry number
 * @param group kind of material, for example {@code solvent}
 * @param statements codes of the harmonised or usual classification
 * @param furtherSupplierStatements codes suppliers often add, from memory
 * @param statementKind harmonised, supplier or none
 * @param statementNote remark to the classification
 * @param caution one line of caution; printed together with {@link #DEFERENCE}
 * @param materialClasses classes of {@link ReactivityGroup}, the coarse ones
 * @param usualWasteStream key of a {@link WasteStream}; a proposal, local rules decide
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Hazard(
        String key,
        String name,
        List<String> aliases,
        Optional<String> cas,
        String group,
        List<String> statements,
        List<String> furtherSupplierStatements,
        String statementKind,
        Optional<String> statementNote,
        String caution,
        List<String> materialClasses,
        String usualWasteStream,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Hazard {
        aliases = List.copyOf(aliases);
        statements = List.copyOf(statements);
        furtherSupplierStatements = List.copyOf(furtherSupplierStatements);
        materialClasses = List.copyOf(materialClasses);
        sources = List.copyOf(sources);
    }

    static Hazard of(Cells row) throws IllegalReferenceException {
        return new Hazard(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.optionalText("cas"),
                row.text("group"),
                row.list("h-statements"),
                row.list("further supplier h-statements (memory)"),
                row.text("h-statement kind"),
                row.optionalText("h-statement note"),
                row.text("caution"),
                row.list("material classes"),
                row.text("usual waste stream"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "hazards";
    }

    /** The sentence that goes with every hazard note. */
    public static final String DEFERENCE =
            "The supplier's safety data sheet, the local rules and the people responsible win over anything printed here.";
}
