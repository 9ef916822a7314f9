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
    private static final Pattern OPTION = Pattern.compile("(?<=[ \"])-X[^\\s\"]+");
    private static final List<String> OF_THE_ARCHIVE = List.of("-Xshare:auto", "-XX:SharedArchiveFile=");

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
                .map(option -> option.replaceFirst("(?<=File=).*", ""))
                .toList();
    }

    @Test
    void bothLaunchersGiveTheVirtualMachineTheSameOptions() throws IOException {
        assertEquals(options("workup-tally"), options("workup-tally.cmd"));
        assertTrue(options("workup-tally").containsAll(OF_THE_ARCHIVE), () -> "no archive of classes");
    }

    /** With other settings than those it was made under, the virtual machine leaves the archive aside without a word. */
    @Test
    void theArchiveIsMadeWithTheOptionsOfTheLaunchers() throws IOException {
        String settings = Files.readString(LAUNCHERS.resolve("MakeLauncher.java"))
                .replaceFirst("(?s).*SETTINGS = List\\.of\\(", "")
                .replaceFirst("(?s)\\);.*", "");
        assertEquals(
                options("workup-tally").stream()
                        .filter(option -> !OF_THE_ARCHIVE.contains(option))
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

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theShellLauncherPassesArgumentsAndTheExitCodeOn() throws IOException, InterruptedException {
        Path launcher = Files.copy(LAUNCHERS.resolve("workup-tally"), folder.resolve("my launcher"));
        Path java = folder.resolve("a home").resolve("bin").resolve("java");
        Files.createDirectories(java.getParent());
        Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\nexit 3\n");
        assertTrue(java.toFile().setExecutable(true));
        ProcessBuilder builder = new ProcessBuilder("sh", launcher.toString(), "check", "a book.xlsx", "*");
        builder.environment().put("JAVA_HOME", folder.resolve("a home").toString());
        builder.environment().put("WORKUP_TALLY_JAVA_OPTS", "-Xmx4g -Da=b");
        Process process = builder.start();
        List<String> given = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertEquals(3, process.waitFor());
        Path own = folder.toRealPath();
        assertEquals(
                List.of(
                        "-XX:SharedArchiveFile=" + own.resolve("workup-tally.jsa"),
                        "-Xmx4g",
                        "-Da=b",
                        "-jar",
                        own.resolve("workup-tally.jar").toString(),
                        "check",
                        "a book.xlsx",
                        "*"),
                given.subList(given.size() - 8, given.size()));
    }
}
