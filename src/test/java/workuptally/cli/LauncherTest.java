package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launchers start the same program in the same way, and the archive of classes is made for just that way. */
class LauncherTest {
    private static final Path LAUNCHERS = Path.of("src", "launcher");
    private static final Pattern OPTION = Pattern.compile("(?<=[ \"=])-X[^\\s\"]+");
    private static final List<String> OF_THE_ARCHIVE = List.of("-Xshare:auto", "-XX:SharedArchiveFile=");
    private static final List<String> OF_THE_CACHE =
            List.of("-XX:+IgnoreUnrecognizedVMOptions", "-XX:AOTCache=", "-Xlog:disable");

    @TempDir
    private Path folder;

    /** The lines that do something. */
    private static List<String> lines(String launcher) throws IOException {
        return Files.readAllLines(LAUNCHERS.resolve(launcher)).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#") && !line.startsWith("rem "))
                .toList();
    }

    private static List<String> options(String launcher) throws IOException {
        return OPTION.matcher(String.join("\n", lines(launcher)))
                .results()
                .map(MatchResult::group)
                .map(option -> option.replaceFirst("(?<=(?:File|Cache)=).*", ""))
                .toList();
    }

    private static List<String> sorted(List<String> options) {
        return options.stream().sorted().toList();
    }

    @Test
    void bothLaunchersGiveTheVirtualMachineTheSameOptions() throws IOException {
        assertEquals(sorted(options("workup-tally")), sorted(options("workup-tally.cmd")));
        assertTrue(options("workup-tally").containsAll(OF_THE_ARCHIVE), () -> "no archive of classes");
        assertTrue(options("workup-tally").containsAll(OF_THE_CACHE), () -> "no ahead-of-time cache");
    }

    /** With other settings than those it was made under, the virtual machine leaves the archive aside without a word. */
    @Test
    void theArchiveIsMadeWithTheOptionsOfTheLaunchers() throws IOException {
        String settings = Files.readString(LAUNCHERS.resolve("MakeLauncher.java"))
                .replaceFirst("(?s).*SETTINGS = List\\.of\\(", "")
                .replaceFirst("(?s)\\);.*", "");
        assertEquals(
                options("workup-tally").stream()
                        .filter(option -> !OF_THE_ARCHIVE.contains(option) && !OF_THE_CACHE.contains(option))
                        .toList(),
                OPTION.matcher(settings).results().map(MatchResult::group).toList());
    }

    @Test
    void bothLaunchersTakeJarAndArchiveFromTheirOwnFolder() throws IOException {
        String shell = String.join("\n", lines("workup-tally"));
        String windows = String.join("\n", lines("workup-tally.cmd"));
        for (String file : List.of("workup-tally.jar\"", "workup-tally.jsa\"")) {
            assertTrue(shell.contains("\"$here/" + file), shell);
            assertTrue(windows.contains("%~dp0" + file), windows);
        }
    }

    /** The exit code of a script is that of its last command. */
    @Test
    void theProgramIsTheLastThingThatTheWindowsLauncherRuns() throws IOException {
        List<String> lines = lines("workup-tally.cmd");
        String last = lines.get(lines.size() - 1);
        assertTrue(last.startsWith("\"%JAVA%\" ") && last.endsWith(" %*"), last);
    }

