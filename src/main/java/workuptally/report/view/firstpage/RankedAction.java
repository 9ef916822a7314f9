package workuptally.report.view.firstpage;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An action with what it is ranked by.
 *
 * @param rank {@link #DEADLY}, 0 harm, 1 possible harm, 2 a stop, 3 a hold
 * @param action the action
 * @param shortly what is wrong, in a word or two
 * @param worthIt what can be won most easily, for a line that it shares with others; empty for nothing
 * @param gramsByRun product at stake in each run, g; empty where it is not about product
 */
record RankedAction(int rank, UrgentAction action, String shortly, String worthIt, Map<String, Double> gramsByRun) {
    /** The rank of deadly gas, fire and explosion. */
    static final int DEADLY = -1;

    /** Copies the map in its order. */
    RankedAction {
        gramsByRun = Collections.unmodifiableMap(new LinkedHashMap<>(gramsByRun));
    }

    /** One from which nothing is to be won. */
    RankedAction(int rank, UrgentAction action, String shortly, Map<String, Double> gramsByRun) {
        this(rank, action, shortly, "", gramsByRun);
    }

    /** Product at stake, g; what concerns no run stands before what does. */
    double grams() {
        return action.runs().isEmpty() && rank < 2
                ? Double.MAX_VALUE
                : gramsByRun.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
