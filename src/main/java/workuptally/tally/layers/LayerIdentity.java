package workuptally.tally.layers;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Step;

/**
 * Which phase a layer is by its density, and whether its position agrees.
 *
 * <p>A label is never changed; this says what the weighing and the volume support.
 *
 * @param label layer label
 * @param step the contact that gave it
 * @param recorded organic or aqueous, as recorded
 * @param densityGramsPerMillilitre net mass over volume, g/mL; empty where one of them is missing
 * @param expectedOrganic density expected of the organic phase of the contact
 * @param expectedAqueous density expected of the aqueous phase of the contact
 * @param verdict what the density says
 * @param position whether the recorded position agrees with the densities
 * @param lower phase that lies below: by both measured densities, else by those expected; empty where they do not tell
 */
public record LayerIdentity(
        String label,
        Step step,
        Layer.Phase recorded,
        Optional<MeasuredValue> densityGramsPerMillilitre,
        Expected expectedOrganic,
        Expected expectedAqueous,
        Verdict verdict,
        PositionCheck position,
        Optional<Layer.Phase> lower) {

    /** The expectation for the phase that the record names. */
    public Expected expectedAsRecorded() {
        return recorded == Layer.Phase.ORGANIC ? expectedOrganic : expectedAqueous;
    }

    /** True where the density lies within so many u of one expectation or the other; also true where nothing was measured. */
    public boolean fitsEither(double standardUncertainties) {
        return densityGramsPerMillilitre
                .map(d -> {
                    double reach = standardUncertainties * d.standardUncertainty();
                    return expectedOrganic.distance(d.value()) <= reach || expectedAqueous.distance(d.value()) <= reach;
                })
                .orElse(true);
    }

    /** The phase expected below; empty where the two expectations overlap. */
    public Optional<Layer.Phase> lowerExpected() {
        return lower(expectedOrganic, expectedAqueous);
    }

    static Optional<Layer.Phase> lower(Expected organic, Expected aqueous) {
        if (organic.gap(aqueous) == 0) {
            return Optional.empty();
        }
        boolean organicBelow = organic.lowGramsPerMillilitre() > aqueous.highGramsPerMillilitre();
        return Optional.of(organicBelow ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS);
    }

    /**
     * Densities that a phase can have: with and without the solutes whose phase is not known.
     *
     * @param lowGramsPerMillilitre low end, g/mL
     * @param highGramsPerMillilitre high end, g/mL
     */
    public record Expected(double lowGramsPerMillilitre, double highGramsPerMillilitre) {
        /** How far a density lies outside, g/mL; 0 within. */
        public double distance(double gramsPerMillilitre) {
            return Math.max(
                    0,
                    Math.max(lowGramsPerMillilitre - gramsPerMillilitre, gramsPerMillilitre - highGramsPerMillilitre));
        }

        /** Gap between two expectations, g/mL; 0 where they overlap. */
        double gap(Expected other) {
            return Math.max(
                    0,
                    Math.max(
                            lowGramsPerMillilitre - other.highGramsPerMillilitre,
                            other.lowGramsPerMillilitre - highGramsPerMillilitre));
        }
    }

    /** What the density says about the recorded phase. */
    public enum Verdict {
        /** It fits the recorded phase and not the other. */
        CONSISTENT,
        /** It fits the other phase and not the recorded one. */
        SWAPPED,
        /** It fits both or neither, or the two phases are too alike. */
        CANNOT_TELL,
        /** Mass or volume is missing. */
        NOT_MEASURED
    }

    /** Whether the denser layer was below. */
    public enum PositionCheck {
        AGREES,
        CONTRADICTS,
        /** No position was recorded, or nothing tells which layer is denser. */
        OPEN
    }
}
