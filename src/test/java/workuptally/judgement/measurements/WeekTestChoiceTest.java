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
import workuptally.judgement.measurements.WeekTestChoice.Choice;
import workuptally.judgement.measurements.WeekTestChoice.Questions;

/** The lines for the week against all choices of as many tests that there are, on random small weeks. */
class WeekTestChoiceTest {
    private static final int WEEKS = Integer.getInteger("choice.weeks", 200);
    private static final int LINES = 3;

    /** A run with open layers, some behind a rag or a look at the phase; a composite or two, and now and then a run beside it on one tare. */
    private static Questions invent(Random random) {
        List<Goal> goals = new ArrayList<>();
        List<Option> options = new ArrayList<>();
        int runs = random.nextInt(4) == 0 ? 2 : 1;
        Set<String> onOneTare = new LinkedHashSet<>();
        for (int r = 0; r < runs; r++) {
            int layers = 1 + random.nextInt(3);
            boolean rag = random.nextInt(4) == 0;
            List<String> labels = new ArrayList<>();
            for (int i = 1; i <= layers; i++) {
                String label = r + " A" + i;
                labels.add(label);
                Set<String> needs = new LinkedHashSet<>(Set.of(label));
                options.add(new Option("assay " + label, Set.of(label), 2));
                if (random.nextInt(4) == 0) {
                    options.add(new Option("residue " + label, Set.of(label), 1.5));
                }
                if (rag) {
                    needs.add(r + " R");
                }
                if (random.nextInt(4) == 0) {
                    needs.add("phase " + label);
                    options.add(new Option("drop " + label, Set.of("phase " + label), 1));
                }
                goals.add(new Goal(label, needs, 1));
            }
            if (rag) {
                options.add(new Option("assay " + r + " R", Set.of(r + " R"), 2));
            }
            if (labels.size() > 1 && random.nextBoolean()) {
                options.add(new Option("composite " + r, new LinkedHashSet<>(labels), 2.5));
            }
            onOneTare.add(labels.get(0));
        }
        if (runs > 1) {
            options.add(new Option("tare", onOneTare, 1));
        }
        return new Questions(goals, options);
    }

    private static int settled(List<Questions> week, List<Option> some) {
        Set<String> known = new LinkedHashSet<>();
        some.forEach(o -> known.addAll(o.covers()));
        return week.stream()
                .mapToInt(q -> TestChoice.reached(q.goals(), known).size())
                .sum();
    }

    private static int best(List<Questions> week, List<Option> all, int from, List<Option> some) {
        int best = settled(week, some);
        for (int i = from; i < all.size() && some.size() < LINES; i++) {
            List<Option> more = new ArrayList<>(some);
            more.add(all.get(i));
            best = Math.max(best, best(week, all, i + 1, more));
        }
        return best;
    }

    /** Names of a week are told apart by the run they stand in. */
    private static Questions named(Questions questions, int week) {
        return new Questions(
                questions.goals().stream()
                        .map(g -> new Goal(week + g.name(), named(g.needs(), week), g.weight()))
                        .toList(),
                questions.options().stream()
                        .map(o -> new Option(week + o.name(), named(o.covers(), week), o.cost()))
                        .toList());
    }

    private static Set<String> named(Set<String> names, int week) {
        Set<String> named = new LinkedHashSet<>();
        names.forEach(n -> named.add(week + n));
        return named;
    }

    @Test
    void threeLinesSettleAtLeastNineteenTwentiethsOfWhatAnyThreeTestsCould() {
        Random random = new Random(8);
        int chosen = 0;
        int exhaustive = 0;
        for (int w = 0; w < WEEKS; w++) {
            List<Questions> week = new ArrayList<>();
            for (int i = 2 + random.nextInt(2); i > 0; i--) {
                week.add(named(invent(random), i));
            }
            List<Choice> choices = WeekTestChoice.chosen(week, LINES);
            assertTrue(choices.size() <= LINES);
            List<Option> options = choices.stream().map(Choice::option).toList();
            assertEquals(options.size(), new LinkedHashSet<>(options).size());
            int settled = settled(week, options);
            // nothing is counted twice, and what is told to be settled is
            assertEquals(
                    settled, choices.stream().mapToInt(c -> c.settled().size()).sum());
            chosen += settled;
            exhaustive +=
                    best(week, week.stream().flatMap(q -> q.options().stream()).toList(), 0, List.of());
        }
        assertTrue(exhaustive > WEEKS, "nothing to choose");
        if (Boolean.getBoolean("choice.report")) {
            System.out.println("week: " + chosen + " of " + exhaustive);
        }
        assertTrue(chosen >= 0.95 * exhaustive, chosen + " of " + exhaustive);
    }

    @Test
    void aTestThatSettlesTwoRunsCountsOnceAndGoesBeforeTwoThatSettleOneEach() {
        Questions twoRuns = new Questions(
                List.of(new Goal("X A1", Set.of("X A1"), 1), new Goal("Y A1", Set.of("Y A1"), 1)),
                List.of(
                        new Option("X A1", Set.of("X A1"), 2),
                        new Option("Y A1", Set.of("Y A1"), 2),
                        new Option("vessel e-1", Set.of("X A1", "Y A1"), 1)));
        List<Choice> choices = WeekTestChoice.chosen(List.of(twoRuns), LINES);
        assertEquals(1, choices.size());
        assertEquals("vessel e-1", choices.get(0).option().name());
        assertEquals(List.of("X A1", "Y A1"), choices.get(0).settled());
    }
}
