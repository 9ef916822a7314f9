package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** Just inside a threshold a rule says nothing, or less. The thresholds are common practice and named by the rules. */
class RulesStaySilentTest {
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

    @Test
    void molarMassWithinATenthOfAPercentIsNoFinding() throws Exception {
        silent("molar-mass-rounded", ExampleBook.clean().with("charges", "C6H7N,93.13", "C6H7N,93.2"));
    }

    @Test
    void blankMolarMassIsNoMismatch() throws Exception {
        silent("molar-mass-mismatch", ExampleBook.clean().with("charges", "C6H7N,93.13", "C6H7N,"));
    }

    @Test
    void washWithoutItsStrengthIsNamedAsSuch() throws Exception {
        for (String typed : List.of("NaHCO3", "dil. HCl", "NaOH solution")) {
            Finding finding = only(
                    "step-material-unknown",
                    ExampleBook.clean().with("workup", "water,1,30,,,0.998", typed + ",1,30,,,"));
            assertEquals(
                    "step 1: 30.00 mL of '" + typed
                            + "', a solution without its strength; it is counted as so much water",
                    Wording.POINT.of(finding.seen()));
        }
    }

    @Test
    void listedLiquidInAStepIsKnown() throws Exception {
        silent("step-material-unknown", ExampleBook.clean().with("workup", "water,1,30,,,0.998", "morpholine,1,2,,,"));
    }

    /** 99.0 % crude, 93.1 % corrected: who typed 93 reports the corrected yield already, who typed 99 does not. */
    @Test
    void correctedYieldThatIsStatedIsNotAskedFor() throws Exception {
        ExampleBook book = ExampleBook.clean()
                .with("isolated", "99.1,1.5,melting point", "94.0,1.0,melting point")
                .with("isolated", "Notes\n", "Notes,Stated yield (%)\n");
        silent("crude-not-a-yield", book.with("isolated", "melting point,,", "melting point,,,93"));
        only("crude-not-a-yield", book.with("isolated", "melting point,,,93", "melting point,,,99"));
    }

    /** Ice and water is water; two solutions in water count as so much water, near enough for a note. */
    @Test
    void waterIsKnownAndMixedSolutionsNearlySo() throws Exception {
        silent("step-material-unknown", ExampleBook.clean().with("workup", "water,1,30,,,0.998", "ice/water,1,30,,,"));
        Finding mixed = ExampleBook.clean()
                .with("workup", "water,1,30,,,0.998", "sat. NaHCO3/10 % Na2S2O3 1:1,1,30,,,")
                .findings(folder, "step-material-unknown")
                .get(0);
        assertEquals(Severity.NOTE, mixed.severity());
        assertTrue(Wording.POINT.of(mixed.seen()).contains("a mixture of solutions in water"));
    }

    @Test
    void phasesPartedAfterAQuenchNeedNoMaterial() throws Exception {
        ExampleBook parted = ExampleBook.clean()
                .with(
                        "workup",
                        "X1,1,wash,RM,water,1,30,,,0.998,250,1,,,aqueous,density,none,O1,A1,",
                        "X1,0,quench,RM,water,1,30,,,0.998,250,1,,,,,,,,RM\nX1,1,extract,RM,,1,,,,,250,1,,,aqueous,density,none,O1,A1,");
        silent("step-material-unknown", parted);
        // without the quench before it, what went in is asked for
        only(
                "step-material-unknown",
                ExampleBook.clean().with("workup", "X1,1,wash,RM,water,1,30,,,0.998", "X1,1,extract,RM,,1,,,,"));
    }

    @Test
    void titreAtTheLimitIsNoFinding() throws Exception {
        silent(
                "titre-differs",
                ExampleBook.clean().plus("charges", "X1,1 M HCl,additive,HCl,36.46,,,,1,mL,,1.00,0.95,1.016,"));
    }

    @Test
    void titreMoreThanFifteenPercentOffIsACheck() throws Exception {
        Finding finding = only(
                "titre-differs",
                ExampleBook.clean().plus("charges", "X1,1 M HCl,additive,HCl,36.46,,,,1,mL,,1.00,0.84,1.016,"));
        assertEquals(Severity.CHECK, finding.severity());
    }

    @Test
    void lithiumSaltsAreNotAirSensitive() throws Exception {
        silent(
                "titre-missing",
                ExampleBook.clean()
                        .plus("charges", "X1,lithium chloride in water,additive,LiCl,42.39,,,,1,mL,,1.0,,1.0,"));
    }

    @Test
    void potassiumHydroxideWithItsAssayIsNoFinding() throws Exception {
        silent(
                "charge-assay-forgotten",
                ExampleBook.clean().plus("charges", "X1,potassium hydroxide,base,KOH,56.11,,,,0.1,g,85,,,,"));
    }

    @Test
    void hydroxideSolutionByItsMolarityNeedsNoAssay() throws Exception {
        silent(
                "charge-assay-forgotten",
                ExampleBook.clean().plus("charges", "X1,potassium hydroxide,base,KOH,56.11,,,,1,mL,,1.0,,1.05,"));
    }

