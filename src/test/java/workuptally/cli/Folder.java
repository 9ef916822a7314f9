package workuptally.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** What a folder holds: names, hidden ones too, and bytes as text that tells any change. */
final class Folder {
    private Folder() {}

    /** Names of the files in a folder but for the manifests of sets. */
    static Set<String> reports(Path folder) throws IOException {
        Set<String> names = new TreeSet<>(content(folder).keySet());
        names.removeIf(name -> name.endsWith(".manifest.json"));
        return names;
    }

    static Map<String, String> content(Path folder) throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                content.put(
                        folder.relativize(file).toString(),
                        new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1));
            }
        }
        return content;
    }

    /** All parts of a workbook as text, one behind the other. */
    static String textOfWorkbook(Path workbook) throws IOException {
        StringBuilder text = new StringBuilder();
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                text.append(new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return text.toString();
    }
}
