package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Amount;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limits;
import workuptally.model.RowPlace;
import workuptally.model.TablePlace;

/** Defaults are common practice; the arithmetic is worked out beside each check. */
class InstrumentUncertaintyTest {
    private static final RowPlace ROW = new RowPlace(new TablePlace("invented", "", false, Map.of()), 1, 1);

    private static final InstrumentUncertainty DEFAULTS = new InstrumentUncertainty(Limits.defaults());

    @ParameterizedTest
    @CsvSource({"0, 1.5", "1, 0.15", "2, 0.02", "3, 0.002", "4, 0.0005", "5, 0.00005", "6, 0.00005"})
    void decimalsDecideTheUncertaintyOfAWeighing(int decimals, double grams) {
        assertEquals(grams, DEFAULTS.massGrams(decimals), 1e-12);
    }

    @Test
    void smallLayerHasTheFixedVolumeUncertainty() {
        // 1.2 % of 20 mL = 0.24 mL, below 0.6 mL.
        assertEquals(0.6, DEFAULTS.layerVolumeMillilitres(entered(20, Qualifier.EXACT, 0)), 1e-12);
    }

    @Test
    void largeLayerHasTheRelativeVolumeUncertainty() {
        // 1.2 % of 100 mL = 1.2 mL.
        assertEquals(1.2, DEFAULTS.layerVolumeMillilitres(entered(100, Qualifier.EXACT, 0)), 1e-12);
    }

    @Test
    void volumeEnteredAsAboutIsWider() {
        // 5 % of 40 mL = 2 mL.
        assertEquals(2.0, DEFAULTS.layerVolumeMillilitres(entered(40, Qualifier.ABOUT, 0)), 1e-12);
    }

    @Test
    void deliveredVolumeCombinesARelativePartAndHalfItsLastDigit() {
        // 0.3 % of 21.0 mL = 0.063 mL; 0.05 mL / √3 = 0.028868 mL; together √(0.063² + 0.028868²) = 0.069299 mL.
        assertEquals(0.069299, DEFAULTS.deliveredVolumeMillilitres(entered(21.0, Qualifier.EXACT, 1)), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"HPLC, 0.02", "GC, 0.02", "qNMR, 0.02", "NMR, 0.05", "titration, 0.01", "KF, 0.05", "dry residue, 0.05"
    })
    void methodDecidesTheUncertaintyOfAnAssay(String method, double fraction) {
        assertEquals(fraction, DEFAULTS.assayFraction(assay("Method", method)), 1e-12);
    }

    @Test
    void typedUncertaintyOfAnAssayWins() {
        Assay assay = assay("Relative standard uncertainty", "1.5");
        assertEquals(0.015, DEFAULTS.assayFraction(assay), 1e-12);
    }

    @Test
    void assayEnteredAsAboutIsWider() {
        Assay assay = assay("Result", "ca. 40");
        assertEquals(
                0.05, DEFAULTS.assayFraction(assay, assay.result().entered().orElseThrow()), 1e-12);
    }

    /** 2.2 ± 1.0 is 1.2 to 3.2: 1.0/√3 = 0.57735, of 2.2 26.243 %; with 2 % of HPLC √(26.243² + 2²) = 26.319 %. */
    @ParameterizedTest
    @ValueSource(strings = {"2.2 ± 1.0", "1.2-3.2"})
    void uncertaintyBesideAResultCountsAsARange(String typed) {
        Assay assay = assay("Result", typed);
        assertEquals(
                0.26319, DEFAULTS.assayFraction(assay, assay.result().entered().orElseThrow()), 1e-5);
    }

    /** 15.6/√3 = 9.00666 mL beside 0.624 mL, 1.2 % of 52 mL: 9.02825 mL; beside 1 mL stated 9.06201 mL. */
    @Test
    void uncertaintyBesideAVolumeCountsWhateverIsStatedOfTheVolume() {
        Entered volume = new Entered(new Field.Figure(52, Qualifier.EXACT, 0, "52 ± 15.6", true, 15.6), ROW, "Volume");
        double usual = DEFAULTS.layerVolumeMillilitres(volume);
        assertEquals(9.02825, usual, 1e-5);
        assertEquals(9.06201, DEFAULTS.statedVolumeMillilitres(entered(1, Qualifier.EXACT, 0), volume, usual), 1e-5);
    }

    /** 5 % of 96 mL for a volume entered as about, 4.8 mL; the usual 1.152 mL is 1.2 % of it. */
    @Test
    void anUncertaintyThatCannotBeReadIsNotTakenForTheUsualOne() {
        Entered volume = entered(96, Qualifier.EXACT, 0);
        double usual = DEFAULTS.layerVolumeMillilitres(volume);
        assertEquals(1.152, DEFAULTS.statedVolumeMillilitres(Field.NoNumber.BLANK, volume, usual), 1e-9);
        assertEquals(4.8, DEFAULTS.statedVolumeMillilitres(Field.NoNumber.UNREADABLE, volume, usual), 1e-9);
        assertEquals(0.05, DEFAULTS.assayFraction(assay("Relative standard uncertainty", "> 3")), 1e-9);
        assertEquals(0.02, DEFAULTS.assayFraction(assay("Relative standard uncertainty", "")), 1e-9);
    }

