package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.reference.Reference;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.ReferenceTable;
import workuptally.reference.tables.Source;

/** Shows the reference values in use with their sources. */
@Command(
        name = "reference",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Shows the reference values in use with source and basis; without TABLE the list of tables.")
final class ReferenceCommand implements Callable<Integer> {
    private static final int WIDEST_CELL = 48;
    private static final int MOST_COLUMNS = 8;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--reference",
            paramLabel = "DIR",
            description =
                    "Folder with the laboratory's own reference rows; they replace or add to those of the program.")
    private Optional<Path> folder = Optional.empty();

    @Parameters(arity = "0..1", paramLabel = "TABLE", description = "Name of a table, for example solvents.")
    private Optional<String> name = Optional.empty();

    @Override
    public Integer call() throws IOException {
        Reference reference = folder.isPresent() ? Reference.load(folder.get()) : Reference.load();
        PrintWriter out = spec.commandLine().getOut();
        if (name.isEmpty()) {
            tables(reference, out);
        } else {
            ReferenceTable table = reference.table(name.get()).orElseThrow(() -> unknown(reference));
            print(table, reference, out);
        }
        return ExitCode.DONE.number();
    }

    private ParameterException unknown(Reference reference) {
        String known = reference.tables().stream().map(ReferenceTable::name).collect(Collectors.joining(", "));
        return new ParameterException(
                spec.commandLine(), "There is no table '" + name.orElse("") + "'; there are: " + known + ".");
    }

    private static void tables(Reference reference, PrintWriter out) {
        TextTable list = new TextTable(2 * WIDEST_CELL, List.of("Table", "Rows ()", "Holds"));
        for (ReferenceTable table : reference.tables()) {
            list.row(
                    table.name(),
                    Integer.toString(table.rows().size()),
                    table.notes().stream().findFirst().orElse(""));
        }
        list.print(out);
    }

    private static void print(ReferenceTable table, Reference reference, PrintWriter out) {
        table.notes().forEach(out::println);
        out.println();
        if (table.columns().size() > MOST_COLUMNS) {
            table.rows().forEach(row -> block(table.columns(), row, out));
        } else {
            TextTable text = new TextTable(WIDEST_CELL, table.columns());
            table.rows().forEach(text::row);
            text.print(out);
        }
        List<Source> cited = reference.sources().stream()
                .filter(source -> isCited(table, source.key()))
                .toList();
        if (!table.name().equals(KnownTable.SOURCES.title()) && !cited.isEmpty()) {
            out.println();
            out.println("Sources");
            for (Source source : cited) {
                Wrapped.lines(source.citation(), "  " + source.key() + ": ", "    ")
                        .forEach(out::println);
            }
        }
    }

    /** A row too wide for a line: its key, and below it what is known. */
    private static void block(List<String> columns, List<String> row, PrintWriter out) {
        out.println(row.get(0));
        for (int i = 1; i < row.size(); i++) {
            if (!row.get(i).equals(ReferenceCells.NONE)) {
                Wrapped.lines(row.get(i), "  " + columns.get(i) + ": ", "    ").forEach(out::println);
            }
        }
    }

    private static boolean isCited(ReferenceTable table, String key) {
        for (int column = 0; column < table.columns().size(); column++) {
            if (table.columns().get(column).contains("source")) {
                for (List<String> row : table.rows()) {
                    if (List.of(row.get(column).split("\\s*;\\s*")).contains(key)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
