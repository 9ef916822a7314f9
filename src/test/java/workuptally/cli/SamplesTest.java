package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pins the templates, and the review and the period account of the demo week, that stand in the project to what the program writes. With {@code
 * -Dsamples.renew=true} they are renewed first; look at the difference before it is committed.
 */
@Tag("slow")
class SamplesTest {
    private static final Path TEMPLATES = Path.of("input-templates");
    private static final Path SAMPLES = Path.of("output-samples");

    @TempDir
    private static Path fresh;

    @BeforeAll
    static void writeAll() throws IOException {
        write("template", fresh.resolve("workup-book.xlsx"));
        write("template", fresh.resolve("csv"));
        write("template", fresh.resolve("demo-week.xlsx"), "--example");
        if (Boolean.getBoolean("samples.renew")) {
            Files.createDirectories(TEMPLATES.resolve("csv"));
            for (String file : Folder.content(fresh).keySet()) {
                renew(fresh.resolve(file), TEMPLATES.resolve(file));
            }
        }
        write("review", TEMPLATES.resolve("demo-week.xlsx"), "--out", fresh.resolve("review"), "--quiet");
        write("bench", TEMPLATES.resolve("demo-week.xlsx"), "--out", fresh.resolve("review"));
        ReadmePictures.draw(fresh.resolve("review").resolve("demo-week-review.pdf"), fresh.resolve("review"));
        Path period = fresh.resolve("review").resolve("period");
        Path demo = TEMPLATES.resolve("demo-week");
        write("period", demo, "--from", "2026-03-02", "--to", "2026-03-08", "--out", period, "--quiet");
        withoutManifests(fresh.resolve("review"));
        if (Boolean.getBoolean("samples.renew")) {
            Files.createDirectories(SAMPLES.resolve("period"));
            for (String file : Folder.content(fresh.resolve("review")).keySet()) {
                renew(fresh.resolve("review").resolve(file), SAMPLES.resolve(file));
            }
        }
    }

    /** Hashes of packed files differ between systems, and nothing is to be placed beside the samples. */
    private static void withoutManifests(Path folder) throws IOException {
        for (String file : Folder.content(folder).keySet()) {
            if (file.endsWith(".manifest.json")) {
                Files.delete(folder.resolve(file));
            }
        }
    }

    private static void write(Object... args) {
        Call call = Call.of(args);
        assertEquals(0, call.code(), call::err);
    }

    /** A workbook whose parts are the same keeps its bytes, on which the hash of the input in the samples rests. */
    private static void renew(Path from, Path to) throws IOException {
        boolean same = to.toString().endsWith(".xlsx")
                && Files.exists(to)
                && parts(from).equals(parts(to));
        if (!same) {
            Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Test
    void folderOfSamplesHoldsTheFilesOfOneReviewItsBenchSheetAndOnePeriod() throws IOException {
        assertEquals(
                Folder.content(fresh.resolve("review")).keySet(),
                Folder.content(SAMPLES).keySet());
    }

    @ParameterizedTest
    @ValueSource(strings = {"workup-book.xlsx", "demo-week.xlsx"})
    void workbookTemplatesAreWhatTheProgramWrites(String name) throws IOException {
        assertEquals(parts(fresh.resolve(name)), parts(TEMPLATES.resolve(name)));
    }

    @Test
    void emptyCsvSetIsWhatTheProgramWrites() throws IOException {
        assertEquals(Folder.content(fresh.resolve("csv")), Folder.content(TEMPLATES.resolve("csv")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "demo-week-review.json",
                "demo-week-yields.csv",
                "demo-week-layers.csv",
                "demo-week-solvents.csv",
                "demo-week-waste.csv",
                "demo-week-containers.csv",
                "demo-week-transfers.csv",
                "period/period.json",
                "period/period-solvents.csv",
                "period/period-waste.csv"
            })
    void textsAreWhatTheProgramWrites(String name) throws IOException {
        assertArrayEquals(
                Files.readString(fresh.resolve("review").resolve(name)).split("\n"),
                Files.readString(SAMPLES.resolve(name)).split("\n"));
    }

    @Test
    void annotatedWorkbookIsWhatTheProgramWrites() throws IOException {
        String name = "demo-week-review.xlsx";
        assertEquals(parts(fresh.resolve("review").resolve(name)), parts(SAMPLES.resolve(name)));
    }

    /** Compression differs between systems, so that the text is compared. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "demo-week-review.pdf",
                "demo-week-safety.pdf",
                "demo-week-labels.pdf",
                "demo-week-bench.pdf",
                "period/period.pdf"
            })
    void pdfSaysWhatTheProgramWrites(String name) throws IOException {
        assertEquals(text(fresh.resolve("review").resolve(name)), text(SAMPLES.resolve(name)));
    }

    /** The pictures of README.md show the review as it is now; the limit lets a renderer draw the edges of letters its own way. */
    @ParameterizedTest
    @ValueSource(strings = {ReadmePictures.PAGE_ONE, ReadmePictures.LAYER_MAP})
    void picturesOfTheReadmeShowWhatTheProgramDraws(String name) throws IOException {
        double difference = ReadmePictures.difference(fresh.resolve("review").resolve(name), SAMPLES.resolve(name));
        assertTrue(difference < 0.005, name + " differs by " + difference);
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return document.getNumberOfPages() + " pages\n" + new PDFTextStripper().getText(document);
        }
    }

    private static Map<String, String> parts(Path workbook) throws IOException {
        Map<String, String> parts = new TreeMap<>();
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    parts.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        return parts;
    }
}
