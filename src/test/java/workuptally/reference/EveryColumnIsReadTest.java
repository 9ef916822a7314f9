package workuptally.reference;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.reference.substances.Solvent;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.ReferenceTable;

/**
 * Each column of each table changes what the program holds when a laboratory overrides it: a cell of one row is replaced by the cell that
 * another row has, and the rows as read must differ. Columns that say where a figure comes from are shown with it, and left out here.
 */
@Tag("slow")
class EveryColumnIsReadTest {
    private static final Reference REFERENCE = Reference.load();

    /** Where a figure comes from, for people who read the tables. */
    private static final Set<String> PROVENANCE = Set.of(
            "published value (g/mol)",
            "published uncertainty (g/mol)",
            "interval low (g/mol)",
            "interval high (g/mol)",
            "temperature (C)",
            "pKa source",
            "formula",
            "molarity (mol/L)",
            "molar mass (g/mol)");

    private static final Map<String, Function<Reference, Object>> ROWS = Map.ofEntries(
            Map.entry("atomic-weights", Reference::atomicWeights),
            Map.entry(
                    "solvents",
                    r -> r.solvents().stream().map(EveryColumnIsReadTest::all).toList()),
            Map.entry("liquids", Reference::liquids),
            Map.entry("aqueous-densities", Reference::aqueousDensities),
            Map.entry("solutes", Reference::solutes),
            Map.entry("washes", Reference::washes),
            Map.entry("drying-agents", Reference::dryingAgents),
            Map.entry("oxidants", Reference::oxidants),
            Map.entry("hazards", Reference::hazards),
            Map.entry(
                    "flash-points",
                    r -> r.hazards().stream()
                            .map(h -> r.flashPoints().findAll(h.key()))
                            .toList()),
            Map.entry("h-statements", Reference::hStatements),
            Map.entry("glassware", Reference::glassware),
            Map.entry("bench-rules", Reference::benchRules),
            Map.entry("metals", Reference::metals),
            Map.entry("class-behaviours", Reference::classBehaviours),
            Map.entry("waste-streams", r -> r.streams().all()),
            Map.entry("stream-rules", r -> r.streams().rules()),
            Map.entry("stream-words", r -> r.streams().words()),
            Map.entry("regulatory-limits", Reference::regulatoryLimits),
            Map.entry("partition", Reference::partition));

    /** A solvent is equal by its key alone; its parts are not. */
    private static List<Object> all(Solvent s) {
        List<Object> parts = new ArrayList<>(List.of(s.key(), s.name(), s.aliases(), s.cas(), s.formula()));
        parts.addAll(List.of(
                s.molarMassGramsPerMole(),
                s.density(),
                s.volatility().boilingPointCelsius(),
                s.hazards().flashPoint()));
        parts.addAll(List.of(
                s.waterMixing(),
                s.volatility().antoine(),
                s.hazards().halogenated(),
                s.hazards().peroxideFormer(),
                s.hazards().peroxideClass()));
        parts.addAll(List.of(s.hazards().statements(), s.note(), s.sources(), s.basis()));
        return parts;
    }

    static Stream<Arguments> columns() {
        return ROWS.keySet().stream()
                .sorted()
                .flatMap(table -> REFERENCE.table(table).orElseThrow().columns().stream()
                        .filter(column -> !PROVENANCE.contains(column)
                                && !(table.equals("aqueous-densities") && column.equals("note"))
                                && !column.endsWith(" source")
                                && !column.endsWith(" basis"))
                        .map(column -> Arguments.of(table, column)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("columns")
    void aChangedCellChangesWhatIsRead(String table, String column, @TempDir Path folder) throws IOException {
        Object before = ROWS.get(table).apply(REFERENCE);
        Optional<Reference> changed = changes(table, column, folder);
        assertNotEquals(
                before, ROWS.get(table).apply(changed.orElseThrow(() -> new AssertionError("always the same"))));
    }

    /** The tables with one cell as another row has it: the first such change that is still a sound table. */
    private static Optional<Reference> changes(String table, String column, Path folder) throws IOException {
        ReferenceTable text = REFERENCE.table(table).orElseThrow();
        int index = text.columns().indexOf(column);
        if (column.equals("source") || column.equals("basis")) {
            return Optional.of(with(text, table, index, text.rows().get(0), "local", folder));
        }
        List<String> row = text.rows().stream()
                .filter(r -> !r.get(index).equals(ReferenceCells.NONE))
                .findFirst()
                .orElse(text.rows().get(0));
        for (List<String> other : text.rows()) {
            if (!other.get(index).equals(row.get(index))) {
                try {
                    return Optional.of(with(text, table, index, row, other.get(index), folder));
                } catch (IllegalReferenceException e) {
                    continue; // not every cell of a column suits every row
                }
            }
        }
        return Optional.empty();
    }

    private static Reference with(
            ReferenceTable text, String table, int index, List<String> row, String cell, Path folder)
            throws IOException {
        List<String> cells = new ArrayList<>(row);
        cells.set(index, cell);
        write(folder.resolve(table + ".csv"), text.columns(), cells);
        return Reference.load(folder);
    }

    private static void write(Path file, List<String> columns, List<String> cells) throws IOException {
        StringWriter out = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecord(columns);
            printer.printRecord(cells);
        }
        Files.writeString(file, out.toString());
    }
}
