package workuptally.judgement.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.reference.Reference;

/** Labels of water with a solvent that mixes with it follow the flash point of the mixture. */
class MixtureStatementsTest {
    private static final Reference REFERENCE = Reference.load();
    private static final String HIGHLY = "Highly flammable liquid and vapour.";
    private static final String FLAMMABLE = "Flammable liquid and vapour.";

    private static HazardNote note(String key, String... statements) {
        return new HazardNote(
                key, List.of(statements), "", "", true, REFERENCE.flashPoints().findAll(key));
    }

    private static final List<HazardNote> NOTES = List.of(
            note("ethanol", "H225 " + HIGHLY, "H319 Causes serious eye irritation."),
            note("acetone", "H225 " + HIGHLY),
            note("ethyl acetate", "H225 " + HIGHLY));

    private static List<String> of(Object... parts) {
        Map<String, Double> grams = new LinkedHashMap<>();
        for (int i = 0; i < parts.length; i += 2) {
            grams.put((String) parts[i], ((Number) parts[i + 1]).doubleValue());
        }
        return MixtureStatements.of(grams, NOTES, List.of());
    }

    /**
     * Closed cup, ethanol in water. Source: CRC Handbook of Chemistry and Physics and data sheets of spirits, from memory: 5 % by mass about
     * 62 °C, 10 % about 49 °C, 20 % about 36 °C, 30 % about 29 °C, 50 % about 24 °C, 70 % about 21 °C; sources differ in whether they mean
     * mass or volume, which is worth 6 °C at most.
     */
    @ParameterizedTest
    @CsvSource({"5, 62", "10, 49", "20, 36", "30, 29", "50, 24", "70, 21"})
    void flashPointsOfEthanolAgreeWithASecondSource(double massPercent, double celsius) {
        double ours = FlashPointInWater.celsius(REFERENCE.flashPoints().findAll("ethanol"), massPercent);
        assertEquals(celsius, ours, 6);
        assertTrue(ours <= celsius + 0.5, "never above it: " + ours);
    }

    @Test
    void aSixthOfEthanolInWaterIsFlammableButNotHighly() {
        List<String> words = of("water", 84, "ethanol", 16);
        assertEquals(List.of("Causes serious eye irritation.", FLAMMABLE, "Contains ethanol."), words);
    }

    @Test
    void statementFollowsTheFlashPointLessItsMargin() {
        assertTrue(of("water", 50, "ethanol", 50).contains(HIGHLY));
        assertFalse(of("water", 80, "ethanol", 20).contains(HIGHLY));
        assertTrue(of("water", 95, "ethanol", 5).contains(FLAMMABLE));
        assertEquals(List.of("May give off flammable vapour (ethanol)."), of("water", 98, "ethanol", 2));
    }

    /** Acetone leaves water so readily that a few per cent flash below room temperature. */
    @Test
    void aFewPerCentOfAcetoneInWaterAreHighlyFlammable() {
        assertTrue(of("water", 94, "acetone", 6).contains(HIGHLY));
    }

    @Test
    void anotherFlammableLiquidLeavesTheCautiousRule() {
        assertTrue(of("water", 80, "ethanol", 16, "ethyl acetate", 4).contains(HIGHLY));
        assertTrue(of("water", 91, "ethanol", 5, "ethyl acetate", 4).contains(FLAMMABLE));
    }

    /** Common practice: two liquids below a tenth each count together, as one of them would. */
    @Test
    void flammableLiquidsBelowATenthCountTogether() {
        assertTrue(of("water", 88, "ethanol", 6, "ethyl acetate", 6).contains(HIGHLY));
        assertFalse(of("water", 91, "ethanol", 5, "ethyl acetate", 4).contains(HIGHLY));
    }

    @Test
    void severalSolventsCountTogetherAsTheWorst() {
        assertTrue(of("water", 94, "ethanol", 4, "acetone", 2).contains(HIGHLY));
    }

    @Test
    void saltsDoNotThinTheSolvent() {
        assertTrue(of("water", 50, "sodium chloride", 20, "ethanol", 30).contains(HIGHLY));
    }

    @Test
    void withoutMuchWaterOrKnownSharesEachSpeaksForItself() {
        assertTrue(of("water", 1, "ethanol", 99).contains(HIGHLY));
        assertFalse(of("dichloromethane", 97, "ethanol", 2, "water", 1).contains(HIGHLY));
        assertTrue(MixtureStatements.ofUnknownShares(List.of("water", "ethanol"), NOTES, List.of())
                .contains(HIGHLY));
    }
}
