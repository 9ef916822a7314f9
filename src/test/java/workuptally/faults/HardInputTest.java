package workuptally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.Zips;

/** Hard input through the program itself: one sentence and exit code 2, or the review with a finding at its cell. */
@Tag("slow")
class HardInputTest {
    private static final String FORMULA = "=HYPERLINK(\"https://x.invalid\",\"a\")";

    @TempDir
    private Path folder;

    private Path write(Map<String, String> parts) throws IOException {
        return Zips.write(folder.resolve("book.xlsx"), parts);
    }

    private Path csv(String file, byte[] bytes) throws IOException {
        Path book = BookToDamage.write(BookToDamage.tables(), folder.resolve("book"));
        Files.write(book.resolve(file), bytes);
        return book;
    }

    private static String text(String file) {
        return BookToDamage.csv(BookToDamage.tables().get(file));
    }

    private Ended review(Path book) {
        return Ended.run("review", book, "--out", folder.resolve("out"));
    }

    private void isReviewed(Path book) throws IOException {
        Ended ended = review(book);
        assertEquals(0, ended.code(), ended::err);
        assertEquals("", ended.err());
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertEquals(12, files.count());
        }
    }

    private void isRefused(Path book, String saying) {
        for (String command : List.of("check", "review")) {
            Ended ended = Ended.run(command, book);
            assertEquals(2, ended.code(), ended::err);
            assertEquals(1, ended.err().lines().count(), ended::err);
            assertTrue(ended.err().contains(saying), ended::err);
            assertEquals("", ended.out());
        }
    }

    @Test
    void aBombInAPartThatNobodyReadsIsRefused() throws Exception {
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : Zips.parts("").entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
            zip.putNextEntry(new ZipEntry("xl/media/image1.png"));
            byte[] zeros = new byte[1_000_000];
            for (int megabyte = 0; megabyte < 100; megabyte++) {
                zip.write(zeros);
            }
        }
        assertTrue(Files.size(file) < 200_000);
        isRefused(file, "expands too far in xl/media/image1.png");
    }

    @Test
    void aRelationshipOfAMillionStepsIsFollowedAtOnce() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent(
                "xl/_rels/workbook.xml.rels",
                (name, xml) ->
                        xml.replace("worksheets/sheet4.xml", "a/../".repeat(1_000_000) + "worksheets/sheet4.xml"));
        assertEquals(0, Ended.run("check", write(parts)).code());
    }

    @Test
    void moreMergedCellsThanATableCanHoldAreRefused() throws Exception {
        Map<String, String> parts = Zips.parts("");
        StringBuilder merged = new StringBuilder();
        for (int row = 2; row < 3_000; row++) {
            merged.append("<mergeCell ref='A" + row + ":C" + row + "'/>");
        }
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) -> xml.replace("</sheetData>", "</sheetData><mergeCells>" + merged + "</mergeCells>"));
        isRefused(write(parts), "merged cells");
    }

    @Test
    void regionsOfMergedCellsThatNameNoCellsAreNone() throws Exception {
        Map<String, String> parts = Zips.parts(Zips.row("R1", "A1", "12.5", "3"));
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) -> xml.replace(
                        "</sheetData>",
                        "</sheetData><mergeCells><mergeCell ref=':'/><mergeCell ref=''/><mergeCell/></mergeCells>"));
        Ended ended = Ended.run("check", write(parts));
        assertFalse(ended.out().contains("merged-cells"), ended::out);
        assertEquals("", ended.err());
    }

    @Test
    void aHiddenSheetIsReadAndMentioned() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent(
                "xl/workbook.xml", (name, xml) -> xml.replace("name='Layers'", "name='Layers' state='veryHidden'"));
        Ended ended = Ended.run("check", write(parts));
        assertTrue(ended.out().contains("Layers  [sheet-hidden]"), ended::out);
        assertEquals(1, ended.out().split("sheet-hidden", -1).length - 1, ended::out);
    }

    @Test
    void aMillionStyledBlankRowsAreNoRows() throws Exception {
        Path whole = BookToDamage.workbook(folder.resolve("scratch"), folder.resolve("whole.xlsx"));
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part :
                    BookDamage.parts(Files.readAllBytes(whole)).entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                String xml = new String(part.getValue(), StandardCharsets.UTF_8);
                int end = part.getKey().endsWith("sheet4.xml") ? xml.indexOf("</sheetData>") : -1;
                if (end < 0) {
                    zip.write(part.getValue());
                    continue;
                }
                zip.write(xml.substring(0, end).getBytes(StandardCharsets.UTF_8));
                for (int row = 2_000; row < 1_002_000; row++) {
                    zip.write(
                            ("<row r=\"" + row + "\" s=\"1\" customFormat=\"1\"><c r=\"A" + row + "\" s=\"1\"/></row>")
                                    .getBytes(StandardCharsets.UTF_8));
                }
                zip.write(xml.substring(end).getBytes(StandardCharsets.UTF_8));
            }
        }
        isReviewed(file);
    }

    @Test
    void styleNumbersBeyondAllStylesAreNoFault() throws Exception {
        Path whole = BookToDamage.workbook(folder.resolve("scratch"), folder.resolve("whole.xlsx"));
        Map<String, byte[]> parts = BookDamage.parts(Files.readAllBytes(whole));
        Map<String, String> texts = new LinkedHashMap<>();
        parts.forEach((name, bytes) -> texts.put(name, new String(bytes, StandardCharsets.UTF_8)));
        texts.replaceAll(
                (name, xml) -> name.contains("sheet") ? xml.replaceAll(" s=\"\\d+\"", " s=\"4000000000\"") : xml);
        Ended ended = review(write(texts));
        assertTrue(ended.code() == 0 || ended.code() == 2 && ended.err().contains("cannot be annotated"), ended::err);
        assertEquals(ended.code() == 0 ? 0 : 1, ended.err().lines().count(), ended::err);
    }

    @Test
    void theLongestCellIsShownShortAndReviewed() throws Exception {
        String longest = "x".repeat(32_767);
        Path book = csv(
                "layers.csv",
                text("layers.csv").replaceFirst("aqueous", longest).getBytes(StandardCharsets.UTF_8));
        Ended check = Ended.run("check", book);
        assertTrue(check.out().contains("xxxx…'"), check::out);
        assertTrue(check.out().length() < 60_000, () -> check.out().length() + " characters");
        isReviewed(book);
    }

    @Test
    void aRunWithTheLongestIdIsReviewed() throws Exception {
        String longest = "R".repeat(32_767);
        Path book = BookToDamage.write(BookToDamage.tables(), folder.resolve("book"));
        for (String file : BookToDamage.tables().keySet()) {
            Files.writeString(book.resolve(file), text(file).replace("R26-042", longest));
        }
        isReviewed(book);
    }

    @Test
    void controlsAndBrokenCharactersReachNeitherTerminalNorFiles() throws Exception {
        String odd = "a\u0001\u001B[2J\u0007b";
        Path book = csv(
                "layers.csv",
                text("layers.csv")
                        .replaceFirst("aqueous", odd)
                        .replaceFirst("brine wash", odd)
                        .getBytes(StandardCharsets.UTF_8));
        Ended ended = Ended.run("check", book);
        assertTrue(ended.out().contains("a[2Jb"), ended::out);
        assertFalse(ended.out().chars().anyMatch(c -> Character.isISOControl(c) && c != '\n'), ended::out);
        isReviewed(book);
    }

    @Test
    void halfOfACharacterBehindAnEscapeIsDropped() throws Exception {
        Path whole = BookToDamage.workbook(folder.resolve("scratch"), folder.resolve("whole.xlsx"));
        Map<String, String> texts = new LinkedHashMap<>();
        BookDamage.parts(Files.readAllBytes(whole))
                .forEach((name, bytes) -> texts.put(name, new String(bytes, StandardCharsets.UTF_8)));
        assertTrue(texts.values().stream().anyMatch(xml -> xml.contains("brine wash")));
        texts.replaceAll(
                (name, xml) -> xml.replace("brine wash", "brine _xD83D_ _xDC00_ _xFFFF_ _x0000_ _x001B_ wash"));
        isReviewed(write(texts));
        String json = Files.readString(folder.resolve("out").resolve("book-review.json"));
        assertTrue(!json.contains("\\uD83D") && !json.contains("\\u001B"));
    }

    @Test
    void rightToLeftTextAndEmojiAreKept() throws Exception {
        String odd = "שכבה مذيب \uD83E\uDDEA\uD83D\uDC69\u200D\uD83D\uDD2C";
        Path book = csv(
                "layers.csv", text("layers.csv").replaceFirst("brine wash", odd).getBytes(StandardCharsets.UTF_8));
        isReviewed(book);
        try (Workbook workbook = WorkbookFactory.create(
                folder.resolve("out").resolve("book-review.xlsx").toFile(), null, true)) {
            assertTrue(allText(workbook).stream().anyMatch(t -> t.startsWith("שכבה مذيب \uD83E\uDDEA")));
        }
    }

    private static List<String> allText(Workbook workbook) {
        List<String> texts = new ArrayList<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING) {
                        texts.add(cell.getStringCellValue());
                    }
                }
            }
        }
        return texts;
    }

    @Test
    void formulasWithLinksToOtherFilesCountByTheirStoredResult() throws Exception {
        String cell =
                "<row r='2'><c r='A2' t='inlineStr'><is><t>R1</t></is></c><c r='B2' t='inlineStr'><is><t>A1</t></is></c>"
                        + "<c r='C2'><f>[1]Other!A1+WEBSERVICE(\"https://x.invalid\")</f><v>12.5o</v></c></row>";
        Ended ended = Ended.run("check", write(Zips.parts(cell)));
        assertTrue(ended.out().contains("read '12.5o'"), ended::out);
        assertTrue(ended.out().contains("Layers!C2"), ended::out);
    }

    @Test
    void csvWithZeroBytesIsRefused() throws Exception {
        isRefused(csv("layers.csv", (text("layers.csv") + "\0").getBytes(StandardCharsets.UTF_8)), "zero bytes");
    }

    @Test
    void csvWithAQuoteWithoutPartnerIsRefusedWithItsLine() throws Exception {
        isRefused(
                csv("layers.csv", (text("layers.csv") + "\"R26-042,").getBytes(StandardCharsets.UTF_8)),
                "quotation mark");
    }

    @Test
    void csvInOtherEncodingsAndWithOtherMarksSaysTheSame() throws Exception {
        String expected = Ended.run(
                        "check", csv("layers.csv", text("layers.csv").getBytes(StandardCharsets.UTF_8)))
                .out();
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE)) {
            String mark = charset.equals(StandardCharsets.UTF_16LE) ? "\uFEFF" : "";
            Path book = csv("layers.csv", (mark + text("layers.csv")).getBytes(charset));
            assertEquals(expected, Ended.run("check", book).out());
        }
        Ended latin = Ended.run("check", csv("layers.csv", text("layers.csv").getBytes(StandardCharsets.ISO_8859_1)));
        assertTrue(latin.out().contains("[encoding-guessed]"), latin::out);
    }

    @Test
    void aSeparatorLineThatNamesTheQuoteIsNoSeparatorLine() throws Exception {
        Ended ended = Ended.run(
                "check", csv("layers.csv", ("sep=\"\n" + text("layers.csv")).getBytes(StandardCharsets.UTF_8)));
        assertTrue(ended.code() <= 2, ended::err);
        assertFalse(ended.err().contains("Exception"), ended::err);
    }

    @Test
    void textThatLooksLikeAFormulaIsTextInEveryFile() throws Exception {
        Path book = BookToDamage.write(BookToDamage.tables(), folder.resolve("book"));
        for (String file : List.of("layers.csv", "charges.csv", "workup.csv", "isolated.csv", "products.csv")) {
            List<List<String>> rows = BookToDamage.tables().get(file);
            rows.forEach(row ->
                    row.replaceAll(cell -> cell.equals("MTBE") ? FORMULA : cell.equals("brine wash") ? "=1+1" : cell));
            Files.writeString(book.resolve(file), BookToDamage.csv(rows));
        }
        isReviewed(book);
        Path out = folder.resolve("out");
        try (Workbook workbook =
                WorkbookFactory.create(out.resolve("book-review.xlsx").toFile(), null, true)) {
            assertTrue(allText(workbook).contains(FORMULA));
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        boolean linked = cell.getCellType() == CellType.FORMULA
                                && (cell.getCellFormula().contains("HYPERLINK(\"https")
                                        || cell.getCellFormula().equals("1+1"));
                        assertFalse(linked, () -> sheet.getSheetName() + cell.getAddress());
                    }
                }
            }
        }
        for (String file : List.of("book-solvents.csv", "book-waste.csv")) {
            for (String line : Files.readAllLines(out.resolve(file))) {
                assertFalse(line.matches("(.*,)?\"?=.*"), line);
            }
        }
        String pdf = Files.readString(out.resolve("book-review.pdf"), StandardCharsets.ISO_8859_1);
        assertFalse(pdf.contains("/URI"), "the PDF has a link to somewhere else");
        assertFalse(pdf.contains("/JavaScript") || pdf.contains("/Launch"), "the PDF acts");
    }

    @Test
    void aRunIdNeverBecomesAPath() throws Exception {
        Path book = BookToDamage.write(
                BookToDamage.tables(), folder.resolve("deep").resolve("er").resolve("book"));
        for (String file : BookToDamage.tables().keySet()) {
            Files.writeString(book.resolve(file), text(file).replace("R26-042", "../../../escaped"));
        }
        isReviewed(book);
        try (Stream<Path> files = Files.walk(folder)) {
            assertTrue(files.noneMatch(file -> file.getFileName().toString().contains("escaped")));
        }
    }

    @Test
    void endlessHeadingsAndReferenceFilesAreRefused() throws Exception {
        Path book = BookToDamage.write(BookToDamage.tables(), folder.resolve("book"));
        Path headings = Files.write(folder.resolve("headings.json"), new byte[1_000_001]);
        assertSentence(Ended.run("check", book, "--headings", headings), "larger than 1 MB");
        Files.writeString(headings, "[".repeat(100_000));
        assertSentence(Ended.run("check", book, "--headings", headings), "headings.json");
        Files.writeString(headings, "{\"headings\":" + "{\"Layers\":".repeat(50_000));
        assertSentence(Ended.run("check", book, "--headings", headings), "headings.json");
        assertSentence(Ended.run("check", book, "--headings", Path.of("/dev/zero")), "larger than 1 MB");
        Path reference = Files.createDirectory(folder.resolve("reference"));
        Files.createSymbolicLink(reference.resolve("solvents.csv"), Path.of("/dev/zero"));
        assertSentence(Ended.run("check", book, "--reference", reference), "solvents.csv");
    }

    private static void assertSentence(Ended ended, String saying) {
        assertEquals(2, ended.code(), ended::err);
        assertEquals(1, ended.err().lines().count(), ended::err);
        assertTrue(ended.err().contains(saying), ended::err);
    }
}
