package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.measure.Rounding;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.lines.BareRuns;
import workuptally.report.view.wording.Wording;

/** Shows what is to settle in books, and writes nothing. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Shows findings and layer decisions on the terminal, the most urgent first, and writes nothing.")
final class CheckCommand implements Callable<Integer> {
    private final Optional<PrintWriter> watched;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOptions options;

    @Parameters(arity = "1..*", paramLabel = "BOOK", description = "Workbook, or folder of CSV files.")
    private List<Path> books;

    /**
     * The command.
     *
     * @param watched where a person watches long work, if one does
     */
    CheckCommand(Optional<PrintWriter> watched) {
        this.watched = watched;
    }

    @Override
    public Integer call() throws IOException {
        Supplier<ReviewBuilder> reviewer = options.reviewer();
        ExitCode code = ExitCode.DONE;
        for (Path path : books) {
            code = code.and(check(path, reviewer));
        }
        return code.number();
    }

    private ExitCode check(Path path, Supplier<ReviewBuilder> reviewer) {
        PrintWriter err = spec.commandLine().getErr();
        try {
            Book book = options.read(path);
            try (Progress progress = new Progress(watched, book.runs().size())) {
                Review review = reviewer.get().review(book, progress::done);
                print(review, spec.commandLine().getOut());
                return ExitCode.of(review);
            }
        } catch (UnreadableBookException
                | IOException
                | RuntimeException
                | StackOverflowError
                | OutOfMemoryError failed) {
            return Failure.report(path, failed, err);
        }
    }

    private static void print(Review review, PrintWriter out) {
        Rounding rounding = Rounding.in(Locale.ROOT);
        out.println(review.book().name() + ": " + review.runs().size()
                + (review.runs().size() == 1 ? " run; " : " runs; ") + TerminalFindings.counts(review.findings()));
        out.println();
        List<Finding> ofBook = ofBook(review);
        if (!ofBook.isEmpty()) {
            out.println("Book");
            out.println("----");
            ofBook.forEach(finding -> TerminalFindings.print(finding, Wording.POINT, out));
            out.println();
        }
        BareRuns bare = BareRuns.of(review);
        List<RunReview> urgentFirst = bare.others(review).stream()
                .filter(run -> !RunScreen.isQuiet(run))
                .sorted(Comparator.comparing(CheckCommand::urgency))
                .toList();
        for (RunReview run : urgentFirst) {
            new RunScreen(run, Wording.POINT, out).print(review.period().coverageFactor(), rounding);
        }
        bare(bare, review, rounding, out);
        String quiet = bare.others(review).stream()
                .filter(RunScreen::isQuiet)
                .map(RunReview::id)
                .collect(Collectors.joining(", "));
        if (!quiet.isEmpty()) {
            Wrapped.lines("Nothing to settle: " + quiet, "", "  ").forEach(out::println);
        }
    }

    /** Runs of a list in one table, and each kind of note of them once. */
    private static void bare(BareRuns bare, Review review, Rounding rounding, PrintWriter out) {
        if (bare.runs().isEmpty()) {
            return;
        }
        String title = bare.runs().size() + " runs of which only the product was weighed";
        out.println(title);
        out.println("-".repeat(title.length()));
        new RunTable(bare.runs(), review.period().coverageFactor(), rounding).print(out);
        out.println();
        for (BareRuns.Note note : bare.notes()) {
            TerminalFindings.print(note.first(), Wording.POINT, out);
            if (note.runs() > 1) {
                out.println("    likewise " + (note.runs() - 1) + " more of these runs");
            }
        }
        bare.notComputedInWords()
                .ifPresent(words -> Wrapped.lines(words, "  ", "    ").forEach(out::println));
        out.println();
    }

    /** Findings that belong to no run of the book: files, registers, rows of unknown runs. */
    private static List<Finding> ofBook(Review review) {
        Set<String> runs = review.runs().stream().map(RunReview::id).collect(Collectors.toSet());
        return review.findings().stream().filter(f -> !runs.contains(f.run())).toList();
    }

    private static Severity urgency(RunReview run) {
        return run.findings().stream().map(Finding::severity).findFirst().orElse(Severity.NOTE);
    }
}
