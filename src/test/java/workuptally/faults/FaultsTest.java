package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.report.json.Manifest;

/**
 * The program killed, the disk full, the machine odd: never a half file, never a changed input, always a clear word. As many reviews are
 * killed as {@code -Dfault.kills=} says, 10 without it; ten die with each program.
 */
@Tag("slow")
class FaultsTest {
    private static final int KILLS = Integer.getInteger("fault.kills", 10);
    private static final int KILLED_AT_ONCE = 10;
    private static final String FIRST_DAY = "2026-03-09";
    private static final String SECOND_DAY = "2026-03-13";
    private static final int STOPS = 2;
    private static final int FILES = 12;
    private static final String MANIFEST = "book-review.manifest.json";

    private static final Path DEMO = Path.of("input-templates", "demo-week");

    @TempDir
    private static Path inputs;

    private static Path book;
    private static Map<String, Integer> before;

    /** What a review writes on each day, and of the demo week; reviewed once. */
    private static final Map<String, Map<String, Integer>> EXPECTED = new TreeMap<>();

    @TempDir
    private Path folder;

    @BeforeAll
    static void writeBook() throws IOException {
        book = BookToDamage.write(BookToDamage.tables(), inputs.resolve("book"));
        before = hashes(book);
    }

    /** Hash of each file that is no hidden one. */
    private static Map<String, Integer> hashes(Path folder) throws IOException {
        Map<String, Integer> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (file.getFileName().toString().startsWith(".")) {
                    continue;
                }
                hashes.put(file.getFileName().toString(), Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return hashes;
    }

    private static Map<String, Integer> expected(String name, Path input, Object... options) throws IOException {
        if (!EXPECTED.containsKey(name)) {
            Path out = inputs.resolve("expected-" + name);
            List<Object> review = new ArrayList<>(List.of("review", input, "--out", out, "--quiet"));
            review.addAll(List.of(options));
            assertEquals(new Ended(0, "", ""), Ended.run(review.toArray()));
            EXPECTED.put(name, hashes(out));
        }
        return EXPECTED.get(name);
    }

    private static Map<String, Integer> expected(String day) throws IOException {
        return expected(day, book, "--as-of", day);
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
            List<Future<List<Path>>> all = new ArrayList<>();
            for (int seed = 0; seed < KILLS / KILLED_AT_ONCE; seed++) {
                Random random = new Random(seed);
                Callable<List<Path>> work = () -> kill(random);
                all.add(threads.submit(work));
            }
            int leftovers = 0;
            for (Future<List<Path>> each : all) {
                for (Path out : each.get()) {
                    for (Map.Entry<String, Integer> file : hashes(out).entrySet()) {
                        String name = file.getKey();
                        // A manifest names what was asked for, which is not the same in all folders: it need only be
                        // whole.
                        boolean whole = name.equals(MANIFEST)
                                ? Manifest.read(out.resolve(name)).isPresent()
                                : file.getValue().equals(first.get(name))
                                        || file.getValue().equals(second.get(name));
                        assertTrue(whole, "half a file: " + out + " " + name);
                    }
                    leftovers += hidden(out).isEmpty() ? 0 : 1;
                    assertNextRunClearsAway(out);
                }
            }
            assertTrue(leftovers > KILLS / 10, "only " + leftovers + " reviews were killed while they wrote");
        } finally {
            threads.shutdownNow();
        }
        assertEquals(before, hashes(book));
    }

