package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.model.Finding;

/** A portion or lot against what was made of it; a cake against its agent; a lower layer against the densities. By conservation of mass. */
class SourcesAndWhatCameOfThemTest {
    @TempDir
    Path folder;

    private void silent(String code, ExampleBook book) throws Exception {
        assertEquals(List.of(), book.findings(folder, code));
    }

    private Finding only(String code, ExampleBook book) throws Exception {
        List<Finding> findings = book.findings(folder, code);
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    private static void assertColumn(String heading, Finding finding) {
        String words = finding.place().inWords();
        assertTrue(words.contains(", " + heading), words);
    }

    /** 98.6 mg/mL in 66 mL are 6.51 g, which is what lot CR1 holds (6.5664 g of 99.1 %). */
    private static ExampleBook organicAssayed(String result) {
        return ExampleBook.clean()
                .plus("layers", "X1,O1,organic,upper,E-09,66,,,,,consumed")
                .plus("assays", "X1,O1,acetanilide,,HPLC," + result + ",mg/mL,2.0,");
    }

    @Test
    void portionThatHeldWhatCameOfItIsNoFinding() throws Exception {
        silent("portion-held-more", organicAssayed("98.6"));
        silent("portion-held-more", organicAssayed("120"));
    }

    @Test
    void tooLittleReadInAPortionIsNamedAtTheAssay() throws Exception {
        for (String slip : List.of("62.3", "71.9")) {
            Finding finding = only("portion-held-more", organicAssayed(slip));
            assertColumn("Result", finding);
        }
    }

    /** Of a decimal point the suspect tells the figure as well: one cause, one finding. */
    @Test
    void whereASuspectStandsAtTheCellItAloneIsTold() throws Exception {
        Finding suspect = only("entry-suspect", organicAssayed("9.86"));
        assertTrue(suspect.place().sheet().contains("ssays"), suspect::toString);
        silent("portion-held-more", organicAssayed("9.86"));
    }

    @Test
    void anotherStreamThatJoinedExplainsWhatWasFound() throws Exception {
        silent(
                "portion-held-more",
                organicAssayed("9.86")
                        .with(
                                "workup",
                                "X1,2,wash,O1,brine",
                                "X1,1.5,combine,O1+O9,,,,,,,,,,,,,,O1b,,\nX1,2,wash,O1b,brine"));
    }

    private static ExampleBook acid(String pH, String ratio) {
        return ExampleBook.clean()
                .with("products", "neutral,,,304", "acid,4.2," + ratio + ",304")
                .with("workup", "water,1,30,,,0.998,250,1,,,", "sat. NaHCO3,1,30,,,1.061,250,1," + pH + ",,");
    }

    @Test
    void washWithWaterMakesNoIon() throws Exception {
        silent(
                "content-against-ph",
                acid("6.5", "60").with("workup", "sat. NaHCO3,1,30,,,1.061", "water,1,30,,,0.998"));
    }

    @Test
    void ionIsolatedFromTheOrganicLayerIsNamedAtThePh() throws Exception {
        Finding finding = only("content-against-ph", acid("6.5", "60"));
        assertColumn("pH after", finding);
    }

    @Test
    void acidBelowItsPkaAndAnIonThatFollowsItsNeutralFormAreNoFinding() throws Exception {
        silent("content-against-ph", acid("2", "60"));
        // 0.50 % not ionised at pH 6.5: P of 1000 leaves D = 5.
        silent("content-against-ph", acid("6.5", "1000"));
    }

    @Test
    void lowerLayerAgainstTheDensitiesIsNamedInWorkup() throws Exception {
        Finding finding = only(
                "layer-position-contradiction",
                ExampleBook.clean()
                        .with("charges", "ethyl acetate,solvent,C4H8O2", "dichloromethane,solvent,CH2Cl2")
                        .with("charges", "0.902", "1.326")
                        .with("layers", "A1,aqueous,lower", "A1,aqueous,upper")
                        .with("layers", "A2,aqueous,lower", "A2,aqueous,upper")
                        .with("workup", "aqueous,density,none,O2", "organic,density,none,O2"));
        assertColumn("Lower layer", finding);
    }

    @Test
    void unreadDensityOfAListedSolventContradictsNoLayer() throws Exception {
        for (String typed : List.of("ok", "13.26", "")) {
            silent("layer-position-contradiction", ExampleBook.clean().with("charges", "0.902", typed));
            silent("layers-swapped", ExampleBook.clean().with("charges", "0.902", typed));
        }
    }

    @Test
    void cakeThatWeighsWhatItsAgentWeighsIsNoFinding() throws Exception {
        silent("cake-lighter-than-agent", ExampleBook.clean().with("layers", "6.92", "5.80"));
        assertColumn("Net", only("cake-lighter-than-agent", ExampleBook.clean().with("layers", "6.92", "4.31")));
    }

    @Test
    void purifiedLotNamesItsOwnCell() throws Exception {
        ExampleBook heavy = ExampleBook.clean()
                .plus("isolated", "X1,P1,acetanilide,purified,CR1,F-02,33.9000,24.9911,,99.5,1.0,melting point,,");
        Finding finding = only("purified-exceeds-source", heavy);
        assertColumn("Gross", finding);
        ExampleBook sound = ExampleBook.clean()
                .plus("isolated", "X1,P1,acetanilide,purified,CR1,F-02,31.1911,24.9911,,99.5,1.0,melting point,,");
        silent("purified-exceeds-source", sound);
        silent("purified-below-source", sound);
    }

    /** CR1 is 6.5664 g by gross and tare, 99.1 %. */
    private static ExampleBook typedAgain(String net, String assay) {
        return ExampleBook.clean()
                .plus("isolated", "X1,P1,acetanilide,purified,CR1,,,," + net + "," + assay + ",1.5,melting point,,");
    }

    @Test
    void aCrudeTypedOnceMoreAsThePurifiedLot() throws Exception {
        assertColumn("Net", only("copied-assay", typedAgain("6.5664", "99.1")));
        silent("copied-assay", typedAgain("6.1664", "99.1"));
        silent("copied-assay", typedAgain("6.5664", "99.5"));
        ExampleBook neither = typedAgain("6.5664", "").with("isolated", "90.3358,,99.1,1.5", "90.3358,,,");
        assertColumn("Net", only("copied-weighing", neither));
        silent("copied-assay", neither);
    }
}
