package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.tally.RunBalances;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.layers.LayerIdentity;

/** 10 g of S and 90 g of ethyl acetate, washed with 50 g of water; 85 g of organic and 48 g of aqueous layer came out. */
class CheckAccountTest {
    private static final double EPSILON = 1e-9;

    private static SmallBook parted() {
        return SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "90.00")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", "85.00", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "47", "Net", "48.00", "Status", "kept");
    }

    /** A whole run: its balances and the checks. */
    private record Checked(RunTally tally, Map<String, Check> checks) {
        static Checked of(SmallBook small) {
            Book book = small.book();
            RunTally tally = new RunTallying(book.limits(), SmallBook.substances())
                    .tally(book.runs().get(0));
            EntryChecks entries = new EntryChecks(book, SmallBook.substances(), new TareRegister(List.of()));
            CheckAccount checks = new CheckAccount(CheckAccount.transfers(book), SmallBook.substances(), entries);
            return new Checked(tally, checks.of(RunBalances.of(tally), Changes.NONE));
        }

        Check get(String name) {
            assertTrue(checks.containsKey(name), name + " in " + checks.keySet());
            return checks.get(name);
        }
    }

    private static void assertWindow(double residual, double low, double high, Check check) {
        assertEquals(residual, check.residual(), EPSILON);
        assertEquals(low, check.low(), EPSILON);
        assertEquals(high, check.high(), EPSILON);
    }

    @Test
    void totalMassMayMissWhatEvaporates() {
        Checked checked = Checked.of(parted());
        Check mass = checked.get("total mass");
        // 150 g in, 133 g out; 0.6 of 90 g of solvent may be gone
        assertWindow(17, 0, 54, mass);
        double u = checked.tally().massBalance().orElseThrow().gapGrams().standardUncertainty();
        assertEquals(Math.sqrt(u * u + 0.3 * 0.3), mass.standardUncertainty(), EPSILON);
    }

    @Test
    void aLayerWithoutAMassLeavesTheTotalOpen() {
        assertEquals(
                1e9,
                Checked.of(parted().but("layers", "Net", "")).get("total mass").high(),
                0);
    }

    @Test
    void unitsOfASkeletonAreThoseCharged() {
        SmallBook isolated = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "2");
        Check closure = Checked.of(isolated).get("closure on S");
        // 90 of 100 mmol; with no workup recorded nothing was kept without an assay
        assertEquals(-10, closure.residual(), EPSILON);
        assertEquals(0, closure.high(), 0);
        assertEquals(100, closure.scale(), EPSILON);
        assertTrue(closure.standardUncertainty() > 1 && closure.standardUncertainty() < 3);
    }

    @Test
    void aLayerThatNobodyAssayedCanHoldAllThatIsMissing() {
        SmallBook open = parted().row(
                        "isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "RM", "Net", "18.00")
                .but("isolated", "Assay", "100");
        // a thousand million per cent of 100 mmol
        assertEquals(-1e9, Checked.of(open).get("closure on S").low(), 1);
    }

    @Test
    void aLossOfFourPerCentIsUsual() {
        SmallBook assayed = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "10", "Unit", "mg/mL")
                .row("assays", "Sample", "A1", "Substance", "S", "Method", "HPLC", "Result", "1", "Unit", "mg/mL")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "18.00")
                .but("isolated", "Assay", "100");
        Check closure = Checked.of(assayed).get("closure on S");
        // 18.00 g in the lot and 0.5 g in A1 are 92.5 mmol, and 0.05 g of S half a mmol
        assertEquals(93 - 100, closure.residual(), EPSILON);
        assertTrue(closure.low() <= -4 && closure.low() > -50, "low " + closure.low());
    }

    @Test
    void aLayersMassIsItsVolumeTimesTheDensityOfItsPhase() {
        Checked checked = Checked.of(parted());
        Check organic = checked.get("density of layer O1");
        LayerIdentity.Expected expected =
                checked.tally().identity("O1").orElseThrow().expectedAsRecorded();
        // 8 % about what is expected: half the window, in g, of 100 mL
        double low = 0.92 * expected.lowGramsPerMillilitre();
        double high = 1.08 * expected.highGramsPerMillilitre();
        double middle = (low + high) / 2;
        assertWindow(85 - 100 * middle, 100 * (low - middle), 100 * (high - middle), organic);
        double uMass = checked.tally()
                .layer("O1")
                .orElseThrow()
                .massGrams()
                .orElseThrow()
                .standardUncertainty();
        double uVolume = checked.tally()
                .layer("O1")
                .orElseThrow()
                .volumeMillilitres()
                .orElseThrow()
                .standardUncertainty();
        assertEquals(Math.hypot(uMass, middle * uVolume), organic.standardUncertainty(), EPSILON);
        assertEquals(100 * middle, organic.scale(), EPSILON);
        assertFalse(Checked.of(parted().but("layers", "Volume", "")).checks().containsKey("density of layer A1"));
    }

    @Test
    void volumesOutOfAContactAreThoseThatWentIn() {
        Checked checked = Checked.of(parted());
        double in = checked.tally().evidence().contactMixtures().get(0).inMillilitres();
        Check volumes = checked.get("volumes of step 1");
        // 12 % less by mixing, 5 % more
        assertWindow(147 - in, -0.12 * in, 0.05 * in, volumes);
        assertEquals(1 + 0.01 * in, volumes.standardUncertainty(), EPSILON);
        assertFalse(Checked.of(parted().but("layers", "Volume", "")).checks().containsKey("volumes of step 1"));
    }

    @Test
    void thePhaseOfAContactHasTheMassOfWhatWentIn() {
        Checked checked = Checked.of(parted());
        double grams = checked.tally().evidence().contactMixtures().get(0).aqueousGrams();
        Check phase = checked.get("mass of layer A1 against what went in");
        // 10 g of S may be in either phase
        assertWindow(48 - grams, -0.2 * grams, 0.2 * grams + 10, phase);
        assertEquals(1 + 0.1 * grams, phase.standardUncertainty(), EPSILON);
        assertEquals(grams, phase.scale(), EPSILON);
        double organic = checked.tally().evidence().contactMixtures().get(0).organicGrams();
        assertEquals(
                85 - organic,
                checked.get("mass of layer O1 against what went in").residual(),
                EPSILON);
    }

    /** 100 mmol phenylmagnesium bromide, 181.31 g/mol, are 18.1 g of the 98 g of its solution: so much more may be in either phase. */
    @Test
    void solventOfAReagentIsInNoPhaseAsASolute() {
        Checked checked = Checked.of(parted().row(
                        "charges",
                        "Material",
                        "phenylmagnesium bromide in THF",
                        "Role",
                        "reagent",
                        "Formula",
                        "C6H5BrMg")
                .but("charges", "Molarity", "1")
                .but("charges", "Density", "0.98")
                .but("charges", "Actual amount", "100")
                .but("charges", "Actual unit", "mL"));
        Check phase = checked.get("mass of layer A1 against what went in");
        assertEquals(10 + 18.13, phase.high() - 0.2 * phase.scale(), 0.1);
    }

    @Test
    void twoLayersOfOnePhaseOrNoMassTellNothingOfIt() {
        assertFalse(Checked.of(parted().but("layers", "Net", ""))
                .checks()
                .containsKey("mass of layer A1 against what went in"));
        SmallBook two = parted().but("workup", "Gives aqueous", "A1+A2");
        assertFalse(Checked.of(two).checks().containsKey("mass of layer A1 against what went in"));
    }

    private static SmallBook poured(String... layersAndAmounts) {
        SmallBook book = parted().row("containers", "Container", "W-1", "Waste stream", "solvents");
        for (int i = 0; i < layersAndAmounts.length; i += 2) {
            book.row("transfers", "Transfer", "T" + i / 2, "Layer", layersAndAmounts[i], "Container", "W-1")
                    .but("transfers", "Amount", layersAndAmounts[i + 1])
                    .but("transfers", "Status", "done");
        }
        return book;
    }

    @Test
    void aTransferIsAllOfItsLayerOrAPartOfIt() {
        // 2 % of 85 g may be told otherwise; 60 g may be a part
        Check part = Checked.of(poured("O1", "60.00")).get("mass of layer O1 against transfer T0");
        assertWindow(25, -1.7, 1e9, part);
        assertEquals(1.7, part.standardUncertainty(), EPSILON);
        assertEquals(85, part.scale(), EPSILON);
        // 8.50 is 85.0 with its point moved
        Check slip = Checked.of(poured("O1", "8.50")).get("mass of layer O1 against transfer T0");
        assertWindow(76.5, -1.7, 1.7, slip);
    }

    @Test
    void anAmountOfTheWholeLayerIsNoPartOfIt() {
        // to 2 % of 85 g
        assertEquals(
                1.7,
                Checked.of(poured("O1", "83.40"))
                        .get("mass of layer O1 against transfer T0")
                        .high(),
                EPSILON);
        assertEquals(
                1e9,
                Checked.of(poured("O1", "83.20"))
                        .get("mass of layer O1 against transfer T0")
                        .high(),
                0);
        assertEquals(
                1.7,
                Checked.of(poured("O1", "45.00", "O1", "40.10"))
                        .get("mass of layer O1 against transfer T0+T1")
                        .high(),
                EPSILON);
    }

    @Test
    void transfersOfOneLayerAddUp() {
        Check sum = Checked.of(poured("O1", "60.00", "O1", "8.50")).get("mass of layer O1 against transfer T0+T1");
        assertWindow(16.5, -1.7, 1e9, sum);
        Map<String, Check> checks =
                Checked.of(poured("O1", "60.00", "O1", "8.50")).checks();
        assertEquals(
                1, checks.keySet().stream().filter(n -> n.contains("transfer")).count());
    }

    @Test
    void aTransferOfSeveralLayersIsHeldAgainstTheirSum() {
        Check sum = Checked.of(poured("O1+A1", "140.00")).get("mass of layer O1+A1 against transfer T0");
        assertEquals(-7, sum.residual(), EPSILON);
        // half a gram at least: of 48 g 0.96, of a small layer more than its 2 %
        Check small = Checked.of(poured("A1", "4.00").but("layers", "Net", "3.00"))
                .get("mass of layer A1 against transfer T0");
        assertEquals(-0.5, small.low(), EPSILON);
    }

    @ParameterizedTest
    @CsvSource({"O1, ''", "O1, 0", "X9, 60.00"})
    void aTransferWithoutAnAmountOrOfAnUnknownLayerTellsNothing(String layer, String amount) {
        assertEquals(
                0,
                Checked.of(poured(layer, amount)).checks().keySet().stream()
                        .filter(n -> n.contains("against transfer"))
                        .count());
        assertEquals(
                0,
                Checked.of(poured("A1", "48.00").but("layers", "Net", "")).checks().keySet().stream()
                        .filter(n -> n.contains("against transfer"))
                        .count());
    }

    @Test
    void moreTransfersThanAnybodyMakesAreNotTriedAgainstEachOther() {
        String[] sixty = new String[120];
        for (int i = 0; i < 120; i += 2) {
            sixty[i] = "O1";
            sixty[i + 1] = "1.00";
        }
        Book book = poured(sixty).book();
        EntryChecks entries = new EntryChecks(book, SmallBook.substances(), new TareRegister(List.of()));
        assertEquals(
                60,
                new CheckAccount(CheckAccount.transfers(book), SmallBook.substances(), entries)
                        .transfersOf(book.runs().get(0))
                        .size());
        SmallBook more = poured(sixty)
                .row("transfers", "Transfer", "T99", "Layer", "O1", "Container", "W-1")
                .but("transfers", "Amount", "1.00");
        Book tooMany = more.book();
        assertEquals(
                0,
                new CheckAccount(CheckAccount.transfers(tooMany), SmallBook.substances(), entries)
                        .transfersOf(tooMany.runs().get(0))
                        .size());
    }

    @Test
    void ofTwoChecksOfOneNameTheFirstStandsAndNoneWithoutANumber() {
        Check first = new Check("a", 1, 0, 0, 1);
        Map<String, Check> byName = CheckAccount.byName(
                List.of(first, new Check("a", 2, 0, 0, 1), new Check("b", Double.POSITIVE_INFINITY, 0, 0, 1)));
        assertEquals(Map.of("a", first), byName);
    }
}
