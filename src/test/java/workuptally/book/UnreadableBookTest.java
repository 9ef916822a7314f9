package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;

/** One damaged or foreign file of each kind: each is refused with one sentence that says what to do. */
class UnreadableBookTest {
    @TempDir
    private Path folder;

    @Test
    void encryptedWorkbook() throws Exception {
        Path file = folder.resolve("book.xlsx");
        try (POIFSFileSystem system = new POIFSFileSystem();
                OutputStream out = Files.newOutputStream(file)) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("invented");
            try (OutputStream content = encryptor.getDataStream(system)) {
                content.write(new byte[2_000]);
            }
            system.writeFilesystem(out);
        }
        assertRefused(file, "protected by a password: save it without one");
    }

    @Test
    void workbookOfTheOldForm() throws Exception {
        Path file = folder.resolve("book.xls");
        try (HSSFWorkbook workbook = new HSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            workbook.createSheet("Runs");
            workbook.write(out);
        }
        assertRefused(file, "(.xls)");
    }

    @Test
    void openDocumentSpreadsheet() throws Exception {
        Path file = Zips.write(
                folder.resolve("book.ods"),
                Map.of("mimetype", "application/vnd.oasis.opendocument.spreadsheet", "content.xml", "<x/>"));
        assertRefused(file, "OpenDocument spreadsheet: open it in a spreadsheet program and save it as .xlsx");
    }

    @Test
    void binaryWorkbook() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent("_rels/.rels", (name, xml) -> xml.replace("workbook.xml", "workbook.bin"));
        assertRefused(Zips.write(folder.resolve("book.xlsb"), parts), "(.xlsb)");
    }

    @Test
    void textWithTheWrongEnding() throws Exception {
        assertRefused(write("book.xlsx", "Run,Date\nR1,2026-03-02\n"), "no workbook, whatever its ending says");
    }

    @Test
    void singleCsvFile() throws Exception {
        assertRefused(write("runs.csv", "Run,Date\nR1,2026-03-02\n"), "give the folder");
    }

    @Test
    void emptyFile() throws Exception {
        assertRefused(write("book.xlsx", ""), "is empty");
    }

    @Test
    void missingFile() {
        assertThrows(NoSuchFileException.class, () -> new BookReader().read(folder.resolve("nowhere.xlsx")));
    }

    @Test
    void cutOffWorkbook() throws Exception {
        Path file = Zips.write(folder.resolve("book.xlsx"), Zips.parts(""));
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        assertRefused(file, "cut off or damaged");
    }

    @Test
    void damagedDeflatedBytes() throws Exception {
        Path file = Zips.write(
                folder.resolve("book.xlsx"), Zips.parts(Zips.row("R1", "A1").repeat(300)));
        byte[] bytes = Files.readAllBytes(file);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("xl/worksheets/sheet4.xml") + 40;
        Arrays.fill(bytes, at, at + 60, (byte) 0x55);
        Files.write(file, bytes);
        assertRefused(file, "damaged in xl/worksheets/sheet4.xml");
    }

    @Test
    void plainZip() throws Exception {
        assertRefused(
                Zips.write(folder.resolve("book.xlsx"), Map.of("readme.txt", "hello")), "zip archive but no workbook");
    }

    @Test
    void anotherKindOfDocument() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.put("xl/workbook.xml", "<document/>");
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "another kind of document");
    }

    @Test
    void brokenXml() throws Exception {
        Map<String, String> parts = Zips.parts("<row><c>");
        assertRefused(
                Zips.write(folder.resolve("book.xlsx"), parts), "book.xlsx is damaged in xl/worksheets/sheet4.xml");
    }

    @Test
    void missingPart() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.remove("xl/worksheets/sheet4.xml");
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "lacks its part xl/worksheets/sheet4.xml");
    }

    @Test
    void missingSharedText() throws Exception {
        Map<String, String> parts = Zips.parts("<row><c t='s'><v>99</v></c></row>");
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "refers to a text that is missing");
    }

    @Test
    void externalEntityIsNotFetched() throws Exception {
        Path secret = write("secret.txt", "SECRET");
        assertEntityRefused("<!DOCTYPE w [<!ENTITY e SYSTEM '" + secret.toUri() + "'>]>", "&e;");
    }

    @Test
    void internalEntityIsNotExpanded() throws Exception {
        assertEntityRefused("<!DOCTYPE w [<!ENTITY e 'eeeeeeeeee'>]>", "&e;&e;&e;");
    }

    @Test
    void documentTypeAloneIsRefused() throws Exception {
        assertEntityRefused("<!DOCTYPE w>", "text");
    }

    private void assertEntityRefused(String doctype, String text) throws Exception {
        Map<String, String> parts = Zips.parts(Zips.row("R1", "A1", text));
        parts.computeIfPresent("xl/worksheets/sheet4.xml", (name, xml) -> doctype + xml);
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "xl/worksheets/sheet4.xml");
    }

    @Test
    void partThatExpandsTooFar() throws Exception {
        Map<String, String> parts = Zips.parts(Zips.row("R1", "A1"));
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) -> xml.replace("<sheetData>", " ".repeat(60_000_000) + "<sheetData>"));
        Path file = Zips.write(folder.resolve("book.xlsx"), parts);
        assertTrue(Files.size(file) < 200_000);
        assertRefused(file, "expands too far in xl/worksheets/sheet4.xml");
    }

    @Test
    void partAboveTheCap() throws Exception {
        Path file = Zips.write(
                folder.resolve("book.xlsx"), Zips.parts(Zips.row("R1", "A1").repeat(1_000)));
        assertRefused(file, new ReadingOptions.SizeCaps(1_000_000, 20_000, 1_000_000, 100), "expands too far");
    }

    @Test
    void partsTogetherAboveTheCap() throws Exception {
        Path file = Zips.write(folder.resolve("book.xlsx"), Zips.parts(Zips.row("R1", "A1")));
        assertRefused(file, new ReadingOptions.SizeCaps(1_000_000, 1_000_000, 2_000, 100), "expands too far");
    }

    @Test
    void fileAboveTheCap() throws Exception {
        Path file = Zips.write(folder.resolve("book.xlsx"), Zips.parts(""));
        assertRefused(file, new ReadingOptions.SizeCaps(100, 1_000_000, 1_000_000, 100), "larger than");
    }

    @Test
    void tooManyParts() throws Exception {
        Map<String, String> parts = Zips.parts("");
        for (int i = 0; i < 100; i++) {
            parts.put("xl/part" + i + ".xml", "<x/>");
        }
        Path file = Zips.write(folder.resolve("book.xlsx"), parts);
        assertRefused(file, new ReadingOptions.SizeCaps(1_000_000, 1_000_000, 1_000_000, 100), "more than 100 parts");
    }

    @Test
    void rowBeyondTheSheet() throws Exception {
        Map<String, String> parts = Zips.parts("<row r='1048577'><c><v>1</v></c></row>");
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "row 1048577 of Layers");
    }

    @Test
    void columnBeyondTheSheet() throws Exception {
        Map<String, String> parts = Zips.parts("<row r='5'><c r='XFE5'><v>1</v></c></row>");
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "column 16385 of Layers");
    }

    @Test
    void withoutRuns() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent("xl/workbook.xml", (name, xml) -> xml.replace("'Runs'", "'Versuche'"));
        assertRefused(
                Zips.write(folder.resolve("book.xlsx"), parts), "lacks the table Runs (it has Versuche, Products");
    }

    @Test
    void anyOtherTableThatIsMissingIsAFindingThatSaysWhatItUnlocks() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent("xl/workbook.xml", (name, xml) -> xml.replace("'Charges'", "'Chargen'"));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        Finding missing = book.findings().stream()
                .filter(f -> f.code().word().equals("table-missing"))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.CHECK, missing.severity());
        assertTrue(Wording.POINT.of(missing.action()).contains("it unlocks theory"), missing::toString);
    }

    @Test
    void aKeyHeadingThatIsMissingIsAStop() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.put("xl/worksheets/sheet2.xml", Zips.sheet(Zips.row("Experiment", "Material")));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertTrue(
                book.findings().stream()
                        .anyMatch(f -> f.code().word().equals("heading-missing")
                                && f.severity() == Severity.STOP
                                && f.place().sheet().equals("Charges")),
                () -> book.findings().toString());
    }

    @Test
    void twoSheetsForOneTable() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent("xl/workbook.xml", (name, xml) -> xml.replace("'Layers'", "'runs '"));
        assertRefused(Zips.write(folder.resolve("book.xlsx"), parts), "both hold the table Runs");
    }

    @Test
    void folderWithoutTables() throws Exception {
        assertRefused(folder, "lacks the table Runs (it has none)");
    }

    @Test
    void inputStaysAsItWas() throws Exception {
        Path file = Zips.write(folder.resolve("book.xlsx"), Zips.parts(Zips.row("R1", "A1")));
        byte[] before = Files.readAllBytes(file);
        new BookReader().read(file);
        assertEquals(Arrays.hashCode(before), Arrays.hashCode(Files.readAllBytes(file)));
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static void assertRefused(Path file, String saying) {
        assertRefused(file, ReadingOptions.SizeCaps.defaults(), saying);
    }

    private static void assertRefused(Path file, ReadingOptions.SizeCaps caps, String saying) {
        BookReader reader = new BookReader(new ReadingOptions(Optional.empty(), caps, Reference::load));
        String message = assertThrows(UnreadableBookException.class, () -> reader.read(file))
                .getMessage();
        assertTrue(message.contains(saying), message);
        assertTrue(message.endsWith("."), message);
        assertFalse(message.contains("Exception"), message);
        assertFalse(message.contains("SECRET"), message);
    }
}
