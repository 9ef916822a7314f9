package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Finding;
import workuptally.model.Layer;
import workuptally.report.view.wording.Wording;

/** Cells as different programs store them; the forms are those of ISO/IEC 29500-1, 18.3.1. */
class WorkbookCellsTest {
    private static final String KEYS = "<c t='inlineStr'><is><t>R1</t></is></c><c t='s'><v>0</v></c>";

    @TempDir
    private Path folder;

    @Test
    void rowsAndCellsWithoutReferencesFollowEachOther() throws Exception {
        Layer layer = layer(KEYS + "<c><v>12.5</v></c>");
        assertEquals("A1", layer.label());
        assertEquals(12.5, value(layer.weighing().grossGrams()), 0);
        assertEquals(
                "C2",
                layer.weighing().grossGrams().entered().orElseThrow().place().cell());
    }

    @Test
    void numberFormatKeepsTrailingZeros() throws Exception {
        Field.Entered gross = layer(KEYS + "<c s='1'><v>12.5</v></c>")
                .weighing()
                .grossGrams()
                .entered()
                .orElseThrow();
        assertEquals(3, gross.decimals());
        assertEquals("12.500", gross.asTyped());
    }

    @Test
    void storedDigitsBeyondTheFormatCount() throws Exception {
        Field.Entered gross = layer(KEYS + "<c s='1'><v>12.50349</v></c>")
                .weighing()
                .grossGrams()
                .entered()
                .orElseThrow();
        assertEquals(12.50349, gross.value(), 0);
        assertEquals(5, gross.decimals());
    }

    @Test
    void tailOfBinaryArithmeticIsNoDigit() throws Exception {
        Field.Entered gross = layer(KEYS + "<c><f>0.1+0.2</f><v>0.30000000000000004</v></c>")
                .weighing()
                .grossGrams()
                .entered()
                .orElseThrow();
        assertEquals(0.3, gross.value(), 1e-15);
        assertEquals(1, gross.decimals());
    }

    @Test
    void unitOfTheNumberFormatCounts() throws Exception {
        Field gross = layer(KEYS + "<c s='4'><v>12500</v></c>").weighing().grossGrams();
        assertEquals(12.5, value(gross), 1e-12);
    }

    /** A format has a section for texts (ISO/IEC 29500-1, 18.8.31): what it puts around one is shown with it. */
    @Test
    void unitThatAFormatPutsBehindATextCounts() throws Exception {
        Map<String, String> parts =
                Zips.parts("<row>" + KEYS + "<c s='4' t='inlineStr'><is><t>12500</t></is></c></row>");
        parts.computeIfPresent(
                "xl/styles.xml", (name, xml) -> xml.replace("0.0&quot; mg&quot;", "0.0;-0.0;0;@&quot; mg&quot;"));
        Field gross = read(parts).runs().get(0).layers().get(0).weighing().grossGrams();
        assertEquals(12.5, value(gross), 1e-12);
    }

    @Test
    void struckOutDigitsAreNoDigits() throws Exception {
        String rich = "<c t='inlineStr'><is><r><rPr><strike/></rPr><t>12.7</t></r><r><t>12.5</t></r></is></c>";
        assertEquals(12.5, value(layer(KEYS + rich).weighing().grossGrams()), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "a", "e"})
    void raisedMarkIsAFootnoteAndNoDecimal(String mark) throws Exception {
        String rich = "<c t='inlineStr'><is><r><t>12.5</t></r><r><rPr><vertAlign val='superscript'/></rPr><t>" + mark
                + "</t></r></is></c>";
        Book book = read(Zips.parts("<row>" + KEYS + rich + "</row>"));
        assertEquals(List.of("words-beside-number"), codes(book));
        assertEquals(12.5, value(book.runs().get(0).layers().get(0).weighing().grossGrams()), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "2,3", "-1"})
    void loweredDigitsBehindANumberAreAFootnoteAndNoDecimal(String mark) throws Exception {
        String rich = "<c t='inlineStr'><is><r><t>12.5</t></r><r><rPr><vertAlign val='subscript'/></rPr><t>" + mark
                + "</t></r></is></c>";
        Field gross = read(Zips.parts("<row>" + KEYS + rich + "</row>"))
                .runs()
                .get(0)
                .layers()
                .get(0)
                .weighing()
                .grossGrams();
        assertTrue(gross.isUnreadable() || value(gross) == 12.5, gross::toString);
    }

