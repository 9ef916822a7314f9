package workuptally.book.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** Lists of a laboratory's own, as headings files say how to read them. */
class OwnListReadingTest {
    @TempDir
    private Path folder;

    private Book read(String list, String headings) throws IOException, UnreadableBookException {
        Path file = Files.writeString(folder.resolve("list.csv"), list);
        Path json = Files.writeString(folder.resolve("headings.json"), headings);
        return new BookReader(ReadingOptions.defaults().withHeadingsFile(json)).read(file);
    }

    private static String lists(String parts) {
        return "{\"lists\": [{" + parts.replace('\'', '"') + "}]}";
    }

    private static Finding finding(Book book, String code) {
        return book.findings().stream()
                .filter(f -> f.code().word().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " in " + book.findings()));
    }

    private static double actual(Charge charge, Dimension dimension) {
        Amount amount = charge.quantity().actual().orElseThrow();
        assertEquals(dimension, amount.dimension());
        return amount.value().entered().orElseThrow().value();
    }

    @Test
    void theFirstFilledOfSeveralHeadingsIsTheAmount() throws Exception {
        Book book = read(
                "No,A,mg,mL\n1,acid,250,\n2,amine,,1.5\n3,salt,100,0.2\n4,base,,\n",
                lists("'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': ['mg', 'mL']}]"));
        assertEquals(0.25, actual(book.runs().get(0).charges().get(0), Dimension.MASS), 1e-12);
        assertEquals(1.5, actual(book.runs().get(1).charges().get(0), Dimension.VOLUME), 1e-12);
        assertEquals(0.1, actual(book.runs().get(2).charges().get(0), Dimension.MASS), 1e-12);
        assertEquals(1, book.runs().get(2).charges().size());
        assertTrue(book.runs().get(3).charges().get(0).quantity().actual().isEmpty());
    }

    /** A list has no From: what the headings file says of it holds where the row has the crude. */
    @Test
    void aProductWithoutACrudeCameFromNoLot() throws Exception {
        Book book = read(
                "No,A,mg,P,crude (mg),pure (mg)\n1,acid,250,ester,280,250\n2,acid,250,ester,,240\n3,acid,250,ester,n.b.,230\n",
                lists(
                        "'Runs': [{'Run': 'No'}], 'Products': [{'Product': 'P'}],"
                                + " 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}],"
                                + " 'Isolated': [{'Product': 'P', 'Net': 'crude (mg)', 'Lot': '= crude', 'Stage': '= crude'},"
                                + " {'Product': 'P', 'Net': 'pure (mg)', 'Lot': '= product', 'Stage': '= purified', 'From': '= crude'}]"));
        assertEquals(
                List.of(List.of(List.of(), List.of("crude")), List.of(List.of()), List.of(List.of())),
                book.runs().stream()
                        .map(r -> r.lots().stream().map(l -> l.from()).toList())
                        .toList());
    }

    @Test
    void aFailedRunWithADashForItsProductIsolatedNothing() throws Exception {
        String headings = lists("'Runs': [{'Run': 'No'}], 'Products': [{'Product': 'P'}],"
                + " 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}],"
                + " 'Isolated': [{'Product': 'P', 'Net': 'pure (mg)', 'Lot': '= product'}]");
        Book failed = read("No,A,mg,P,pure (mg)\n1,acid,250,ester,250\n2,acid,250,-,0\n", headings);
        assertEquals(List.of(), failed.runs().get(1).lots());
        assertTrue(failed.findings().stream().noneMatch(f -> f.code().word().equals("product-unknown")));
        Book weighed = read("No,A,mg,P,pure (mg)\n1,acid,250,ester,250\n2,acid,250,-,12\n", headings);
        assertEquals(Severity.STOP, finding(weighed, "product-unknown").severity());
    }

    @Test
    void aRowOfAnEarlierRunGivesNothing() throws Exception {
        Book book = read(
                "No,A,mg\n1,acid,250\n1,amine,300\n",
                lists("'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}]"));
        assertEquals(1, book.runs().get(0).charges().size());
        assertEquals(Severity.STOP, finding(book, "run-duplicate").severity());
    }

    @Test
    void aListWithoutAmountsAndWeightsStops() throws Exception {
        Book book = read(
                "No,Yield (%)\n1,69\n",
                lists(
                        "'Runs': [{'Run': 'No'}], 'Isolated': [{'Lot': '= P', 'Product': '= x', 'Stated yield': 'Yield (%)'}]"));
        Finding finding = finding(book, "list-amounts-missing");
        assertEquals(Severity.STOP, finding.severity());
        assertTrue(Wording.POINT.of(finding.action()).contains("Actual amount"));
    }

    @Test
    void runsWithoutAnIdAreNamedByTheirRows() throws Exception {
        Book book = read(
                "A,mg\nacid,250\namine,300\n",
                lists("'Runs': [{'Run': '= row {row}'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}]"));
        assertEquals(
                List.of("row 2", "row 3"), book.runs().stream().map(r -> r.id()).toList());
        assertEquals(1, book.runs().get(1).charges().size());
    }

    @Test
    void titlesTotalsAndOwnWordsAreLeftOutAndNamed() throws Exception {
        Book book = read(
                "No,A,mg\n2024,,\n1,acid,250\nNo,A,mg\nSumme,,250\ncancelled 7,acid,1\nTotality,acid,5\n",
                lists("'leave out': ['cancelled'], 'Runs': [{'Run': 'No'}],"
                        + " 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}]"));
        assertEquals(
                List.of("1", "Totality"), book.runs().stream().map(r -> r.id()).toList());
        String seen = Wording.POINT.of(finding(book, "list-rows-left-out").seen());
        for (String row : List.of("2 ('2024')", "4 ('No')", "5 ('Summe')", "6 ('cancelled 7')")) {
            assertTrue(seen.contains(row), seen);
        }
    }

    @Test
    void aWeightWithoutAUnitAnywhereIsNotUsed() throws Exception {
        String parts = "'Runs': [{'Run': 'No'}], 'Products': [{'Product': '= p', 'Molar mass': 'MW'}],"
                + " 'Isolated': [{'Lot': '= l', 'Product': '= p', '%s': 'Weight'}]";
        Book book = read("No,MW,Weight\n1,100,250\n", lists(String.format(parts, "Net")));
        assertEquals(Severity.STOP, finding(book, "unit-missing").severity());
        assertTrue(book.runs().get(0).lots().get(0).weighing().netGrams().isUnreadable());
        Book named = read("No,MW,Weight\n1,100,250\n", lists(String.format(parts, "Net (mg)")));
        assertEquals(
                0.25,
                named.runs()
                        .get(0)
                        .lots()
                        .get(0)
                        .weighing()
                        .netGrams()
                        .entered()
                        .orElseThrow()
                        .value(),
                1e-12);
        Book inCells = read("No,MW,Weight\n1,100,250 mg\n", lists(String.format(parts, "Net")));
        assertEquals(
                0.25,
                inCells.runs()
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
    void headingsThatNobodyMentionsOrAnswersAreFindings() throws Exception {
        Book book = read(
                "No,A,mg,Zebra,Menge\n1,acid,250,x,3\n",
                lists(
                        "'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg', 'Assay': 'Purity'}],"
                                + " 'open': [{'heading': 'Menge', 'question': 'mass or volume?'}]"));
        assertTrue(Wording.POINT.of(finding(book, "list-heading-unread").seen()).contains("'Zebra'"));
        assertTrue(Wording.POINT.of(finding(book, "list-heading-open").seen()).contains("mass or volume?"));
        assertTrue(
                Wording.POINT.of(finding(book, "list-heading-missing").seen()).contains("'Purity'"));
        assertTrue(Wording.POINT.of(finding(book, "table-missing").action()).contains("unlocks"));
    }

    @Test
    void aFaultInACsvListIsNamedByTheListsOwnHeading() throws Exception {
        Book book = read(
                "No,A,mg\n1,acid,lots\n",
                lists("'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}]"));
        assertEquals(
                "list.csv line 2, mg",
                finding(book, "number-unreadable").place().inWords());
    }

    @Test
    void aTextMergedOverSeveralRowsHoldsForEachAndANumberForNone() throws Exception {
        Path file = workuptally.examples.OwnLists.workbook(
                folder.resolve("list.xlsx"),
                "L",
                "No,A,mg,Solvent,mL\nR-1,acid,250,toluene,5\nR-2,amine,300,,6\nR-3,salt,,,7\n",
                List.of("D2:D4", "C3:C4"));
        Path json = Files.writeString(
                folder.resolve("headings.json"),
                lists("'sheets': ['L'], 'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg'},"
                        + " {'Material': 'Solvent', 'Actual amount': 'mL', 'Role': '= solvent'}]"));
        Book book = new BookReader(ReadingOptions.defaults().withHeadingsFile(json)).read(file);
        assertEquals("toluene", book.runs().get(2).charges().get(1).material());
        assertEquals(Severity.STOP, finding(book, "merged-cells").severity());
        assertTrue(book.runs()
                .get(1)
                .charges()
                .get(0)
                .quantity()
                .actual()
                .orElseThrow()
                .value()
                .isUnreadable());
    }

    @Test
    void unitsInARowBelowTheHeadingsAreTheirs() throws Exception {
        String parts = "'Runs': [{'Run': 'Nr'}], 'Products': [{'Product': '= p', 'Molar mass': 'M'}],"
                + " 'Isolated': [{'Lot': '= l', 'Product': '= p', 'Net': 'Auswaage'}]";
        for (String units : List.of(";;mg", ";-;[mg]", ";;in mg")) {
            Book book = read("Nr;M;Auswaage\n" + units + "\n1;100;250\n2;100;0,3 g\n", lists(parts));
            assertEquals(2, book.runs().size());
            assertEquals(0.25, net(book, 0), 1e-12);
            assertEquals(0.3, net(book, 1), 1e-12);
        }
    }

    private static double net(Book book, int run) {
        return book.runs()
                .get(run)
                .lots()
                .get(0)
                .weighing()
                .netGrams()
                .entered()
                .orElseThrow()
                .value();
    }

    @Test
    void anotherTableBelowAnEmptyRowIsNamedAndGivesNoRuns() throws Exception {
        Book book = read(
                "No,A,mg\n1,acid,250\n\nBalance,Checked,By\nAB-1,2025-01-01,KB\n",
                lists("'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}]"));
        assertEquals(List.of("1"), book.runs().stream().map(r -> r.id()).toList());
        assertTrue(Wording.POINT.of(finding(book, "list-rows-left-out").seen()).contains("rows 4 to 5"));
    }

    @Test
    void rowsBelowHeadingsInAnotherUnitAreLeftOutWithAStop() throws Exception {
        Book book = read(
                "No,A,g\n1,acid,2.0\nNo,A,g\n2,acid,2.1\nNo,A,mg\n3,acid,2200\nNo,A,g\n4,acid,2.3\n",
                lists("'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'g'}]"));
        assertEquals(
                List.of("1", "2", "4"), book.runs().stream().map(r -> r.id()).toList());
        assertEquals(Severity.STOP, finding(book, "list-heading-missing").severity());
    }

    @Test
    void runsBelowAnEmptyRowStayRuns() throws Exception {
        Book book = read(
                "No,A,mg\n1,acid,250\n\nNo,A,mg\n2,amine,300\n\n3,salt,\n",
                lists("'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg'}]"));
        assertEquals(
                List.of("1", "2", "3"), book.runs().stream().map(r -> r.id()).toList());
    }

    @Test
    void aMappedColumnThatNoRowFillsIsNamedWithWhatItUnlocks() throws Exception {
        Book book = read(
                "No,A,MW,mg,Net,Purity\n1,acid,122.12,250,,\n2,acid,122.12,300,-,\n",
                lists(
                        "'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Actual amount': 'mg', 'Molar mass': 'MW'}],"
                                + " 'Products': [{'Product': '= p'}],"
                                + " 'Isolated': [{'Lot': '= l', 'Product': '= p', 'Net (mg)': 'Net', 'Assay': 'Purity'}]"));
        List<Finding> blank = book.findings().stream()
                .filter(f -> f.code().word().equals("list-column-blank"))
                .toList();
        assertEquals(2, blank.size(), book.findings()::toString);
        assertTrue(Wording.POINT.of(blank.get(0).seen()).contains("'Net'"));
        assertTrue(Wording.POINT.of(blank.get(0).expected()).contains("yield"));
        assertTrue(Wording.POINT.of(blank.get(1).seen()).contains("'Purity'"));
    }

    @Test
    void aColumnWhosePartnerIsFilledMayBeBlank() throws Exception {
        Book book = read(
                "No,A,Formula,MW,mg\n1,acid,,122.12,250\n",
                lists(
                        "'Runs': [{'Run': 'No'}], 'Charges': [{'Material': 'A', 'Formula': 'Formula', 'Molar mass': 'MW', 'Actual amount': 'mg'}]"));
        assertTrue(
                book.findings().stream().noneMatch(f -> f.code().word().equals("list-column-blank")),
                book.findings()::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'Charges': [{'Material': 'A'}]|without \"Runs\"",
                "'Runs': [{'Run': 'No'}], 'Chargen': [{}]|names 'Chargen', which is no table",
                "'Runs': [{'Run': 'No'}], 'Charges': [{'Stuff': 'A'}]|names 'Stuff', which is no heading of Charges",
                "'Runs': [{'Run': 'No'}], 'Charges': [{'Actual amount': 'mg'}]|feeds Charges without Material",
                "'heading rows': [1], 'Runs': [{'Run': 'Nr'}]|lacks the heading 'Nr'",
                "'heading rows': [9], 'Runs': [{'Run': 'No'}]|has none of the headings",
                "'heading rows': ['x'], 'Runs': [{'Run': 'No'}]|has 'heading rows' in another form",
                "'Runs': 'No'|has 'Runs' in another form"
            })
    void aHeadingsFileThatDoesNotFitIsRefusedInOneSentence(String parts, String said) {
        UnreadableBookException refused =
                assertThrows(UnreadableBookException.class, () -> read("No,A,mg\n1,acid,250\n", lists(parts)));
        assertTrue(refused.getMessage().contains(said), refused::getMessage);
    }
}
