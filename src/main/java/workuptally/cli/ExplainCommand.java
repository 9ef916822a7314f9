package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.model.Book;
import workuptally.report.explain.ExplainedRun;
import workuptally.report.explain.Explanation;
import workuptally.report.explain.FigureKind;
import workuptally.tally.amounts.NotComputed;

/** Shows how the figures of a run follow from its entries. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Shows each figure of a run as its equation with the numbers put in, and the readings behind its uncertainty.")
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOptions options;

    @Parameters(index = "0", paramLabel = "BOOK", description = "Workbook, or folder of CSV files.")
    private Path path;

    @Parameters(index = "1", paramLabel = "RUN", description = "Run as in the Runs table.")
    private String run;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "FIGURE",
            description =
                    "Kind of figure (amounts, theory, lots, yields, layers, routes, gains, closures, mass, solvents,"
                            + " contacts, gas, metrics, suspects), or a word of its title, for example the label of a layer.")
    private Optional<String> figure = Optional.empty();

    @Override
    public Integer call() throws IOException {
        try {
            Supplier<ReviewBuilder> reviewer = options.reviewer();
            Book book = options.read(path);
            Review review = reviewer.get().review(book);
            RunReview chosen = review.runs().stream()
                    .filter(r -> r.id().equalsIgnoreCase(run.strip()))
                    .findFirst()
                    .orElseThrow(() -> unknownRun(review));
            print(chosen, review.period().coverageFactor(), spec.commandLine().getOut());
            return ExitCode.DONE.number();
        } catch (UnreadableBookException | IOException | OutOfMemoryError unusable) {
            return Failure.report(unusable, spec.commandLine().getErr()).number();
        }
    }

    private void print(RunReview chosen, double coverageFactor, PrintWriter out) {
        ExplainedRun explanations = new ExplainedRun(coverageFactor);
        List<Explanation> figures =
                figure.map(word -> explanations.of(chosen, word)).orElseGet(() -> explanations.of(chosen));
        if (figures.isEmpty()
                && figure.filter(word -> !ExplainedRun.isKind(word)).isPresent()) {
            throw unknownFigure();
        }
        out.println((chosen.id() + "  " + chosen.tally().run().head().reaction()).stripTrailing());
        out.println();
        ExplanationScreen screen = new ExplanationScreen(out);
        figures.forEach(screen::print);
        if (figures.isEmpty()) {
            out.println("This run has no such figure.");
        }
        notComputed(chosen, out);
    }

    private static void notComputed(RunReview chosen, PrintWriter out) {
        if (!chosen.tally().notComputed().isEmpty()) {
            out.println("Not computed");
            for (NotComputed missing : chosen.tally().notComputed()) {
                String unlocked = missing.unlockedBy().isEmpty() ? "" : "; needs " + missing.unlockedBy();
                Wrapped.lines(missing.what() + ": " + missing.because() + unlocked, "  ", "    ")
                        .forEach(out::println);
            }
        }
    }

    private ParameterException unknownRun(Review review) {
        String known = review.runs().stream().map(RunReview::id).collect(Collectors.joining(", "));
        return new ParameterException(
                spec.commandLine(), "There is no run '" + run + "' in the book; there are: " + known + ".");
    }

    private ParameterException unknownFigure() {
        String known = Arrays.stream(FigureKind.values()).map(FigureKind::word).collect(Collectors.joining(", "));
        return new ParameterException(
                spec.commandLine(),
                "Run " + run + " has no figure '" + figure.orElse("") + "'; kinds of figures: " + known + ".");
    }
}
