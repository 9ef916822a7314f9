package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.book.words.IdentityWords.Meaning;
import workuptally.reference.Reference;
import workuptally.reference.bench.Threshold;

/** Entries under "Identity by" as benches write them (common practice; invented). */
class IdentityWordsTest {
    private static IdentityWords.Read read(String typed, String product) {
        return IdentityWords.read(typed, product, () -> Reference.load().value(Threshold.MELTING_POINT_FAR));
    }

    @Test
    void laboratorySetsHowFarAMeltingPointMayLieFromTheLiterature() {
        String eightBelow = "mp 113 °C (lit. 121)";
        assertEquals(
                Meaning.EVIDENCE, IdentityWords.read(eightBelow, "P", () -> 10).meaning());
        assertEquals(Meaning.OPEN, IdentityWords.read(eightBelow, "P", () -> 5).meaning());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1H NMR",
                "1H-NMR, no ester left",
                "NMR, free of boronic acid",
                "NMR: single diastereomer",
                "1H, 13C",
                "mixed mp undepressed",
                "500 MHz NMR (DMSO), solvents < 1 %",
                "1H NMR (wet, water peak)",
                "RT match",
                "¹H NMR",
                "NMR",
                "1H-NMR (CDCl3, 400 MHz)",
                "1H NMR; melting point",
                "melting point",
                "mp 121–122 °C (lit. 122 °C)",
                "Schmp. 210 °C (Zers.)",
                "1H, 13C NMR; HRMS",
                "1H/13C NMR, IR",
                "LC-MS m/z 210 [M+H]+",
                "ESI-MS: 210.1 (calc. 210.09)",
                "TLC vs authentic sample",
                "GC retention time",
                "HPLC, tR 4.2 min",
                "NMR OK",
                "NMR clean",
                "1H NMR as expected",
                "1H NMR matches lit. (Smith 2011)",
                "1H NMR, no starting material",
                "1H NMR (no SM left)",
                "1H NMR, 2 % starting material",
                "1H NMR, 5 % ethyl acetate",
                "1H NMR, traces of EtOAc",
                "1H NMR of crude",
                "1H NMR: 4-(4-fluorobenzoyl)morpholine",
                "1H NMR: methyl benzoate",
                "NMR KL-123-A",
                "X-ray structure",
                "mp 119–121 °C, colourless needles",
                "bp 85 °C (12 mbar)",
                "comparison with commercial sample",
                "GC/MS library hit",
                "IR, NMR stimmen mit Lit. überein",
                "Smp. und NMR",
                "RMN 1H",
                "[α]D −12.3 (c 1.0, CHCl3)",
                "1H NMR (DMSO-d6); rotamers",
                "mixed melting point with authentic material",
                "1H NMR by Weber",
                "NMR, Dr. Weber",
                "NMR (K. Weber), Messung im Labor",
                "NMR vs Miller et al. 1998",
                "NMR: Boc-Phe-OMe",
                "1H NMR (DMSO), JEOL, KLW",
                "NMR, Bruker, 12 March"
            })
    void evidenceIsTakenForSuch(String typed) {
        assertEquals(new IdentityWords.Read(Meaning.EVIDENCE, ""), read(typed, "Methyl benzoate"), typed);
    }

    @Test
    void nameOfAProductOfOneLetterIsNoPartOfAWord() {
        assertEquals(Meaning.EVIDENCE, read("HPLC, mp", "P").meaning());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pending",
                "mp 60 °C (lit. 121)",
                "Schmp. 95-97 °C, Lit. 121-122",
                "LCMS: 2 peaks",
                "TLC, two spots",
                "NMR: no product left",
                "1H NMR pending",
                "NMR tomorrow",
                "NMR Friday",
                "NMR submitted",
                "to do",
                "tbd",
                "not yet",
                "none",
                "no",
                "kein",
                "noch offen",
                "NMR folgt",
                "en attente",
                "NMR not clean",
                "NMR unclear",
                "1H NMR?",
                "1H NMR: wrong compound",
                "1H NMR shows starting material",
                "60 % starting material",
                "1H NMR does not match lit.",
                "1H NMR: mixture",
                "NMR Zersetzung",
                "MS negative",
                "probably NMR",
                "mp 98 °C, should be 121",
                "unknown"
            })
    void whatDeniesOrPutsOffLeavesItOpen(String typed) {
        assertEquals(Meaning.OPEN, read(typed, "").meaning(), typed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "?", "–", "n/a"})
    void marksAreBlanks(String typed) {
        assertEquals(Meaning.NOTHING, read(typed, "").meaning(), typed);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "smell",
                "colour",
                "Looks nice",
                "KL",
                "1H NMR: dimer",
                "1H NMR of the anhydride",
                "ok",
                "NMR: Dimer",
                "NMR: Ester und Anhydrid",
                "1H NMR ARTEFACT",
                "NMR: N-oxide",
                "NMR Boc-Amin",
                "NMR Dr. Weber: Dimer"
            })
    void whatIsNotUnderstoodIsNoEvidence(String typed) {
        assertEquals(Meaning.UNKNOWN, read(typed, "").meaning(), typed);
    }
}
