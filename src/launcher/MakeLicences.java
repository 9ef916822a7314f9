import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Collects licences and notices of every library on its class path, a folder each, and of the fonts. Run by the build: {@code java -classpath
 * LIBRARIES MakeLicences.java TARGET}. A library without one takes it from {@code src/licences}; without one there either the build fails.
 */
final class MakeLicences {
    private static final Pattern TEXT =
            Pattern.compile("META-INF/(?:[^/]*(?i:licen[sc]e|notice)[^/]*|(?:A?L?GPL|MPL)[^/]*)");
    private static final Path OWN = Path.of("src", "licences");
    private static final Path FONTS = Path.of("src", "main", "resources", "workuptally", "report", "pdf", "layout");

    private MakeLicences() {}

    public static void main(String[] args) throws IOException {
        Path target = Path.of(args[0]);
        for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path jar = Path.of(part);
            if (Files.isRegularFile(jar)) {
                collect(jar, target);
            }
        }
        Path fonts = Files.createDirectories(target.resolve("DejaVu-fonts"));
        Files.copy(
                FONTS.resolve("DejaVu-LICENSE.txt"), fonts.resolve("LICENSE.txt"), StandardCopyOption.REPLACE_EXISTING);
    }

    private static void collect(Path jar, Path target) throws IOException {
        String library = jar.getFileName().toString().replaceFirst("\\.jar$", "");
        Path folder = Files.createDirectories(target.resolve(library));
        boolean licence = false;
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            List<? extends ZipEntry> texts = zip.stream()
                    .filter(entry -> TEXT.matcher(entry.getName()).matches())
                    .toList();
            for (ZipEntry text : texts) {
                String name = text.getName().substring("META-INF/".length());
                try (InputStream in = zip.getInputStream(text)) {
                    Files.copy(in, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                }
                licence |= !name.toUpperCase(java.util.Locale.ROOT).contains("NOTICE");
            }
        }
        Path own = OWN.resolve(library.replaceFirst("-\\d.*", ""));
        if (Files.isDirectory(own)) {
            try (Stream<Path> files = Files.list(own)) {
                for (Path file : files.sorted().toList()) {
                    Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
                    licence = true;
                }
            }
        }
        if (!licence) {
            throw new IOException(library + " brings no licence: put its text into " + OWN);
        }
    }
}
