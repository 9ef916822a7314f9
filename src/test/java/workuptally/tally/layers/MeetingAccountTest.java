package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Severity;
import workuptally.tally.waste.WasteLine;

/** What follows which layer, and what that means for it. Expected by the practice of the trade. */
class MeetingAccountTest {
    /** The first material of a class that a portion may still hold. */
    private static Optional<Present> holding(Meetings meetings, String label, String materialClass) {
        return meetings.in(label).stream().filter(p -> p.is(materialClass)).findFirst();
    }

    private static SmallBook charged(String material) {
        return SmallBook.reaction()
                .first("runs", "Status", "in workup")
                .row("charges", "Material", material, "Role", "reagent", "Actual amount", "20", "Actual unit", "mmol");
    }

    private static SmallBook step(
            SmallBook book,
            String number,
            String operation,
            String from,
            String material,
            String organic,
            String aqueous) {
        return book.row(
                "workup",
                "Step",
                number,
                "Operation",
                operation,
                "From",
                from,
                "Material",
                material,
                "Volume (mL)",
                "50",
                "Quench test",
                "",
                "pH after",
                "",
                "Gives organic",
                organic,
                "Gives aqueous",
                aqueous);
    }

    private static SmallBook layer(SmallBook book, String label, String phase, String pH) {
        return book.row("layers", "Layer", label, "Phase", phase, "Net (g)", "50.0", "pH", pH, "Status", "kept");
    }

    private static boolean isHeld(RunReview review, String label) {
        return review.decision(label)
                .filter(d -> d.outcome() == LayerDecision.Outcome.KEEP)
                .filter(d -> d.conditions().stream()
                        .anyMatch(c -> c.id().equals("R7") && c.state() == LayerDecision.State.NOT_MET))
                .isPresent();
    }

    private static String stream(RunReview review, String label) {
        return review.tally().waste().stream()
                .filter(w -> w.layer().equals(label))
                .map(WasteLine::stream)
                .findFirst()
                .orElse("none");
    }

    @Test
    void azideWithDichloromethaneAndAcidHoldsEveryLayerAndIsNoNeutralWater() {
        SmallBook book = charged("sodium azide");
        step(book, "1", "extract", "RM", "dichloromethane", "O1", "A1");
        step(book, "2", "acidify", "A1", "2 M HCl", "", "A2");
        layer(book, "O1", "organic", "");
        layer(book, "A2", "aqueous", "7");
        RunReview review = book.reviewOfRun();
        assertTrue(review.has(Severity.HOLD));
        assertTrue(isHeld(review, "O1"));
        assertTrue(isHeld(review, "A2"));
        assertEquals("cyanide-azide", stream(review, "A2"));
        assertEquals("cyanide-azide", stream(review, "O1"));
    }

    @Test
    void cyanideWashedWithAcidHoldsItsLayer() {
        SmallBook book = charged("KCN");
        step(book, "1", "wash", "RM", "1 M HCl", "O1", "A1");
        layer(book, "A1", "aqueous", "7");
        RunReview review = book.reviewOfRun();
        assertTrue(isHeld(review, "A1"));
        assertEquals("cyanide-azide", stream(review, "A1"));
    }

    @Test
    void twoWashesWithWaterTakeTheTraceOfASaltFromTheOrganicLayer() {
        SmallBook book = charged("sodium azide");
        step(book, "1", "extract", "RM", "ethyl acetate", "O1", "A1");
        step(book, "2", "wash", "O1", "water", "O2", "A2");
        step(book, "3", "wash", "O2", "1 M HCl", "O3", "A3");
        Meetings meetings = book.tally().evidence().meetings();
        assertEquals(
                Present.Share.MAIN,
                holding(meetings, "A1", "azide").orElseThrow().share());
        assertEquals(
                Present.Share.TRACE,
                holding(meetings, "O1", "azide").orElseThrow().share());
        assertTrue(holding(meetings, "O2", "azide").isEmpty());
        assertTrue(meetings.list().stream().noneMatch(Meeting::isForbidden));
    }

