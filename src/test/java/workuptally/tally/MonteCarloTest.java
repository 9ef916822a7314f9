package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.tally.amounts.ProductYield;

/**
 * The propagated uncertainty of a result against the spread of 200 000 draws of its inputs, each computed by the equation written out here.
 * The inputs of the book: 10.00 g S (u 0.02 g) at 99 % (0.3 %), two lots, two layers of 100 mL (1.2 mL), HPLC 2 %, half of it shared.
 */
class MonteCarloTest {
    private static final int DRAWS = 200_000;
    private static final double HALF = Math.sqrt(0.5);

    private final RunTally tally = book().tally();

    /** One draw of everything that was read. */
    private static final class Draw {
        private final Random random;
        private final double lotA;
        private final double lotB;
        private final double assayA;
        private final double assayB;
        private final double charge;
        private final double content;
        private final double volumeO;
        private final double volumeA;
        private final double strengthO;
        private final double strengthA;
        private final double massA;

        Draw(Random random) {
            this.random = random;
            lotA = 12.00 + 0.02 * random.nextGaussian();
            lotB = 4.00 + 0.02 * random.nextGaussian();
            assayA = 0.95 * (1 + 0.015 * random.nextGaussian());
            assayB = 0.90 * (1 + 0.03 * random.nextGaussian());
            charge = 10.00 + 0.02 * random.nextGaussian();
            content = 0.99 * (1 + 0.003 * random.nextGaussian());
            volumeO = 100 + 1.2 * random.nextGaussian();
            volumeA = 100 + 1.2 * random.nextGaussian();
            double common = 0.02 * HALF * random.nextGaussian();
            strengthO = 8 * (1 + common + 0.02 * HALF * random.nextGaussian());
            strengthA = 2 * (1 + common + 0.02 * HALF * random.nextGaussian());
            massA = 104.00 + 0.02 * random.nextGaussian();
        }

        double theory() {
            return charge * content * 2;
        }

        double isolated() {
            return lotA * assayA + lotB * assayB;
        }

        double inLayers() {
            return (strengthO * volumeO + strengthA * volumeA) / 1000;
        }
    }

    @Test
    void amountCharged() {
        agrees(tally.amounts().get(0).amountMillimoles().orElseThrow(), d -> d.charge * d.content * 10);
    }

    @Test
    void theory() {
        agrees(tally.theory().orElseThrow().products().get(0).massGrams(), Draw::theory);
    }

    @Test
    void pureMassOfALot() {
        agrees(tally.lots().get(0).pureGrams().orElseThrow(), d -> d.lotA * d.assayA);
    }

    @Test
    void crudeOverTheory() {
        agrees(tally.lots().get(0).overTheoryPercent().orElseThrow(), d -> 100 * d.lotA / d.theory());
    }

    @Test
    void sumOfTwoLots() {
        agrees(isolatedYield().massGrams(), Draw::isolated);
    }

    @Test
    void yieldOfBothLots() {
        agrees(isolatedYield().percent(), d -> 100 * d.isolated() / d.theory());
    }

    @Test
    void contentOfALayer() {
        agrees(content("A1"), d -> d.strengthA * d.volumeA / 1000);
    }

    @Test
    void sumOfLayersThatShareACalibration() {
        agrees(content("O1").plus(content("A1")), Draw::inLayers);
    }

    @Test
    void densityOfALayer() {
        agrees(tally.layer("A1").orElseThrow().densityGramsPerMillilitre().orElseThrow(), d -> d.massA / d.volumeA);
    }

    @Test
    void closure() {
        agrees(
                tally.closures().get(0).percent(),
                d -> 100 * (d.isolated() + d.strengthA * d.volumeA / 1000) / d.theory());
    }

    @Test
    void distributionRatio() {
        MeasuredValue organic = content("O1").over(volume("O1"));
        MeasuredValue aqueous = content("A1").over(volume("A1"));
        agrees(organic.over(aqueous), d -> d.strengthO / d.strengthA);
        assertEquals(
                organic.over(aqueous).standardUncertainty(),
                tally.evidence()
                        .reextractions()
                        .get(0)
                        .partition()
                        .standardUncertainty()
                        .orElseThrow(),
                1e-9);
    }

