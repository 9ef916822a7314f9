package workuptally.tally.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

    /** P of 20.0 g theory with this yield by assay in series M-9, after these earlier results. */
    private static SeriesTally after(String percent, String... earlier) {
        SmallBook book = SmallBook.reaction()
                .first("runs", "Series", "m-9")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "20.00", "Assay", percent);
        for (int i = 0; i < earlier.length; i++) {
            book.history("Series", "M-9 ", "Date", "2026-01-0" + (i + 1), "Yield", earlier[i]);
        }
        return series(book.book()).get(0);
    }

    /** Mean 87 %, mean moving range 2: limits 87 ± 2.66 × 2 = 81.68 to 92.32, moving range up to 3.267 × 2 = 6.53 (chart constants d2, D4 for 2). */
    @Test
    void signalsAreThoseOfTheNewResult() {
        String[] even = {"88", "86", "88", "86", "88", "86", "88", "86"};
        assertEquals(List.of(), after("90", even).results().get(0).signals());
        assertEquals(
                List.of("outside the limits", "further from the result before than the moving range allows"),
                after("60", even).results().get(0).signals());
        assertEquals(
                List.of("six in a row rising or falling"),
                after("90", "86", "88", "86", "85", "86", "87", "88", "89")
                        .results()
                        .get(0)
                        .signals());
        assertTrue(after("60", "88", "86", "88", "86", "88", "86", "88").chart().isEmpty(), "seven are too few");
    }

    @Test
    void distancesAreTold() {
        SeriesTally series = after("80", "88", "85");
        assertTrue(series.movingRangePercent(0).isEmpty());
        assertEquals(3, series.movingRangePercent(1).orElseThrow(), 1e-9);
        assertEquals(5, series.movingRangePercent(series.results().get(0)).orElseThrow(), 1e-9);
        assertTrue(series.repeats());
        SeriesTally alone = after("80");
        assertTrue(alone.movingRangePercent(alone.results().get(0)).isEmpty());
        assertFalse(alone.repeats());
    }

    @Test
    void runsOfOneSeriesStandSideBySide() throws Exception {
        Together course = course(5.40, 5.45, 5.50, 5.55, 5.60, 5.65, 5.70, 5.75);
        assertEquals(
                2,
                course.fromMedianPercent(course.medianPercent().orElseThrow() + 2)
                        .orElseThrow(),
                1e-9);
        assertEquals(
                2,
                course.fromMedianPercent(course.medianPercent().orElseThrow() - 2)
                        .orElseThrow(),
                1e-9);
        assertEquals(8, course.runs());
        assertEquals(0, course.solventGrams());
        assertEquals(0, course.keptGrams());
    }

    /** Two students with the same gross and tare, whatever they net. */
    @Test
    void copiedWeighingIsNamed() throws Exception {
        course(5.40, 5.45, 5.50, 5.55, 5.60, 5.65, 5.70, 5.75);
        List<String> isolated = new ArrayList<>(List.of("Run,Lot,Product,Stage,Gross (g),Tare (g),Assay (% w/w)"));
        for (int i = 1; i <= 8; i++) {
            isolated.add("S" + i + ",L,acetanilide,crude," + (i == 3 ? "30.61" : "30.5" + i) + ","
                    + (i == 3 ? "25.1" : "25.0") + i + "," + (90 + i));
        }
        isolated.set(7, "S7,L,acetanilide,crude,30.52,25.02,99");
        write("isolated", isolated);
        Together together =
                series(new BookReader().read(folder)).get(0).together().orElseThrow();
        assertEquals(List.of("S7"), together.copies());
    }

    /** 8 × 10 mL of 0.9003 g/mL ethyl acetate (CRC Handbook), and 8 × 5.00 g water kept. */
    @Test
    void solventsAndKeptLayersOfAClassAddUp() throws Exception {
        course(5.40, 5.45, 5.50, 5.55, 5.60, 5.65, 5.70, 5.75);
        List<String> workup =
                new ArrayList<>(List.of("Run,Step,Operation,From,Material,Volume (mL),Gives organic,Gives aqueous"));
        List<String> layers = new ArrayList<>(List.of("Run,Layer,Phase,Net (g),Status"));
        for (int i = 1; i <= 8; i++) {
            workup.add("S" + i + ",1,extract,RM,ethyl acetate,10,O1,A1");
            layers.add("S" + i + ",A1,aqueous,5.00,kept");
        }
        write("workup", workup);
        write("layers", layers);
        Together together =
                series(new BookReader().read(folder)).get(0).together().orElseThrow();
        assertEquals(8 * 9.003, together.solventGrams(), 1e-6);
        assertEquals(8 * 5.00, together.keptGrams(), 1e-6);
    }
}