    @Test
    void hydrochlorideWithChlorineInItsFormulaIsNoContradiction() throws Exception {
        silent(
                "charge-form-mismatch",
                ExampleBook.clean().plus("charges", "X1,lysine hydrochloride,additive,C6H15ClN2O2,,,,,0.5,g,99,,,,"));
    }

    @Test
    void hydrateWrittenWithItsWaterIsNoContradiction() throws Exception {
        silent(
                "charge-form-mismatch",
                ExampleBook.clean().plus("charges", "X1,oxalic acid dihydrate,additive,C2H2O4·2H2O,,,,,0.5,g,99,,,,"));
    }

    @Test
    void carbohydrateIsNoHydrate() throws Exception {
        silent(
                "charge-form-mismatch",
                ExampleBook.clean().plus("charges", "X1,a carbohydrate,additive,C6H12O6,,,,,0.5,g,99,,,,"));
    }

    @Test
    void amountNearThePlanIsNoUnitSlip() throws Exception {
        silent("unit-slip", ExampleBook.clean().with("charges", "1,4.66,g", "1,0.93,g"));
    }

    @Test
    void oneLineThatEqualsThePlanIsNoCopy() throws Exception {
        silent("plan-copied", ExampleBook.clean().with("charges", "4.66,g,4.661,g", "4.661,g,4.661,g"));
    }

    @Test
    void plannedRunWithoutLayersMissesNone() throws Exception {
        silent(
                "layer-missing",
                ExampleBook.clean()
                        .with("runs", "isolated", "planned")
                        .table("isolated", "Run,Lot\n")
                        .table("assays", "Run,Sample\n")
                        .table("layers", "Run,Layer\nX1,A1\n"));
    }

    @Test
    void funnelOverfullAfterTheFactIsANote() throws Exception {
        Finding finding = only("funnel-overfull", ExampleBook.clean().with("workup", "0.998,250", "0.998,100"));
        assertEquals(Severity.NOTE, finding.severity());
    }

