package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.book.files.UnreadableBookException;
import workuptally.model.Book;
import workuptally.report.view.wording.Wording;

/** What is not read is named: near misses as a check, a chemist's own columns and sheets by their names, formulas without a result once a book. */
class LeftAloneTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeNeededTables() throws IOException {
        write("runs.csv", "Run\nR1\n");
        write("products.csv", "Run,Product\nR1,benzoic acid\n");
        write("charges.csv", "Run,Material\n");
        write("isolated.csv", "Run,Lot\n");
    }

    @ParameterizedTest
    @CsvSource({
        "isolated.csv, Purity (%), Assay",
        "isolated.csv, 'Purity, %', Assay",
        "isolated.csv, Reinheit, Assay",
        "isolated.csv, Net weight (g), Net",
        "isolated.csv, Grosss (g), Gross",
        "isolated.csv, Tara (g), Tare",
        "layers.csv, Vol. (mL), Volume",
        "layers.csv, Temp. (°C), Temperature",
        "layers.csv, Compositon, Composition",
        "charges.csv, MW, Molar mass",
        "charges.csv, Conc. (M), Molarity",
        "charges.csv, Actual amt., ''",
        "workup.csv, Vol (mL), Volume"
    })
    void headingThatIsNearlyOneOfTheFormIsAskedAbout(String file, String heading, String meant) throws IOException {
        String keys = switch (file) {
            case "isolated.csv" -> "Run,Lot";
            case "layers.csv" -> "Run,Layer";
            case "charges.csv" -> "Run,Material";
            default -> "Run,Step,Operation";
        };
        write(file, keys + ",\"" + heading + "\"\n");
        Book book = read();
        if (meant.isEmpty()) {
            assertEquals(List.of(), codes(book));
            assertTrue(book.leftAlone().get(0).endsWith(heading), book.leftAlone()::toString);
            return;
        }
        assertEquals(List.of("heading-near-miss"), codes(book));
        assertTrue(
                Wording.POINT.of(book.findings().get(0).expected()).contains("heading " + meant + ","),
                book.findings()::toString);
    }

    @ParameterizedTest
    @CsvSource({
        "charges.csv, Weighed, 7.0, Actual amount",
        "charges.csv, Amount used (g), 7.0, Actual amount",
        "charges.csv, Mass (g), 7.0, Actual amount",
        "charges.csv, Einwaage, 7.0, Actual amount",
        "charges.csv, Weighed, by hand, ''",
        "charges.csv, Unit, g, Actual unit",
        "assays.csv, Conc. (mg/mL), 1.2, Result",
        "assays.csv, Value, 1.2, Result",
        "assays.csv, Found, 1.2, Result",
        "assays.csv, Found, by KL, ''",
        "isolated.csv, Empty (g), 95.1, Tare",
        "isolated.csv, Full (g), 105.1, Gross",
        "isolated.csv, HPLC (%), 97.5, Assay",
        "isolated.csv, Weight (g), 10.0, Net",
        "isolated.csv, 'Gross,Tare,Weight', '105.1,95.1,10.0', ''",
        "isolated.csv, Characterisation, 1H NMR, Identity by",
        "isolated.csv, NMR, wrong compound, Identity by",
        "isolated.csv, Charakterisierung, 1H-NMR, Identity by",
        "isolated.csv, Characterisation, 12, ''",
        "layers.csv, V (mL), 55, Volume",
        "layers.csv, pH-Wert, 7, pH",
        "layers.csv, Shelf, 7, ''",
        "workup.csv, Volume per portion (mL), 25, Volume",
        "workup.csv, Total volume (mL), 50, Volume",
        "workup.csv, Aqueous, A1, Gives aqueous",
        "workup.csv, Aqueous, 3, ''"
    })
    void anEverydayWordIsAskedAboutWhereWhatItCanMeanIsMissed(String file, String heading, String cell, String meant)
            throws IOException {
        String keys = switch (file) {
            case "isolated.csv" -> "Run,Lot,Product;R1,D1,benzoic acid";
            case "layers.csv" -> "Run,Layer;R1,A1";
            case "charges.csv" -> "Run,Material;R1,benzoic acid";
            case "assays.csv" -> "Run,Sample;R1,A1";
            default -> "Run,Step,Operation,From;R1,1,wash,RM";
        };
        write(file, keys.replace(";", "," + heading + "\n") + "," + cell + "\n");
        Book book = read();
        if (meant.isEmpty()) {
            assertEquals(List.of(), codes(book));
            return;
        }
        assertEquals("heading-near-miss", codes(book).get(0));
        assertTrue(
                Wording.POINT.of(book.findings().get(0).expected()).contains("heading " + meant + ","),
                book.findings()::toString);
    }

    @ParameterizedTest
    @CsvSource({
        "HPLC.csv, 1",
        "Analysis.csv, 1",
        "Steps.csv, 1",
        "Workup steps.csv, 1",
        "Layers week 3.csv, 1",
        "Fractions.csv, 1",
        "Layer decisions.csv, 0",
        "Analysis of costs.csv, 0",
        "Lots.csv, 0"
    })
    void aSheetWithAnEverydayNameIsAskedAboutWhereTheTableIsLacking(String name, int times) throws IOException {
        write(name, "Run,Sample\nR1,A1\n");
        assertEquals(times, codes(read()).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Gross, g", "Gross g", "GROSS [g]", "Gross/g", "gross (mg)"})
    void headingThatDiffersInMarksAndUnitIsRead(String heading) throws IOException {
        write("isolated.csv", "Run,Lot,Product,\"" + heading + "\"\nR1,D1,benzoic acid,12.5\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertTrue(book.runs()
                .get(0)
                .lots()
                .get(0)
                .weighing()
                .grossGrams()
                .entered()
                .isPresent());
    }

    @Test
    void columnsAndSheetsOfOnesOwnAreNamedAndNothingElse() throws IOException {
        write("isolated.csv", "Run,Lot,Product,Colour,Shelf\nR1,D1,benzoic acid,yellow,3\n");
        write("shopping list.csv", "acetone\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(List.of("Isolated: Colour", "Isolated: Shelf", "sheet shopping list.csv"), book.leftAlone());
    }

    @ParameterizedTest
    @CsvSource({
        "'', 97.5, column E without a heading; whose numbers",
        "' ', 97.5, column E without a heading; whose numbers",
        "1, 97.5, column E without a heading; whose numbers",
        "'', purified, column E without a heading; whose words",
        "'', seen by AK, ''"
    })
    void lastColumnWithoutAHeadingIsNamed(String heading, String cell, String seen) throws Exception {
        String four = Zips.row("Run", "Lot", "Product", "Net (g)");
        String headings = heading.equals("1")
                ? four.replace("</row>", "<c><v>1</v></c></row>")
                : heading.isEmpty() ? four : Zips.row("Run", "Lot", "Product", "Net (g)", heading);
        Book book = isolated(headings + Zips.row("R1", "D1", "benzoic acid", "12.5", cell));
        if (seen.isEmpty()) {
            assertEquals(List.of(), codes(book));
            assertEquals(List.of("Isolated: column E, which has no heading"), book.leftAlone());
            return;
        }
        assertEquals(List.of("heading-near-miss"), codes(book));
        String words = Wording.POINT.of(book.findings().get(0).seen());
        assertTrue(words.startsWith(seen.replace(";", ",") + ", such as '" + cell + "'"), words);
    }

    @Test
    void aSideCalculationBehindABlankColumnIsNamedAndNotAskedAbout() throws Exception {
        Book book = isolated(Zips.row("Run", "Lot", "Product", "Net (g)")
                + Zips.row("R1", "D1", "benzoic acid", "12.5", "", "13.1"));
        assertEquals(List.of(), codes(book));
        assertEquals(List.of("Isolated: column F, which has no heading"), book.leftAlone());
    }

    private Book isolated(String rows) throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.put("xl/worksheets/sheet1.xml", Zips.sheet(Zips.row("Run", "Product") + Zips.row("R1", "benzoic acid")));
        parts.put("xl/worksheets/sheet3.xml", Zips.sheet(rows));
        return new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Layers (2).csv", "layers-copy.csv", "Layer.csv", "Laeyrs.csv", "Layers old.csv"})
    void sheetThatIsNearlyATableIsAskedAbout(String name) throws IOException {
        write(name, "Run,Layer\nR1,A1\n");
        assertEquals(List.of("sheet-near-miss"), codes(read()));
    }

    @ParameterizedTest
    @CsvSource({"fullCalcOnLoad='1', 1", "calcCompleted='0' calcMode='manual', 1", "calcMode='auto', 0"})
    void resultsOfFormulasLeftToBeCalculatedDoNotCount(String settings, int times) throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.computeIfPresent(
                "xl/workbook.xml", (name, xml) -> xml.replace("</sheets>", "</sheets><calcPr " + settings + "/>"));
        String row = Zips.row("R1", "D1", "benzoic acid").replace("</row>", "<c><f>3*4</f><v>0</v></c></row>");
        parts.put("xl/worksheets/sheet1.xml", Zips.sheet(Zips.row("Run", "Product") + Zips.row("R1", "benzoic acid")));
        parts.put(
                "xl/worksheets/sheet3.xml",
                Zips.sheet(Zips.row("Run", "Lot", "Product", "Net (g)") + row + row.replace("D1", "D2")));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        List<String> codes = codes(book);
        assertEquals(times, codes.stream().filter("formulas-stale"::equals).count(), book.findings()::toString);
        assertEquals(
                times == 0,
                book.runs().get(0).lots().get(0).weighing().netGrams().entered().isPresent(),
                book.findings()::toString);
    }

    @Test
    void aSignatureHoldsForTheBookAloneAndThatIsSaidOnce() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.put("xl/worksheets/sheet1.xml", Zips.sheet(Zips.row("Run", "Product") + Zips.row("R1", "benzoic acid")));
        parts.computeIfPresent(
                "_rels/.rels",
                (name, xml) -> xml.replace(
                        "</Relationships>",
                        "<Relationship Id='sig' Type='http://schemas.openxmlformats.org/package/2006/relationships/"
                                + "digital-signature/origin' Target='_xmlsignatures/origin.sigs'/></Relationships>"));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(1, codes(book).stream().filter("workbook-signed"::equals).count(), book.findings()::toString);
    }

    @Test
    void resultThatChangesWithEachOpeningDoesNotCount() throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.put("xl/worksheets/sheet1.xml", Zips.sheet(Zips.row("Run", "Product") + Zips.row("R1", "benzoic acid")));
        parts.put(
                "xl/worksheets/sheet3.xml",
                Zips.sheet(Zips.row("Run", "Lot", "Product", "Net (g)")
                        + Zips.row("R1", "D1", "benzoic acid")
                                .replace("</row>", "<c><f ca='1'>RAND()</f><v>0.5</v></c></row>")));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(List.of("formula-not-calculated"), codes(book));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private Book read() throws IOException {
        try {
            return new BookReader().read(folder);
        } catch (UnreadableBookException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> codes(Book book) {
        return book.findings().stream().map(f -> f.code().word()).toList();
    }
}
