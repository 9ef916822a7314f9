package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.tally.RunTally;

/** A layer A1 of 100 mL and 110 g, and what its assays make of it. */
class ContentsAccountTest {
    @ParameterizedTest
    @CsvSource({
        // 20 mg/mL × 100 mL = 2 g; 2 % of 110 g = 2.2 g; 0.05 mol/L × 100 mL × 200 g/mol = 1 g; 15 mmol × 200 g/mol = 3
        // g.
        "20, mg/mL, 2.0",
        "2, % w/w, 2.2",
        "0.05, mol/L, 1.0",
        "1.5, g, 1.5",
        "15, mmol, 3.0"
    })
    void everyUnitOfAResultGivesGrams(String result, String unit, double grams) {
        Content content = content(result, unit);
        assertEquals(Content.Kind.MEASURED, content.kind());
        assertEquals(grams, content.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(grams / 0.2, content.amountMillimoles().orElseThrow().value(), 1e-9);
    }

    @Test
    void shareIsOfTheory() {
        // 2 g of 20 g.
        assertEquals(10.0, content("20", "mg/mL").percentOf().orElseThrow(), 1e-9);
    }

    @Test
    void boundOfAMeasuredContentIsOneSidedNinetyFivePercent() {
        // u: volume 1.2 mL of 100 mL = 1.2 %, HPLC 2 %: √(1.2² + 2²) = 2.3324 % of 2 g = 0.046648 g; 2 + 1.645 ×
        // 0.046648 = 2.076735 g.
        Content content = content("20", "mg/mL");
        assertEquals(0.046648, content.massGrams().orElseThrow().standardUncertainty(), 1e-6);
        assertEquals(2.076735, content.upperBoundGrams().orElseThrow(), 1e-5);
    }

    @Test
    void nonDetectCountsHalfItsLimitInABalanceAndTheWholeAsABound() {
        // limit 0.10 mg/mL × 100 mL = 0.010 g; half 0.005 g; u of the half alone 0.010/(2√3) = 0.002887 g, of the
        // volume 1.2 % of 0.005 g. The bound also has the reach of the volume: 0.010 × (1 + 1.645 × 0.012) g.
        Content content = content("<0.10", "mg/mL");
        assertEquals(Content.Kind.BOUND, content.kind());
        assertEquals(0.005, content.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(0.002887, content.massGrams().orElseThrow().standardUncertainty(), 2e-6);
        assertEquals(0.010 * (1 + 1.645 * 0.012), content.upperBoundGrams().orElseThrow(), 1e-12);
    }

    @Test
    void notDetectedStandsForTheLimitOfTheMethod() {
        SmallBook book = assayed("n.d.", "mg/mL").limit("Detection limit HPLC", "0.2");
        assertEquals(
                0.020 * (1 + 1.645 * 0.012),
                contents(book).get(0).upperBoundGrams().orElseThrow(),
                1e-12);
    }

    @Test
    void notDetectedWithoutALimitIsNotZero() {
        RunTally tally = assayed("n.d.", "mg/mL").tally();
        Content content = tally.layer("A1").orElseThrow().contents().get(0);
        assertEquals(Content.Kind.UNKNOWN, content.kind());
        assertTrue(tally.notComputed().stream()
                .anyMatch(n -> n.because().equals("not detected, but no detection limit is set for the method")));
    }

    @Test
    void areaPercentIsNoAssay() {
        RunTally tally = assayed("98", "area %").tally();
        assertEquals(
                Content.Kind.UNKNOWN,
                tally.layer("A1").orElseThrow().contents().get(0).kind());
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.because().equals("area % is not an assay")));
    }

    @Test
    void dryResidueIsMilligramsOverTheAliquot() {
        // 40 mg / 5 mL = 8 mg/mL × 100 mL = 0.8 g.
        Content content = contents(residue("")).get(0);
        assertEquals(0.8, content.massGrams().orElseThrow().value(), 1e-9);
        assertEquals("dry residue 40 mg / 5 mL", content.evidence());
    }

