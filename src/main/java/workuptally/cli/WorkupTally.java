package workuptally.cli;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;
import workuptally.material.MaterialReader;

/** The program {@code workup-tally}. */
@Command(
        name = "workup-tally",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Reviews the workups of a week from a workbook or a folder of CSV files: yields, closures, layers, solvents, waste.",
            "It lays out the evidence; a person decides. Without a command, a book is reviewed."
        },
        footer = {
            "",
            "Exit codes: 0 files written, or nothing to settle; 1 stops or holds found (check, review --strict);",
            "2 unreadable input, wrong use, unwritable output, too little memory; 3 a fault of the program. The highest wins."
        })
public final class WorkupTally implements Runnable {
    private static final String COMMANDS =
            "Name a command: review, check, explain, bench, period, headings, template or reference; or a book.";

    @Spec
    private CommandSpec spec;

    private WorkupTally() {}

    /** Runs the program and ends the virtual machine with its exit code. */
    public static void main(String[] args) {
        System.exit(run(args, writer(System.out), writer(System.err), System.console() != null));
    }

    /**
     * Runs the program.
     *
     * @param args arguments
     * @param out results
     * @param err diagnostics
     * @return exit code, 0 to 3
     */
    public static int run(String[] args, PrintWriter out, PrintWriter err) {
        return run(args, out, err, false);
    }

    /**
     * Runs the program.
     *
     * @param interactive whether a person watches, so that long work shows its progress
     */
    static int run(String[] typed, PrintWriter rawOut, PrintWriter rawErr, boolean interactive) {
        PrintWriter out = plain(rawOut);
        PrintWriter err = plain(rawErr);
        // What the libraries would log is said in one sentence, or is no concern of the reader.
        System.setProperty("org.apache.logging.log4j.simplelog.level", "OFF");
        Map<String, Supplier<Object>> known = commands(interactive ? Optional.of(rawErr) : Optional.empty());
        String[] args = withCommand(typed, known.keySet());
        List<Object> asked = asked(args, known);
        if (asked.size() == 1) {
            // Nearly every command needs the tables; they are read while the command line and the book are.
            CompletableFuture.runAsync(MaterialReader::packed);
        }
        CommandLine commands = new CommandLine(new WorkupTally());
        asked.forEach(commands::addSubcommand);
        commands.registerConverter(LocalDate.class, new DayOption())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler(WorkupTally::wrongUse)
                .setExecutionExceptionHandler(
                        (failure, line, parsed) -> Failure.report(failure, err).number());
        try {
            return commands.execute(args);
        } catch (OutOfMemoryError | StackOverflowError exhausted) {
            return Failure.report(exhausted, err).number();
        } finally {
            out.flush();
            err.flush();
        }
    }

    /** A first word that is a file or folder and no command is a book to review. */
    private static String[] withCommand(String[] args, Set<String> commands) {
        if (args.length == 0 || commands.contains(args[0]) || args[0].startsWith("-") || !exists(args[0])) {
            return args;
        }
        String[] review = new String[args.length + 1];
        review[0] = "review";
        System.arraycopy(args, 0, review, 1, args.length);
        return review;
    }

    private static boolean exists(String path) {
        try {
            return Files.exists(Path.of(path));
        } catch (InvalidPathException noPath) {
            return false;
        }
    }

    private static Map<String, Supplier<Object>> commands(Optional<PrintWriter> watched) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("review", () -> new ReviewCommand(watched));
        commands.put("check", () -> new CheckCommand(watched));
        commands.put("explain", ExplainCommand::new);
        commands.put("bench", BenchCommand::new);
        commands.put("period", () -> new PeriodCommand(watched));
        commands.put("headings", HeadingsCommand::new);
        commands.put("template", TemplateCommand::new);
        commands.put("reference", ReferenceCommand::new);
        return commands;
    }

    /** The command that the arguments begin with; all where they begin with none. Describing one costs as much as reading a small book. */
    private static List<Object> asked(String[] args, Map<String, Supplier<Object>> commands) {
        Optional<Supplier<Object>> first =
                Optional.of(args).filter(a -> a.length > 0).map(a -> commands.get(a[0]));
        return first.map(List::of).orElseGet(() -> List.copyOf(commands.values())).stream()
                .map(Supplier::get)
                .toList();
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), COMMANDS);
    }

    private static int wrongUse(ParameterException wrong, String[] args) {
        CommandLine line = wrong.getCommandLine();
        boolean noCommand = wrong instanceof UnmatchedArgumentException && line.getParent() == null;
        String said = noCommand ? "'" + args[0] + "' is no command. " + COMMANDS : wrong.getMessage();
        line.getErr().println(Failure.printable(said));
        line.getErr().println("Try '" + line.getCommandSpec().qualifiedName() + " --help'.");
        return ExitCode.UNUSABLE.number();
    }

    /** What a command prints holds no character that a terminal would act on; each line is shown when it is whole. */
    private static PrintWriter plain(Writer writer) {
        return new PrintWriter(new TerminalText(writer), true);
    }

    /** A writer in the terminal's encoding. A system that only claims ASCII is given UTF-8, which its terminals show. */
    private static PrintWriter writer(OutputStream stream) {
        Charset terminal = Charset.forName(
                System.getProperty("sun.stdout.encoding", System.getProperty("native.encoding", "UTF-8")));
        Charset charset = terminal.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : terminal;
        return new PrintWriter(new OutputStreamWriter(stream, charset), true);
    }
}