    @Test
    void volumesBeyondAnyFunnelAskOnceForTheVessel() {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "20000")
                .but("charges", "Actual unit", "mL");
        for (String step : List.of("1", "2", "3")) {
            book.row("workup", "Step", step, "Operation", "wash", "From", step.equals("1") ? "RM" : "O" + step)
                    .but("workup", "Material", "water")
                    .but("workup", "Volume", "9000")
                    .but("workup", "Gives organic", "O" + (Integer.parseInt(step) + 1))
                    .but("workup", "Gives aqueous", "A" + step);
        }
        List<Finding> found = book.reviewOfRun().findings().stream()
                .filter(f -> f.code() == FindingCode.FUNNEL_OVERFULL)
                .toList();
        assertEquals(1, found.size());
        String words = Wording.POINT.of(found.get(0).seen());
        assertTrue(words.startsWith("step 1, step 2, step 3: up to 29") && words.contains("no vessel is named"), words);
    }

    @Test
    void ragWithAnAssayIsNoFinding() throws Exception {
        silent(
                "rag-not-assayed",
                ExampleBook.clean()
                        .with("workup", "O1,A1,", "O1,A1,R1")
                        .plus("layers", "X1,R1,rag,middle,E-07,8,48.01,40.02,,,kept")
                        .plus("assays", "X1,R1,acetanilide,,HPLC,0.5,mg/mL,2.0,"));
    }

    @Test
    void twoPortionsThatSaySoAreNoRowTypedTwice() throws Exception {
        silent(
                "charge-twice",
                ExampleBook.clean()
                        .plus("charges", "X1,acetone (portion 1),additive,,,,,,0.5,g,99,,,,")
                        .plus("charges", "X1,acetone (portion 2),additive,,,,,,0.5,g,99,,,,"));
    }

    @Test
    void negativeQuenchTestIsEnough() throws Exception {
        silent(
                "quench-not-shown",
                ExampleBook.clean()
                        .plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,0.1,g,98,,,,")
                        .with("workup", "250,1,,,aqueous,density,none,O1", "250,1,,negative,aqueous,density,none,O1"));
    }

    @Test
    void testSaidNotToBeDoneIsStillMissing() throws Exception {
        Finding finding = only(
                "quench-not-shown",
                ExampleBook.clean()
                        .plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,0.1,g,98,,,,")
                        .with("workup", "250,1,,,aqueous,density,none,O1", "250,1,,not done,aqueous,density,none,O1"));
        assertEquals(Severity.HOLD, finding.severity());
    }

    @Test
    void someWaterMiscibleSolventIsANote() throws Exception {
        Finding finding = only(
                "water-miscible-solvent",
                ExampleBook.clean()
                        .plus("charges", "X1,ethanol,solvent,C2H6O,,,,,12,mL,,,,0.789,")
                        .with("assays", "X1,A1,acetanilide,,HPLC,1.51,mg/mL,2.0,\n", ""));
        assertEquals(Severity.NOTE, finding.severity());
    }

    @Test
    void waterMiscibleSolventOverAnAssayedAqueousLayerIsNoFinding() throws Exception {
        silent(
                "water-miscible-solvent",
                ExampleBook.clean().plus("charges", "X1,ethanol,solvent,C2H6O,,,,,40,mL,,,,0.789,"));
    }

    /** 4.661 g of 99.5 % aniline are 49.80 mmol; 5.136 g of 99 % anhydride are 49.81 mmol. */
    @Test
    void chargesWeighedOneToOneAreANoteSinceTheoryIsTheSame() throws Exception {
        Finding finding = only("limiting-ambiguous", ExampleBook.clean().with("charges", "6.012", "5.136"));
        assertEquals(Severity.NOTE, finding.severity());
    }

    @Test
    void crudeWhoseAssaysAddUpIsNotToBeDriedFurther() throws Exception {
        ExampleBook crude = ExampleBook.clean().with("isolated", "96.9022,90.3358,,99.1", "97.7022,90.3358,,88.1");
        assertEquals(Severity.CHECK, only("crude-above-theory", crude).severity());
        silent("crude-above-theory", crude.plus("assays", "X1,CR1,acetic acid,,NMR,11.5,% w/w,,"));
    }

    @Test
    void notDetectedWithoutALimitAsksForTheLimitNotForAnotherAssay() {
        // 20.0 g of theory, 17.0 g isolated: A1 may hold 3 g; its assay says n.d. without a limit.
        Finding finding = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "17.00", "Assay", "100")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "n.d.", "Unit", "mg/mL")
                .review()
                .findings()
                .stream()
                .filter(f -> f.code().word().equals("layer-holds-product"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "Keep it; enter the detection limit of its assay: '<0.10' as Result, or in Limits.",
                Wording.POINT.of(finding.action()));
    }

    @Test
    void littleWaterMiscibleSolventIsNoFinding() throws Exception {
        silent(
                "water-miscible-solvent",
                ExampleBook.clean().plus("charges", "X1,ethanol,solvent,C2H6O,,,,,5,mL,,,,0.789,"));
    }

    @Test
    void missingTareOfALayerIsACheck() throws Exception {
        Finding finding = only("tare-missing", ExampleBook.clean().with("layers", "97.63,63.11", "97.63,"));
        assertEquals(Severity.CHECK, finding.severity());
    }

    @Test
    void netMassTypedInsteadNeedsNoTare() throws Exception {
        silent("tare-missing", ExampleBook.clean().with("isolated", "96.9022,90.3358,", ",,6.5664"));
    }

    @Test
    void tareWithinFiveMilligramsOfTheRegisterIsNoFinding() throws Exception {
        silent(
                "tare-register-differs",
                ExampleBook.clean().table("vessels", "Vessel,Date,Clean dry tare (g)\nF-01,2026-02-02,90.3310\n"));
    }

    @Test
    void secondWeighingWithinTheNoiseIsNoFinding() throws Exception {
        silent("weighed-warm", ExampleBook.clean().with("isolated", "melting point,,", "melting point,96.9030,"));
    }

    @Test
    void secondWeighingATrifleLighterIsNoFinding() throws Exception {
        silent(
                "not-at-constant-mass",
                ExampleBook.clean().with("isolated", "melting point,,", "melting point,96.8800,"));
    }

    @Test
    void sharedNonDetectLimitIsNoCopy() throws Exception {
        silent(
                "copied-assay",
                ExampleBook.clean()
                        .with("assays", "HPLC,1.51", "HPLC,<0.10")
                        .with("layers", "34,97.63,63.11", "34,97.63,72.87"));
    }

    @Test
    void smallAliquotIsNotWorthANote() throws Exception {
        silent(
                "aliquots-taken",
                ExampleBook.clean()
                        .plus("workup", "X1,1.5,sample,O1,,,,,,,,,,,,,,,,S1")
                        .plus("layers", "X1,S1,organic,,E-05,0.20,36.2647,36.0822,,,used up")
                        .plus("assays", "X1,S1,acetanilide,,HPLC,95,mg/mL,2.0,"));
    }

    @Test
    void seriesOfSevenResultsDrawsNoLimits() throws Exception {
        silent("series-out-of-control", ExampleBook.clean().table("history", """
                        Series,Date,Yield (%)
                        S-1,2025-10-02,86.9
                        S-1,2025-10-16,88.4
                        S-1,2025-10-30,87.6
                        S-1,2025-11-13,89.0
                        S-1,2025-11-27,86.2
                        S-1,2025-12-11,88.1
                        S-1,2026-01-15,87.3
                        """));
    }

    @Test
    void rinseThatAddsToAFiltrateIsNotGivenTwice() throws Exception {
        silent("layer-given-twice", ExampleBook.clean());
    }

    @Test
    void combinedLayerOfSeveralLoadsIsNoFinding() throws Exception {
        silent("loads-not-recorded", ExampleBook.clean().with("workup", "0.998,250,1", "0.998,250,3"));
    }

    @Test
    void yieldNearNoSimpleRatioIsNoCoefficientMatter() throws Exception {
        silent("coefficient-suspect", ExampleBook.clean().with("isolated", "96.9022", "93.2600"));
    }
}