    @Test
    void unitBesideADryResidueDoesNotChangeWhatWasWeighed() {
        assertEquals(
                0.8, contents(residue("g")).get(0).massGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void resultEnteredAsAboutIsWider() {
        // 5 % of the result, with 1.2 % of the volume: √(5² + 1.2²) = 5.142 % of 2 g = 0.10284 g.
        MeasuredValue mass = content("ca. 20", "mg/mL").massGrams().orElseThrow();
        assertEquals(0.10284, mass.standardUncertainty(), 1e-5);
    }

    @Test
    void sharedCalibrationDoesNotAverageOut() {
        // A1 2 g and A2 2 g, each 2 % from the assay and 1.2 mL of 100 mL. Half of the variance shared: 4 × 2 % × √½ =
        // 0.056569 g together, 0.04 g × √½ × √2 = 0.04 g apart, volumes 0.024 g × √2 = 0.033941 g: 0.077149 g. All
        // apart:
        // 0.04 g × √2 = 0.056569 g and the volumes: 0.065970 g. Without a name HPLC results are taken to share one.
        assertEquals(0.077149, ofBoth("cal-1", "2", "cal-1", "2").standardUncertainty(), 1e-5);
        assertEquals(0.077149, ofBoth("", "2", "", "2").standardUncertainty(), 1e-5);
        assertEquals(0.065970, ofBoth("cal-1", "2", "cal-2", "2").standardUncertainty(), 1e-5);
    }

    @Test
    void rowsOfOneCalibrationKeepTheirOwnUncertainty() {
        // (2 g × 2 % + 2 g × 4 %) × √½ = 0.084853 g together, √(0.04² + 0.08²) g × √½ = 0.063246 g apart, volumes
        // 0.033941 g.
        assertEquals(0.111140, ofBoth("cal-1", "2", "cal-1", "4").standardUncertainty(), 1e-5);
    }

    @Test
    void resultWithoutTheVolumeOfItsLayerIsNotZero() {
        RunTally tally = assayed("20", "mg/mL").but("layers", "Volume", "").tally();
        assertEquals(
                Content.Kind.UNKNOWN,
                tally.layer("A1").orElseThrow().contents().get(0).kind());
        assertTrue(
                tally.notComputed().stream().anyMatch(n -> n.because().equals("the volume of the layer is not known")));
    }

    /** Residue 40 ± 2 mg of 5 ± 0.5 mL: 8 mg/mL ± (2/5 + 8 × 0.5/5 = 1.2); u √(5² + (1.2/√3/8 × 100)² + 1.2²) % = 10.0717 % of 0.8 g. */
    @Test
    void rangesOfAResidueAndItsAliquotAddUp() {
        SmallBook book = residue("").but("assays", "Residue", "40 ± 2").but("assays", "Aliquot", "5 ± 0.5");
        assertEquals(0.080574, contents(book).get(0).massGrams().orElseThrow().standardUncertainty(), 1e-5);
    }

    @Test
    void residueOfNoAliquotIsNoResult() {
        assertTrue(residue("").but("assays", "Aliquot", "0").tally().notComputed().stream()
                .anyMatch(
                        n -> n.what().equals("P in A1") && n.because().startsWith("the unit of the assay is missing")));
    }

    /** By HPLC 2 g. A residue of 0.8 g says that it cannot be so; one of 3 g holds other things too. */
    @ParameterizedTest
    @CsvSource({"40, 2.0, DISPUTED_READINGS", "150, 2.0, OWN_READING", "100, 2.0, OWN_READING"})
    void residueBesideAnAssayCountsWhereItIsTheSmaller(String milligrams, double grams, Content.Rests rests) {
        SmallBook book = assayed("20", "mg/mL")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "dry residue", "Aliquot", "5")
                .but("assays", "Residue", milligrams);
        assertEquals(1, contents(book).size());
        assertEquals(grams, contents(book).get(0).massGrams().orElseThrow().value(), 1e-9);
        assertEquals(rests, contents(book).get(0).rests());
    }

    /** 0.10 mg/mL is the limit: a result at it is a result, just below it none. */
    @ParameterizedTest
    @CsvSource({"0.10, MEASURED", "0.099, BOUND"})
    void resultBelowTheLimitOfItsMethodIsNone(String result, Content.Kind kind) {
        SmallBook book = assayed(result, "mg/mL").limit("Detection limit HPLC", "0.10");
        assertEquals(kind, contents(book).get(0).kind());
    }

    @ParameterizedTest
    @CsvSource({
        "HPLC, 20, HPLC 20 mg/mL",
        "HPLC, <0.10, HPLC <0.10 mg/mL",
        "HPLC, n.d., HPLC not detected (limit 0.2) mg/mL",
        "HPLC, 0.15, HPLC not detected (limit 0.2) mg/mL",
        "TLC, 0.10, TLC spot of about 0.10 (at most 0.2) mg/mL",
        "TLC, <0.10, TLC <0.10 mg/mL"
    })
    void evidenceSaysHowItWasFound(String method, String result, String evidence) {
        SmallBook book = assayed(result, "mg/mL")
                .but("assays", "Method", method)
                .limit("TLC counts", "yes")
                .limit("Detection limit HPLC", "0.2");
        assertEquals(evidence, contents(book).get(0).evidence());
    }

    @ParameterizedTest
    @CsvSource({
        "'', mg/mL, the result is missing or cannot be read",
        "20, '', the unit of the assay is missing or cannot be read",
        "0, mg/mL, 0 is no result: what the method would have seen is not known"
    })
    void whatDoesNotCountIsSaid(String result, String unit, String because) {
        assertTrue(assayed(result, unit).tally().notComputed().stream()
                .anyMatch(n -> n.what().equals("P in A1") && n.because().equals(because)));
    }

    private static MeasuredValue ofBoth(String calibration1, String u1, String calibration2, String u2) {
        RunTally tally = assayed("20", "mg/mL")
                .but("assays", "Calibration", calibration1)
                .but("assays", "Relative standard uncertainty", u1)
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "110.00", "Status", "kept")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL")
                .but("assays", "Calibration", calibration2)
                .but("assays", "Relative standard uncertainty", u2)
                .tally();
        return mass(tally, "A1").plus(mass(tally, "A2"));
    }

    private static MeasuredValue mass(RunTally tally, String layer) {
        return tally.layer(layer).orElseThrow().contents().get(0).massGrams().orElseThrow();
    }

    private static SmallBook residue(String unit) {
        return assayed("", unit)
                .but("assays", "Method", "dry residue")
                .but("assays", "Aliquot", "5")
                .but("assays", "Residue", "40");
    }

    private static Content content(String result, String unit) {
        return contents(assayed(result, unit)).get(0);
    }

    private static List<Content> contents(SmallBook book) {
        return book.tally().layer("A1").orElseThrow().contents();
    }

    private static SmallBook assayed(String result, String unit) {
        return SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "110.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", result, "Unit", unit);
    }
}
