package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;

/** Expected shares by hand from the definition of D and the mass balance, (1 + D·Vo/Va)^(−n), as in any analytical chemistry text. */
class ExtractionSplitAccountTest {
    @TempDir
    private Path folder;

    private List<ExtractionSplit> splits(String product, String step) throws Exception {
        Files.writeString(
                folder.resolve("runs.csv"), "Run,Date,Reaction,Kind,Status\nX1,2026-03-02,test,reaction,planned\n");
        Files.writeString(
                folder.resolve("products.csv"),
                "Run,Product,Wanted,Formula,Coefficient,Skeleton,Character,pKa,Partition ratio,Partition solvent,Log P\n"
                        + product + "\n");
        Files.writeString(
                folder.resolve("charges.csv"),
                "Run,Material,Role,Formula,Molar mass (g/mol),Coefficient,Planned amount,Planned unit\n"
                        + "X1,aniline,substrate,C6H7N,93.13,1,4.66,g\n");
        Files.writeString(folder.resolve("isolated.csv"), "Run,Lot,Product,Stage,From,Gross (g),Tare (g)\n");
        Files.writeString(
                folder.resolve("workup.csv"),
                "Run,Step,Operation,From,Material,Portions,Volume (mL),Density (g/mL),pH after,Gives organic,Gives aqueous,Gives other\n"
                        + "X1,1,dilute,RM,water,1,100,0.998,,,,RM\n" + step + "\n");
        Book book = new BookReader().read(folder);
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        Plan plan = tallying.tally(book.runs().get(0)).plan().orElseThrow();
        return plan.steps().stream().flatMap(s -> s.splits().stream()).toList();
    }

    private static final String NEUTRAL = "X1,acetanilide,yes,C8H9NO,1,aniline 1,neutral,,3,toluene,";

    /** Toluene takes up and gives off next to no water, so that 90 mL stand against the 100 mL of water planned. */
    @Test
    void ninetyMillilitresAtOnceAgainstThreePortionsOfThirty() throws Exception {
        ExtractionSplit split =
                splits(NEUTRAL, "X1,2,extract,RM,toluene,1,90,0.867,,O1,A1,").get(0);
        double water = split.extractedMillilitres();
        assertEquals(100, water, 0.5);
        assertEquals(3, split.ratio(), 1e-12);
        assertEquals(100 / (1 + 3 * 90 / water), split.leftAsPlannedPercent(), 1e-9);
        assertEquals(split.leftAtOncePercent(), split.leftAsPlannedPercent(), 1e-12);
        assertEquals(3, split.bestPortions());
        assertEquals(100 / Math.pow(1 + 3 * 30 / water, 3), split.leftAtBestPercent(), 1e-9);
        assertEquals("P = 3 in toluene", split.origin());
    }

    @Test
    void leftAsPlannedFollowsThePortionsPlanned() throws Exception {
        ExtractionSplit split =
                splits(NEUTRAL, "X1,2,extract,RM,toluene,2,45,0.867,,O1,A1,").get(0);
        assertEquals(2, split.plannedPortions());
        assertEquals(90, split.totalMillilitres(), 1e-12);
        assertEquals(100 / Math.pow(1 + 3 * 45 / split.extractedMillilitres(), 2), split.leftAsPlannedPercent(), 1e-9);
        assertTrue(split.leastLeftAsPlannedPercent() < split.leftAsPlannedPercent());
        assertTrue(split.mostLeftAsPlannedPercent() > split.leftAsPlannedPercent());
    }

    /** pH two above the pKa: one part in 101 is the neutral acid, D = 50/101. */
    @Test
    void acidTakesItsRatioFromThePhAfterTheStep() throws Exception {
        String acid = "X1,benzoic acid,yes,C7H6O2,1,aniline 1,acid,4.20,50,toluene,";
        ExtractionSplit split =
                splits(acid, "X1,2,extract,RM,toluene,1,90,0.867,6.20,O1,A1,").get(0);
        assertEquals(50 / 101.0, split.ratio(), 1e-9);
    }

    @Test
    void acidWithoutAPhHasNoSplit() throws Exception {
        String acid = "X1,benzoic acid,yes,C7H6O2,1,aniline 1,acid,4.20,50,toluene,";
        assertEquals(List.of(), splits(acid, "X1,2,extract,RM,toluene,1,90,0.867,,O1,A1,"));
    }

    @Test
    void productWithoutAPartitionRatioHasNoSplit() throws Exception {
        assertEquals(
                List.of(),
                splits(
                        "X1,acetanilide,yes,C8H9NO,1,aniline 1,neutral,,,,",
                        "X1,2,extract,RM,toluene,1,90,0.867,,O1,A1,"));
    }

