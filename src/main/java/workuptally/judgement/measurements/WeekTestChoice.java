package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.measurements.TestChoice.Goal;
import workuptally.judgement.measurements.TestChoice.Option;
import workuptally.judgement.measurements.TestChoice.Way;

/**
 * The few tests that tell most about all runs of a book together, what one of them settles in several runs counted once.
 *
 * <p>Runs have a test in common where a vessel of both lacks its tare; such runs are looked at as one. At each turn the tests are taken that
 * complete most layers for their cost, as long as they fit into what is left of the lines. Only where something was taken the next turn
 * looks again, so that the work grows with the number of runs. Of the choice by cost and the one by lines the better is kept.
 */
public final class WeekTestChoice {
    private WeekTestChoice() {}

    /**
     * The tests, in the order in which to make them.
     *
     * @param runs open layers of the runs
     * @param most how many tests at most
     */
    public static List<WeekTest> of(List<OpenLayers> runs, int most) {
        List<Group> groups = groups(runs);
        return chosen(groups.stream().map(Group::questions).toList(), most).stream()
                .map(choice -> groups.get(choice.group()).told(choice))
                .toList();
    }

    /**
     * What is asked about one run, or some runs with a test in common.
     *
     * @param goals layers to settle
     * @param options tests
     */
    record Questions(List<Goal> goals, List<Option> options) {}

    /**
     * A test that was chosen.
     *
     * @param group which of the questions it answers, from 0
     * @param option the test
     * @param settled names of the goals that it completes, with those taken before
     */
    record Choice(int group, Option option, List<String> settled) {}

    static List<Choice> chosen(List<Questions> all, int most) {
        List<Choice> byCost = chosen(all, most, true);
        List<Choice> byLine = chosen(all, most, false);
        double more = weight(byLine) - weight(byCost);
        return more > 0 || more == 0 && cost(byLine) < cost(byCost) ? byLine : byCost;
    }

    private static int weight(List<Choice> choices) {
        return choices.stream().mapToInt(c -> c.settled().size()).sum();
    }

    private static double cost(List<Choice> choices) {
        return choices.stream().mapToDouble(c -> c.option().cost()).sum();
    }

    private static List<Choice> chosen(List<Questions> all, int most, boolean byCost) {
        List<Set<String>> known = new ArrayList<>();
        List<Optional<Way>> next = new ArrayList<>();
        for (Questions questions : all) {
            known.add(new LinkedHashSet<>());
            next.add(next(questions, Set.of(), most, byCost));
        }
        List<Choice> chosen = new ArrayList<>();
        while (chosen.size() < most) {
            int left = most - chosen.size();
            int best = -1;
            for (int i = 0; i < all.size(); i++) {
                if (next.get(i).filter(w -> w.tests().size() > left).isPresent()) {
                    next.set(i, next(all.get(i), known.get(i), left, byCost));
                }
                boolean better = next.get(i).isPresent()
                        && (best < 0
                                || worth(next.get(i).get(), byCost)
                                        > worth(next.get(best).get(), byCost));
                best = better ? i : best;
            }
            if (best < 0) {
                return chosen;
            }
            for (Option option : next.get(best).get().tests()) {
                List<String> before = TestChoice.reached(all.get(best).goals(), known.get(best));
                known.get(best).addAll(option.covers());
                List<String> settled =
                        new ArrayList<>(TestChoice.reached(all.get(best).goals(), known.get(best)));
                settled.removeAll(before);
                chosen.add(new Choice(best, option, settled));
            }
            next.set(best, next(all.get(best), known.get(best), most - chosen.size(), byCost));
        }
        return chosen;
    }

    private static double worth(Way way, boolean byCost) {
        return byCost ? way.perCost() : way.gained() / way.tests().size();
    }

