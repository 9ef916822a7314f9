package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.FindingCode;

/** What a slip of a unit or of a vessel does to a figure is told, and a unit is never shown beside a number of another one. */
class SlipsOfUnitsTest {

    /** Grams typed as milligrams make 1000 times the content; the uncertainty of the weighing grows with it and excuses nothing. */
    @ParameterizedTest
    @CsvSource({"0.02000,yield-above-100 STOP", "20.00,''"})
    void noUncertaintyExcusesAThousandfoldYield(String sampleMilligrams, String codes) {
        Review review = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00")
                .row("nmr-assays", "Sample", "C1", "Substance", "P", "Standard", "maleic acid")
                .but("nmr-assays", "Standard molar mass (g/mol)", "116.07")
                .but("nmr-assays", "Standard purity (%)", "99.5")
                .but("nmr-assays", "Standard mass (mg)", "10.00")
                .but("nmr-assays", "Sample mass (mg)", sampleMilligrams)
                .but("nmr-assays", "Standard integral", "2.00")
                .but("nmr-assays", "Standard nuclei", "2")
                .but("nmr-assays", "Substance integral", "3.42")
                .but("nmr-assays", "Substance nuclei", "3")
                .review();
        assertEquals(codes, told(review, FindingCode.YIELD_ABOVE_100));
    }

    @ParameterizedTest
    @CsvSource({
        "350,µg/mL,HPLC 0.350 mg/mL",
        "<350,µg/mL,HPLC <0.350 mg/mL",
        "2.1,mmol/L,HPLC 0.0021 mol/L",
        "'0,35',mg/mL,'HPLC 0,35 mg/mL'",
        "0.35,g/L,HPLC 0.35 mg/mL"
    })
    void evidenceShowsTheNumberInItsUnit(String result, String unit, String evidence) {
        Review review = washed("100")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", result, "Unit", unit)
                .review();
        assertEquals(
                evidence,
                review.runs().get(0).tally().layer("A1").orElseThrow().contents().stream()
                        .map(content -> content.evidence())
                        .collect(Collectors.joining("; ")));
    }

    private static SmallBook washed(String millilitres) {
        return SmallBook.reaction()
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", millilitres, "Status", "kept");
    }

    /** The uncertainty of a volume that a slip made small is that of the slip, and excuses no density. */
    @ParameterizedTest
    @CsvSource({
        "1.95,19.45,layer-density-impossible STOP",
        "19.5,19.45,''",
        "2.0,3.2,''",
        "0.5,1.6,''",
        "195,19.45,layer-density-impossible STOP"
    })
    void aDecimalPointInASmallVolumeIsTold(String millilitres, String grams, String codes) {
        Review review = washed("100")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", millilitres, "Net", grams)
                .review();
        assertEquals(codes, told(review, FindingCode.LAYER_DENSITY_IMPOSSIBLE));
    }

    /** What a funnel parted is two liquids, whatever word stands beside one of them: it stays among the layers to decide about. */
    @ParameterizedTest
    @CsvSource({
        "aqueous,''",
        "solid,layer-phase-contradiction CHECK",
        "distillate,layer-phase-contradiction CHECK",
        "filter cake,layer-phase-contradiction CHECK",
        "cold trap,layer-phase-contradiction CHECK",
        "mother liquor,layer-phase-contradiction CHECK",
        "rag,''"
    })
    void aLiquidFromAFunnelStaysOneUnderAnotherWord(String phase, String codes) {
        Review review = washed("100").first("layers", "Phase", phase).review();
        assertEquals(codes, told(review, FindingCode.LAYER_PHASE_CONTRADICTION));
        assertTrue(review.runs().get(0).decision("A1").isPresent());
    }

    /** Water does not leave a funnel but by the tap: what is missing stands in a second vessel. */
    @ParameterizedTest
    @CsvSource({"44,layer-part-only HOLD", "60,layer-part-only CHECK", "92,''"})
    void aPartOfALayerIsToldAsOne(String millilitres, String codes) {
        assertEquals(codes, told(washed(millilitres).review(), FindingCode.LAYER_PART_ONLY));
    }

    /** What washed the crystals met none of the liquor that had come off them before. */
    @Test
    void washOfCrystalsIsNoPartOfTheLiquorBefore() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "crystallise", "From", "RM", "Material", "heptane")
                .but("workup", "Volume", "60")
                .but("workup", "Gives other", "C1+ML1")
                .row("workup", "Step", "2", "Operation", "rinse", "From", "C1", "Material", "heptane")
                .but("workup", "Volume", "10")
                .but("workup", "Gives other", "C1+ML2")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Volume", "65", "Status", "kept")
                .row("layers", "Layer", "ML2", "Phase", "mother liquor", "Volume", "10", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crop", "Net", "19.00", "Assay", "98");
        assertEquals("", told(book.review(), FindingCode.LAYER_PART_ONLY));
    }

    /** A liquor of a third of what was added holds a third of what it is said to hold; a volume no liquid of the run fills is held too. */
    @ParameterizedTest
    @CsvSource({
        "100,80.0,''",
        "55,44.0,''",
        "30,24.0,layer-part-only HOLD",
        "'',24.0,layer-part-only HOLD",
        "20,80.0,layer-part-only HOLD; layer-density-unexpected HOLD",
        "'','',''"
    })
    void aPartOfALiquorIsToldAsOne(String millilitres, String grams, String codes) {
        Review review = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", "98")
                .row("isolated", "Lot", "D1", "Product", "P", "Stage", "purified", "Net", "16.00", "Assay", "99")
                .row("workup", "Step", "1", "Operation", "crystallise", "From", "C1", "Material", "ethanol")
                .but("workup", "Portions", "2")
                .but("workup", "Volume", "30")
                .but("workup", "Gives other", "X1")
                .row("workup", "Step", "2", "Operation", "crystallise", "From", "X1", "Material", "heptane")
                .but("workup", "Volume", "20")
                .but("workup", "Gives other", "X1")
                .row("workup", "Step", "3", "Operation", "crystallise", "From", "X1", "Material", "heptane")
                .but("workup", "Volume", "20")
                .but("workup", "Gives other", "D1+ML1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Volume", millilitres, "Net", grams)
                .but("layers", "Status", "kept")
                .review();
        assertEquals(
                codes,
                Stream.of(told(review, FindingCode.LAYER_PART_ONLY), told(review, FindingCode.LAYER_DENSITY_UNEXPECTED))
                        .filter(told -> !told.isEmpty())
                        .collect(Collectors.joining("; ")));
    }

    private static String told(Review review, FindingCode code) {
        return review.findings().stream()
                .filter(f -> f.code() == code)
                .map((Finding f) -> f.code().word() + " " + f.severity().name())
                .collect(Collectors.joining("; "));
    }
}