    @Test
    void waterEndsAGrignardAndTheNextAcidIsOrdinary() {
        SmallBook book = charged("PhMgBr");
        step(book, "1", "quench", "RM", "sat. NH4Cl", "O1", "A1");
        step(book, "2", "wash", "O1", "1 M HCl", "O2", "A2");
        Meetings meetings = book.tally().evidence().meetings();
        assertTrue(holding(meetings, "O1", "grignard").isEmpty());
        assertTrue(meetings.list().stream()
                .noneMatch(m -> m.place().equals("2") && m.with().contains("PhMgBr")));
    }

    @Test
    void onlyANegativeTestEndsAnOxidant() {
        SmallBook untested = charged("mCPBA");
        step(untested, "1", "quench", "RM", "10 % Na2S2O3", "O1", "A1");
        assertTrue(
                holding(untested.tally().evidence().meetings(), "O1", "peracid").isPresent());
        SmallBook tested = charged("mCPBA");
        step(tested, "1", "quench", "RM", "10 % Na2S2O3", "O1", "A1").but("workup", "Quench test", "negative");
        assertTrue(
                holding(tested.tally().evidence().meetings(), "O1", "peracid").isEmpty());
    }

    @Test
    void aTestDoesNotEndWhatPersistsUnlessSomethingDestroyedIt() {
        SmallBook water = charged("NaN3");
        step(water, "1", "quench", "RM", "water", "", "A1").but("workup", "Quench test", "negative");
        assertTrue(holding(water.tally().evidence().meetings(), "A1", "azide").isPresent());
        SmallBook nitrite = charged("NaN3");
        step(nitrite, "1", "quench", "RM", "NaNO2", "", "A1").but("workup", "Quench test", "negative");
        assertTrue(holding(nitrite.tally().evidence().meetings(), "A1", "azide").isEmpty());
    }

    @Test
    void aPlanToDestroyAzideWithoutATestIsStopped() {
        SmallBook book = charged("NaN3").first("runs", "Status", "planned");
        step(book, "1", "quench", "RM", "NaNO2", "", "A1");
        assertTrue(hasStop(book.reviewOfRun()));
        book.but("workup", "Quench test", "not done");
        assertFalse(hasStop(book.reviewOfRun()));
    }

    private static boolean hasStop(RunReview review) {
        return review.findings().stream()
                .anyMatch(f -> f.code().word().equals("controlled-meeting") && f.severity() == Severity.STOP);
    }

    @Test
    void gasIsTheAmountChargedTimesItsRow() {
        // LiAlH4 gives 4 mol of hydrogen: 20 mmol give 80 mmol, 1.92 L at 20 °C and 101.325 kPa (24.06 L/mol).
        SmallBook book = charged("LiAlH4");
        step(book, "1", "quench", "RM", "water", "", "A1");
        List<Meeting> meetings = book.tally().evidence().meetings().list();
        double litres = meetings.stream()
                .filter(m -> m.gas().contains("H2"))
                .mapToDouble(m -> m.gasLitres().orElse(0))
                .max()
                .orElse(0);
        assertEquals(1.925, litres, 0.005);
    }

    @Test
    void diluteSulfuricAcidIsNotTheConcentratedOne() {
        SmallBook dilute = charged("acetone");
        step(dilute, "1", "wash", "RM", "1.7 % sulfuric acid", "O1", "A1");
        assertTrue(dilute.tally().evidence().meetings().list().stream()
                .noneMatch(m -> m.pair().key().contains("conc-sulfuric")));
        SmallBook strong = charged("acetone");
        step(strong, "1", "wash", "RM", "conc. H2SO4", "O1", "A1");
        assertTrue(strong.tally().evidence().meetings().list().stream()
                .anyMatch(m -> m.pair().key().contains("conc-sulfuric")));
    }
}
