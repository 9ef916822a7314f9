package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program killed, the disk full, the machine odd: never a half file, never a changed input, always a clear word. As many kills as
 * {@code -Dfault.kills=} says, 40 without it.
 */
class FaultsTest {
    private static final int KILLS = Integer.getInteger("fault.kills", 40);
    private static final String FIRST_DAY = "2026-03-09";
    private static final String SECOND_DAY = "2026-03-13";
    private static final int FILES = 5;

    @TempDir
    private Path folder;

    private Path book;
    private Map<String, Integer> before;

    @BeforeEach
    void writeBook() throws IOException {
        book = SmallBook.write(SmallBook.tables(), folder.resolve("book"));
        before = hashes(book);
    }

    /** Hash of each file that is no hidden one. */
    private static Map<String, Integer> hashes(Path folder) throws IOException {
        Map<String, Integer> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                hashes.put(file.getFileName().toString(), Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return hashes;
    }

    private Map<String, Integer> expected(String day) throws IOException {
        Path out = folder.resolve("expected-" + day);
        Ended ended = Ended.run("review", book, "--out", out, "--quiet", "--as-of", day);
        assertEquals(new Ended(0, "", ""), ended);
        return hashes(out);
    }

    private static Process java(List<String> machine, String main, Object... args) throws IOException {
        return new ProcessBuilder(command(machine, main, args))
                .redirectErrorStream(true)
                .start();
    }

    private static List<String> command(List<String> machine, String main, Object... args) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData"));
        command.addAll(machine);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        Stream.of(args).map(Object::toString).forEach(command::add);
        return command;
    }

    private static String output(Process process) throws IOException {
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("SLF4J"))
                .reduce("", (all, line) -> all + line + "\n");
    }

    @Test
    void aKilledProgramLeavesWholeFilesOnly() throws Exception {
        Map<String, Integer> first = expected(FIRST_DAY);
        Map<String, Integer> second = expected(SECOND_DAY);
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            List<Future<Boolean>> all = new ArrayList<>();
            for (int kill = 0; kill < KILLS; kill++) {
                int seed = kill;
                Callable<Boolean> work = () -> killed(seed, first, second);
                all.add(threads.submit(work));
            }
            int whole = 0;
            for (Future<Boolean> each : all) {
                whole += each.get() ? 1 : 0;
            }
            assertTrue(whole > 0, "no review came as far as its files");
        } finally {
            threads.shutdownNow();
        }
        assertEquals(before, hashes(book));
    }

    /** Kills at a moment drawn from the seed; whether a review had been placed before. */
    private boolean killed(int seed, Map<String, Integer> first, Map<String, Integer> second) throws Exception {
        Random random = new Random(seed);
        Path out = Files.createDirectory(folder.resolve("killed-" + seed));
        Process process = java(List.of(), "workuptally.faults.ReviewLoop", book, out, FIRST_DAY, SECOND_DAY);
        boolean placed = false;
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            String awaited = seed % 4 == 0 ? "begun" : "placed";
            String line = lines.readLine();
            while (line != null && !line.equals(awaited)) {
                line = lines.readLine();
            }
            placed = awaited.equals("placed");
            Thread.sleep(random.nextInt(placed ? 700 : 2_000));
            process.destroyForcibly().waitFor();
        }
        Map<String, Integer> left = hashes(out);
        left.forEach((name, hash) -> assertTrue(
                hash.equals(first.get(name)) || hash.equals(second.get(name)),
                "half a file: " + name + ", seed " + seed));
        if (placed) {
            assertEquals(first.keySet(), left.keySet(), "seed " + seed);
        }
        return placed;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=tr -Duser.country=TR -Duser.home=/nonexistent",
                "-Duser.language=ar -Duser.country=EG -Dsun.awt.fontconfig=/nonexistent -Djava.awt.headless=true",
                "-Duser.language=hi -Duser.country=IN -Duser.timezone=Asia/Kolkata -Xmx64m",
                "-Duser.language=th -Duser.country=TH -Duser.variant=TH -Duser.timezone=Pacific/Apia -Dfile.encoding=US-ASCII",
            })
    void anOddMachineWritesTheSameFiles(String machine) throws Exception {
        Path demo = Path.of("input-templates", "demo-week");
        Path here = folder.resolve("here");
        Path there = folder.resolve("there");
        assertEquals(0, Ended.run("review", demo, "--out", here, "--quiet").code());
        Process process = java(
                List.of(machine.split(" ")), "workuptally.cli.WorkupTally", "review", demo, "--out", there, "--quiet");
        assertEquals("", output(process));
        assertEquals(0, process.waitFor());
        assertEquals(hashes(here), hashes(there));
    }

    /** The shell lets no file grow beyond a size: to the program that is a disk that is full. */
    @ParameterizedTest
    @ValueSource(ints = {1, 40, 200})
    void aFullDiskIsOneSentenceAndNoFile(int blocks) throws Exception {
        Path out = folder.resolve("out");
        List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "sh"));
        command.addAll(command(
                List.of("-Xshare:auto"), "workuptally.cli.WorkupTally", "review", book, "--out", out, "--quiet"));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = output(process);
        assertEquals(2, process.waitFor(), said);
        assertEquals(1, said.lines().count(), said);
        assertFalse(said.contains("Exception"), said);
        assertEquals(Map.of(), hashes(out));
        try (Stream<Path> left = Files.list(out)) {
            assertEquals(List.of(), left.toList());
        }
        assertEquals(before, hashes(book));
    }

    @Test
    void aFolderThatTakesNoFilesIsOneSentence() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "kept");
        for (Path out : List.of(file.resolve("below"), Path.of("/proc/none"), Path.of("/dev/null"))) {
            Ended ended = Ended.run("review", book, "--out", out);
            assertEquals(2, ended.code(), ended::err);
            assertEquals(1, ended.err().lines().count(), ended::err);
            assertTrue(ended.err().contains(out.toString()), ended::err);
        }
        assertEquals("kept", Files.readString(file));
    }

    @Test
    void earlierFilesStayWhereOneIsAFolder() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(
                0,
                Ended.run("review", book, "--out", out, "--quiet", "--as-of", FIRST_DAY)
                        .code());
        Map<String, Integer> earlier = hashes(out);
        Files.delete(out.resolve("book-waste.csv"));
        Files.createDirectory(out.resolve("book-waste.csv"));
        Ended ended = Ended.run("review", book, "--out", out, "--quiet", "--as-of", SECOND_DAY);
        assertEquals(2, ended.code());
        assertTrue(ended.err().contains("book-waste.csv"), ended::err);
        earlier.remove("book-waste.csv");
        assertEquals(FILES - 1, earlier.size());
        assertEquals(earlier, hashes(out));
    }
}
