package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;
import workuptally.tally.balance.Closure;

/** A solid parted from a liquid leaves that liquid; invented steps. */
class LiquorsWithoutLabelTest {
    private static SmallBook step(SmallBook book, String number, String operation, String from, String gives) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Gives other", gives);
    }

    private static SmallBook precipitated() {
        SmallBook book = step(SmallBook.reaction(), "1", "precipitate", "RM", "S1")
                .but("workup", "Material", "diethyl ether")
                .but("workup", "Volume", "150");
        return lot(book, "S1");
    }

    private static SmallBook lot(SmallBook book, String from) {
        return book.row("isolated", "Lot", "P1", "Product", "P", "Stage", "crude", "From", from, "Net", "19.00")
                .but("isolated", "Assay", "99")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static List<String> asked(SmallBook book) {
        return book.tally().evidence().gaps().unlabelledPhases().stream()
                .map(UnlabelledPhase::name)
                .toList();
    }

    @Test
    void aFilterThatGivesTheSolidAloneLeavesAFiltrate() {
        SmallBook book = step(precipitated(), "2", "filter", "S1", "P1");
        assertEquals(List.of("filtrate of step 2"), asked(book));
        assertEquals(
                List.of("filtrate of step 2"), book.tally().evidence().gaps().missingLayers());
        assertTrue(book.review().findings().stream()
                .anyMatch(f -> f.code() == FindingCode.LAYER_MISSING
                        && f.place().inWords().endsWith(", Gives other")));
        Closure closure = book.tally().closures().get(0);
        assertEquals(Closure.Verdict.CANNOT_DECIDE, closure.verdict());
        assertEquals("filtrate of step 2", closure.candidates().get(0).place());
    }

    @Test
    void theLiquorOfWhatFellOutByOtherSteps() {
        SmallBook dissolved = SmallBook.reaction()
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "80", "Actual unit", "mL");
        for (String operation : List.of("acidify", "basify", "quench", "crystallise", "dilute")) {
            SmallBook book = lot(step(SmallBook.reaction(), "1", operation, "RM", "P1"), "RM")
                    .but("workup", "Material", "water")
                    .but("workup", "Volume", "80");
            assertEquals(List.of("filtrate of step 1"), asked(book), operation);
        }
        assertEquals(List.of("filtrate of step 1"), asked(lot(step(dissolved, "1", "filter", "RM", "P1"), "RM")));
    }

    /** Filtered, dried as a solid, weighed: the solid has a row of its own. */
    @Test
    void aSolidThatIsDriedBeforeItIsALot() {
        SmallBook book = step(precipitated(), "2", "filter", "S1", "K1").first("isolated", "From", "K1");
        assertEquals(List.of("filtrate of step 2"), asked(step(book, "3", "dry solid", "K1", "P1")));
    }

    @ParameterizedTest
    @CsvSource({"P1+ML1, ''", "P1, F1"})
    void aFiltrateWithALabelIsNotAskedForAgain(String other, String organic) {
        assertEquals(
                List.of(),
                asked(step(precipitated(), "2", "filter", "S1", other).but("workup", "Gives organic", organic)));
    }

    @Test
    void aFiltrateThatGoesOnUnderTheLabelOfItsSource() {
        assertEquals(
                List.of(),
                asked(step(step(precipitated(), "2", "filter", "S1", "P1"), "3", "concentrate", "S1", "D1")));
    }

    /** No step gives it, which is asked about for itself. */
    @Test
    void aLiquidInLayersThatNoStepGivesIsTakenForTheFiltrate() {
        SmallBook book = step(precipitated(), "2", "filter", "S1", "P1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Net", "105", "Status", "kept");
        assertEquals(List.of(), asked(book));
        assertTrue(book.review().findings().stream().anyMatch(f -> f.code() == FindingCode.LAYER_NEVER_GIVEN));
    }

    /** What passes a drying agent or a filter aid is the product's own stream. */
    @ParameterizedTest
    @ValueSource(strings = {"sodium sulfate", "Celite", "silica gel"})
    void whatIsFilteredOffFromAnAidIsNoLiquor(String aid) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "80", "Actual unit", "mL");
        assertEquals(List.of(), asked(lot(step(book, "1", "filter", "RM", "P1").but("workup", "Material", aid), "RM")));
    }

    @Test
    void aSolidInNoLiquidLeavesNone() {
        assertEquals(List.of(), asked(lot(step(SmallBook.reaction(), "1", "filter", "RM", "P1"), "RM")));
    }

    /** Its balance is its own, and its solvent is known by what was taken: named among the waste, not asked for by the workup. */
    @Test
    void thePurificationOfALotIsNoWorkup() {
        SmallBook book = lot(step(SmallBook.reaction(), "1", "concentrate", "RM", "P1"), "RM");
        book = step(book, "2", "crystallise", "P1", "M2")
                .but("workup", "Material", "ethanol")
                .but("workup", "Volume", "50");
        book = step(book, "3", "filter", "M2", "P2")
                .row("isolated", "Lot", "P2", "Product", "P", "Stage", "purified", "From", "P1", "Net", "17.00");
        assertEquals(List.of(), asked(book));
        assertTrue(book.tally().waste().stream().anyMatch(l -> l.layer().equals("filtrate of step 3")));
    }

    @Test
    void aCropWithoutALiquorIsAskedForOnce() {
        SmallBook book = step(SmallBook.reaction(), "1", "crystallise", "RM", "P1")
                .but("workup", "Material", "ethanol")
                .but("workup", "Volume", "80");
        List<FindingCode> codes = lot(book, "RM").but("isolated", "Stage", "crop").review().findings().stream()
                .map(f -> f.code())
                .toList();
        assertTrue(codes.contains(FindingCode.LAYER_MISSING));
        assertTrue(!codes.contains(FindingCode.LIQUOR_NOT_RECORDED));
    }
}
