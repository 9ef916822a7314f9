package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.files.ReadingOptions;
import workuptally.book.template.Template;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.model.Finding;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.report.view.wording.Wording;

/** A book with thirty planted faults, as CSV and as workbook: each is found at its cell, and the sound runs come through whole. */
class ThirtyFaultsTest {
    private static final Path FAULTS = Path.of("src/test/resources/workuptally/book/thirty-faults");

    @TempDir
    private Path folder;

    @Test
    void csvGivesThirtyFindingsAtTheirCells() throws Exception {
        assertEquals(expected(), found(new BookReader().read(csvCopy())));
    }

    @Test
    void workbookGivesThirtyFindingsAtTheirCells() throws Exception {
        assertEquals(expected(), found(new BookReader().read(workbook())));
    }

    @Test
    void bothFormsSayTheSame() throws Exception {
        Book csv = new BookReader().read(csvCopy());
        Book workbook = new BookReader().read(workbook());
        assertEquals(BookContent.of(csv), BookContent.of(workbook));
    }

    @Test
    void placesAreWordedForTheirForm() throws Exception {
        Finding csv = finding(new BookReader().read(csvCopy()), "number-unreadable");
        Finding workbook = finding(new BookReader().read(workbook()), "number-unreadable");
        assertEquals("layers.csv line 4, Gross", csv.place().inWords());
        assertEquals("Layers!G4", workbook.place().inWords());
        assertEquals("read '12,5o'", Wording.POINT.of(csv.seen()));
        assertEquals("a mass in g of 0 or more", Wording.POINT.of(csv.expected()));
        assertTrue(
                Wording.POINT.of(csv.action()).startsWith("Write one number, such as 12.5"),
                Wording.POINT.of(csv.action()));
    }

    @Test
    void soundRunIsReadWhole() throws Exception {
        Run run = new BookReader().read(csvCopy()).runs().get(0);
        assertEquals("A-1", run.id());
        assertEquals(96.6, value(run.head().conversionPercent()), 1e-12);
        Charge base = run.charges().get(1);
        assertEquals(Dimension.VOLUME, base.quantity().actual().orElseThrow().dimension());
        assertEquals(75.0, value(base.quantity().actual().orElseThrow().value()), 1e-12);
        assertEquals(
                1,
                base.quantity()
                        .actual()
                        .orElseThrow()
                        .value()
                        .entered()
                        .orElseThrow()
                        .decimals());
        Field about = run.charges().get(2).quantity().actual().orElseThrow().value();
        assertEquals(Field.Qualifier.ABOUT, about.entered().orElseThrow().qualifier());
        assertEquals(List.of("O1"), run.steps().get(1).given().organic());
        assertEquals(List.of("A1"), run.steps().get(1).given().aqueous());
        assertEquals(List.of("RM"), run.steps().get(1).from());
        assertEquals("benzoic acid", run.lots().get(0).product());
        assertEquals(
                4,
                run.lots()
                        .get(0)
                        .weighing()
                        .grossGrams()
                        .entered()
                        .orElseThrow()
                        .decimals());
        assertEquals("O1", run.assays().get(1).sample());
        assertEquals(
                Field.Qualifier.NOT_DETECTED,
                run.assays().get(1).result().entered().orElseThrow().qualifier());
        assertEquals(2, run.layer("O1").orElseThrow().composition().size());
    }

    @Test
    void unitsAreConvertedOnReading() throws Exception {
        Book book = new BookReader().read(csvCopy());
        Run run = book.runs().get(2);
        assertEquals(Run.Kind.SEPARATION, run.kind());
        assertEquals(Run.Status.IN_WORKUP, run.status());
        Field naphthalene =
                run.charges().get(0).quantity().actual().orElseThrow().value();
        assertEquals(3.0, value(naphthalene), 1e-12);
        assertEquals(3, naphthalene.entered().orElseThrow().decimals());
        Layer layer = run.layer("A1").orElseThrow();
        assertEquals(165.20, value(layer.weighing().grossGrams()), 1e-9);
        assertEquals(2, layer.weighing().grossGrams().entered().orElseThrow().decimals());
        assertEquals(61.5, value(layer.volumeMillilitres()), 1e-12);
        assertEquals(Field.Qualifier.BELOW, layer.pH().entered().orElseThrow().qualifier());
        assertEquals(1200, value(book.transfers().get(2).massGrams()), 1e-9);
        assertEquals(10, book.containers().get(0).contentsThen().get(1).massGrams(), 1e-9);
        assertEquals(0.05, book.limits().value(Limit.DETECTION_GC), 1e-12);
        assertEquals(75, book.limits().value(Limit.FUNNEL_FILL), 1e-12);
        assertEquals("2026-03-06", book.limits().text(Limit.AS_OF));
    }

    @Test
    void faultyCellsAreUnreadableAndNotBlank() throws Exception {
        Run run = new BookReader().read(csvCopy()).runs().get(1);
        assertEquals(10, run.layers().size());
        assertTrue(run.layer("L1").orElseThrow().weighing().grossGrams().isUnreadable());
        assertTrue(run.layer("L2").orElseThrow().weighing().grossGrams().isUnreadable());
        assertTrue(run.layer("L3").orElseThrow().phase().isEmpty());
        assertTrue(run.layer("L9").orElseThrow().weighing().tareGrams().isUnreadable());
        assertTrue(run.layer("L9").orElseThrow().weighing().netGrams().isBlank());
        assertTrue(
                run.charges().get(1).quantity().actual().orElseThrow().value().isUnreadable());
    }

    @Test
    void hashesEachFileRead() throws Exception {
        Book book = new BookReader().read(csvCopy());
        assertEquals(13, book.files().size());
        assertEquals("assays.csv", book.files().get(0).name());
        assertTrue(book.files().get(0).sha256().matches("[0-9a-f]{64}"));
    }

    private static double value(Field field) {
        return field.entered().orElseThrow().value();
    }

    private static Finding finding(Book book, String code) {
        return book.findings().stream()
                .filter(finding -> finding.code().word().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private Path csvCopy() throws IOException {
        Path target = Files.createDirectories(folder.resolve("faults"));
        try (Stream<Path> files = Files.list(FAULTS)) {
            for (Path file : files.toList()) {
                if (!file.endsWith("expected-findings.csv")) {
                    Files.write(target.resolve(file.getFileName()), Files.readAllBytes(file));
                }
            }
        }
        return target;
    }

    private Path workbook() throws Exception {
        Path target = folder.resolve("faults.xlsx");
        new Template().writeWorkbookFrom(csvCopy(), ReadingOptions.defaults(), target);
        return target;
    }

    private static String expected() throws IOException {
        List<String> lines = Files.readAllLines(FAULTS.resolve("expected-findings.csv"), StandardCharsets.UTF_8);
        assertEquals(31, lines.size());
        return String.join("\n", lines.subList(1, lines.size()));
    }

    private static String found(Book book) {
        return String.join(
                "\n",
                book.findings().stream()
                        .map(finding -> String.join(
                                ",",
                                finding.code().word(),
                                finding.severity().word(),
                                finding.run(),
                                finding.place().sheet(),
                                cell(finding.place())))
                        .toList());
    }

    private static String cell(Place place) {
        return (char) ('A' + place.column()) + "" + place.row();
    }
}
