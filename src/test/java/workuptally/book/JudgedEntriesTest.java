package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.report.view.wording.Wording;

/** Entries that can be read but need a second look, and rows that say the same twice. */
class JudgedEntriesTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeNeededTables() throws IOException {
        write("runs.csv", "Run\nR1\nR2\n");
        write("products.csv", "Run,Product\nR1,benzoic acid\n");
        write("charges.csv", "Run,Material\n");
        write("isolated.csv", "Run,Lot\n");
    }

    @Test
    void assayThatMayBeAFractionIsAskedAboutAndNotUsed() throws Exception {
        write("isolated.csv", "Run,Lot,Product,Assay (% w/w)\nR1,D1,benzoic acid,0.95\n");
        Book book = read();
        assertEquals(List.of("percent-as-fraction"), codes(book));
        assertTrue(assay(book).isUnreadable());
    }

    /** A figure one cell to the right of its column is no blank amount. */
    @Test
    void figureInTheUnitColumnIsAskedAbout() throws Exception {
        write("charges.csv", "Run,Material,Role,Actual amount,Actual unit\nR1,dichloromethane,solvent,,8.00 L\n");
        Book book = read();
        assertEquals(List.of("unit-unknown"), codes(book));
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

    @ParameterizedTest
    @CsvSource({"0.02, percent-as-fraction", "'0.02 %', ''", "0.5, ''", "0, uncertainty-zero", "'0 %', uncertainty-zero"
    })
    void uncertaintyThatMayBeAFractionIsAskedAbout(String typed, String code) throws Exception {
        write(
                "isolated.csv",
                "Run,Lot,Product,Assay,Relative standard uncertainty (%)\nR1,D1,benzoic acid,98.4," + typed + "\n");
        assertEquals(code.isEmpty() ? List.of() : List.of(code), codes(read()));
    }

    @ParameterizedTest
    @CsvSource({"294, kelvin-as-celsius", "294 K, ''", "22, ''", "180, ''"})
    void temperatureThatMayBeInKelvinIsAskedAbout(String typed, String code) throws Exception {
        write("layers.csv", "Run,Layer,Phase,Temperature (°C)\nR1,A1,aqueous," + typed + "\n");
        assertEquals(code.isEmpty() ? List.of() : List.of(code), codes(read()));
    }

    @Test
    void rowsThatAddUpOrRemarkRecordNothing() throws Exception {
        write("isolated.csv", "Run,Lot,Product,Net (g)\nTotal,,,12.5\n*dried overnight,,,\nR1,Sum,benzoic acid,12.5\n");
        Book book = read();
        assertEquals(List.of("total-row"), codes(book));
        assertTrue(book.runs().get(0).lots().isEmpty());
    }

    @Test
    void unitsInARowOfTheirOwnBelongToTheHeadings() throws Exception {
        write("isolated.csv", "Run,Lot,Product,Net\n,,,(mg)\nR1,D1,benzoic acid,912\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(
                0.912,
                book.runs()
                        .get(0)
                        .lots()
                        .get(0)
                        .weighing()
                        .netGrams()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
    }

    @Test
    void secondTableOfASheetIsReadByItsOwnHeadings() throws Exception {
        write(
                "isolated.csv",
                "Run,Lot,Product,Net (g)\nR1,D1,benzoic acid,1.5\n,,,\nRun,Lot,Net (mg),Product\nR1,D2,912,benzoic acid\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(
                0.912,
                book.runs()
                        .get(0)
                        .lots()
                        .get(1)
                        .weighing()
                        .netGrams()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
    }

    @Test
    void wordThatIsASlipOfThePenIsUsedAndNamed() throws Exception {
        write("layers.csv", "Run,Layer,Phase\nR1,A1,aquoeus\n");
        Book book = read();
        assertEquals(List.of("choice-guessed"), codes(book));
        assertEquals(
                Layer.Phase.AQUEOUS, book.runs().get(0).layers().get(0).phase().orElseThrow());
    }

    @Test
    void lineWithMoreCellsThanHeadingsIsLeftOut() throws Exception {
        write("isolated.csv", "Run,Lot,Product,Gross (g),Tare (g)\nR1,D1,benzoic acid,95,71,84,1\n");
        Book book = read();
        assertEquals(List.of("row-shifted"), codes(book));
        assertTrue(book.runs().get(0).lots().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "isolated.csv!Run|Lot|Product|Net (g)~R1|D1|benzoic acid|1.5",
                "isolated.csv!sep=;~Run;Lot;Product;Net (g)~R1;D1;benzoic acid;1,5",
                "isolated.csv!Week 45, our group~Run;Lot;Product;Net, g~R1;D1;benzoic acid;1,5",
                "isolated.csv!Run,Lot,Product,Net g~# not yet dry, weighed twice~R1,D1,benzoic acid,\"=\"\"1.5\"\"\""
            })
    void tablesAreReadAsProgramsAndPeopleSaveThem(String name, String text) throws Exception {
        write(name, text.replace('~', '\n'));
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(
                1.5,
                book.runs()
                        .get(0)
                        .lots()
                        .get(0)
                        .weighing()
                        .netGrams()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
    }

    @Test
    void tableOfTabsMayEndInTsv() throws Exception {
        write("layers.tsv", "Run\tLayer\tPhase\nR1\tA1\taqueous\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(1, book.runs().get(0).layers().size());
    }

    @ParameterizedTest
    @CsvSource({
        "'workup.csv', 'Run,Step,Operation,From,Material', 'R1,1,neutralize,RM,water', 'acidify where acid was added, basify'",
        "'layers.csv', 'Run,Layer,Phase,Status', 'R1,A1,aqueous,entsorgt', 'released where it was signed, lost'",
    })
    void wordsThatMayMeanTwoThingsAreAskedAbout(String file, String headings, String row, String asked)
            throws Exception {
        write(file, headings + "\n" + row + "\n");
        Book book = read();
        assertEquals(List.of("choice-unknown"), codes(book));
        String action = Wording.POINT.of(book.findings().get(0).action());
        assertTrue(action.contains(asked), action);
    }

    @Test
    void unequalPortionsCountAsOneOfTheirTotal() throws Exception {
        write("workup.csv", "Run,Step,Operation,From,Material,Volume (mL)\nR1,1,wash,RM,water,80 + 40\n");
        Book book = read();
        assertEquals(List.of("portions-unequal"), codes(book));
        assertEquals(
                120,
                book.runs()
                        .get(0)
                        .steps()
                        .get(0)
                        .added()
                        .volumeMillilitres()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
    }

    @ParameterizedTest
    @CsvSource({"100.4, assay-over-100"})
    void oddAssayIsUsedAndNamed(String assay, String code) throws Exception {
        write("isolated.csv", "Run,Lot,Product,Assay (% w/w)\nR1,D1,benzoic acid," + assay + "\n");
        Book book = read();
        assertEquals(List.of(code), codes(book));
        assertEquals(
                Double.parseDouble(assay), assay(book).entered().orElseThrow().value(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"98.4", "0.5 %", "<85"})
    void plainAssayIsNoFinding(String assay) throws Exception {
        write("isolated.csv", "Run,Lot,Product,Assay (% w/w)\nR1,D1,benzoic acid," + assay + "\n");
        assertEquals(List.of(), codes(read()));
    }

    @Test
    void assayFarAboveOneHundredIsNotUsed() throws Exception {
        write("isolated.csv", "Run,Lot,Product,Assay (% w/w)\nR1,D1,benzoic acid,984\n");
        Book book = read();
        assertEquals(List.of("value-impossible"), codes(book));
        assertTrue(assay(book).isUnreadable());
    }

    @Test
    void percentFormatShowsAHundredTimesItsNumber() throws Exception {
        assertEquals(95, percentCell("0.95").entered().orElseThrow().value(), 1e-12);
        assertTrue(percentCell("95").isUnreadable());
    }

    private Field percentCell(String stored) throws Exception {
        Map<String, String> parts = Zips.parts("");
        parts.put("xl/worksheets/sheet1.xml", Zips.sheet(Zips.row("Run", "Product") + Zips.row("R1", "benzoic acid")));
        parts.put(
                "xl/worksheets/sheet3.xml",
                Zips.sheet(Zips.row("Run", "Lot", "Product", "Assay")
                        + Zips.row("R1", "D1", "benzoic acid")
                                .replace("</row>", "<c s='3'><v>" + stored + "</v></c></row>")));
        Book book = new BookReader().read(Zips.write(folder.resolve("book.xlsx"), parts));
        assertEquals(stored.equals("95") ? List.of("percent-cell-too-large") : List.of(), codes(book));
        return assay(book);
    }

    @Test
    void copiedLayerLineIsReportedAndNotCounted() throws Exception {
        write(
                "layers.csv",
                "Run,Layer,Phase,Vessel,Gross (g),Status\nR1,A1,aqueous,E-1,5,kept\nR1,A1,aqueous,E-1,5,kept\n");
        Book book = read();
        assertEquals(List.of("vessel-duplicate"), codes(book));
        assertEquals(1, book.runs().get(0).layers().size());
    }

    @Test
    void vesselOfAConsumedLayerMayBeTakenAgain() throws Exception {
        write("layers.csv", "Run,Layer,Phase,Vessel,Status\nR1,O1,organic,E-1,consumed\nR1,O2,organic,E-1,kept\n");
        assertEquals(List.of(), codes(read()));
    }

    @Test
    void vesselsOfDifferentRunsMayBeTheSame() throws Exception {
        write("layers.csv", "Run,Layer,Phase,Vessel,Status\nR1,O1,organic,E-1,kept\nR2,O1,organic,E-1,kept\n");
        assertEquals(List.of(), codes(read()));
    }

    @Test
    void limitsTakeTheirOwnUnitsAndRefuseOthers() throws Exception {
        write(
                "limits.csv",
                "Name,Value,Unit\nlayer limit,\"1,5\",% of theory\nRoom pressure,1013,hPa\nLayer volume uncertainty,0.5,g\n"
                        + "Run limit,-1,\nFunnel fill,<80,%\nFunnel fill,80,%\nCoverage factor,,\n");
        Book book = read();
        assertEquals(List.of("unit-wrong", "value-impossible", "value-impossible", "limit-duplicate"), codes(book));
        assertEquals(1.5, book.limits().value(Limit.LAYER_LIMIT), 1e-12);
        assertEquals(101.3, book.limits().value(Limit.ROOM_PRESSURE), 1e-9);
        assertEquals(0.6, book.limits().value(Limit.LAYER_VOLUME), 1e-12);
        assertEquals(2, book.limits().value(Limit.RUN_LIMIT), 1e-12);
        assertEquals(2, book.limits().value(Limit.COVERAGE_FACTOR), 1e-12);
    }

    @Test
    void freeMaterialNeedsNoRunButALayerDoes() throws Exception {
        write("containers.csv", "Container\nW1\n");
        write("transfers.csv", "Transfer,Run,Layer,Material,Container\nT1,,,acetone,W1\nT2,,A1,,W1\nT3,R1,,,W1\n");
        Book book = read();
        assertEquals(List.of("run-missing", "key-missing"), codes(book));
        assertEquals(1, book.transfers().size());
    }

    @Test
    void assayUnitMayStandInTheCellOrTheHeading() throws Exception {
        write("assays.csv", "Run,Sample,Result,Unit\nR1,A1,12 g/L,\nR1,A2,500 mg,\nR1,A3,0.23,mol ratio to product\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        assertEquals(
                12,
                book.runs()
                        .get(0)
                        .assays()
                        .get(0)
                        .result()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
        assertEquals(
                0.5,
                book.runs()
                        .get(0)
                        .assays()
                        .get(1)
                        .result()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
        write("assays.csv", "Run,Sample,Result (mg/mL)\nR1,A1,12\n");
        assertEquals(List.of(), codes(read()));
        write("assays.csv", "Run,Sample,Result\nR1,A1,12\n");
        assertEquals(List.of("unit-missing"), codes(read()));
    }

    @Test
    void nothingFoundNeedsNoUnit() throws Exception {
        write("assays.csv", "Run,Sample,Method,Result,Unit\nR1,A1,TLC,n.d.,\nR1,A2,HPLC,not detected,\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        Assay first = book.runs().get(0).assays().get(0);
        assertEquals(Optional.of(Assay.Unit.MILLIGRAMS_PER_MILLILITRE), first.unit());
        assertEquals(
                Field.Qualifier.NOT_DETECTED,
                first.result().entered().orElseThrow().qualifier());
    }

    @ParameterizedTest
    @CsvSource({
        // 1 g in 100 mL is 10 mg/mL; 1 mg in 1 g is 0.1 %
        "0.5 % w/v, '', 5, MILLIGRAMS_PER_MILLILITRE",
        "0.5, % w/v, 5, MILLIGRAMS_PER_MILLILITRE",
        "0.5, g/100 mL, 5, MILLIGRAMS_PER_MILLILITRE",
        "5, mg/g, 0.5, MASS_PERCENT",
        "50, mg/kg, 0.005, MASS_PERCENT"
    })
    void strengthsOfOtherFormsAreConverted(String result, String unit, double value, Assay.Unit in) throws Exception {
        write("assays.csv", "Run,Sample,Method,Result,Unit\nR1,A1,HPLC," + result + "," + unit + "\n");
        Book book = read();
        assertEquals(List.of(), codes(book));
        Assay assay = book.runs().get(0).assays().get(0);
        assertEquals(Optional.of(in), assay.unit());
        assertEquals(value, assay.result().entered().orElseThrow().value(), 1e-12);
    }

    private static Field assay(Book book) {
        return book.runs().get(0).lots().get(0).assayPercent();
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private Book read() throws Exception {
        return new BookReader().read(folder);
    }

    private static List<String> codes(Book book) {
        return book.findings().stream().map(f -> f.code().word()).toList();
    }
}
