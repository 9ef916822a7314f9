package workuptally.report.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
     * Opens a workbook and saves it again.
     *
     * @param workbook the workbook
     * @param folder folder for the saved one and for a profile of its own
     * @param recalculation whether formulas are computed
     * @return the saved workbook
     */
    static Path resave(Path workbook, Path folder, Recalculation recalculation)
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
            process = new ProcessBuilder(List.of(
                            "soffice",
                            "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                            "--headless",
                            "--convert-to",
                            "xlsx",
                            "--outdir",
                            folder.toString(),
                            workbook.toString()))
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
        Path saved = folder.resolve(workbook.getFileName().toString());
        if (process.exitValue() != 0 || !Files.exists(saved)) {
            throw new IOException("LibreOffice could not open the workbook: " + Files.readString(log));
        }
        return saved;
    }
}