    @Test
    void internalStandardNmr() {
        // w = 0.9 mg × 1.1 / 1.1 mg; u of the spectrum 2 %, of each weighing 0.05 mg
        MeasuredValue fraction = book().row("isolated", "Lot", "C3", "Product", "P", "Stage", "crude", "Net", "1.00")
                .row("nmr-assays", "Sample", "C3", "Substance", "P", "Standard", "T", "Standard molar mass", "200")
                .but("nmr-assays", "Standard purity", "100")
                .but("nmr-assays", "Standard mass", "0.9")
                .but("nmr-assays", "Sample mass", "1.1")
                .but("nmr-assays", "Standard integral", "1")
                .but("nmr-assays", "Standard nuclei", "1")
                .but("nmr-assays", "Substance integral", "1.1")
                .but("nmr-assays", "Substance nuclei", "1")
                .but("nmr-assays", "Relative standard uncertainty", "2")
                .tally()
                .lots()
                .get(2)
                .productFraction()
                .orElseThrow();
        agrees(
                fraction,
                d -> 1.1
                        * (1 + 0.02 * d.random.nextGaussian())
                        * (0.9 + 0.05 * d.random.nextGaussian())
                        / (1.1 + 0.05 * d.random.nextGaussian()));
    }

    @Test
    void factorOfThreeRepeatsHoldsItsConfidence() {
        // the interval mean ± k·s/√3 with k for two degrees of freedom holds the truth as often as ± 2σ does: 95.45 %
        Random random = new Random(3);
        Readings readings = new Readings();
        double factor = readings.enter("mean of three", "g", 1, 1, 2, () -> "-").coverageFactor(2);
        int held = 0;
        for (int i = 0; i < DRAWS; i++) {
            double a = random.nextGaussian();
            double b = random.nextGaussian();
            double c = random.nextGaussian();
            double mean = (a + b + c) / 3;
            double s = Math.sqrt(((a - mean) * (a - mean) + (b - mean) * (b - mean) + (c - mean) * (c - mean)) / 2);
            held += Math.abs(mean) <= factor * s / Math.sqrt(3) ? 1 : 0;
        }
        assertEquals(0.9545, (double) held / DRAWS, 0.002);
    }

    private static void agrees(MeasuredValue result, ToDoubleFunction<Draw> equation) {
        Random random = new Random(1);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < DRAWS; i++) {
            double value = equation.applyAsDouble(new Draw(random));
            sum += value;
            squares += value * value;
        }
        double mean = sum / DRAWS;
        double spread = Math.sqrt(squares / DRAWS - mean * mean);
        assertEquals(mean, result.value(), 0.01 * Math.abs(mean));
        assertEquals(spread, result.standardUncertainty(), 0.05 * spread);
    }

    private ProductYield isolatedYield() {
        return tally.yields().get(0);
    }

    private MeasuredValue content(String layer) {
        return tally.layer(layer).orElseThrow().contents().get(0).massGrams().orElseThrow();
    }

    private MeasuredValue volume(String layer) {
        return tally.layer(layer).orElseThrow().volumeMillilitres().orElseThrow();
    }

    private static SmallBook book() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Assay", "99")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "consumed")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "104.00", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "12.00")
                .but("isolated", "Assay", "95")
                .but("isolated", "Relative standard uncertainty", "1.5")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "crude", "From", "O1", "Net", "4.00")
                .but("isolated", "Assay", "90")
                .but("isolated", "Relative standard uncertainty", "3");
        for (String layer : new String[] {"O1", "A1"}) {
            book.row("assays", "Sample", layer, "Substance", "P", "Method", "HPLC", "Unit", "mg/mL")
                    .but("assays", "Result", layer.equals("O1") ? "8" : "2")
                    .but("assays", "Relative standard uncertainty", "2");
        }
        return book;
    }
}
