package workuptally.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.period.PeriodLedger;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.Span;
import workuptally.report.csv.CsvLedgers;
import workuptally.report.json.JsonReport;
import workuptally.report.pdf.PeriodReport;
import workuptally.report.pdf.layout.PdfAttachment;

/** Accounts over many books. */
@Command(
        name = "period",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Sums solvents, waste and yields over the books of a folder, for the runs between two days.",
            "Writes period.pdf, period.json, period-solvents.csv and period-waste.csv. A book that cannot be read is listed, the others count."
        })
final class PeriodCommand implements Callable<Integer> {
    private static final String PDF = "period.pdf";
    private static final String JSON = "period.json";
    private static final String SOLVENTS = "period-solvents.csv";
    private static final String WASTE = "period-waste.csv";
    private static final List<String> NAMES = List.of(PDF, JSON, SOLVENTS, WASTE);

    private final Optional<PrintWriter> watched;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOptions options;

    @Option(names = "--from", required = true, paramLabel = "DATE", description = "First day, as 2026-03-02.")
    private LocalDate from;

    @Option(names = "--to", required = true, paramLabel = "DATE", description = "Last day, as 2026-03-06.")
    private LocalDate to;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the files; without it they stand in the folder of the books.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOptions paper;

    @Option(names = "--quiet", description = "Print nothing but faults.")
    private boolean quiet;

    @Parameters(paramLabel = "FOLDER", description = "Folder with workbooks, or with folders of CSV files.")
    private Path folder;

    /**
     * The command.
     *
     * @param watched where a person watches long work, if one does
     */
    PeriodCommand(Optional<PrintWriter> watched) {
        this.watched = watched;
    }

    @Override
    public Integer call() throws IOException {
        if (to.isBefore(from)) {
            throw new ParameterException(spec.commandLine(), "The day under --to lies before the one under --from.");
        }
        if (!Files.exists(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        if (!Files.isDirectory(folder)) {
            throw new NotDirectoryException(folder.toString());
        }
        PrintWriter err = spec.commandLine().getErr();
        List<Path> books;
        try {
            books = BookFinder.in(folder, new BookReader(options.reading()).readsLists());
        } catch (UnreadableBookException unusable) {
            return Failure.report(unusable, err).number();
        }
        PeriodLedger ledger = new PeriodLedger(new Span(from, to));
        PeriodBooks all = new PeriodBooks(folder, options, ledger);
        List<String> unreadable;
        try (Progress progress = Progress.ofBooks(watched.filter(w -> !quiet), books.size())) {
            unreadable = all.add(books, progress::done);
        }
        PeriodReview review = ledger.review(Version.number());
        Path target = target(books);
        taken(books).requireFree(target, NAMES);
        Placed written = write(target, review);
        unreadable.forEach(err::println);
        if (!quiet) {
            PeriodSummary.print(
                    review, paper.mark().rounding(), spec.commandLine().getOut());
            spec.commandLine().getOut().println("Written:");
            written.files()
                    .forEach(file -> spec.commandLine().getOut().println("  " + Failure.printable(file.toString())));
        }
        written.keptAsideInWords().forEach(err::println);
        return all.code().number();
    }

    private TakenFiles taken(List<Path> books) throws IOException {
        TakenFiles taken = new TakenFiles();
        for (Path book : books) {
            taken.addInput(book);
        }
        options.addInputs(taken);
        return taken;
    }

    /** Beside the folder where it is itself a book. */
    private Path target(List<Path> books) {
        Path beside = folder.toAbsolutePath().normalize().getParent();
        return out.orElse(books.equals(List.of(folder)) && beside != null ? beside : folder);
    }

    /** The PDF takes its attachment from the file just written, so that many books need no more memory. */
    private Placed write(Path target, PeriodReview review) throws IOException {
        try (StagedFiles files = new StagedFiles(target, "period")) {
            try {
                write(files, review);
            } catch (IOException e) {
                throw files.unwritten(e);
            }
            return files.place(List.of());
        }
    }

    private void write(StagedFiles files, PeriodReview review) throws IOException {
        Path pdf = files.add(PDF);
        Path json = files.add(JSON);
        try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(json))) {
            JsonReport.write(review, file);
        }
        try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(pdf))) {
            PeriodReport.write(review, paper.with(Optional.of(PdfAttachment.ofFile(JSON, json))), file);
        }
        CsvLedgers.writeSolvents(files.add(SOLVENTS), review);
        CsvLedgers.writeWaste(files.add(WASTE), review);
    }
}
