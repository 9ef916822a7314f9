import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

/**
 * Puts the launchers beside the jar, with an archive of the classes that the commands load, which the virtual machine maps instead of
 * parsing and checking them; from Java 25 on with an ahead-of-time cache, which keeps them linked as well. Run by the build, with the Java
 * that is to start the program: {@code java MakeLauncher.java JAR LAUNCHER-FOLDER DEMO-BOOK DEMO-CSV-FOLDER}. Where the virtual machine makes
 * neither, the launchers work without, only slower. A jar that holds what it held when its archive was made keeps it.
 */
final class MakeLauncher {
    private static final int FIRST_WITH_CACHE = 25;

    private static final List<String> SETTINGS = List.of(
            "-XX:+UseSerialGC",
            "-XX:NewRatio=7",
            "-XX:MetaspaceSize=64m",
            "-XX:TieredStopAtLevel=1");

    private static final String ARCHIVE = "workup-tally.jsa";
    private static final String CACHE = "workup-tally.aot";
    private static final String CACHE_OF_CHECK = "workup-tally-check.aot";

    /** What the archive was made of; as old as the jar then was. */
    private static final String MADE_OF = "workup-tally.made-of";

    private final Path jar;
    private final Path folder;
    private final Path work;

    private MakeLauncher(Path jar, Path work) {
        this.jar = jar;
        this.folder = jar.getParent();
        this.work = work;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]).toAbsolutePath();
        Path work = Files.createTempDirectory("launcher");
        try {
            MakeLauncher maker = new MakeLauncher(jar, work);
            maker.copyScripts(Path.of(args[1]));
            String content = maker.contentOfJar();
            if (maker.isMadeOf(content)) {
                System.out.println("The jar holds the same as before: its archive stays");
                return;
            }
            Files.deleteIfExists(maker.folder.resolve(ARCHIVE));
            Files.deleteIfExists(maker.folder.resolve(CACHE));
            Files.deleteIfExists(maker.folder.resolve(CACHE_OF_CHECK));
            if (Runtime.version().feature() >= FIRST_WITH_CACHE) {
                maker.makeCache(args[2], args[3]);
            } else {
                maker.makeArchive(args[2], args[3]);
            }
            Files.writeString(maker.folder.resolve(MADE_OF), content);
            Files.setLastModifiedTime(maker.folder.resolve(MADE_OF), Files.getLastModifiedTime(jar));
        } finally {
            try (Stream<Path> left = Files.walk(work)) {
                for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    /** Names and checksums of all parts of the jar, and the virtual machine at work. */
    private String contentOfJar() throws IOException {
        StringBuilder content = new StringBuilder(System.getProperty("java.home") + " " + Runtime.version() + "\n");
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            zip.stream()
                    .map(part -> part.getName() + " " + part.getCrc() + "\n")
                    .sorted()
                    .forEach(content::append);
        }
        return content.toString();
    }

    /** True where the archive was made of the same; the jar then gets back the time by which the virtual machine knows it. */
    private boolean isMadeOf(String content) throws IOException {
        Path madeOf = folder.resolve(MADE_OF);
        boolean same = (Files.exists(folder.resolve(ARCHIVE)) || Files.exists(folder.resolve(CACHE)))
                && Files.exists(madeOf)
                && Files.readString(madeOf).equals(content);
        if (same) {
            Files.setLastModifiedTime(jar, Files.getLastModifiedTime(madeOf));
        }
        return same;
    }

    private void copyScripts(Path source) throws IOException {
        for (String name : List.of("workup-tally", "workup-tally.cmd")) {
            Path script = folder.resolve(name);
            Files.copy(source.resolve(name), script, StandardCopyOption.REPLACE_EXISTING);
            script.toFile().setReadable(true, false);
            script.toFile().setExecutable(true, false);
        }
    }

    private void makeArchive(String book, String csvFolder) throws IOException, InterruptedException {
        String out = work.resolve("out").toString();
        List<List<String>> commands = List.of(
                List.of("review", book, "--out", out),
                List.of("review", csvFolder, "--out", out, "--locale", "comma"),
                List.of("check", book),
                List.of("template", work.resolve("template.xlsx").toString()),
                List.of("reference", "solvents"),
                List.of("--help"));
        List<String> classes = new ArrayList<>();
        for (int i = 0; i < commands.size(); i++) {
            Path list = work.resolve("classes-" + i);
            run("-XX:DumpLoadedClassList=" + list, commands.get(i));
            if (Files.exists(list)) {
                classes.addAll(linesMissing(classes, Files.readAllLines(list, StandardCharsets.UTF_8)));
            }
        }
        Path all = Files.write(work.resolve("classes"), classes);
        Path archive = folder.resolve(ARCHIVE);
        run("-Xshare:dump", List.of("--version"), "-XX:SharedClassListFile=" + all, "-XX:SharedArchiveFile=" + archive);
        System.out.println(
                Files.exists(archive)
                        ? "Archive of " + classes.size() + " classes made"
                        : "This virtual machine made no archive of classes; the launchers work without");
    }

    /**
     * One run trains a cache: a review of both kinds of book loads nearly all that the commands do. Since a cache is loaded whole, check has
     * one of its own.
     */
    private void makeCache(String book, String csvFolder) throws IOException, InterruptedException {
        Path cache = folder.resolve(CACHE);
        String out = work.resolve("out").toString();
        run("-XX:AOTCacheOutput=" + cache, List.of("review", book, csvFolder, "--out", out));
        run("-XX:AOTCacheOutput=" + folder.resolve(CACHE_OF_CHECK), List.of("check", book, csvFolder));
        System.out.println(
                Files.exists(cache)
                        ? "Ahead-of-time cache made"
                        : "No ahead-of-time cache made; the launchers work without");
    }

    /**
     * Lines that a list has more often than another. A line stands as often as its class is needed: a method reference that a class holds
     * three times takes three proxies.
     */
    private static List<String> linesMissing(List<String> there, List<String> list) {
        Map<String, Integer> left = new HashMap<>();
        there.forEach(line -> left.merge(line, 1, Integer::sum));
        return list.stream()
                .filter(line -> left.merge(line, -1, Integer::sum) < 0)
                .toList();
    }

    private void run(String option, List<String> arguments, String... more) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(SETTINGS);
        command.add(option);
        command.addAll(Arrays.asList(more));
        command.addAll(List.of("-jar", jar.toString()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(work.resolve("log").toFile())
                .start();
        process.waitFor();
    }
}