    @Test
    void washHasNoSplitSinceItTakesProductAway() throws Exception {
        assertEquals(List.of(), splits(NEUTRAL, "X1,2,wash,RM,toluene,1,90,0.867,,O1,A1,"));
    }

    /** Water that is shaken with toluene in which the product is, D = 0.25: the ratio of the water is 4. */
    @Test
    void extractionWithWaterTurnsTheRatioRound() throws Exception {
        String acid = "X1,benzoic acid,yes,C7H6O2,1,aniline 1,neutral,,0.25,toluene,";
        String steps = "X1,2,extract,RM,toluene,1,50,0.867,,O1,A1,\nX1,3,back-extract,O1,water,2,30,0.998,,O2,A2,";
        List<ExtractionSplit> splits = splits(acid, steps);
        assertEquals(2, splits.size());
        ExtractionSplit split = splits.get(1);
        assertEquals(4, split.ratio(), 1e-12);
        assertEquals(1.2, split.factor(), 1e-12);
        // beside twice its mass of hexane the ratio is that of another solvent
        String thinned = steps.replace("\nX1,3", "\nX1,2.5,dilute,O1,hexane,1,140,0.66,,,,O1\nX1,3");
        assertEquals(3, splits(acid, thinned).get(1).factor(), 1e-12);
        String little = steps.replace("\nX1,3", "\nX1,2.5,dilute,O1,hexane,1,20,0.66,,,,O1\nX1,3");
        assertEquals(1.2, splits(acid, little).get(1).factor(), 1e-12);
        assertEquals(60, split.totalMillilitres(), 1e-12);
        double toluene = split.extractedMillilitres();
        // beside 4.66 g of aniline, 1.02 g/mL (CRC Handbook, from memory)
        assertEquals(50 + 4.66 / 1.02, toluene, 0.2);
        assertEquals(100 / Math.pow(1 + 4 * 30 / toluene, 2), split.leftAsPlannedPercent(), 1e-9);
    }

    /** Of the reaction's 100 mL of water 15 % would still be swelling; where as much again stands there, it is not the planner's to divide. */
    @Test
    void solventOfTheReactionInTheExtractingPhaseIsNotDivided() throws Exception {
        String steps = "X1,1.5,dilute,RM,toluene,1,30,0.867,,,,RM\nX1,2,extract,RM,toluene,1,90,0.867,,O1,A1,";
        assertEquals(List.of(), splits(NEUTRAL, steps));
        // 5 mL and the 4.6 mL of aniline beside 90 mL are a tenth
        assertEquals(1, splits(NEUTRAL, steps.replace(",30,", ",5,")).size());
    }

    @Test
    void nothingToDivideHasNoSplit() throws Exception {
        assertEquals(List.of(), splits(NEUTRAL, "X1,2,extract,RM,toluene,1,0,0.867,,O1,A1,"));
        assertEquals(List.of(), splits(NEUTRAL, "X1,2,extract,RM,toluene,1,,0.867,,O1,A1,"));
        // no water to extract
        assertEquals(
                List.of(),
                splits(
                                NEUTRAL,
                                "X1,2,extract,RM,toluene,1,90,0.867,,O1,A1,\nX1,3,extract,O1,toluene,1,90,0.867,,O2,A2,")
                        .stream()
                        .skip(1)
                        .toList());
    }

    @Test
    void onlyWantedProductsHaveASplit() throws Exception {
        String two = NEUTRAL + "\nX1,benzanilide,no,C13H11NO,1,aniline 1,neutral,,9,toluene,";
        List<ExtractionSplit> splits = splits(two, "X1,2,extract,RM,toluene,1,90,0.867,,O1,A1,");
        assertEquals(
                List.of("acetanilide"),
                splits.stream().map(ExtractionSplit::product).toList());
    }

    @Test
    void ratioIsKnownToAFactor() throws Exception {
        ExtractionSplit split =
                splits(NEUTRAL, "X1,2,extract,RM,toluene,1,90,0.867,,O1,A1,").get(0);
        double water = split.extractedMillilitres();
        assertEquals(1.2, split.factor(), 1e-12);
        assertEquals(100 / (1 + 3.6 * 90 / water), split.leastLeftAsPlannedPercent(), 1e-9);
        assertEquals(100 / (1 + 2.5 * 90 / water), split.mostLeftAsPlannedPercent(), 1e-9);
    }
}
