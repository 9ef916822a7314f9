package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.files.ReadingOptions;
import workuptally.examples.OwnLists;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** A line through an entry takes it out, as on paper; the forms are those of ISO/IEC 29500-1, 18.4.10 (strike), 18.8.22 (font), 18.8.45 (xf). */
@Tag("slow")
class StruckOutTest {
    /** Fonts 0 plain, 1 struck, 2 that says it is not; named styles plain and struck; see the tests for the cell formats. */
    private static final String STYLES = "<styleSheet xmlns='" + Zips.MAIN + "'>"
            + "<numFmts count='1'><numFmt numFmtId='164' formatCode='0.000'/></numFmts>"
            + "<fonts><font/><font><strike/></font><font><b/><strike val='0'/></font><font><strike val='1'/></font></fonts>"
            + "<cellStyleXfs><xf fontId='0'/><xf fontId='1'/></cellStyleXfs>"
            + "<cellXfs><xf fontId='0' xfId='0'/>"
            + "<xf fontId='1' applyFont='1' xfId='0'/>" // 1: struck
            + "<xf fontId='2' applyFont='1' xfId='0'/>" // 2: says it is not
            + "<xf fontId='3' xfId='0'/>" // 3: struck, without a word whether it applies
            + "<xf xfId='1'/>" // 4: of the struck style
            + "<xf fontId='0' applyFont='1' xfId='1'/>" // 5: struck style, font of its own
            + "<xf fontId='0' applyFont='0' xfId='1'/>" // 6: programs differ
            + "<xf numFmtId='164' fontId='1' applyFont='1'/>" // 7: struck, three decimals
            + "</cellXfs><dxfs><dxf><font><strike/></font></dxf></dxfs></styleSheet>";

