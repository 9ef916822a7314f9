package workuptally.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import workuptally.book.template.Template;

/** Writes an empty book, or the example week. */
@Command(
        name = "template",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes an empty book with lists, units and help: an xlsx workbook, or a folder of CSV files.")
final class TemplateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--example", description = "Write the example week instead; it is invented.")
    private boolean example;

    @Parameters(paramLabel = "FILE", description = "Workbook (.xlsx) or folder to write; it must not exist yet.")
    private Path target;

    @Override
    public Integer call() throws IOException {
        if (isTaken()) {
            throw new FileAlreadyExistsException(target.toString());
        }
        try {
            write();
        } catch (IOException e) {
            throw new UnwritableOutputException(target + " cannot be written: " + Failure.sentence(e), e);
        }
        spec.commandLine().getOut().println("Written: " + Failure.printable(target.toString()));
        return ExitCode.DONE.number();
    }

    private void write() throws IOException {
        Template template = new Template();
        if (BookEnding.XLSX.isOf(target)) {
            Files.createDirectories(target.toAbsolutePath().getParent());
            if (example) {
                template.writeExample(target);
            } else {
                template.writeEmpty(target);
            }
        } else if (target.toString().toLowerCase(Locale.ROOT).matches(".*\\.(csv|xls|xlsm|xlsb|ods)")) {
            throw new ParameterException(
                    spec.commandLine(), "Name a workbook that ends in .xlsx, or a folder for the CSV files.");
        } else if (example) {
            template.writeExampleCsv(target);
        } else {
            template.writeEmptyCsv(target);
        }
    }

    /** A book that somebody may have filled is never written over; an empty folder may be used. */
    private boolean isTaken() throws IOException {
        if (!Files.isDirectory(target)) {
            return Files.exists(target);
        }
        try (Stream<Path> content = Files.list(target)) {
            return content.findAny().isPresent();
        }
    }
}
