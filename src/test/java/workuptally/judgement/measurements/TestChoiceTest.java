package workuptally.judgement.measurements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import workuptally.judgement.measurements.TestChoice.Goal;
import workuptally.judgement.measurements.TestChoice.Option;

/** The greedy choice of tests against all choices there are, on random small runs. */
class TestChoiceTest {
    private static final int RUNS = Integer.getInteger("choice.runs", 300);

    /** Layers that need their own assay, some a rag's or a look at the phase too; single assays, drops and a composite or two. */
    private static void invent(Random random, List<Goal> goals, List<Option> options) {
        int layers = 2 + random.nextInt(4);
        boolean rag = random.nextInt(3) == 0;
        List<String> labels = new ArrayList<>();
        for (int i = 1; i <= layers; i++) {
            String label = "A" + i;
            labels.add(label);
            Set<String> needs = new LinkedHashSet<>();
            if (random.nextInt(4) > 0) {
                needs.add(label);
                options.add(new Option(label, Set.of(label), 2));
            }
            if (rag) {
                needs.add("R");
            }
            if (needs.isEmpty() || random.nextInt(3) == 0) {
                needs.add("phase " + label);
                options.add(new Option("drop " + label, Set.of("phase " + label), 1));
            }
            goals.add(new Goal(label, needs, 1));
        }
        if (rag) {
            options.add(new Option("R", Set.of("R"), 2));
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            Set<String> some = new LinkedHashSet<>();
            labels.stream().filter(l -> random.nextBoolean()).forEach(some::add);
            if (some.size() > 1) {
                options.add(new Option("composite " + some, some, 2.5));
            }
        }
    }

    private static double best(List<Goal> goals, List<Option> options, double mostCost) {
        double best = 0;
        for (int chosen = 0; chosen < 1 << options.size(); chosen++) {
            List<Option> some = new ArrayList<>();
            double cost = 0;
            for (int i = 0; i < options.size(); i++) {
                if ((chosen >> i & 1) == 1) {
                    some.add(options.get(i));
                    cost += options.get(i).cost();
                }
            }
            if (cost <= mostCost) {
                best = Math.max(best, weight(goals, some));
            }
        }
        return best;
    }

    /** What is reached by some tests. */
    private static double weight(List<Goal> goals, List<Option> chosen) {
        Set<String> known = new LinkedHashSet<>();
        chosen.forEach(o -> known.addAll(o.covers()));
        return goals.stream()
                .filter(g -> known.containsAll(g.needs()))
                .mapToDouble(Goal::weight)
                .sum();
    }

    @Test
    void greedySettlesAtLeastNineteenTwentiethsOfWhatAnyChoiceCould() {
        Random random = new Random(5);
        double greedy = 0;
        double exhaustive = 0;
        int complete = 0;
        for (int run = 0; run < RUNS; run++) {
            List<Goal> goals = new ArrayList<>();
            List<Option> options = new ArrayList<>();
            invent(random, goals, options);
            for (double cost : new double[] {2, 4, 6, 8}) {
                List<Option> chosen = TestChoice.of(goals, options, cost);
                assertTrue(chosen.stream().mapToDouble(Option::cost).sum() <= cost);
                greedy += weight(goals, chosen);
                exhaustive += best(goals, options, cost);
            }
            // followed to its end nothing stays open that could be settled
            complete += weight(goals, TestChoice.of(goals, options, 1e9)) == goals.size() ? 1 : 0;
        }
        assertTrue(exhaustive > RUNS, "nothing to choose");
        assertTrue(greedy >= 0.95 * exhaustive, greedy + " of " + exhaustive);
        assertEquals(RUNS, complete);
    }

    @Test
    void theAssayThatHoldsAllLayersComesFirst() {
        List<Goal> goals = List.of(
                new Goal("A1", Set.of("R1"), 1), new Goal("A2", Set.of("R1"), 1), new Goal("A3", Set.of("A3"), 1));
        List<Option> options = List.of(new Option("A3", Set.of("A3"), 2), new Option("R1", Set.of("R1"), 2));
        assertEquals(
                List.of("R1", "A3"),
                TestChoice.of(goals, options, 1e9).stream().map(Option::name).toList());
    }

    @Test
    void whatNoTestReachesCostsNothing() {
        List<Goal> goals = List.of(new Goal("A1", Set.of("A1", "lot"), 1));
        assertEquals(List.of(), TestChoice.of(goals, List.of(new Option("A1", Set.of("A1"), 2)), 1e9));
    }
}
