import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Packs what a machine needs into a zip, unpacks it elsewhere and reviews the demo week with it through its launcher. Run by the build:
 * {@code java MakeZip.java TARGET NAME TIME}, and with a fourth argument, the folder of a private runtime, for machines without Java. The
 * archive of classes stays out: it fits only the virtual machine and the place that it was made for.
 */
final class MakeZip {
    private static final int PATIENCE_SECONDS = 120;

    private MakeZip() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path target = Path.of(args[0]);
        String name = args[1];
        Map<String, Path> files = new TreeMap<>();
        for (String file : List.of("workup-tally", "workup-tally.cmd", "workup-tally.jar")) {
            files.put(file, target.resolve(file));
        }
        files.put("LICENSE", Path.of("LICENSE"));
        files.put("README.md", Path.of("README.md"));
        files.put("DEVELOPERS.md", Path.of("DEVELOPERS.md"));
        addAll(files, "input-templates", Path.of("input-templates"));
        addAll(files, "output-samples", Path.of("output-samples"));
        addReadable(files, "reference", Path.of("reference"));
        addAll(files, "licences", target.resolve("classes").resolve("META-INF").resolve("licences"));
        boolean bare = args.length > 3;
        if (bare) {
            addAll(files, "runtime", Path.of(args[3]));
        }
        Path zip = target.resolve(name + (bare ? "-" + machine() : "") + ".zip");
        pack(files, name, zip, FileTime.from(Instant.parse(args[2])));
        tryOut(zip, name, bare);
        System.out.println(zip.getFileName() + " packed and tried, " + files.size() + " files");
    }

    /** System and processor for which a runtime is made: {@code linux-amd64}. */
    private static String machine() {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT).split(" ")[0];
        return system + "-" + System.getProperty("os.arch");
    }

    private static void addAll(Map<String, Path> files, String name, Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(name + "/" + folder.relativize(file).toString().replace('\\', '/'), file);
            }
        }
    }

    /** Pages and schemas that README.md points to; the tables of data are in the program. */
    private static void addReadable(Map<String, Path> files, String name, Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String own = file.getFileName().toString();
                if (own.endsWith(".md") || own.endsWith(".json")) {
                    files.put(name + "/" + own, file);
                }
            }
        }
    }

    private static void pack(Map<String, Path> files, String name, Path zip, FileTime time) throws IOException {
        Files.deleteIfExists(zip);
        URI uri = URI.create("jar:" + zip.toAbsolutePath().toUri());
        try (FileSystem packed =
                FileSystems.newFileSystem(uri, Map.of("create", "true", "enablePosixFileAttributes", "true"))) {
            for (Map.Entry<String, Path> file : files.entrySet()) {
                Path entry = packed.getPath(name, file.getKey());
                Files.createDirectories(entry.getParent());
                Files.copy(file.getValue(), entry);
                boolean executable = file.getKey().equals("workup-tally")
                        || file.getKey().startsWith("runtime/") && Files.isExecutable(file.getValue());
                Files.setPosixFilePermissions(
                        entry, PosixFilePermissions.fromString(executable ? "rwxr-xr-x" : "rw-r--r--"));
                Files.setLastModifiedTime(entry, time);
            }
        }
    }

    private static void tryOut(Path zip, String name, boolean bare) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("workup tally");
        try {
            unpack(zip, folder);
            Path own = folder.resolve(name);
            boolean windows = System.getProperty("os.name").startsWith("Windows");
            Path out = folder.resolve("out");
            List<String> start = windows
                    ? List.of("cmd", "/c", own.resolve("workup-tally.cmd").toString())
                    : List.of(own.resolve("workup-tally").toString());
            Path log = folder.resolve("log");
            ProcessBuilder builder = new ProcessBuilder(Stream.concat(
                            start.stream(),
                            Stream.of("review", "input-templates/demo-week.xlsx", "--out", out.toString()))
                    .toList());
            if (bare) {
                builder.environment().remove("JAVA_HOME");
                builder.environment().put("PATH", "");
            } else {
                builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
            }
            Process process = builder.directory(own.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
            process.destroyForcibly();
            if (!ended || process.exitValue() != 0 || Files.notExists(out.resolve("demo-week-review.pdf"))) {
                throw new IOException("the unpacked program did not review the demo week: "
                        + Files.readString(log, StandardCharsets.UTF_8));
            }
        } finally {
            try (Stream<Path> left = Files.walk(folder)) {
                for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private static void unpack(Path zip, Path folder) throws IOException {
        URI uri = URI.create("jar:" + zip.toAbsolutePath().toUri());
        try (FileSystem packed = FileSystems.newFileSystem(uri, Map.of("enablePosixFileAttributes", "true"));
                Stream<Path> entries = Files.walk(packed.getPath("/"))) {
            for (Path entry : entries.filter(Files::isRegularFile).toList()) {
                Path file = folder.resolve(entry.toString().substring(1));
                Files.createDirectories(file.getParent());
                Files.copy(entry, file);
                if (!System.getProperty("os.name").startsWith("Windows")) {
                    Files.setPosixFilePermissions(file, Files.getPosixFilePermissions(entry));
                }
            }
        }
    }
}
