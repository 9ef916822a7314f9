import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Makes a private Java runtime with the modules that the program needs, so that a machine without Java can start it. Run by the build:
 * {@code java MakeRuntime.java JDK JAR FOLDER}.
 */
final class MakeRuntime {
    /** Needed at run time, though no class names them: zip files as file systems, and names of character sets beyond the usual. */
    private static final String MORE_MODULES = ",jdk.zipfs,jdk.charsets";

    private MakeRuntime() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path tools = Path.of(args[0], "bin");
        Path folder = Path.of(args[2]);
        if (Files.exists(folder)) {
            try (Stream<Path> old = Files.walk(folder)) {
                for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        String modules = run(List.of(
                        tools.resolve("jdeps").toString(),
                        "--multi-release",
                        "17",
                        "--ignore-missing-deps",
                        "--print-module-deps",
                        args[1]))
                .strip();
        run(List.of(
                tools.resolve("jlink").toString(),
                "--add-modules",
                modules + MORE_MODULES,
                "--strip-debug",
                "--no-header-files",
                "--no-man-pages",
                "--compress=2",
                "--output",
                folder.toString()));
        System.out.println("Runtime with " + modules + MORE_MODULES + " made");
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(new ArrayList<>(command))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes());
        if (process.waitFor() != 0) {
            throw new IOException(command.get(0) + " ended with " + process.exitValue() + ": " + said);
        }
        return said;
    }
}
