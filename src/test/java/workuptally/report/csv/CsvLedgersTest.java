package workuptally.report.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.examples.DemoReview;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.ExampleReview;
import workuptally.report.view.ledgers.Ledgers;
import workuptally.tally.RunTally;
import workuptally.tally.bench.WorkupEvidence;
import workuptally.tally.waste.WasteLine;

class CsvLedgersTest {
    @TempDir
    Path folder;

    private Path ledger(String name, Review review) throws IOException {
        List<Path> files = Ledgers.NAMES.stream()
                .map(n -> folder.resolve("week-" + n + ".csv"))
                .toList();
        CsvLedgers.write(files, review);
        return folder.resolve("week-" + name + ".csv");
    }

    @Test
    void solventsHaveOneLinePerRunAndSolventWithUnitsInTheHeading() throws IOException {
        assertEquals("""
                Book,Date,Run,Solvent,CAS,In by volume (L),In by mass (kg),Charged (g),Workup (g),To re-use (g),In distillates (g),In layers (g),On cakes (g),In lots (g),Not found (g),Purification (g),Purification to re-use (g),Purification in distillates (g),Purification in layers (g),Purification not found (g),Density (g/mL),Missing amounts
                week,,R-001,ethyl acetate,,1,0.901,450,451,700,0,80,10,1,110,0,0,0,0,0,0.901,0
                week,,R-002,ethyl acetate,,1,0.901,450,451,700,0,80,10,1,110,0,0,0,0,0,0.901,0
                """, Files.readString(ledger("solvents", ExampleReview.of(2))));
    }

    @Test
    void wasteHasOneLinePerLayerAndQuotesCommas() throws IOException {
        assertEquals("""
                Book,Date,Run,Layer,Stream key,Stream,Why,Waste (g),To re-use (g),Used up (g),Amount known
                week,,R-001,A1,aqueous,"aqueous, acid","aqueous, pH 1.8",1500,,,yes
                """, Files.readString(ledger("waste", ExampleReview.of(1))));
    }

    /** What is to be re-used stands in a column of its own, so that a plain sum of the other is the waste. */
    @Test
    void plainSumOverTheWasteColumnIsTheWaste() throws IOException {
        List<String> lines = Files.readAllLines(ledger("waste", withLayer("A9")));
        assertEquals("A9,aqueous,aqueous,'-,,2.5,,yes", lines.get(1).split(",", 4)[3]);
    }

    @Test
    void textThatLooksLikeAFormulaStaysText() throws IOException {
        String line = Files.readAllLines(ledger("waste", withLayer("=1+1"))).get(1);
        assertEquals("'=1+1,aqueous,aqueous,'-,,2.5,,yes", line.split(",", 4)[3]);
    }

    @Test
    void everyLedgerOfTheDemoWeekBeginsWithItsBook() throws IOException {
        Review week = ExampleReview.of(3);
        for (String name : Ledgers.NAMES) {
            List<String> lines = Files.readAllLines(ledger(name, week));
            assertTrue(lines.get(0).startsWith("Book,"), name);
            lines.stream()
                    .skip(1)
                    .forEach(line -> assertTrue(line.startsWith(week.book().name() + ","), name + ": " + line));
        }
    }

    /** Numbers as the registry assigns them; the benzoate ion and the salt of benzylamine have others and stay blank. */
    @Test
    void substancesThatTheTablesKnowHaveTheirRegistryNumber() throws Exception {
        Review week = DemoReview.review();
        assertTrue(Files.readString(ledger("solvents", week)).contains("R26-044,ethyl acetate,141-78-6,"));
        assertTrue(Files.readString(ledger("yields", week)).contains("R26-042,benzoic acid,65-85-0,"));
        assertTrue(Files.readString(ledger("layers", week)).contains(",naphthalene,91-20-3,"));
        assertTrue(Files.readString(ledger("containers", week)).contains(",acetone,67-64-1,"));
        assertTrue(Files.readString(ledger("yields", week)).contains("R26-044,N-benzylbenzamide,,"));
    }

    @Test
    void oneAssayOfSeveralLayersIsALineOfItsOwn() throws IOException {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.80", "Assay", "100");
        for (String label : List.of("A1", "A2")) {
            book.row("layers", "Layer", label, "Phase", "aqueous", "Volume", "50", "Net", "50", "Status", "kept");
        }
        Review review = book.row(
                        "assays",
                        "Sample",
                        "A1+A2",
                        "Substance",
                        "P",
                        "Method",
                        "HPLC",
                        "Result",
                        "0.40",
                        "Unit",
                        "mg/mL")
                .review();
        List<String> lines = Files.readAllLines(ledger("layers", review));
        int columns = lines.get(0).split(",", -1).length;
        assertEquals(
                1, lines.stream().filter(line -> line.contains(",A1 + A2,")).count(), lines::toString);
        lines.forEach(line -> assertEquals(columns, line.split(",", -1).length, line));
    }

    private static Review withLayer(String label) {
        Review review = ExampleReview.of(1);
        RunReview run = review.runs().get(0);
        RunTally t = run.tally();
        RunTally changed = new RunTally(
                t.run(),
                t.amounts(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(new WasteLine(
                        label, "aqueous", "aqueous", "-", OptionalDouble.of(2.5), WasteLine.Standing.TO_REUSE)),
                WorkupEvidence.NONE,
                List.of());
        return new Review(
                review.book(),
                List.of(new RunReview(changed, List.of(), List.of(), List.of())),
                review.period(),
                List.of(),
                review.basis(),
                review.toolVersion());
    }
}
