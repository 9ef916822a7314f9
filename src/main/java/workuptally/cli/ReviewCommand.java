package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.measure.Rounding;
import workuptally.model.Book;

/** Reviews books and writes the reports of each. */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Reviews books and writes the reports of each beside it, or into a folder of your choice.")
final class ReviewCommand implements Callable<Integer> {
    private final Optional<PrintWriter> watched;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOptions options;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the reports; without it they stand beside the book.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOptions paper;

    @Option(
            names = "--reports",
            split = ",",
            paramLabel = "KIND",
            defaultValue = "workbook,pdf,safety,labels,json,csv",
            description =
                    "What to write: workbook, pdf, safety, labels, json, csv, with commas between; without it all of them.")
    private EnumSet<ReportKind> reports;

    @Option(names = "--strict", description = "End with exit code 1 where stops or holds were found.")
    private boolean strict;

    @Option(names = "--all", description = "Print every run and every stop and hold, instead of one screen.")
    private boolean all;

    @Option(names = "--quiet", description = "Print nothing but faults.")
    private boolean quiet;

    @Parameters(arity = "1..*", paramLabel = "BOOK", description = "Workbook, or folder of CSV files.")
    private List<Path> books;

    /**
     * The command.
     *
     * @param watched where a person watches long work, if one does
     */
    ReviewCommand(Optional<PrintWriter> watched) {
        this.watched = watched;
    }

    @Override
    public Integer call() throws IOException {
        TakenFiles taken = inputs();
        Supplier<ReviewBuilder> reviewer = options.reviewer();
        ExitCode code = ExitCode.DONE;
        for (Path book : books) {
            code = code.and(review(book, reviewer, taken));
        }
        return code.number();
    }

    private ExitCode review(Path path, Supplier<ReviewBuilder> reviewer, TakenFiles taken) {
        PrintWriter err = spec.commandLine().getErr();
        try {
            ReviewSettings settings = new ReviewSettings(
                    options.reading(), paper.paper(), paper.mark().decimalMark(), reports);
            Book book = options.read(path);
            try (Progress progress =
                    new Progress(watched.filter(w -> !quiet), book.runs().size())) {
                Review review = reviewer.get().review(book, progress::done);
                Placed written = new ReviewFiles(target(path), taken, settings).write(path, review);
                if (!quiet) {
                    print(review, written.files());
                }
                written.keptAsideInWords().forEach(err::println);
                return strict ? ExitCode.of(review) : ExitCode.DONE;
            }
        } catch (UnreadableBookException
                | IOException
                | RuntimeException
                | StackOverflowError
                | OutOfMemoryError failed) {
            return Failure.report(path, failed, err);
        }
    }

    private void print(Review review, List<Path> written) {
        PrintWriter terminal = spec.commandLine().getOut();
        Rounding rounding = paper.mark().rounding();
        if (all) {
            ReviewSummary.print(review, paper.mark().wording(), terminal);
        } else {
            ReviewScreen.print(review, rounding, paper.mark().wording(), terminal);
        }
        terminal.println(all ? "Written:" : "Written (all runs and findings stand there, or with --all here):");
        written.forEach(file -> terminal.println("  " + Failure.printable(file.toString())));
        terminal.println();
    }

    private Path target(Path book) {
        Path beside = book.toAbsolutePath().normalize().getParent();
        return out.orElse(beside == null ? book : beside);
    }

    /** Every file that this call reads. */
    private TakenFiles inputs() throws IOException {
        TakenFiles inputs = new TakenFiles();
        for (Path book : books) {
            inputs.addInput(book);
        }
        options.addInputs(inputs);
        return inputs;
    }
}