    private static Assay assay(String heading, String cell) {
        return SmallBook.reaction()
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "40", "Unit", "mg/mL")
                .but("assays", heading, cell)
                .run()
                .assays()
                .get(0);
    }

    @Test
    void numberCellWithoutAFormatIsNotTakenToTheGram() {
        // 4.00 g is stored as 4: a top-pan balance is taken, 0.02 g, and not 1.5 g; a platform's 1297 stays one
        Entered four = new Entered(new Field.Figure(4, Qualifier.EXACT, 0, "4", false, 0), ROW, "Net");
        Entered platform = new Entered(new Field.Figure(1297, Qualifier.EXACT, 0, "1297", false, 0), ROW, "Net");
        assertEquals(0.02, new InstrumentUncertainty(Limits.defaults()).massGrams(four), 1e-12);
        assertEquals(1.5, new InstrumentUncertainty(Limits.defaults()).massGrams(platform), 1e-12);
        assertEquals(0.012, new InstrumentUncertainty(Limits.defaults()).deliveredVolumeMillilitres(four), 1e-12);
    }

    /**
     * Balance of two decimals, 0.02 g. Gross and tare as ranges of ±0.3 g and ±0.6 g, u 0.173205 and 0.346410 g: each with the balance
     * 0.174356 and 0.346987 g, together 0.388330 g; of one range alone that one with the balance.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 0.6, 0.388330", "0, 0.6, 0.346987", "0.3, 0, 0.174356", "0, 0, 0.02"})
    void rangesOfGrossAndTareAddUp(double grossHalf, double tareHalf, double grams) {
        assertEquals(grams, DEFAULTS.netMassGrams(ranged(50, grossHalf), ranged(20, tareHalf)), 1e-6);
    }

    /** 0.02 g of the readings, and of the typed net half its last digit, 0.05/√3 = 0.028868 g, below the 0.15 g of such a balance: 0.035119 g. */
    @Test
    void typedNetAddsItsRoundingToTheReadings() {
        Entered net = entered(30.1, Qualifier.EXACT, 1);
        assertEquals(0.035119, DEFAULTS.ofNetBesideWeighingGrams(ranged(50, 0), ranged(20, 0), net), 1e-6);
    }

    /** Just a kilogram may be of a platform without decimals, 1.5 g; less is not, 0.02 g. A spreadsheet's seven digits are no better than four. */
    @ParameterizedTest
    @CsvSource({"1000, 0, 1.5", "999, 0, 0.02", "-1000, 0, 1.5", "4, 3, 0.002", "4, 7, 0.0005"})
    void decimalsOfAPlainCellAreThoseOfAUsualBalance(double value, int decimals, double grams) {
        Entered plain = new Entered(new Field.Figure(value, Qualifier.EXACT, decimals, "", false, 0), ROW, "Net");
        assertEquals(grams, DEFAULTS.massGrams(plain), 1e-12);
    }

    /** 0.3/√3 = 0.173205; of 2.0 8.6603 %, with 2 % 8.8882 %; a value of 0 or below has no relative width. */
    @ParameterizedTest
    @CsvSource({"2.0, 0.3, 0.088882", "2.0, 0, 0.02", "0, 0.3, 0.02", "-2.0, 0.3, 0.02"})
    void rangeOfAResultWidensIt(double value, double half, double fraction) {
        assertEquals(fraction, InstrumentUncertainty.widenedBySpan(ranged(value, half), 0.02), 1e-6);
    }

    /** 2 % HPLC as a stated 1-3 % counts as 3 %. */
    @Test
    void ofARangeOfUncertaintiesTheUpperEndCounts() {
        assertEquals(0.03, DEFAULTS.assayFraction(assay("Relative standard uncertainty", "1-3")), 1e-12);
    }

    /** Six repeats with an uncertainty of their own have five degrees; without one, and of a single result, the usual one is taken as known. */
    @ParameterizedTest
    @CsvSource({"6, 1.5, 5", "2, 1.5, 1", "1, 1.5, Infinity", "6, '', Infinity", "'', 1.5, Infinity"})
    void repeatsAreTheDegreesOfFreedomOfAStatedUncertainty(String repeats, String stated, double degrees) {
        Assay assay = SmallBook.reaction()
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "40", "Unit", "mg/mL")
                .but("assays", "Relative standard uncertainty", stated)
                .but("assays", "Replicates", repeats)
                .run()
                .assays()
                .get(0);
        assertEquals(degrees, InstrumentUncertainty.degreesOfFreedom(assay));
    }

    /** 2.50 equivalents: 0.005/√3 = 0.002887. */
    @Test
    void equivalentsAreKnownToTheirLastDigit() {
        Charge charge = SmallBook.reaction()
                .row("charges", "Material", "Q", "Actual amount", "2.50", "Actual unit", "eq")
                .run()
                .charges()
                .get(1);
        Amount amount = charge.quantity().actual().orElseThrow();
        assertEquals(0.002887, DEFAULTS.amount(amount, amount.value().entered().orElseThrow()), 1e-6);
    }

    private static Entered ranged(double value, double halfWidth) {
        return new Entered(new Field.Figure(value, Qualifier.EXACT, 2, "", true, halfWidth), ROW, "Gross");
    }

    private static Entered entered(double value, Qualifier qualifier, int decimals) {
        return new Entered(new Field.Figure(value, qualifier, decimals, ""), ROW, "Gross");
    }
}
