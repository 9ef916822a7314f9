package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.tally.layers.LayerIdentity.Expected;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerIdentity.Verdict;

class LayerIdentityFiguresTest {
    private static final double EPSILON = 1e-12;
    private static final Expected LIGHT = new Expected(0.86, 0.90);
    private static final Expected HEAVY = new Expected(1.00, 1.10);
    private static final Step STEP = SmallBook.reaction()
            .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
            .run()
            .steps()
            .get(0);

    private static LayerIdentity identity(Layer.Phase recorded, Optional<MeasuredValue> density) {
        return new LayerIdentity(
                "O1", STEP, recorded, density, LIGHT, HEAVY, Verdict.CONSISTENT, PositionCheck.OPEN, Optional.empty());
    }

    @Test
    void aDensityLiesOutsideByItsDistanceFromTheNearerEnd() {
        assertEquals(0, LIGHT.distance(0.86), 0);
        assertEquals(0, LIGHT.distance(0.90), 0);
        assertEquals(0.06, LIGHT.distance(0.80), EPSILON);
        assertEquals(0.10, LIGHT.distance(1.00), EPSILON);
    }

    @Test
    void theGapBetweenTwoExpectationsIsTheSameEitherWay() {
        assertEquals(0.10, LIGHT.gap(HEAVY), EPSILON);
        assertEquals(0.10, HEAVY.gap(LIGHT), EPSILON);
        assertEquals(0, LIGHT.gap(new Expected(0.89, 1.2)), 0);
    }

    @Test
    void theDenserPhaseIsBelowWhereTheyDoNotOverlap() {
        assertEquals(Optional.of(Layer.Phase.AQUEOUS), LayerIdentity.lower(LIGHT, HEAVY));
        assertEquals(Optional.of(Layer.Phase.ORGANIC), LayerIdentity.lower(HEAVY, LIGHT));
        assertEquals(Optional.empty(), LayerIdentity.lower(LIGHT, new Expected(0.89, 1.2)));
        assertEquals(
                Optional.of(Layer.Phase.AQUEOUS),
                identity(Layer.Phase.ORGANIC, Optional.empty()).lowerExpected());
    }

    @Test
    void theRecordNamesItsExpectation() {
        assertEquals(LIGHT, identity(Layer.Phase.ORGANIC, Optional.empty()).expectedAsRecorded());
        assertEquals(HEAVY, identity(Layer.Phase.AQUEOUS, Optional.empty()).expectedAsRecorded());
    }

    @Test
    void aMeasuredDensityFitsEitherWithinSoManyUncertainties() {
        // 0.80 lies 0.06 below, 0.94 lies 0.04 above the lighter and 0.06 below the heavier; u 0.02
        assertTrue(fits(0.80, 3.001));
        assertFalse(fits(0.80, 2.999));
        assertTrue(fits(0.94, 2.001));
        assertFalse(fits(0.94, 1.999));
        assertTrue(fits(1.14, 2.001));
        assertFalse(fits(1.14, 1.999));
        assertTrue(identity(Layer.Phase.ORGANIC, Optional.empty()).fitsEither(0));
    }

    private static boolean fits(double density, double uncertainties) {
        MeasuredValue measured = new Readings().enter("density", "g/mL", density, 0.02, () -> "");
        return identity(Layer.Phase.ORGANIC, Optional.of(measured)).fitsEither(uncertainties);
    }
}