    private Path echo(String file, int code) throws IOException {
        Path java = folder.resolve(file);
        Files.createDirectories(java.getParent());
        Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$0\" \"$@\"\nexit " + code + "\n");
        assertTrue(java.toFile().setExecutable(true));
        return java;
    }

    private static List<String> said(Process process) throws IOException {
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theShellLauncherPassesArgumentsAndTheExitCodeOn() throws IOException, InterruptedException {
        Path launcher = Files.copy(LAUNCHERS.resolve("workup-tally"), folder.resolve("my launcher"));
        echo("a home/bin/java", 3);
        ProcessBuilder builder = new ProcessBuilder("sh", launcher.toString(), "check", "a book.xlsx", "*");
        builder.environment().put("JAVA_HOME", folder.resolve("a home").toString());
        builder.environment().put("WORKUP_TALLY_JAVA_OPTS", "-Xmx4g -Da=b");
        Process process = builder.start();
        List<String> given = said(process);
        assertEquals(3, process.waitFor());
        assertEquals(
                List.of(
                        "-XX:SharedArchiveFile=" + folder.resolve("workup-tally.jsa"),
                        "-Xmx4g",
                        "-Da=b",
                        "-jar",
                        folder.resolve("workup-tally.jar").toString(),
                        "check",
                        "a book.xlsx",
                        "*"),
                given.subList(given.size() - 8, given.size()));
    }

    /** The machine has no Java: no path, no JAVA_HOME; the launcher is started through a link from elsewhere. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void thePrivateRuntimeNeedsNoJavaAndNoPath() throws IOException, InterruptedException {
        Path home = Files.createDirectory(folder.resolve("unpacked here"));
        Path launcher = Files.copy(LAUNCHERS.resolve("workup-tally"), home.resolve("workup-tally"));
        assertTrue(launcher.toFile().setExecutable(true));
        Path java = echo("unpacked here/runtime/bin/java", 0);
        Path link = Files.createSymbolicLink(folder.resolve("link"), launcher);
        ProcessBuilder builder = new ProcessBuilder(link.toString(), "--version");
        builder.environment().clear();
        builder.environment().put("PATH", "");
        Process process = builder.start();
        List<String> given = said(process);
        assertEquals(0, process.waitFor());
        assertEquals(java.toRealPath().toString(), given.get(0));
        assertEquals("--version", given.get(given.size() - 1));
        assertEquals(home.toRealPath().resolve("workup-tally.jar").toString(), given.get(given.size() - 2));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theAheadOfTimeCacheIsUsedInPlaceOfTheArchive() throws IOException, InterruptedException {
        Path launcher = Files.copy(LAUNCHERS.resolve("workup-tally"), folder.resolve("workup-tally"));
        Path cache = Files.createFile(folder.resolve("workup-tally.aot"));
        echo("home/bin/java", 0);
        ProcessBuilder builder = new ProcessBuilder("sh", launcher.toString(), "--version");
        builder.environment().put("JAVA_HOME", folder.resolve("home").toString());
        Process process = builder.start();
        List<String> given = said(process);
        assertEquals(0, process.waitFor());
        assertTrue(given.contains("-XX:AOTCache=" + cache), given::toString);
        assertTrue(given.stream().noneMatch(option -> option.contains("SharedArchiveFile")), given::toString);
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void checkHasACacheOfItsOwn() throws IOException, InterruptedException {
        Path launcher = Files.copy(LAUNCHERS.resolve("workup-tally"), folder.resolve("workup-tally"));
        Path cache = Files.createFile(folder.resolve("workup-tally.aot"));
        Path ofCheck = Files.createFile(folder.resolve("workup-tally-check.aot"));
        echo("home/bin/java", 0);
        for (String command : List.of("check", "review")) {
            ProcessBuilder builder = new ProcessBuilder("sh", launcher.toString(), command, "check");
            builder.environment().put("JAVA_HOME", folder.resolve("home").toString());
            Process process = builder.start();
            List<String> given = said(process);
            assertEquals(0, process.waitFor());
            assertTrue(given.contains("-XX:AOTCache=" + (command.equals("check") ? ofCheck : cache)), given::toString);
        }
    }

    /** This Java passes over a cache that is not its own, or none at all, without a word. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aForeignCacheIsPassedOverWithoutAWord() throws IOException, InterruptedException {
        Path cache = Files.writeString(folder.resolve("workup-tally.aot"), "no cache");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        OF_THE_CACHE.get(0),
                        OF_THE_CACHE.get(1) + cache,
                        OF_THE_CACHE.get(2),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "workuptally.cli.WorkupTally",
                        "--version")
                .redirectErrorStream(true)
                .start();
        List<String> given = said(process);
        assertEquals(0, process.waitFor(), given::toString);
        assertEquals(1, given.size(), given::toString);
    }
}
