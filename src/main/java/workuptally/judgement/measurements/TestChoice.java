package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which tests to make, one after the other: at each turn the few tests that complete goals at the best ratio of their weight to the cost.
 *
 * <p>A goal needs all its needs, so that single tests can be worth nothing by themselves; what is weighed is, for each open goal, the
 * cheapest tests that complete it, and what else these complete. Greedy, since the exact choice grows with the power set.
 */
public final class TestChoice {
    /** A look-ahead of so many tests for one goal is enough at a bench. */
    private static final int MOST_FOR_A_GOAL = 6;

    private TestChoice() {}

    /**
     * Something that is settled when all its needs are known.
     *
     * @param name for example a layer
     * @param needs what has to be known
     * @param weight what it is worth, above 0
     */
    public record Goal(String name, Set<String> needs, double weight) {}

    /**
     * A test.
     *
     * @param name what it is
     * @param covers needs that it makes known
     * @param cost above 0
     */
    public record Option(String name, Set<String> covers, double cost) {}

    /** The tests in the order in which to make them, until no goal that can be reached is open, or the cost is spent. */
    public static List<Option> of(List<Goal> goals, List<Option> options, double mostCost) {
        List<Option> chosen = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        double spent = 0;
        while (true) {
            Optional<Way> best = next(goals, options, known, mostCost - spent, Integer.MAX_VALUE);
            if (best.isEmpty()) {
                return chosen;
            }
            for (Option option : best.get().tests()) {
                chosen.add(option);
                known.addAll(option.covers());
                spent += option.cost();
            }
        }
    }

    /**
     * Some tests that complete goals.
     *
     * @param tests in the order in which to make them
     * @param gained weight of the goals that they complete
     */
    record Way(List<Option> tests, double gained) {
        double cost() {
            return tests.stream().mapToDouble(Option::cost).sum();
        }

        double perCost() {
            return gained / cost();
        }
    }

    /**
     * The tests to make next, those that gain most for their cost; empty where nothing more can be completed.
     *
     * @param known what is known already
     * @param mostCost what they may cost
     * @param mostTests how many they may be
     */
    static Optional<Way> next(
            List<Goal> goals, List<Option> options, Set<String> known, double mostCost, int mostTests) {
        Way best = null;
        for (Goal goal : goals) {
            Set<String> missing = new LinkedHashSet<>(goal.needs());
            missing.removeAll(known);
            if (missing.isEmpty()) {
                continue;
            }
            for (List<Option> tests : completing(missing, options)) {
                Way way = new Way(tests, gained(goals, tests, known));
                boolean allowed = tests.size() <= mostTests && way.cost() <= mostCost;
                if (allowed && (best == null || way.perCost() > best.perCost() * (1 + 1e-9))) {
                    best = way;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Names of the goals of which everything is known, in order. */
    static List<String> reached(List<Goal> goals, Set<String> known) {
        return goals.stream()
                .filter(g -> known.containsAll(g.needs()))
                .map(Goal::name)
                .toList();
    }

    private static double gained(List<Goal> goals, List<Option> tests, Set<String> known) {
        Set<String> then = new LinkedHashSet<>(known);
        tests.forEach(t -> then.addAll(t.covers()));
        return goals.stream()
                .filter(g -> !known.containsAll(g.needs()) && then.containsAll(g.needs()))
                .mapToDouble(Goal::weight)
                .sum();
    }

    /** Ways to complete a goal: from each test that helps, on with the one that covers most for its cost. */
    private static List<List<Option>> completing(Set<String> missing, List<Option> options) {
        List<List<Option>> ways = new ArrayList<>();
        for (Option first : options) {
            if (first.covers().stream().noneMatch(missing::contains)) {
                continue;
            }
            List<Option> tests = new ArrayList<>(List.of(first));
            Set<String> rest = new LinkedHashSet<>(missing);
            rest.removeAll(first.covers());
            while (!rest.isEmpty() && tests.size() < MOST_FOR_A_GOAL) {
                Option next = null;
                double most = 0;
                for (Option option : options) {
                    double covered =
                            option.covers().stream().filter(rest::contains).count() / option.cost();
                    if (covered > most) {
                        most = covered;
                        next = option;
                    }
                }
                if (next == null) {
                    break;
                }
                tests.add(next);
                rest.removeAll(next.covers());
            }
            if (rest.isEmpty()) {
                ways.add(tests);
            }
        }
        return ways;
    }
}
