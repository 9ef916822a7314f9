package workuptally.tally.suspects;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * What an entry does to the checks of a run, by one small change of it.
 *
 * @param value the number typed
 * @param nudge the small change, in the unit of the field
 * @param nudged the checks with it
 */
record Line(double value, double nudge, Map<String, Check> nudged) {
    private static final double UNMOVED = 1e-9;

    /** True where a check that is off moves with the entry. */
    boolean moves(Map<String, Check> typed) {
        return typed.values().stream().anyMatch(c -> c.off() != 0 && Math.abs(slope(c)) > UNMOVED);
    }

    /** Standard uncertainties that the check moves for the small change. */
    private double slope(Check check) {
        Check other = nudged.get(check.name());
        return other == null ? 0 : (other.residual() - check.residual()) / check.standardUncertainty();
    }

    /** Moves the checks as a change of the entry would. */
    void move(Map<String, Check> checks, Map<String, Check> typed, double change) {
        checks.replaceAll((name, check) -> {
            Check from = typed.get(name);
            Check other = nudged.get(name);
            if (from == null || other == null) {
                return check;
            }
            Check moved = from.along(other, change / nudge);
            return new Check(
                    name,
                    check.residual() + moved.residual() - from.residual(),
                    check.low() + moved.low() - from.low(),
                    check.high() + moved.high() - from.high(),
                    moved.standardUncertainty(),
                    moved.scale());
        });
    }

    /**
     * The number that would settle what is off: by least squares over the checks that are off, each to the middle of its window and weighed
     * by the width of that.
     *
     * @param typed the checks with the number typed
     */
    OptionalDouble settling(Map<String, Check> typed) {
        double product = 0;
        double square = 0;
        for (Check check : typed.values()) {
            Check other = nudged.get(check.name());
            if (check.off() != 0 && other != null) {
                double slope = (other.fromMiddle() - check.fromMiddle()) / check.width();
                product -= slope * check.fromMiddle() / check.width();
                square += slope * slope;
            }
        }
        return square > 0 ? OptionalDouble.of(value + nudge * product / square) : OptionalDouble.empty();
    }
}
