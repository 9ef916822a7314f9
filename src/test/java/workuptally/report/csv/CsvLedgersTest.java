package workuptally.report.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.ExampleReview;
import workuptally.tally.RunTally;
import workuptally.tally.bench.WorkupEvidence;
import workuptally.tally.waste.WasteLine;

class CsvLedgersTest {
    @TempDir
    Path folder;

    @Test
    void solventsHaveOneLinePerRunAndSolventWithUnitsInTheHeading() throws IOException {
        Path file = folder.resolve("week-solvents.csv");
        CsvLedgers.writeSolvents(file, ExampleReview.of(2));
        assertEquals("""
                Run,Solvent,In by volume (L),In by mass (kg),Charged (g),Workup (g),Recovered (g),In layers (g),On cakes (g),In lots (g),Not found (g),Purification (g),Density (g/mL)
                R-001,ethyl acetate,1,0.901,450,451,700,80,10,1,110,0,0.901
                R-002,ethyl acetate,1,0.901,450,451,700,80,10,1,110,0,0.901
                """, Files.readString(file));
    }

    @Test
    void wasteHasOneLinePerLayerAndQuotesCommas() throws IOException {
        Path file = folder.resolve("week-waste.csv");
        CsvLedgers.writeWaste(file, ExampleReview.of(1));
        assertEquals("""
                Run,Layer,Stream,Why,Mass (g),Kept
                R-001,A1,"aqueous, acid","aqueous, pH 1.8",1500,yes
                """, Files.readString(file));
    }

    @Test
    void textThatLooksLikeAFormulaStaysText() throws IOException {
        Path file = folder.resolve("week-waste.csv");
        CsvLedgers.writeWaste(file, withLayer("=1+1"));
        assertEquals("R-001,'=1+1,aqueous,'-,2.5,no", Files.readAllLines(file).get(1));
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
                List.of(new WasteLine(label, "aqueous", "aqueous", "-", OptionalDouble.of(2.5), false)),
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
