package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field;
import workuptally.model.Field.Entered;

/** Net mass by difference, or as typed. A missing tare is never replaced by an estimate. */
public final class NetMass {
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;

    public NetMass(Readings readings, InstrumentUncertainty uncertainty) {
        this.readings = readings;
        this.uncertainty = uncertainty;
    }

    /**
     * Gross − tare where both were entered, else the net mass typed.
     *
     * @param name what was weighed, for the budget
     * @return mass in g; empty where neither is there or gross is below tare
     */
    public Optional<MeasuredValue> of(String name, Field gross, Field tare, Field net) {
        if (gross instanceof Entered g && tare instanceof Entered t) {
            double value = g.value() - t.value();
            if (value < 0) {
                return Optional.empty();
            }
            return Optional.of(readings.enter(
                    "gross − tare of " + name,
                    "g",
                    value,
                    uncertainty.netMassGrams(g, t),
                    () -> g.place().inWords() + ", " + t.place().cell()));
        }
        if (gross.entered().isPresent()) {
            return Optional.empty();
        }
        return net.entered()
                .map(n -> readings.enter(
                        "net mass of " + name,
                        "g",
                        n.value(),
                        uncertainty.massGrams(n),
                        () -> n.place().inWords()));
    }

    /** Why {@link #of} gave nothing. */
    public static String whyMissing(Field gross, Field tare, Field net) {
        if (gross.isUnreadable() || tare.isUnreadable() || net.isUnreadable()) {
            return "a weighing cannot be read";
        }
        if (gross.entered().isPresent()) {
            return tare.entered().isPresent() ? "gross is below tare" : "tare not recorded";
        }
        return tare.entered().isPresent() ? "gross not recorded" : "not weighed";
    }

    /** True where a gross mass waits for its tare and nothing else. */
    public static boolean lacksOnlyTheTare(Field gross, Field tare) {
        return gross.entered().isPresent()
                && !tare.isUnreadable()
                && tare.entered().isEmpty();
    }
}