    @Test
    void loweredDigitsOfANameAreRead() throws Exception {
        String sub = "<r><rPr><vertAlign val='subscript'/></rPr><t>2</t></r>";
        Layer layer = layer("<c t='inlineStr'><is><t>R1</t></is></c><c t='inlineStr'><is><r><t>CH</t></r>" + sub
                + "<r><t>Cl</t></r>" + sub + "</is></c>");
        assertEquals("CH2Cl2", layer.label());
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5¹", "12.5*", "12.5 †", "12.5 a", "12.5a)", "12.5 [1]", "12.5 (1)", "12.5 ¹"})
    void typedFootnoteMarkIsNoDigit(String typed) throws Exception {
        Book book = read(Zips.parts("<row>" + KEYS + "<c t='inlineStr'><is><t>" + typed + "</t></is></c></row>"));
        Field gross = book.runs().get(0).layers().get(0).weighing().grossGrams();
        assertEquals(1, book.findings().size(), typed);
        assertTrue(gross.isUnreadable() || value(gross) == 12.5, typed + " " + gross);
    }

    @Test
    void phoneticGuideIsNotPartOfAText() throws Exception {
        Layer layer = layer("<c t='inlineStr'><is><t>R1</t></is></c><c t='s'><v>1</v></c>");
        assertEquals("B1", layer.label());
    }

    @Test
    void daysAreReadByTheirFormat() throws Exception {
        Layer layer = layer(KEYS + "<c r='E2' s='2'><v>46087</v></c>");
        assertEquals(LocalDate.of(2026, 3, 6), layer.custody().madeOn().orElseThrow());
    }

    @Test
    void daysCountFrom1904WhereTheBookSaysSo() throws Exception {
        Map<String, String> parts = Zips.parts("<row>" + KEYS + "<c r='E2' s='2'><v>44625</v></c></row>");
        parts.computeIfPresent(
                "xl/workbook.xml", (name, xml) -> xml.replace("<sheets>", "<workbookPr date1904='1'/><sheets>"));
        Layer layer = read(parts).runs().get(0).layers().get(0);
        assertEquals(LocalDate.of(2026, 3, 6), layer.custody().madeOn().orElseThrow());
    }

