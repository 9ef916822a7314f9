package workuptally.judgement.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.reference.Reference;
import workuptally.reference.hazards.HStatement;

/**
 * Mixtures at and beside the limits of Regulation (EC) 1272/2008, Annex I: each line names the table, and the figures are those of worked
 * cases of these tables (source {@code clp-annex-i-cases}), which give the same.
 */
class MixtureRulesTest {
    /** Parts as {@code 2 H410, 5 H411}. */
    private static Set<String> codes(String parts) {
        List<MixtureRules.Part> all = new ArrayList<>();
        for (String part : parts.split(",")) {
            String[] words = part.strip().split(" ");
            all.add(new MixtureRules.Part(
                    Double.parseDouble(words[0]),
                    new LinkedHashSet<>(Arrays.asList(words).subList(1, words.length))));
        }
        return MixtureRules.codes(all, 0);
    }

    @ParameterizedTest(name = "{0}: {1} gives {2}")
    @CsvSource({
        "3.2.3, '5 H314', 'H314 H318'",
        "3.2.3, '4.999 H314', 'H315 H318'",
        "3.2.3, '1 H314', 'H315 H319'",
        "3.2.3, '0.999 H314', ''",
        "3.2.3, '10 H315', H315",
        "3.2.3, '9.99 H315', ''",
        "3.2.3, '2 H314, 3 H314', 'H314 H318'",
        "3.3.3, '3 H318', H318",
        "3.3.3, '2.99 H318', H319",
        "3.3.3, '0.99 H318', ''",
        "3.3.3, '10 H319', H319",
        "3.3.3, '9.9 H319', ''",
        "4.1.1, '25 H400', H400",
        "4.1.1, '24.99 H400', ''",
        "4.1.2, '25 H410', H410",
        "4.1.2, '2 H410, 5 H411', H411",
        "4.1.2, '0.1 H410, 1 H411, 5 H412', H412",
        "4.1.2, '25 H413', H413",
        "3.4.5, '1 H317', H317",
        "3.4.5, '0.99 H317', ''",
        "3.5.2, '0.1 H340', H340",
        "3.6.2, '0.1 H350', H350",
        "3.6.2, '0.09 H350', ''",
        "3.6.2, '1 H351', H351",
        "3.7.2, '0.3 H360D', H360D",
        "3.7.2, '0.29 H360FD', ''",
        "3.7.2, '3 H361d', H361d",
        "3.8.3, '12 H336, 8 H336', H336",
        "3.8.3, '19.9 H336', ''",
        "3.8.3, '15 H335, 15 H336', ''",
        "3.9.4, '10 H372', H372",
        "3.9.4, '5 H372', H373",
        "3.9.4, '0.9 H372', ''",
        "3.9.4, '10 H373', H373",
    })
    void bearsWhatTheTablesSay(String table, String parts, String expected) {
        Set<String> wanted = expected.isEmpty() ? Set.of() : Set.of(expected.split(" "));
        assertEquals(wanted, codes(parts), table);
    }

    /**
     * 100 / estimate = sum of share / estimate of each part (3.1.3.6.1), estimates of table 3.1.2, limits of table 3.1.1. By hand: 34 % of a
     * part toxic if swallowed 100 / 0.34 = 294, at most 300; 33 % 303; 5.1 % 1961, at most 2000; 4.9 % 2041.
     */
    @ParameterizedTest
    @CsvSource({
        "'34 H301', H301",
        "'33 H301', H302",
        "'5.1 H301', H302",
        "'4.9 H301', ''",
        "'26 H302', H302",
        "'24 H302', ''",
        "'31 H311', H311",
        "'16 H311', H312",
        "'14 H311', ''",
        "'31 H331', H331",
        "'16 H331', H332",
        "'2 H301, 15 H302', H302",
        "'1.1 H300', H300",
        "'0.2 H300', H301",
        "'0.03 H300', H302",
        "'100 H301', H301",
        "'100 H331', H331",
    })
    void acuteToxicityFollowsTheEstimate(String parts, String expected) {
        assertEquals(expected.isEmpty() ? Set.of() : Set.of(expected), codes(parts));
    }

    /** More than a tenth unknown: the known rest is taken for the whole (3.1.3.6.2.3). 4 % of H301 beside 30 % unknown: 70 / 0.04 = 1750. */
    @Test
    void muchThatIsUnknownMakesTheEstimateGraver() {
        List<MixtureRules.Part> parts = List.of(new MixtureRules.Part(4, Set.of("H301")));
        assertEquals(Set.of(), MixtureRules.codes(parts, 10));
        assertEquals(Set.of("H302"), MixtureRules.codes(parts, 30));
    }

    /** Copper(II) sulfate by its row (H302, H315, H319, H400, H410): at 6.2 % ten times its share exceeds a quarter (4.1.2). */
    @Test
    void aDilutedHeavyMetalIsStillToxicToWaterLife() {
        assertEquals(Set.of("H411"), codes("6.2 H302 H315 H319 H400 H410"));
    }

    @Test
    void whatADilutionLeavesIsWordedAsInTheTableOfStatements() {
        Reference reference = Reference.load();
        MixtureWords.OF_MIXTURE.forEach((code, words) -> assertEquals(
                words,
                reference.hStatements().find(code).map(HStatement::phrase).orElse("?"),
                code));
        for (String parts : List.of("5 H370", "0.2 H300 H310 H330", "34 H300, 2 H410", "1 H314", "3 H318", "1 H410")) {
            assertTrue(
                    codes(parts).stream().allMatch(c -> MixtureWords.OF_MIXTURE.containsKey(c) || parts.contains(c)),
                    parts + codes(parts));
        }
    }
}
