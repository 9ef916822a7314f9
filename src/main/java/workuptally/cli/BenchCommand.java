package workuptally.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
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
import workuptally.model.Book;
import workuptally.report.pdf.BenchSheet;

/** Writes a sheet for the bench for the planned runs of books. */
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes a sheet for the bench for the planned runs: amounts, steps, boxes to fill in, labels.")
final class BenchCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOptions options;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the sheet; without it it stands beside the book.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOptions paper;

    @Parameters(arity = "1..*", paramLabel = "BOOK", description = "Workbook, or folder of CSV files.")
    private List<Path> books;

    @Override
    public Integer call() throws IOException {
        TakenFiles taken = new TakenFiles();
        for (Path book : books) {
            taken.addInput(book);
        }
        options.addInputs(taken);
        Supplier<ReviewBuilder> reviewer = options.reviewer();
        ExitCode code = ExitCode.DONE;
        for (Path book : books) {
            code = code.and(write(book, reviewer, taken));
        }
        return code.number();
    }

    private ExitCode write(Path path, Supplier<ReviewBuilder> reviewer, TakenFiles taken) {
        PrintWriter terminal = spec.commandLine().getOut();
        try {
            Book book = options.read(path);
            Review review = reviewer.get().review(book);
            int runs = BenchSheet.planned(review).size();
            if (runs == 0) {
                terminal.println(book.name() + " has no planned run; nothing was written.");
                return ExitCode.DONE;
            }
            Path beside = path.toAbsolutePath().normalize().getParent();
            Path target = out.orElse(beside == null ? path : beside);
            String name = book.name() + "-bench";
            taken.requireFree(target, List.of(name + ".pdf"));
            try (StagedFiles files = new StagedFiles(target, name)) {
                try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(files.add(name + ".pdf")))) {
                    BenchSheet.write(review, paper.with(Optional.empty()), file);
                } catch (IOException e) {
                    throw files.unwritten(e);
                }
                Placed placed = files.place(book.files());
                taken.addWritten(placed.files());
                for (Path file : placed.files()) {
                    terminal.println("Written: " + Failure.printable(file.toString()) + " ("
                            + (runs == 1 ? "1 run" : runs + " runs") + ")");
                }
                placed.keptAsideInWords().forEach(spec.commandLine().getErr()::println);
            }
            return ExitCode.DONE;
        } catch (UnreadableBookException
                | IOException
                | RuntimeException
                | StackOverflowError
                | OutOfMemoryError failed) {
            return Failure.report(path, failed, spec.commandLine().getErr());
        }
    }
}
