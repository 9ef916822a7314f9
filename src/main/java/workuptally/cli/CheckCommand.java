package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;

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

    @Mixin
    private DecimalMarkOption mark;

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
                new CheckScreen(review, mark.wording(), spec.commandLine().getOut()).print();
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
}