    @Test
    void prefixedElementsAreReadByTheirLocalNames() throws Exception {
        Map<String, String> parts = Zips.parts("<row>" + KEYS + "<c><v>7</v></c></row>");
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) -> xml.replace("<", "<x:").replace("<x:/", "</x:").replace("xmlns=", "xmlns:x="));
        assertEquals(
                7, value(read(parts).runs().get(0).layers().get(0).weighing().grossGrams()), 0);
    }

    @Test
    void blankAndStyledCellsAreBlank() throws Exception {
        Layer layer = layer(KEYS + "<c s='1'/><c t='str'><f>IF(1,\"\")</f><v></v></c><c t='n'><v></v></c>");
        assertTrue(layer.weighing().grossGrams().isBlank());
        assertTrue(layer.weighing().tareGrams().isBlank());
        assertTrue(layer.custody().madeOn().isEmpty());
    }

    @Test
    void formulaThatWasNeverCalculatedIsAFinding() throws Exception {
        assertFinding("formula-not-calculated", "C2", KEYS + "<c><f>1+1</f></c>");
        assertFinding("formula-not-calculated", "C2", KEYS + "<c><f>1+1</f><v></v></c>");
    }

    @Test
    void formulaErrorIsAFinding() throws Exception {
        Finding finding = assertFinding("formula-error", "C2", KEYS + "<c t='e'><f>1/0</f><v>#DIV/0!</v></c>");
        assertEquals("read '#DIV/0!'", Wording.POINT.of(finding.seen()));
    }

    @Test
    void percentFormatOnAMassIsAFinding() throws Exception {
        assertFinding("unit-wrong", "C2", KEYS + "<c s='3'><v>0.95</v></c>");
    }

    @Test
    void dateFormatOnAMassIsAFinding() throws Exception {
        Finding finding = assertFinding("date-in-number", "C2", KEYS + "<c s='2'><v>46087</v></c>");
        assertEquals("read '2026-03-06'", Wording.POINT.of(finding.seen()));
    }

    @Test
    void mergedDataCellsAreOneFindingAndNotUsed() throws Exception {
        Map<String, String> parts = Zips.parts(
                "<row>" + KEYS + "<c><v>12</v></c></row>"
                        + "<row><c t='inlineStr'><is><t>R1</t></is></c><c t='inlineStr'><is><t>A2</t></is></c><c><v>99</v></c></row>");
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) -> xml.replace(
                        "</sheetData>", "</sheetData><mergeCells count='1'><mergeCell ref='C2:C3'/></mergeCells>"));
        Book book = read(parts);
        assertEquals(List.of("merged-cells"), codes(book));
        assertEquals("C2", book.findings().get(0).place().cell());
        book.runs()
                .get(0)
                .layers()
                .forEach(layer -> assertTrue(layer.weighing().grossGrams().isUnreadable()));
    }

    @Test
    void hiddenRowsCountAndAreMentioned() throws Exception {
        Book book = read(Zips.parts("<row hidden='1'>" + KEYS + "</row>"));
        assertEquals(List.of("rows-hidden"), codes(book));
        assertEquals(1, book.runs().get(0).layers().size());
    }

    @Test
    void strictVariantOfTheStandardIsRead() throws Exception {
        Map<String, String> parts = Zips.parts("<row>" + KEYS + "<c><v>7</v></c></row>");
        parts.replaceAll((name, xml) -> xml.replace(Zips.MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main")
                .replace(Zips.RELATIONS, "http://purl.oclc.org/ooxml/officeDocument/relationships"));
        assertEquals(
                7, value(read(parts).runs().get(0).layers().get(0).weighing().grossGrams()), 0);
    }

    @Test
    void partsInUtf16AreRead() throws Exception {
        Map<String, String> parts =
                Zips.parts("<row>" + KEYS + "<c r='G2' t='inlineStr'><is><t>20 °C</t></is></c></row>");
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Path file = Zips.write(folder.resolve("book.xlsx"), parts, charset);
            assertEquals(
                    "20 °C",
                    new BookReader()
                            .read(file)
                            .runs()
                            .get(0)
                            .layers()
                            .get(0)
                            .notes()
                            .text());
        }
    }

    private Layer layer(String cells) throws Exception {
        Book book = read(Zips.parts("<row>" + cells + "</row>"));
        assertEquals(List.of(), book.findings());
        return book.runs().get(0).layers().get(0);
    }

    private Finding assertFinding(String code, String cell, String cells) throws Exception {
        Book book = read(Zips.parts("<row>" + cells + "</row>"));
        assertEquals(List.of(code), codes(book));
        assertEquals(cell, book.findings().get(0).place().cell());
        assertTrue(book.runs().get(0).layers().get(0).weighing().grossGrams().isUnreadable());
        return book.findings().get(0);
    }

    private static List<String> codes(Book book) {
        return book.findings().stream().map(f -> f.code().word()).toList();
    }

    private Book read(Map<String, String> parts) throws Exception {
        return new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
    }

    private static double value(Field field) {
        return field.entered().orElseThrow().value();
    }
}
