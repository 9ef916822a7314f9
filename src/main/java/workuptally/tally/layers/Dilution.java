package workuptally.tally.layers;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.model.Step;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;

/** What the water of a step makes of a strong acid: it counts as dilute from the strength on that the table of strengths names. */
final class Dilution {
    private static final String WATER = "water";

    private final Reactivity reactivity;

    Dilution(Reactivity reactivity) {
        this.reactivity = reactivity;
    }

    /** Water that a step brings, mL: none where it adds something else, not told where its volume is not. */
    static OptionalDouble waterMillilitres(Step step, List<Present> added) {
        if (added.stream().noneMatch(p -> p.is(WATER))) {
            return OptionalDouble.of(0);
        }
        return step.added()
                .volumeMillilitres()
                .entered()
                .map(v -> OptionalDouble.of(v.value() * step.added().portionCount()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * A strong acid counts at the strength that the water of the step leaves it at most, the water it came with left out; as dilute where
     * either amount is not told.
     */
    Membership weakened(Present present, OptionalDouble waterMillilitres) {
        OptionalDouble molarMass = present.part()
                .substance()
                .flatMap(s -> s.solute())
                .map(s -> OptionalDouble.of(s.molarMassGramsPerMole()))
                .orElse(OptionalDouble.empty());
        double percent = 0;
        double molesPerLitre = 0;
        if (waterMillilitres.isPresent() && present.millimoles().isPresent() && molarMass.isPresent()) {
            double grams = present.millimoles().getAsDouble() * molarMass.getAsDouble() / 1000;
            percent = 100 * grams / (grams + waterMillilitres.getAsDouble());
            molesPerLitre = present.millimoles().getAsDouble() / waterMillilitres.getAsDouble();
        }
        Membership dilute = reactivity.membership(
                present.part().row().orElseThrow(), OptionalDouble.of(percent), OptionalDouble.of(molesPerLitre));
        boolean still = present.membership().classes().containsAll(dilute.classes());
        return still ? dilute : present.membership();
    }
}
