package workuptally.tally.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.series.SeriesTally.Together;

/** Series of invented books; the chart of the invented week was computed by hand by its authors. */
class SeriesAccountTest {
    @TempDir
    private Path folder;

    private static List<SeriesTally> series(Book book) {
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        List<RunTally> tallies = book.runs().stream().map(tallying::tally).toList();
        return new SeriesAccount(book, tallies, SmallBook.substances()).list();
    }

    /** A class of students who make the same amide; each has a net mass in g and an assay of 99.0 %. */
    private Together course(double... grams) throws Exception {
        List<String> runs = new ArrayList<>(List.of("Run,Date,Series,Kind,Status"));
        List<String> products = new ArrayList<>(List.of("Run,Product,Wanted,Formula"));
        List<String> charges = new ArrayList<>(
                List.of(
                        "Run,Material,Role,Formula,Coefficient,Planned amount,Planned unit,Actual amount,Actual unit,Assay (% w/w)"));
        List<String> isolated = new ArrayList<>(
                List.of("Run,Lot,Product,Stage,Net (g),Assay (% w/w),Relative standard uncertainty (%)"));
        for (int i = 0; i < grams.length; i++) {
            String run = "S" + (i + 1);
            runs.add(run + ",2026-03-02,class,reaction,isolated");
            products.add(run + ",acetanilide,yes,C8H9NO");
            charges.add(run + ",aniline,substrate,C6H7N,1,4.66,g,4.70,g,100");
            isolated.add(run + ",L,acetanilide,crude," + grams[i] + ",99.0,1.0");
        }
        write("runs", runs);
        write("products", products);
        write("charges", charges);
        write("isolated", isolated);
        return series(new BookReader().read(folder)).get(0).together().orElseThrow();
    }

    private void write(String table, List<String> lines) throws IOException {
        Files.write(folder.resolve(table + ".csv"), lines);
    }

    private static SeriesTally demo() throws Exception {
        return series(new BookReader().read(Path.of("input-templates", "demo-week")))
                .get(0);
    }

    @Test
    void chartIsDrawnFromTheEarlierResultsAlone() throws Exception {
        SeriesTally series = demo();
        assertEquals("M-03", series.series());
        assertEquals(87.84, series.chart().orElseThrow().centrePercent(), 0.01);
        assertEquals(1.50, series.chart().orElseThrow().meanMovingRangePercent(), 0.01);
        assertEquals(83.85, series.chart().orElseThrow().lowerLimitPercent(), 0.05);
        assertEquals(91.83, series.chart().orElseThrow().upperLimitPercent(), 0.05);
    }

    @Test
    void newResultInsideTheLimitsSignalsNothing() throws Exception {
        SeriesTally.Result result = demo().results().get(0);
        assertEquals("R26-051", result.run());
        assertEquals(88.4, result.yieldPercent(), 0.3);
        assertEquals(List.of(), result.signals());
    }

    @Test
    void sevenRunsAreNoClass() throws Exception {
        assertTrue(demo().together().isEmpty());
    }

    @Test
    void medianAndSpreadOfAClassWithstandOneBadRun() throws Exception {
        Together course = course(5.40, 5.45, 5.50, 5.55, 5.60, 5.65, 5.70, 2.00);
        assertEquals(8, course.yields());
        assertEquals(List.of("S8"), course.outliers());
        assertTrue(course.medianPercent().orElseThrow() > 80, course::toString);
    }

    @Test
    void copiedRowCountsOnceAndIsNamed() throws Exception {
        Together course = course(5.4012, 5.4533, 5.5021, 5.5517, 5.5517, 5.6044, 5.6508, 5.7031);
        assertEquals(List.of("S5"), course.copies());
        assertEquals(7, course.yields());
        assertTrue(course.leftOut().contains("S5: copied from an earlier run"), course::toString);
    }

    @Test
    void yieldAboveAllThatCanBeIsLeftOut() throws Exception {
        Together course = course(5.40, 5.45, 5.50, 5.55, 5.60, 5.65, 5.70, 9.00);
        assertEquals(7, course.yields());
        assertTrue(course.leftOut().contains("S8: above 100 %"), course::toString);
    }

    @Test
    void chargesOfTheClassStandAgainstTheRecipe() throws Exception {
        SeriesTally.Material aniline = course(5.40, 5.45, 5.50, 5.55, 5.60, 5.65, 5.70, 5.75)
                .materials()
                .get(0);
        assertEquals(8 * 4.66, aniline.planned(), 1e-9);
        assertEquals(100 * 4.70 / 4.66, aniline.actualPercentOfPlanned(), 1e-9);
    }
}
