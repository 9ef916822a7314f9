package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.files.WholeFile;
import workuptally.book.lists.HeadingsProposal;

/** Proposes a headings file for a laboratory's own list. */
@Command(
        name = "headings",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Proposes a headings file for a list of your own with one row a run, from its headings in English, German or French.",
            "It names what it did not understand and asks where a heading could mean two things; the list is only read.",
            "Look the file through, then: workup-tally review LIST --headings FILE"
        })
final class HeadingsCommand implements Callable<Integer> {
    private static final String INDENT = "  ";

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "File to write; without it NAME-headings.json beside the list. An existing file is kept.")
    private Optional<Path> out = Optional.empty();

    @Parameters(paramLabel = "LIST", description = "Workbook, CSV file, or folder of CSV files.")
    private Path list;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        try {
            HeadingsProposal proposal = HeadingsProposal.of(list);
            Path file = out.orElse(list.toAbsolutePath().normalize().resolveSibling(name() + "-headings.json"));
            if (Files.exists(file)) {
                throw new UnwritableOutputException("The file " + file
                        + " exists and may hold your answers: move it away, or choose another with --out.");
            }
            try {
                WholeFile.write(proposal.json().getBytes(StandardCharsets.UTF_8), file);
            } catch (IOException e) {
                throw new UnwritableOutputException(
                        "The file " + file + " cannot be written: " + Failure.sentence(e), e);
            }
            print(proposal, spec.commandLine().getOut());
            spec.commandLine().getOut().println("Written: " + Failure.printable(file.toString()));
            return ExitCode.DONE.number();
        } catch (UnreadableBookException | IOException unusable) {
            return Failure.report(unusable, err).number();
        }
    }

    private String name() {
        Path last = list.toAbsolutePath().normalize().getFileName();
        String name = last == null ? "list" : last.toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 && !Files.isDirectory(list) ? name.substring(0, dot) : name;
    }

    private static void print(HeadingsProposal proposal, PrintWriter terminal) {
        for (HeadingsProposal.OfList layout : proposal.lists()) {
            terminal.println(String.join(", ", layout.sheets()) + ", headings in row"
                    + (layout.headingRows().size() == 1 ? " " : "s ")
                    + String.join(
                            " and ",
                            layout.headingRows().stream().map(String::valueOf).toList()));
            TextTable table = new TextTable(48, List.of("Heading", "Understood as", "Feeds"));
            layout.understood().forEach(u -> table.row(List.of(u.heading(), u.meaning(), u.feeds())));
            table.print(terminal);
            named(terminal, "Taken for granted", layout.assumed());
            named(
                    terminal,
                    "To answer in the file before these columns are read",
                    layout.open().stream()
                            .map(open -> "'" + open.heading() + "': " + open.question())
                            .toList());
            named(terminal, "Not understood, kept as your own", quoted(layout.notUnderstood()));
            named(terminal, "Understood, but no table takes it", quoted(layout.notUsed()));
            terminal.println();
        }
    }

    private static List<String> quoted(List<String> headings) {
        return headings.isEmpty() ? headings : List.of("'" + String.join("', '", headings) + "'");
    }

    private static void named(PrintWriter terminal, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            terminal.println(title + ":");
            lines.forEach(line -> Wrapped.lines(line, INDENT, INDENT + INDENT).forEach(terminal::println));
        }
    }
}
