package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.tally.amounts.Content;

/** Samples of layers A, B, C and D with invented masses of P, each with a standard uncertainty of 1 % unless it is a limit; hand arithmetic. */
class OverlappingSamplesTest {
    private static final List<String> ORDER = List.of("A", "B", "C", "D");

    private final Readings readings = new Readings();

    private CompositeSample found(String labels, double grams) {
        return found(labels, grams, Content.Rests.OWN_READING);
    }

    private CompositeSample found(String labels, double grams, Content.Rests rests) {
        MeasuredValue mass = readings.enter("P in " + labels, "g", grams, 0.01 * grams, () -> "Assays");
        return new CompositeSample(
                List.of(labels.split("")),
                new Content(
                        "P",
                        Content.Kind.MEASURED,
                        Optional.of(mass),
                        Optional.of(mass.times(5)),
                        OptionalDouble.of(mass.oneSidedUpperBound()),
                        OptionalDouble.empty(),
                        "HPLC of " + labels,
                        rests));
    }

    private CompositeSample below(String labels, double grams) {
        MeasuredValue half = readings.enter("P in " + labels, "g", grams / 2, grams / 3.4641, () -> "Assays");
        return new CompositeSample(
                List.of(labels.split("")),
                new Content(
                        "P",
                        Content.Kind.BOUND,
                        Optional.of(half),
                        Optional.of(half.times(5)),
                        OptionalDouble.of(grams),
                        OptionalDouble.empty(),
                        "HPLC of " + labels,
                        Content.Rests.OWN_READING));
    }

    private static List<String> names(List<CompositeSample> samples) {
        return samples.stream().map(CompositeSample::name).toList();
    }

    private CompositeSample together(CompositeSample... samples) {
        return new OverlappingSamples(List.of(samples)).together(ORDER, readings);
    }

    @Test
    void samplesThatShareALayerAreOneGroup() {
        List<OverlappingSamples> groups = OverlappingSamples.of(
                List.of(found("AB", 0.06), found("D", 0.01), found("BC", 0.02), found("C", 0.01)));
        assertEquals(2, groups.size());
        assertEquals(List.of("A + B", "B + C", "C"), names(groups.get(0).samples()));
        assertEquals(List.of("D"), names(groups.get(1).samples()));
    }

    @Test
    void theLeastCoverCountsWhatTheLayersHoldAtMost() {
        // A + BC = 0.010 + 0.025 g, less than AB + BC = 0.085 g
        List<CompositeSample> all = List.of(found("AB", 0.06), found("BC", 0.025), found("A", 0.01));
        assertEquals(
                List.of("A", "B + C"),
                names(OverlappingSamples.leastCover(List.of("A", "B", "C"), all, CompositeSample::estimateGrams)
                        .orElseThrow()));
        assertTrue(OverlappingSamples.leastCover(List.of("A", "D"), all, CompositeSample::estimateGrams)
                .isEmpty());
    }

    @Test
    void samplesApartCountWhatTheLayersHoldAtLeast() {
        // AB 0.060 g, more than A + BC = 0.035 g
        List<CompositeSample> all = List.of(found("A", 0.01), found("AB", 0.06), found("BC", 0.025));
        assertEquals(
                List.of("A + B"),
                names(OverlappingSamples.mostApart(List.of("A", "B", "C"), all, CompositeSample::measuredGrams)));
        assertEquals(List.of(), OverlappingSamples.mostApart(List.of("D"), all, CompositeSample::measuredGrams));
    }

