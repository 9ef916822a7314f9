package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.tally.amounts.AcidGas;

class ReextractionTest {
    @Test
    void largestGainOfOnePortionIsTheBestOfALayer() {
        WorkupEvidence evidence = evidence(
                reextraction("A1", 1, 0.4, 0, List.of()),
                reextraction("A1", 1, 0.9, 30, List.of()),
                reextraction("A1", 2, 1.3, 0, List.of()),
                reextraction("A2", 1, 2.0, 0, List.of()));
        assertEquals(0.9, evidence.bestGain("A1").orElseThrow().gain().grams(), 0);
        assertEquals(2.0, evidence.bestGain("A2").orElseThrow().gain().grams(), 0);
        assertEquals(Optional.empty(), evidence.bestGain("A3"));
        assertEquals(Optional.empty(), WorkupEvidence.NONE.bestGain("A1"));
    }

    @Test
    void acidAndBaseAddTheVolumeOfTheirStrength() {
        // 30 mmol of 6 mol/L: 5 mL either way
        assertEquals(5, reextraction("A1", 1, 1, 30, List.of()).phSetting().addedMillilitres(), 1e-12);
        assertEquals(5, reextraction("A1", 1, 1, -30, List.of()).phSetting().addedMillilitres(), 1e-12);
    }

    @Test
    void everyMaterialThatAcidMustNotMeetIsNamedWithItsGas() {
        List<AcidGas> gases = List.of(
                new AcidGas("sodium azide", "hydrazoic acid (HN3)"), new AcidGas("NaCN", "hydrogen cyanide (HCN)"));
        assertEquals(
                "sodium azide: hydrazoic acid (HN3); NaCN: hydrogen cyanide (HCN)",
                reextraction("A1", 1, 1, 30, gases).phSetting().acidCaution());
        assertEquals("", reextraction("A1", 1, 1, 30, List.of()).phSetting().acidCaution());
    }

    private static WorkupEvidence evidence(Reextraction... gains) {
        return new WorkupEvidence(List.of(), List.of(), List.of(), List.of(gains), List.of(), List.of());
    }

    private static Reextraction reextraction(
            String layer, int portions, double gainGrams, double acidMillimoles, List<AcidGas> gases) {
        return new Reextraction(
                layer,
                "P",
                new Reextraction.Extractant("toluene", portions, 50, 45),
                new Reextraction.Partition(4, OptionalDouble.empty(), "P = 4 in toluene"),
                new Reextraction.PhSetting(OptionalDouble.empty(), acidMillimoles, 6, 0, gases),
                new Reextraction.Gain(gainGrams, 5 * gainGrams));
    }
}
