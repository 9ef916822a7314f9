package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short command pays for every class that it loads: {@code check} needs no library that writes documents. */
@Tag("slow")
class ClassesOfCheckTest {
    /** The last makes the methods that a record has by itself, each at its first call: tens of milliseconds for the first. */
    private static final List<String> NEEDLESS = List.of(
            "org.apache.poi.",
            "org.apache.xmlbeans.",
            "org.apache.commons.compress.",
            "org.apache.logging.",
            "org.slf4j.",
            "com.lowagie.",
            "tools.jackson.core.json.");

    @TempDir
    private Path folder;

    @Test
    void checkLoadsNoNeedlessClass() throws Exception {
        Path log = folder.resolve("classes");
        Process check = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load=info:file=" + log + ":none",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "workuptally.cli.WorkupTally",
                        "check",
                        "input-templates/demo-week.xlsx")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out").toFile())
                .start();
        assertEquals(1, check.waitFor(), Files.readString(folder.resolve("out")));
        try (Stream<String> lines = Files.lines(log)) {
            List<String> loaded = lines.map(line -> line.split(" ")[0]).toList();
            assertTrue(loaded.contains("workuptally.judgement.ReviewBuilder"), "the log tells what was loaded");
            assertEquals(
                    List.of(),
                    loaded.stream()
                            .filter(name -> NEEDLESS.stream().anyMatch(name::startsWith))
                            .toList());
        }
    }
}
