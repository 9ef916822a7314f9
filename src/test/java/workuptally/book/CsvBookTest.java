package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;

class CsvBookTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeNeededTables() throws IOException {
        write("runs.csv", "Run\nR1\n", StandardCharsets.UTF_8);
        write("products.csv", "Run,Product\n", StandardCharsets.UTF_8);
        write("charges.csv", "Run,Material\n", StandardCharsets.UTF_8);
        write("isolated.csv", "Run,Lot\n", StandardCharsets.UTF_8);
    }

    @Test
    void semicolonsWithDecimalCommasAreDetected() throws Exception {
        write("layers.csv", "Run;Layer;Gross (g)\nR1;A1;12,50\n", StandardCharsets.UTF_8);
        assertEquals(12.5, gross(read()), 0);
    }

    @Test
    void tabsAreDetected() throws Exception {
        write("layers.csv", "Run\tLayer\tGross (g)\nR1\tA1\t12.50\n", StandardCharsets.UTF_8);
        assertEquals(12.5, gross(read()), 0);
    }

    @Test
    void separatorLineDecides() throws Exception {
        write("layers.csv", "sep=;\nRun;Layer;Gross (g)\nR1;A1;x\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals("layers.csv line 3, Gross", book.findings().get(0).place().inWords());
    }

    @Test
    void byteOrderMarksAreUnderstood() throws Exception {
        String text = "\uFEFFRun,Layer,Gross (g),Notes\nR1,A1,12.50,20 °C\n";
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            write("layers.csv", text, charset);
            Book book = read();
            assertEquals(List.of(), book.findings());
            assertEquals("20 °C", layer(book).notes().text());
        }
    }

    @Test
    void aPointBeforeThreeDigitsIsRefusedWhereDecimalsStandBehindCommas() throws Exception {
        write(
                "layers.csv",
                "Run;Layer;Gross (mg);Volume (mL);pH\nR1;A1;1.500;95,5;7,5\nR1;A2;1500,5;95,5;7,0\n",
                StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of("number-ambiguous"), codes(book));
        assertTrue(layer(book).weighing().grossGrams().isUnreadable());
    }

    @Test
    void aPointBeforeThreeDigitsIsADecimalPointBesideOneOddComma() throws Exception {
        write(
                "layers.csv",
                "Run;Layer;Gross (g);Tare (g)\nR1;A1;12.500;2.125\nR1;A2;13.501;2.250\nR1;A3;13,5;2.250\n",
                StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(12.5, gross(book), 0);
    }

    @Test
    void aLineLongerThanItsHeadingsByABlankCellIsShiftedWhereACommaMayHaveParted() throws Exception {
        write("layers.csv", "Run,Layer,Gross (g),Tare (g),Notes\nR1,A1,12,5,2,\n", StandardCharsets.UTF_8);
        assertEquals(List.of("row-shifted"), codes(read()));
        write("layers.csv", "Run,Layer,Gross (g),Tare (g),Notes\nR1,A1,12.5,2.0,,\n", StandardCharsets.UTF_8);
        assertEquals(List.of(), codes(read()));
    }

    /** As spreadsheets write a column without a heading at the right edge; 33,7 and 33 and 7 are numbers, but a phase is no pH. */
    @Test
    void aRemarkUnderABlankHeadingIsReadOverAndNamed() throws Exception {
        String headings = "Run,Layer,Gross (g),Tare (g),Volume (mL),pH,Phase,Notes,\n";
        write("layers.csv", headings + "R1,A1,12.5,2.0,,,aqueous,,see page 12\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(12.5, gross(book), 0);
        assertTrue(
                book.leftAlone().stream().anyMatch(what -> what.endsWith("column I, which has no heading")),
                book.leftAlone()::toString);
        write("layers.csv", headings + "R1,A1,12.5,2.0,33,7,aqueous,,see page 12\n", StandardCharsets.UTF_8);
        assertEquals(List.of(), codes(read()));
        // 12,5 without quotes: read as two cells, a number stands under Phase
        write("layers.csv", headings + "R1,A1,12,5,2.0,33,7,aqueous,x\n", StandardCharsets.UTF_8);
        assertEquals(List.of("row-shifted"), codes(read()));
        // 12,5 or 12 and 5: nobody can tell
        write("layers.csv", headings + "R1,A1,12,5,,,,,aqueous\n", StandardCharsets.UTF_8);
        assertEquals(List.of("row-shifted"), codes(read()));
        write("layers.csv", headings + "R1,A1,12.5,2.0,,,aqueous,,see page 12,more\n", StandardCharsets.UTF_8);
        assertEquals(List.of("row-shifted"), codes(read()));
    }

    @Test
    void aLinePartedByOtherMarksIsNotLostInSilence() throws Exception {
        write("layers.csv", "Run;Layer;Gross (g);Notes\nR1;A1;12,5;x\nR1,A2,7.5,\n", StandardCharsets.UTF_8);
        assertEquals(List.of("row-shifted"), codes(read()));
    }

    @Test
    void numbersUnderNoHeadingAreNamed() throws Exception {
        write("layers.csv", "Run,Layer,,pH\nR1,A1,12.5,7\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of("heading-near-miss"), codes(book));
        assertTrue(workuptally.report.view.wording.Wording.POINT
                .of(book.findings().get(0).seen())
                .contains("column C"));
    }

    @Test
    void aCountBehindAnOperationIsThatOfItsPortions() throws Exception {
        write(
                "workup.csv",
                "Run,Step,Operation,From,Material,Portions,Volume (mL)\nR1,1,wash 3x,RM,water,,30\n"
                        + "R1,2,2 x wash,RM,water,,30\nR1,3,wash x4,RM,water,2,30\nR1,4,wash 2,RM,water,,30\n",
                StandardCharsets.UTF_8);
        var steps = read().runs().get(0).steps();
        assertEquals(3, steps.get(0).added().portions().entered().orElseThrow().value(), 0);
        assertEquals(2, steps.get(1).added().portions().entered().orElseThrow().value(), 0);
        assertEquals(2, steps.get(2).added().portions().entered().orElseThrow().value(), 0);
        assertTrue(steps.get(3).added().portions().isBlank());
    }

    @Test
    void otherEncodingIsReadWithANote() throws Exception {
        write("layers.csv", "Run,Layer,Gross (g),Notes\nR1,A1,12.50,20 °C – µL\n", Charset.forName("windows-1252"));
        Book book = read();
        assertEquals(List.of("encoding-guessed"), codes(book));
        assertEquals("20 °C – µL", layer(book).notes().text());
    }

    @Test
    void zeroBytesAreRefused() throws Exception {
        write("layers.csv", "Run,Layer\nR1,A1\n", StandardCharsets.UTF_16LE);
        assertRefused("layers.csv holds zero bytes");
    }

    @Test
    void unclosedQuoteIsRefusedWithItsLine() throws Exception {
        write("layers.csv", "Run,Layer,Notes\nR1,A1,fine\nR1,A2,\"never closed\nR1,A3,\n", StandardCharsets.UTF_8);
        assertRefused("layers.csv has a quotation mark without its partner in the record that starts on line 3");
    }

    @Test
    void workbookNamedCsvIsRefused() throws Exception {
        Zips.write(folder.resolve("layers.csv"), Zips.parts(""));
        assertRefused("layers.csv is a workbook with the wrong ending");
    }

    @Test
    void lineAndRowAreToldApartWhereACellSpansLines() throws Exception {
        write(
                "layers.csv",
                "Run,Layer,Notes,Gross (g)\r\nR1,A1,\"two\r\nlines\",1\r\n\r\nR1,A2,,x\r\n",
                StandardCharsets.UTF_8);
        Finding finding = read().findings().get(0);
        assertEquals("layers.csv line 5, Gross", finding.place().inWords());
        assertEquals(4, finding.place().row());
        assertEquals(3, finding.place().column());
    }

    @Test
    void fileNamesMatchLoosely() throws Exception {
        write("NMR_Assays.CSV", "Run,Sample,Substance,Standard mass (g)\nR1,L1,x,0.0125\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(
                12.5,
                book.runs()
                        .get(0)
                        .nmrAssays()
                        .get(0)
                        .standardMassMilligrams()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
        assertEquals(
                1,
                book.runs()
                        .get(0)
                        .nmrAssays()
                        .get(0)
                        .standardMassMilligrams()
                        .entered()
                        .orElseThrow()
                        .decimals());
    }

    @Test
    void headingsMatchWithoutRegardToCaseSpacesOrderAndUnit() throws Exception {
        write("layers.csv", " gross [mg],LAYER,my own,run,P H\n12500,A1,?,r1,7\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of(), book.findings());
        assertEquals(12.5, gross(book), 1e-12);
        assertEquals(7, layer(book).pH().entered().orElseThrow().value(), 0);
    }

    @Test
    void unknownUnitInAHeadingIsOneFindingAndTheColumnIsNotUsed() throws Exception {
        write("layers.csv", "Run,Layer,Gross (lb)\nR1,A1,12\nR1,A2,13\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of("unit-unknown"), codes(book));
        assertEquals(
                "layers.csv line 1, Gross (lb)", book.findings().get(0).place().inWords());
        assertTrue(layer(book).weighing().grossGrams().isUnreadable());
    }

    @Test
    void tableWithoutItsKeyHeadingIsLeftOut() throws Exception {
        write("layers.csv", "Run,Gross (g)\nR1,12\n", StandardCharsets.UTF_8);
        Book book = read();
        assertEquals(List.of("heading-missing"), codes(book));
        assertEquals(List.of(), book.runs().get(0).layers());
    }

    @Test
    void unknownFilesAndColumnsAreTheUsersOwn() throws Exception {
        write("shopping.csv", "\"never closed", StandardCharsets.UTF_8);
        assertEquals(List.of(), read().findings());
    }

    @Test
    void headingsFileMapsALabsOwnNames() throws Exception {
        write("Schichten.csv", "Versuch;Phase Nr.;Brutto (mg);Leer\nR1;A1;12500;1,5\n", StandardCharsets.UTF_8);
        Path headings = Files.writeString(
                folder.resolve("headings.json"),
                "{\"sheets\": {\"Schichten\": \"Layers\"}, \"headings\": {\"Layers\": {\"Versuch\": \"Run\","
                        + " \"Phase Nr.\": \"Layer\", \"Brutto\": \"Gross\", \"Leer\": \"Tare (g)\"}}}");
        Book book = new BookReader(ReadingOptions.defaults().withHeadingsFile(headings)).read(folder);
        assertEquals(List.of(), book.findings());
        assertEquals(12.5, gross(book), 1e-12);
        assertEquals(
                1.5, layer(book).weighing().tareGrams().entered().orElseThrow().value(), 1e-12);
        assertTrue(book.files().stream().anyMatch(file -> file.name().equals("headings.json")));
    }

    /** A lab's own heading says what its numbers are in; the file that maps it may not say otherwise, nor need it say so again. */
    @ParameterizedTest
    @CsvSource({"Volume (mL),UNIT_CONTRADICTION,", "Volume (µL),,0.033", "Volume,,0.033"})
    void theUnitOfALabsOwnHeadingIsNotThrownAway(String mapped, FindingCode told, Double millilitres) throws Exception {
        write("layers.csv", "Run,Layer,Phase,Menge (µL)\nR1,A1,aqueous,33\n", StandardCharsets.UTF_8);
        Path headings = Files.writeString(
                folder.resolve("headings.json"), "{\"headings\": {\"Layers\": {\"Menge (µL)\": \"" + mapped + "\"}}}");
        Book book = new BookReader(ReadingOptions.defaults().withHeadingsFile(headings)).read(folder);
        assertEquals(told != null, book.findings().stream().anyMatch(f -> f.code() == FindingCode.UNIT_CONTRADICTION));
        assertEquals(
                Optional.ofNullable(millilitres),
                book.runs().get(0).layers().get(0).volumeMillilitres().entered().map(e -> e.value()));
    }

    @Test
    void headingsFileMapsALabsOwnWords() throws Exception {
        write(
                "layers.csv",
                "Run;Layer;Phase;Position;Status\nR1;A1;Wässrig;unten;aufbewahrt\n",
                StandardCharsets.UTF_8);
        Path headings = Files.writeString(
                folder.resolve("headings.json"),
                "{\"words\": {\"wässrig\": \"aqueous\", \"unten\": \"lower\", \"aufbewahrt\": \"kept\"}}");
        Book book = new BookReader(ReadingOptions.defaults().withHeadingsFile(headings)).read(folder);
        assertEquals(List.of(), book.findings());
        assertEquals(Optional.of(Layer.Phase.AQUEOUS), layer(book).phase());
        assertEquals(Optional.of(Layer.Position.LOWER), layer(book).position());
        assertEquals(Optional.of(Layer.Status.KEPT), layer(book).custody().status());
    }

    @Test
    void headingsFileWithUnknownTargetsIsRefused() throws Exception {
        assertHeadingsRefused("{\"words\": {\"unten\": \"below\"}}", "'below', which is no word of a choice");
        assertHeadingsRefused(
                "{\"headings\": {\"Layers\": {\"Brutto\": \"Grosss\"}}}", "'Grosss', which is no heading of Layers");
        assertHeadingsRefused("{\"sheets\": {\"Schichten\": \"Layer\"}}", "'Layer', which is no table");
        assertHeadingsRefused("{\"sheets\": [1]}", "must hold one object");
        assertHeadingsRefused("{\"sheets\": {", "is not valid JSON near line 1");
        assertHeadingsRefused("", "must hold one object");
    }

    private void assertHeadingsRefused(String json, String saying) throws IOException {
        Path headings = Files.writeString(folder.resolve("headings.json"), json);
        BookReader reader = new BookReader(ReadingOptions.defaults().withHeadingsFile(headings));
        String message = assertThrows(UnreadableBookException.class, () -> reader.read(folder))
                .getMessage();
        assertTrue(message.contains(saying), message);
    }

    private void assertRefused(String saying) {
        String message = assertThrows(UnreadableBookException.class, this::read).getMessage();
        assertTrue(message.contains(saying), message);
    }

    private void write(String name, String text, Charset charset) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(charset));
    }

    private Book read() throws Exception {
        return new BookReader().read(folder);
    }

    private static Layer layer(Book book) {
        return book.runs().get(0).layer("A1").orElseThrow();
    }

    private static double gross(Book book) {
        return layer(book).weighing().grossGrams().entered().orElseThrow().value();
    }

    private static List<String> codes(Book book) {
        return book.findings().stream().map(f -> f.code().word()).toList();
    }
}