    @Test
    void theMiddleOfWhatIsPossibleCounts() {
        // AB 0.060 g at least, with BC, 0.025 g, beside it 0.085 g at most: 0.0725 ± 0.0125/√3 g and parts of 1 %
        Content both = together(found("AB", 0.06), found("BC", 0.025)).together();
        assertEquals(0.0725, both.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(5 * 0.0725, both.amountMillimoles().orElseThrow().value(), 1e-12);
        // u of AB counts whole and of BC half: √(0.0072169² + 0.0006² + 0.000125²) g
        assertEquals(0.0072429, both.massGrams().orElseThrow().standardUncertainty(), 1e-7);
        assertEquals(0.085 + 1.645 * 0.01 * 0.085, both.upperBoundGrams().orElseThrow(), 1e-9);
        assertEquals("HPLC of AB and HPLC of BC", both.evidence());
        assertEquals(Content.Kind.MEASURED, both.kind());
    }

    @Test
    void nonDetectBesideAResultMayHoldItsLimit() {
        // 0.060 g at least, 0.020 g more at most
        Content both = together(found("AB", 0.06), below("BC", 0.02)).together();
        assertEquals(0.07, both.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(0.06 * 1.01645 + 0.02, both.upperBoundGrams().orElseThrow(), 1e-9);
    }

    @Test
    void nonDetectsAloneCountHalfEach() {
        CompositeSample both = together(below("AB", 0.02), below("BC", 0.03));
        assertEquals("A + B + C", both.name());
        assertEquals(Content.Kind.BOUND, both.together().kind());
        assertEquals(0.025, both.together().massGrams().orElseThrow().value(), 1e-12);
        assertEquals(0.05, both.together().upperBoundGrams().orElseThrow(), 1e-12);
    }

    @Test
    void ofDisputedSamplesTheLargerSideCounts() {
        // ABC 0.030 g, of which AB alone holds 0.060 g: the least cover is ABC, the most apart AB
        Content disputed = together(
                        found("ABC", 0.03, Content.Rests.DISPUTED_READINGS),
                        found("AB", 0.06, Content.Rests.DISPUTED_READINGS))
                .together();
        assertEquals(0.06, disputed.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(0.06 * 1.01645, disputed.upperBoundGrams().orElseThrow(), 1e-9);
        assertEquals(Content.Rests.DISPUTED_READINGS, disputed.rests());
        // A + BC 0.085 g cover what AB alone, 0.070 g, holds at least
        Content larger = together(
                        found("A", 0.06, Content.Rests.DISPUTED_READINGS), found("AB", 0.07), found("BC", 0.025))
                .together();
        assertEquals(0.085, larger.massGrams().orElseThrow().value(), 1e-12);
    }

    @Test
    void aSingleSampleIsItself() {
        CompositeSample only = found("AB", 0.06);
        assertEquals(only, together(only));
    }

    /** AB 0.0600 ± 0.0006 g; twice √(0.0006² + u²) of A alone is allowed: 0.00172 g for 0.0618 g, 0.00174 g for 0.0617 g. */
    @ParameterizedTest
    @CsvSource({"0.0617, false", "0.0619, true", "0.0500, false"})
    void aPartThatHoldsMoreThanAllGainsaysThem(double grams, boolean gainsaid) {
        CompositeSample all = found("AB", 0.06);
        assertEquals(gainsaid, all.isGainsaidBy(List.of(all, found("A", grams)), 2));
    }

    /** A 0.0300 g and B beside AB 0.0600 g: 2·√(0.0003² + u(B)² + 0.0006²) = 0.00145 g are allowed. */
    @ParameterizedTest
    @CsvSource({"0.0287, false", "0.0284, true"})
    void partsThatHoldLessThanAllGainsayThem(double grams, boolean gainsaid) {
        CompositeSample all = found("AB", 0.06);
        assertEquals(gainsaid, all.isGainsaidBy(List.of(found("A", 0.03), found("B", grams), all), 2));
    }

    @Test
    void nothingGainsaysASampleByItself() {
        CompositeSample all = found("AB", 0.06);
        assertFalse(all.isGainsaidBy(List.of(all, found("C", 0.5)), 2));
    }

    @Test
    void whatOthersHoldIsTakenAway() {
        // 0.06 × 1.01645 g at most, of which A has 0.02 × (1 − 0.01645) g at least
        CompositeSample all = found("AB", 0.06);
        double left = 0.06 * 1.01645;
        assertEquals(
                left - 0.02 * (1 - 0.01645), all.leftAtMostGrams(List.of("B"), List.of(all, found("A", 0.02))), 1e-12);
        assertEquals(left, all.leftAtMostGrams(List.of("A", "B"), List.of(found("A", 0.02))), 1e-12);
        assertEquals(left, all.leftAtMostGrams(List.of("B"), List.of(below("A", 0.02))), 1e-12);
        assertEquals(
                left,
                all.leftAtMostGrams(List.of("B"), List.of(found("A", 0.02, Content.Rests.DISPUTED_READINGS))),
                1e-12);
        assertEquals(0, all.leftAtMostGrams(List.of("B"), List.of(found("A", 0.09))), 0);
    }

    @Test
    void resultThatIsStillBelowTheLimitIsLowerByItsReach() {
        // 1000 × 0.40 g / (100 mL × (1 + 1.645 × √(0.02² + 0.01²)))
        MeasuredValue volume = readings.enter("V", "mL", 100, 1, () -> "Layers");
        assertEquals(3.85809, CompositeSample.mustBeBelowMilligramsPerMillilitre(0.40, volume, 0.02), 1e-5);
    }
}
