package workuptally.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes an empty book, or the example week. */
@Command(
        name = "template",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes an empty book with lists, units and help: a workbook (.xlsx), or a folder of CSV files.")
final class TemplateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--example", description = "Write the example week instead; it is invented.")
    private boolean example;

    @Parameters(paramLabel = "FILE", description = "Workbook (.xlsx) or folder to write; it must not exist yet.")
    private Path target;

    @Override
    public Integer call() throws IOException {
        return ExitCode.DONE.number();
    }
}
