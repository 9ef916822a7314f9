package workuptally.report.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.opentest4j.TestAbortedException;

/** LibreOffice without a window, as an independent reader of workbooks. */
final class LibreOffice {
    private static final int PATIENCE_SECONDS = 120;

    private LibreOffice() {}

    /** Whether formulas are computed anew on loading. */
    enum Recalculation {
        /** Stored results are trusted. */
        NEVER(2),
        /** Every formula is computed. */
        ALWAYS(0);

        private final int mode;

        Recalculation(int mode) {
            this.mode = mode;
        }
    }

    /** Said in one line; where everything must be tested, as CI=true tells, the test fails instead. */
    private static RuntimeException leftOut(IOException missing) {
        String why = "it needs LibreOffice Calc, and 'soffice' is not on the path";
        if (Boolean.parseBoolean(System.getenv("CI"))) {
            return new IllegalStateException("this test must not be left out under CI=true: " + why, missing);
        }
        String test = StackWalker.getInstance()
                .walk(frames -> frames.filter(frame -> !frame.getClassName().equals(LibreOffice.class.getName()))
                        .findFirst()
                        .map(frame -> frame.getClassName() + "." + frame.getMethodName())
                        .orElse("a test"));
        System.err.println("Left out: " + test + ", since " + why + ".");
        return new TestAbortedException("left out: " + why, missing);
    }

    /**
     * Opens workbooks and saves them again, all of them with one start of the program, which takes longer than a workbook.
     *
     * @param workbooks the workbooks, each of another name
     * @param folder folder for the saved ones, under the same names, and for a profile of its own
     * @param recalculation whether formulas are computed
     */
    static void resave(List<Path> workbooks, Path folder, Recalculation recalculation)
            throws IOException, InterruptedException {
        Path profile = Files.createDirectories(folder.resolve("profile/user"));
        Files.writeString(profile.resolve("registrymodifications.xcu"), """
                <?xml version="1.0" encoding="UTF-8"?>
                <oor:items xmlns:oor="http://openoffice.org/2001/registry">
                <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>%d</value></prop></item>
                </oor:items>
                """.formatted(recalculation.mode));
        Path log = folder.resolve("log.txt");
        Process process;
        try {
            List<String> command = new ArrayList<>(List.of(
                    "soffice",
                    "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                    "--headless",
                    "--convert-to",
                    "xlsx",
                    "--outdir",
                    folder.toString()));
            workbooks.forEach(workbook -> command.add(workbook.toString()));
            process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
        } catch (IOException missing) {
            throw leftOut(missing);
        }
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("LibreOffice did not end within " + PATIENCE_SECONDS + " s");
        }
        for (Path workbook : workbooks) {
            if (process.exitValue() != 0 || !Files.exists(folder.resolve(workbook.getFileName()))) {
                throw new IOException("LibreOffice could not open " + workbook + ": " + Files.readString(log));
            }
        }
    }

    /** Opens a workbook and saves it again in a folder, as {@link #resave(List, Path, Recalculation)}. */
    static Path resave(Path workbook, Path folder, Recalculation recalculation)
            throws IOException, InterruptedException {
        resave(List.of(workbook), folder, recalculation);
        return folder.resolve(workbook.getFileName());
    }
}