    /** By lines every test counts the same, and the cost decides between equals. */
    private static Optional<Way> next(Questions questions, Set<String> known, int most, boolean byCost) {
        List<Option> options = byCost
                ? questions.options()
                : questions.options().stream()
                        .map(o -> new Option(o.name(), o.covers(), 1 + o.cost() / COST_DECIDES_LAST))
                        .toList();
        return TestChoice.next(questions.goals(), options, known, Double.MAX_VALUE, most)
                .map(way -> new Way(
                        way.tests().stream()
                                .map(t -> questions.options().stream()
                                        .filter(o -> o.name().equals(t.name()))
                                        .findFirst()
                                        .orElseThrow())
                                .toList(),
                        way.gained()));
    }

    private static final double COST_DECIDES_LAST = 1000;

    /** Runs that have a vessel without a tare in common, each other run by itself. */
    private static List<Group> groups(List<OpenLayers> runs) {
        Map<String, Group> byVessel = new LinkedHashMap<>();
        List<Group> groups = new ArrayList<>();
        for (OpenLayers run : runs) {
            if (run.goals().isEmpty()) {
                continue;
            }
            Group group = new Group();
            Set<String> vessels = new LinkedHashSet<>();
            for (Option option : run.options()) {
                String vessel = run.vessel(option).toLowerCase(Locale.ROOT);
                if (!vessel.isEmpty()) {
                    vessels.add(vessel);
                }
            }
            for (String vessel : vessels) {
                Group other = byVessel.get(vessel);
                if (other != null && other != group) {
                    other.runs.forEach(group::add);
                    groups.remove(other);
                    byVessel.replaceAll((v, g) -> g == other ? group : g);
                }
                byVessel.put(vessel, group);
            }
            group.add(run);
            groups.add(group);
        }
        return groups;
    }

    /** Runs whose tests are chosen together. */
    private static final class Group {
        private final List<OpenLayers> runs = new ArrayList<>();
        private final Map<String, OpenLayers> runOfOption = new LinkedHashMap<>();
        private final Map<String, NextTest> tests = new LinkedHashMap<>();

        void add(OpenLayers run) {
            runs.add(run);
        }

        Questions questions() {
            List<Goal> goals = new ArrayList<>();
            Map<String, Option> options = new LinkedHashMap<>();
            for (OpenLayers run : runs) {
                String prefix = run.run() + " ";
                run.goals().forEach(g -> goals.add(new Goal(prefix + g.name(), named(prefix, g.needs()), g.weight())));
                for (Option option : run.options()) {
                    String vessel = run.vessel(option).toLowerCase(Locale.ROOT);
                    String name = vessel.isEmpty() ? prefix + option.name() : "vessel " + vessel;
                    Option own = new Option(name, named(prefix, option.covers()), option.cost());
                    options.merge(name, own, Group::together);
                    runOfOption.putIfAbsent(name, run);
                    tests.putIfAbsent(name, run.test(option));
                }
            }
            return new Questions(goals, List.copyOf(options.values()));
        }

        private static Set<String> named(String prefix, Set<String> names) {
            Set<String> named = new LinkedHashSet<>();
            names.forEach(n -> named.add(prefix + n));
            return named;
        }

        private static Option together(Option one, Option other) {
            Set<String> covers = new LinkedHashSet<>(one.covers());
            covers.addAll(other.covers());
            return new Option(one.name(), covers, one.cost());
        }

        WeekTest told(Choice choice) {
            OpenLayers first = runOfOption.get(choice.option().name());
            Set<String> ids = new LinkedHashSet<>(Set.of(first.run()));
            List<String> own = new ArrayList<>();
            List<String> others = new ArrayList<>();
            double grams = 0;
            for (OpenLayers run : runs) {
                String prefix = run.run() + " ";
                List<String> settled = choice.settled().stream()
                        .filter(name -> name.startsWith(prefix))
                        .map(name -> name.substring(prefix.length()))
                        .toList();
                if (!settled.isEmpty()) {
                    ids.add(run.run());
                    (run == first ? own : others)
                            .addAll(
                                    run == first
                                            ? settled
                                            : settled.stream()
                                                    .map(s -> prefix + s)
                                                    .toList());
                    grams += run.settling(tests.get(choice.option().name()), settled)
                            .releasesGrams();
                }
            }
            own.addAll(others);
            return new WeekTest(
                    List.copyOf(ids), tests.get(choice.option().name()).settling(own, grams));
        }
    }
}