    private static final String RUN = "<c t='inlineStr'><is><t>R1</t></is></c>";
    private static final String KEYS = RUN + "<c t='s'><v>0</v></c>";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"0, false", "1, true", "2, false", "3, true", "4, true", "5, false", "6, true", "7, true", "99, false"})
    void valueInAStruckFontIsNotUsed(int style, boolean struck) throws Exception {
        Book book = read("<row>" + KEYS + "<c s='" + style + "'><v>12.5</v></c></row>");
        assertEquals(struck ? List.of("struck-out") : List.of(), codes(book));
        assertEquals(struck, layer(book).weighing().grossGrams().isUnreadable());
    }

    @Test
    void theFindingShowsTheCellAsItsReaderSeesIt() throws Exception {
        Finding finding = read("<row>" + KEYS + "<c s='7'><v>12.5</v></c></row>")
                .findings()
                .get(0);
        assertEquals("C2", finding.place().cell());
        assertEquals("read '12.500', struck out", Wording.POINT.of(finding.seen()));
        assertEquals(Severity.CHECK, finding.severity());
    }

    @Test
    void textsDatesAndFormulasAreRefusedAlike() throws Exception {
        Book book = read("<row>" + KEYS + "<c s='1'><f>10+2.5</f><v>12.5</v></c><c s='1' t='s'><v>0</v></c>"
                + "<c s='1' t='inlineStr'><is><t>2026-03-06</t></is></c><c s='1' t='inlineStr'><is><t>neutral</t></is></c>"
                + "<c s='1' t='inlineStr'><is><t>pale</t></is></c></row>");
        assertEquals(List.of("struck-out", "struck-out", "struck-out", "struck-out", "struck-out"), codes(book));
        assertTrue(layer(book).custody().madeOn().isEmpty());
        assertEquals("", layer(book).notes().text());
    }

    @Test
    void blankCellInAStruckFontIsBlank() throws Exception {
        Book book = read("<row>" + KEYS + "<c s='1'/><c s='1' t='inlineStr'><is><t> </t></is></c></row>");
        assertEquals(List.of(), codes(book));
        assertTrue(layer(book).weighing().grossGrams().isBlank());
    }

    @Test
    void textOfWhichEveryRunIsStruckIsRefusedAndNotBlank() throws Exception {
        Book book = read(
                "<row>" + KEYS
                        + "<c t='inlineStr'><is><r><rPr><strike/></rPr><t>12</t></r><r><rPr><strike val='true'/></rPr><t>.5</t></r></is></c></row>");
        assertEquals(List.of("struck-out"), codes(book));
        assertEquals(
                "read '12.5', struck out",
                Wording.POINT.of(book.findings().get(0).seen()));
    }

    /** In a struck cell a run without a word of its own is struck; one that says it is not counts. Shared texts are read once for both. */
    @Test
    void runsOfASharedTextCountByTheFontOfTheCell() throws Exception {
        Map<String, String> parts = parts("<row>" + KEYS + "<c t='s'><v>1</v></c><c s='1' t='s'><v>1</v></c></row>");
        parts.put(
                "xl/sharedStrings.xml",
                "<sst xmlns='" + Zips.MAIN + "'><si><t>A1</t></si><si><r><t>3</t></r><r><rPr><strike val='0'/></rPr>"
                        + "<t>2.5</t></r></si></sst>");
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(List.of(), codes(book));
        assertEquals(
                32.5,
                layer(book).weighing().grossGrams().entered().orElseThrow().value(),
                0);
        assertEquals(
                2.5, layer(book).weighing().tareGrams().entered().orElseThrow().value(), 0);
    }

    @Test
    void rowStruckOutAsAWholeIsLeftOutAndNamed() throws Exception {
        String struck = "<c s='1' t='inlineStr'><is><t>R1</t></is></c><c s='1' t='s'><v>0</v></c>";
        Book book = read("<row>" + struck + "<c s='1'><v>99</v></c></row><row>" + KEYS + "<c><v>12.5</v></c></row>");
        assertEquals(List.of("rows-struck"), codes(book));
        assertEquals(
                "row 2, struck out", Wording.POINT.of(book.findings().get(0).seen()));
        assertEquals(Severity.NOTE, book.findings().get(0).severity());
        assertEquals(1, book.runs().get(0).layers().size());
        assertEquals(
                12.5,
                layer(book).weighing().grossGrams().entered().orElseThrow().value(),
                0);
    }

    @Test
    void rowWhoseKeyAloneIsStruckIsLeftOutAndAskedAbout() throws Exception {
        Book book = read("<row>" + RUN + "<c s='1' t='s'><v>0</v></c><c><v>99</v></c></row>");
        assertEquals(List.of("rows-struck"), codes(book));
        Finding finding = book.findings().get(0);
        assertEquals("B2", finding.place().cell());
        assertEquals(Severity.CHECK, finding.severity());
        assertEquals("read 'A1', struck out, in a row with other entries", Wording.POINT.of(finding.seen()));
        assertEquals(List.of(), book.runs().get(0).layers());
    }

    /** Conditions are not worked out: what they may strike out is read and named, in the form of ISO/IEC 29500-1, 18.3.1.18. */
    @ParameterizedTest
    @CsvSource({"0, false", "1, true", "2, true", "3, false", "9, false"})
    void cellsThatAConditionStrikesOutAreNamed(int look, boolean named) throws Exception {
        Map<String, String> parts = parts("<row>" + KEYS + "<c><v>12.5</v></c></row>");
        parts.computeIfPresent(
                "xl/styles.xml",
                (name, xml) -> xml.replace(
                        "<dxfs><dxf><font><strike/></font></dxf></dxfs>",
                        "<dxfs><dxf><font><b/></font></dxf><dxf><font><strike/></font></dxf>"
                                + "<dxf><numFmt numFmtId='170' formatCode='&quot;&lt;&quot;0.00'/></dxf>"
                                + "<dxf><numFmt numFmtId='2' formatCode='0.00'/></dxf></dxfs>"));
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) -> xml.replace(
                        "</sheetData>",
                        "</sheetData><conditionalFormatting sqref='C2:C9'><cfRule type='expression' dxfId='" + look
                                + "' priority='1'><formula>$H2=1</formula></cfRule></conditionalFormatting>"));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(named ? List.of("shown-by-condition") : List.of(), codes(book));
        assertFalse(layer(book).weighing().grossGrams().isUnreadable());
    }

    @Test
    void zeroOfASheetThatShowsNoneIsNotRead() throws Exception {
        Map<String, String> parts = parts("<row>" + KEYS + "<c><v>0</v></c><c><v>12.5</v></c></row>");
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) ->
                        xml.replace("<sheetData>", "<sheetViews><sheetView showZeros='0'/></sheetViews><sheetData>"));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(List.of("shown-otherwise"), codes(book));
        assertEquals("C2", book.findings().get(0).place().cell());
    }

    @Test
    void columnUnderAStruckHeadingIsNamed() throws Exception {
        Map<String, String> parts = parts("<row>" + KEYS + "<c><v>12.5</v></c></row>");
        parts.computeIfPresent(
                "xl/worksheets/sheet4.xml",
                (name, xml) ->
                        xml.replace("<c t='inlineStr'><is><t>Gross (g)", "<c s='1' t='inlineStr'><is><t>Gross (g)"));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(List.of("struck-out"), codes(book));
        assertEquals("C1", book.findings().get(0).place().cell());
        assertTrue(layer(book).weighing().grossGrams().isBlank());
    }

    /** A general library writes the book, so that the form of the styles is not our own. */
    @Test
    void bookOfAGeneralLibraryIsReadAlike() throws Exception {
        Path file = folder.resolve("written.xlsx");
        try (Workbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            CellStyle struck = struckStyle(book);
            row(book.createSheet("Runs"), 0, null, "Run", "Date");
            row(book.getSheet("Runs"), 1, null, "R1", "2026-03-02");
            row(book.createSheet("Products"), 0, null, "Run", "Product");
            row(book.createSheet("Charges"), 0, null, "Run", "Material");
            row(book.createSheet("Isolated"), 0, null, "Run", "Lot");
            Sheet layers = book.createSheet("Layers");
            row(layers, 0, null, "Run", "Layer", "Gross (g)", "Tare (g)");
            row(layers, 1, struck, "R1", "A1", "152.4", "100.0");
            Row kept = row(layers, 2, null, "R1", "A2", "153.4", "100.0");
            Cell tare = kept.getCell(3);
            tare.setCellStyle(struck);
            book.write(out);
        }
        Book book = new BookReader().read(file);
        assertEquals(List.of("rows-struck", "struck-out"), codes(book));
        assertEquals("D3", book.findings().get(1).place().cell());
        assertEquals("A2", layer(book).label());
        assertFalse(layer(book).weighing().grossGrams().isUnreadable());
        assertTrue(layer(book).weighing().tareGrams().isUnreadable());
    }

    @Test
    void rowsAndCellsOfALaboratorysOwnListAreTreatedAlike() throws Exception {
        Path file = OwnLists.workbook(
                folder.resolve("list.xlsx"),
                "L",
                "No,A,mg\nR-1,acid,250\nR-2,amine,300\nR-3,salt,400\nR-4,base,500\n",
                List.of());
        Path struck = folder.resolve("struck.xlsx");
        try (Workbook book = new XSSFWorkbook(Files.newInputStream(file));
                OutputStream out = Files.newOutputStream(struck)) {
            CellStyle style = struckStyle(book);
            Sheet list = book.getSheetAt(0);
            list.getRow(1).forEach(cell -> cell.setCellStyle(style));
            list.getRow(2).getCell(0).setCellStyle(style);
            list.getRow(3).getCell(2).setCellStyle(style);
            book.write(out);
        }
        Path json = Files.writeString(
                folder.resolve("headings.json"),
                "{\"lists\": [{\"sheets\": [\"L\"], \"Runs\": [{\"Run\": \"No\"}], \"Charges\": [{\"Material\": \"A\","
                        + " \"Actual amount\": \"mg\"}]}]}");
        Book book = new BookReader(ReadingOptions.defaults().withHeadingsFile(json)).read(struck);
        assertEquals(List.of("R-3", "R-4"), book.runs().stream().map(Run::id).toList());
        List<String> said = book.findings().stream()
                .filter(finding -> finding.code().word().contains("struck"))
                .map(finding -> finding.code().word() + " " + finding.severity() + " "
                        + finding.place().cell())
                .toList();
        assertEquals(List.of("rows-struck NOTE ", "rows-struck CHECK A3", "struck-out STOP C4"), said);
        assertTrue(book.runs()
                .get(0)
                .charges()
                .get(0)
                .quantity()
                .actual()
                .orElseThrow()
                .value()
                .isUnreadable());
    }

    private static CellStyle struckStyle(Workbook book) {
        Font font = book.createFont();
        font.setStrikeout(true);
        CellStyle style = book.createCellStyle();
        style.setFont(font);
        return style;
    }

    private static Row row(Sheet sheet, int number, CellStyle style, String... texts) {
        Row row = sheet.createRow(number);
        for (int i = 0; i < texts.length; i++) {
            Cell cell = row.createCell(i);
            if (texts[i].matches("[\\d.]+")) {
                cell.setCellValue(Double.parseDouble(texts[i]));
            } else {
                cell.setCellValue(texts[i]);
            }
            if (style != null) {
                cell.setCellStyle(style);
            }
        }
        return row;
    }

    private static Layer layer(Book book) {
        return book.runs().get(0).layers().get(0);
    }

    private static List<String> codes(Book book) {
        return book.findings().stream().map(finding -> finding.code().word()).toList();
    }

    private Book read(String layerRows) throws Exception {
        return new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts(layerRows)));
    }

    private static Map<String, String> parts(String layerRows) {
        Map<String, String> parts = Zips.parts(layerRows);
        parts.put("xl/styles.xml", STYLES);
        return parts;
    }
}
