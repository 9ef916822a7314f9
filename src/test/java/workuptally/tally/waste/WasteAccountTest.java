package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.totals.PeriodTotals;

/** The stream that a layer's make-up suggests; the rules are common practice, the determination is made by trained people. */
class WasteAccountTest {
    @ParameterizedTest
    @CsvSource({
        "1.8, aqueous-acidic",
        "4.9, aqueous-acidic",
        "5, aqueous-neutral",
        "7, aqueous-neutral",
        "9, aqueous-neutral",
        "9.1, aqueous-basic"
    })
    void aqueousLayerGoesByItsPH(String pH, String stream) {
        assertEquals(stream, layer("aqueous", "water 100 %", pH).stream());
    }

    @ParameterizedTest
    @CsvSource({"1.8, 'aqueous, pH 1.8'", "pH 1, 'aqueous, pH 1'", "neutral, 'aqueous, pH 7'"})
    void reasonNamesThePHOnce(String pH, String why) {
        assertEquals(why, layer("aqueous", "water 100 %", pH).why());
    }

    @ParameterizedTest
    @CsvSource({
        "sodium azide, NaN3, 7, cyanide-azide",
        "Natriumazid, '', 3, cyanide-azide",
        "potassium cyanide, KCN, 7, cyanide-azide",
        "mercury(II) chloride, HgCl2, 7, mercury",
        "sodium sulfide, Na2S, 7, special",
        "copper(I) iodide, CuI, 7, aqueous-heavy-metal",
        "Pd(OAc)2, '', 7, aqueous-heavy-metal"
    })
    void waterOfARunWithWhatPersistsIsNeverNeutral(String material, String formula, String pH, String stream) {
        // Extracted with dichloromethane; the aqueous layer that came down from the reaction mixture is kept.
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Formula", formula, "Actual amount", "2")
                .but("charges", "Actual unit", "g")
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "30", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "dichloromethane")
                .but("workup", "Volume", "20")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "pH", pH, "Net", "30", "Status", "kept");
        WasteLine line = book.tally().waste().stream()
                .filter(l -> l.layer().equals("A1"))
                .findFirst()
                .orElseThrow();
        assertEquals(stream, line.stream(), line.why());
    }

    @Test
    void layerReadByVolumeAloneIsNotMissingFromTheAccount() {
        // 27 mL dichloromethane × 1.3266 g/mL = 35.8 g.
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "DCM", "Role", "solvent", "Actual amount", "30", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "D1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Volume", "27", "Status", "kept");
        WasteLine line = book.tally().waste().get(0);
        assertEquals("halogenated-organic", line.stream());
        assertEquals(35.8, line.massGrams().orElseThrow(), 0.1);
        assertTrue(line.why().contains("estimate"));
    }

    @Test
    void layerWithNeitherMassNorVolumeHasALineWithoutAmount() {
        SmallBook book = SmallBook.reaction().row("layers", "Layer", "D1", "Phase", "distillate", "Status", "kept");
        WasteLine line = book.tally().waste().get(0);
        assertTrue(line.massGrams().isEmpty());
        assertTrue(line.kept());
        assertEquals("special", line.stream());
        assertEquals("make-up not known: ask first; amount not recorded: weigh it", line.why());
    }

    @Test
    void washWithoutARowHasALineByItsPHAndNoAmountOnceTheRunIsNotOnlyPlanned() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        List<String> layers =
                book.tally().waste().stream().map(WasteLine::layer).toList();
        assertEquals(List.of("O1", "A1"), layers);
        assertTrue(book.tally().waste().stream().allMatch(l -> l.massGrams().isEmpty() && l.kept()));
        assertTrue(book.first("runs", "Status", "planned").tally().waste().isEmpty());
    }

    @Test
    void streamTotalSaysHowManyLayersHaveNoAmount() {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "pH", "7", "Net", "25", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "pH", "7", "Status", "kept")
                .row("layers", "Layer", "A3", "Phase", "aqueous", "pH", "7", "Net", "9", "Status", "to reuse");
        PeriodTotals.StreamTotal total = book.review().period().waste().get(0);
        assertEquals(2, total.layers());
        assertEquals(25, total.massGrams(), 1e-9);
        assertEquals(1, total.withoutMass());
    }

    @Test
    void layerWithoutAStatusCountsAsKept() {
        SmallBook book = SmallBook.reaction().row("layers", "Layer", "A1", "Phase", "aqueous", "pH", "7", "Net", "25");
        assertTrue(book.tally().waste().get(0).kept());
    }

    @Test
    void aqueousLayerWithoutPHIsAskedAboutFirst() {
        WasteLine line = layer("aqueous", "water 100 %", "");
        assertEquals("special", line.stream());
        assertEquals("pH not recorded: ask first", line.why());
    }

    @Test
    void neutralWaterWithATenthOfSolventIsAqueousWithOrganics() {
        assertEquals("aqueous-organic", layer("aqueous", "water 88 %; ethanol 12 %", "7").stream());
    }

    @Test
    void organicLayerWithTwoPercentOfHalogenatedSolventOrLessIsNonHalogenated() {
        assertEquals(
                "non-halogenated-organic", layer("organic", "ethyl acetate 98 %; dichloromethane 2 %", "").stream());
    }

    @Test
    void organicLayerWithMoreIsHalogenated() {
        assertEquals("halogenated-organic", layer("organic", "ethyl acetate 97 %; dichloromethane 3 %", "").stream());
    }

    @Test
    void cakeOfADryingStepIsADryingAgent() {
        WasteLine line = cake(filtered("MgSO4", ""));
        assertEquals("drying-agents-silica", line.stream());
        assertEquals("drying cake, step 1", line.why());
    }

    @Test
    void solidOnAFilterAidIsASorbent() {
        assertEquals("drying-agents-silica", cake(filtered("", "Celite")).stream());
    }

    @Test
    void solidThatNoDryingStepGaveIsNoDryingAgent() {
        WasteLine line = cake(filtered("", ""));
        assertEquals("solids-other", line.stream());
        assertEquals("solid, composition not recorded, organic or inorganic", line.why());
        assertEquals("solids-other", layer("solid", "", "").stream());
        assertEquals("solids-other", layer("solid", "triphenylphosphine oxide 95 %", "").stream());
    }

    /** The whole of a metal charged may be in an organic liquid; some milligrams of a catalyst do not make it one with metals. */
    @ParameterizedTest
    @CsvSource({
        "organic, ethyl acetate 100 %, tributyltin hydride, C12H28Sn, 0.30, organic-heavy-metal",
        "organic, dichloromethane 100 %, tributyltin hydride, C12H28Sn, 0.30, organic-heavy-metal",
        "organic, ethyl acetate 100 %, lead(II) acetate, C4H6O4Pb, 0.30, organic-heavy-metal",
        "mother liquor, ethanol 52 %; water 48 %, nickel(II) chloride hexahydrate, NiCl2·6H2O, 12, organic-heavy-metal",
        "mother liquor, water 90 %; ethanol 10 %, nickel(II) chloride hexahydrate, NiCl2·6H2O, 12, aqueous-heavy-metal",
        "organic, ethyl acetate 100 %, palladium(II) acetate, C4H6O4Pd, 0.005, non-halogenated-organic",
        "organic, ethyl acetate 100 %, magnesium sulfate, MgSO4, 4, non-halogenated-organic",
        "distillate, ethyl acetate 100 %, tributyltin hydride, C12H28Sn, 0.30, non-halogenated-organic"
    })
    void organicLiquidGoesByTheMetalCharged(
            String phase, String composition, String material, String formula, String grams, String stream) {
        SmallBook book = book(phase, composition, "7")
                .row("charges", "Material", material, "Role", "reagent", "Formula", formula, "Actual amount", grams)
                .but("charges", "Actual unit", "g");
        assertEquals(stream, book.tally().waste().get(0).stream());
    }

    @Test
    void filterCakeOfARunWithPalladiumIsACatalyst() {
        SmallBook book = filtered("", "Celite")
                .row("charges", "Material", "palladium on carbon", "Role", "catalyst", "Formula", "Pd");
        WasteLine line = cake(book);
        assertEquals("catalyst-noble", line.stream());
        assertTrue(line.why().contains("keep it wet"));
    }

    @Test
    void cakeWetWithHalogenatedSolventGoesByTheSolvent() {
        assertEquals("filter-cake-halogenated", layer("solid", "dichloromethane 30 %", "").stream());
    }

    /** An oxidant by its name, whatever metal it holds, until a test shows it gone (common practice). */
    @Test
    void waterOfARunWithAnUntestedOxidantGoesByTheOxidant() {
        SmallBook book = book("aqueous", "water 100 %", "1.0")
                .row("charges", "Material", "chromium trioxide", "Role", "reagent", "Formula", "CrO3");
        assertEquals("oxidiser", book.tally().waste().get(0).stream());
    }

    @Test
    void waterOfARunWithChromiumIsAHeavyMetalSolution() {
        SmallBook book = book("aqueous", "water 100 %", "1.0")
                .row("charges", "Material", "chromium(III) chloride", "Role", "reagent", "Formula", "CrCl3");
        WasteLine line = book.tally().waste().get(0);
        assertEquals("aqueous-heavy-metal", line.stream());
        assertEquals("run charged with chromium(III) chloride", line.why());
    }

    @Test
    void layerToBeReusedIsNotCountedAsKept() {
        assertTrue(layer("aqueous", "water 100 %", "7").kept());
        assertFalse(book("organic", "ethyl acetate 100 %", "")
                .but("layers", "Status", "to reuse")
                .tally()
                .waste()
                .get(0)
                .kept());
    }

    /** A solid K1, filtered off through a filter aid where one is named, of a solution that was dried where an agent is named. */
    private static SmallBook filtered(String agent, String aid) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", agent.isEmpty() ? "dilute" : "dry", "From", "RM")
                .but("workup", "Material", agent)
                .but("workup", "Gives organic", "O1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "O1", "Material", aid)
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives other", "K1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "5.00", "Status", "kept");
    }

    private static WasteLine cake(SmallBook book) {
        return book.tally().waste().stream()
                .filter(line -> line.layer().equals("K1"))
                .findFirst()
                .orElseThrow();
    }

    private static WasteLine layer(String phase, String composition, String pH) {
        return book(phase, composition, pH).tally().waste().get(0);
    }

    private static SmallBook book(String phase, String composition, String pH) {
        return SmallBook.reaction()
                .row("layers", "Layer", "L1", "Phase", phase, "Net", "100.00", "Status", "kept")
                .but("layers", "Composition", composition)
                .but("layers", "pH", pH);
    }
}
