package workuptally.speed;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.speed.FreshProcess.Cost;

/**
 * Largest ratios to reach, as shares of what another process takes.
 *
 * @param time of seconds
 * @param memory of peak sizes, if there is such a goal
 */
record Goal(double time, OptionalDouble memory) {
    private static final double MARGIN = 1.5;

    static Goal time(double time) {
        return new Goal(time, OptionalDouble.empty());
    }

    static Goal time(double time, double memory) {
        return new Goal(time, OptionalDouble.of(memory));
    }

    /** How long the other process has to run, at most, until it is known with a margin whether this goal is met, s. */
    double patience(Cost cost) {
        return MARGIN * cost.seconds() / time;
    }

    /** One word for each goal. A process that was stopped would have taken more, so that a goal met against it is met. */
    String verdict(Cost cost, Cost other) {
        String ofTime = verdict(cost.seconds() <= time * other.seconds(), other);
        return memory.isEmpty()
                ? ofTime
                : ofTime + ", " + verdict(cost.peakMegabytes() <= memory.getAsDouble() * other.peakMegabytes(), other);
    }

    private static String verdict(boolean met, Cost other) {
        return met || !other.stopped() ? verdict(met) : "not known";
    }

    static String verdict(boolean met) {
        return met ? "met" : "not met";
    }

    /** What the table says under "goal". */
    static String text(Optional<Goal> goal) {
        return goal.map(g -> "time " + g.time() + (g.memory.isPresent() ? ", memory " + g.memory.getAsDouble() : ""))
                .orElse("");
    }
}