    /** Folders of reviews killed at a moment drawn by chance; three of four times after all of them had been placed once. */
    private List<Path> kill(Random random) throws Exception {
        List<Path> outs = new ArrayList<>();
        List<Object> arguments = new ArrayList<>(List.of(book, FIRST_DAY, SECOND_DAY));
        for (int i = 0; i < KILLED_AT_ONCE; i++) {
            outs.add(Files.createTempDirectory(folder, "killed-" + i + "-"));
        }
        arguments.addAll(outs);
        boolean late = random.nextInt(4) > 0;
        Process process = java(List.of(), "workuptally.faults.ReviewLoop", arguments.toArray());
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            String awaited = late ? "placed" : "begun";
            String line = lines.readLine();
            while (line != null && !line.equals(awaited)) {
                line = lines.readLine();
            }
            // A busy machine gives the program little time: what it has done counts, not the clock.
            for (int reviews = late ? random.nextInt(4 * KILLED_AT_ONCE) : 0; reviews > 0; reviews--) {
                lines.readLine();
            }
            Thread.sleep(random.nextInt(late ? 30 : 1_500));
            process.destroyForcibly().waitFor();
        }
        if (late) {
            for (Path out : outs) {
                assertTrue(hashes(out).size() >= FILES - 4, () -> "files are gone from " + out);
            }
        }
        return outs;
    }

    private static List<String> hidden(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("."))
                    .toList();
        }
    }

    private void assertNextRunClearsAway(Path out) throws IOException {
        // A folder without its lock is a minute old before anybody takes it for one left behind.
        for (String name : hidden(out)) {
            if (Files.notExists(out.resolve(name).resolve("lock"))) {
                Files.setLastModifiedTime(
                        out.resolve(name), FileTime.from(Instant.now().minusSeconds(120)));
            }
        }
        Ended ended = Ended.run("review", book, "--out", out, "--quiet", "--reports", "json");
        assertEquals(new Ended(0, "", ""), ended);
        assertEquals(List.of(), hidden(out));
        assertManifestHolds(out);
    }

    /** Whatever was killed, the manifest names every file there with its hash: nothing was kept aside, no two sets are mixed. */
    private static void assertManifestHolds(Path out) throws IOException {
        Manifest manifest = Manifest.read(out.resolve(MANIFEST)).orElseThrow();
        Map<String, String> named = new TreeMap<>();
        manifest.files().forEach(file -> named.put(file.name(), file.sha256()));
        Map<String, String> there = new TreeMap<>();
        for (String name : hashes(out).keySet()) {
            if (!name.equals(MANIFEST)) {
                there.put(name, sha256(out.resolve(name)));
            }
        }
        assertEquals(named, there);
    }

    /** Killed while it wrote the manifest: the set was never whole, and its folder is cleared away like any other. */
    @Test
    void halfAStagedManifestPlacesNothing() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        Path dead = Files.createDirectory(out.resolve(".workup-tally-0-1"));
        Files.createFile(dead.resolve("lock"));
        Files.writeString(dead.resolve("book-waste.csv"), "half");
        Files.writeString(
                dead.resolve(MANIFEST), "{\"tool\": \"0\", \"inputs\": [], \"files\": [{\"name\": \"book-was");
        assertNextRunClearsAway(out);
        assertFalse(Files.exists(out.resolve("book-waste.csv")));
    }

    private static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    /** Asked to stop, not killed: whoever waits for the program to end finds nothing hidden, and one whole set. */
    @Test
    void aStoppedProgramLeavesNothingHidden() throws Exception {
        for (int seed = 0; seed < STOPS; seed++) {
            Random random = new Random(seed);
            Path out = Files.createTempDirectory(folder, "stopped-");
            Process process = java(List.of(), "workuptally.faults.ReviewLoop", book, FIRST_DAY, SECOND_DAY, out);
            try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
                String line = lines.readLine();
                while (line != null && !line.equals("placed")) {
                    line = lines.readLine();
                }
                for (int reviews = random.nextInt(4); reviews > 0; reviews--) {
                    lines.readLine();
                }
                Thread.sleep(random.nextInt(30));
                process.destroy();
                process.waitFor();
            }
            assertEquals(List.of(), hidden(out));
            assertManifestHolds(out);
        }
    }

    /** The other program is stopped, not killed: it lives and goes on later. */
    @Test
    void whatALivingProgramWritesIsLeftAlone() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        Process other = java(List.of(), "workuptally.faults.ReviewLoop", book, FIRST_DAY, SECOND_DAY, out);
        try {
            List<String> held = List.of();
            while (held.stream()
                    .noneMatch(name -> Files.exists(out.resolve(name).resolve("lock")))) {
                signal(other, "CONT");
                Thread.sleep(7);
                signal(other, "STOP");
                Thread.sleep(25); // on a busy machine the signal has come before all of its threads stand
                held = hidden(out);
                assertTrue(other.isAlive());
            }
            if (!held.contains(".workup-tally-placing")) {
                assertEquals(
                        0,
                        Ended.run("review", book, "--out", out, "--quiet", "--reports", "json")
                                .code());
            }
            assertEquals(held, hidden(out));
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertNextRunClearsAway(out);
    }

    private static void signal(Process process, String name) throws Exception {
        new ProcessBuilder("kill", "-" + name, Long.toString(process.pid()))
                .start()
                .waitFor();
    }

    @Test
    void twoReviewsIntoOneFolderNeverMix() throws Exception {
        Map<String, Integer> first = expected(FIRST_DAY);
        Map<String, Integer> second = expected(SECOND_DAY);
        Path out = folder.resolve("out");
        List<Process> both = new ArrayList<>();
        for (String day : List.of(FIRST_DAY, SECOND_DAY)) {
            both.add(java(
                    List.of(),
                    "workuptally.cli.WorkupTally",
                    List.of("review", book, "--out", out, "--quiet", "--as-of", day)
                            .toArray()));
        }
        for (Process each : both) {
            assertEquals("", output(each));
            assertEquals(0, each.waitFor());
        }
        Map<String, Integer> left = hashes(out);
        assertTrue(left.equals(first) || left.equals(second), left::toString);
        assertEquals(List.of(), hidden(out));
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
        Path there = folder.resolve("there");
        Process process = java(
                List.of(machine.split(" ")), "workuptally.cli.WorkupTally", "review", DEMO, "--out", there, "--quiet");
        assertEquals("", output(process));
        assertEquals(0, process.waitFor());
        assertEquals(expected("demo-week", DEMO), hashes(there));
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
