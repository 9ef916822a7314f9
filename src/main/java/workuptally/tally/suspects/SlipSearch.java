package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import workuptally.model.Place;

/**
 * The search for one usual slip that settles everything that is off. Each entry is changed a little once, which tells along a straight line
 * what any other number in its place would do, since every residual is linear in each entry alone; the slips that promise most are then
 * tried in earnest, with everything computed anew.
 */
final class SlipSearch {
    /** A check that is farther off, in standard uncertainties, needs an explanation (common practice). */
    private static final double OFF = 2.6;

    /** Least fall of chi-square: 1 in 10 000 by chance for one trial (15.1 at one degree of freedom), so 1 in 100 for a hundred. */
    private static final double LEAST_FALL = 6;

    private static final int TRIED_IN_EARNEST = 14;
    private static final double NUDGE = 0.01;

    /** Slips that stand further behind the best one explain the whole markedly worse. */
    private static final double BEHIND = 12;

    private final Map<String, Check> typed;
    private final Map<String, Check> off;
    private final double settled;
    private final Function<Changes, Map<String, Check>> ofOff;
    private final Function<Changes, Map<String, Check>> ofAll;

    /**
     * A search.
     *
     * @param typed the checks with the entries as typed
     * @param settled with what was meant in its place nothing may be farther off, in standard uncertainties
     * @param ofOff what is off, after changes; other checks may stand beside it
     * @param ofAll all checks, after changes
     */
    SlipSearch(
            Map<String, Check> typed,
            double settled,
            Function<Changes, Map<String, Check>> ofOff,
            Function<Changes, Map<String, Check>> ofAll) {
        this.typed = typed;
        this.settled = settled;
        this.ofOff = ofOff;
        this.ofAll = ofAll;
        this.off = off(typed);
    }

    /** The checks that lie outside of what is allowed, however little. */
    static Map<String, Check> off(Map<String, Check> typed) {
        Map<String, Check> off = new LinkedHashMap<>(typed);
        off.values().removeIf(c -> c.off() == 0);
        return off;
    }

    /** Checks that need an explanation, those off by most first. */
    List<String> offNames() {
        return off.values().stream()
                .filter(c -> Math.abs(c.off()) > OFF)
                .sorted(Comparator.comparingDouble((Check c) -> -Math.abs(c.off())))
                .map(Check::name)
                .toList();
    }

    /**
     * Cells to look at, the likeliest first; none where nothing needs an explanation, or no slip of one cell settles all of it.
     *
     * @param entries numbers that may be wrong
     * @param slips what may have been meant by them
     * @param ofWords what may have been meant by words
     */
    List<Suspect> list(List<Entry> entries, Slips slips, List<Hypothesis> ofWords) {
        List<Tried> tried = screened(entries, slips, ofWords).stream()
                .sorted(Comparator.comparingDouble(Screened::score))
                .limit(TRIED_IN_EARNEST)
                .map(s -> new Tried(s.hypothesis(), ofAll.apply(s.hypothesis().changes())))
                .filter(this::explains)
                .sorted(Comparator.comparingDouble(Tried::score))
                .toList();
        // a name that contradicts its formula needs no slip beside it where the form named settles everything
        Optional<Tried> form = tried.stream()
                .filter(t -> t.hypothesis().changes().formula().isPresent())
                .findFirst();
        if (form.isPresent()) {
            return List.of(suspect(form.get()));
        }
        Map<Place, Tried> byPlace = new LinkedHashMap<>();
        for (Tried one : tried) {
            boolean near = one.score() <= tried.get(0).score() + BEHIND;
            boolean known = one.hypothesis().places().stream().anyMatch(byPlace::containsKey);
            if (near && !known) {
                byPlace.put(one.hypothesis().places().get(0), one);
            }
        }
        return byPlace.values().stream().map(this::suspect).toList();
    }

    /** Slips with what they would leave, the numbers along a straight line, the words by tallying. */
    private List<Screened> screened(List<Entry> entries, Slips slips, List<Hypothesis> ofWords) {
        List<Screened> all = new ArrayList<>();
        Map<BookCell, Line> lines = new LinkedHashMap<>();
        for (Entry entry : entries) {
            double nudge = NUDGE * entry.number().value();
            Line line = new Line(entry.number().value(), nudge, ofOff.apply(Slips.nudged(entry, nudge)));
            if (line.moves(typed)) {
                lines.put(entry.cell(), line);
                slips.of(entry, line.settling(typed))
                        .forEach(h -> all.add(new Screened(h, score(h, predicted(lines, h)))));
            }
        }
        for (Hypothesis exchange : new Exchanges(entries).list()) {
            boolean moved = exchange.changes().numbers().stream().anyMatch(n -> lines.containsKey(n.cell()));
            if (moved) {
                all.add(new Screened(exchange, score(exchange, predicted(lines, exchange))));
            }
        }
        for (Hypothesis words : ofWords) {
            Map<String, Check> after = ofOff.apply(words.changes());
            after.keySet().retainAll(off.keySet());
            all.add(new Screened(words, score(words, after)));
        }
        return all;
    }

    /** Only of what is off: a line that far says little of an estimate, and the trial in earnest looks at the rest. */
    private Map<String, Check> predicted(Map<BookCell, Line> lines, Hypothesis hypothesis) {
        Map<String, Check> predicted = new LinkedHashMap<>(off);
        for (Changes.Number number : hypothesis.changes().numbers()) {
            Line line = lines.get(number.cell());
            if (line != null) {
                line.move(
                        predicted, typed, number.field().entered().orElseThrow().value() - line.value());
            }
        }
        return predicted;
    }

    private boolean explains(Tried tried) {
        double before = chiSquare(typed);
        boolean allThere = tried.after()
                .keySet()
                .containsAll(typed.keySet().stream()
                        .filter(name -> tried.hypothesis().slip() != UsualSlip.COUNTED_TWICE)
                        .filter(name -> tried.hypothesis().slip() != UsualSlip.LABELS_SWAPPED)
                        .toList());
        return allThere
                && before - chiSquare(tried.after()) >= LEAST_FALL
                && tried.after().values().stream().allMatch(c -> Math.abs(c.off()) <= settled);
    }

    private Suspect suspect(Tried tried) {
        Hypothesis h = tried.hypothesis();
        List<String> explained = typed.values().stream()
                .filter(c -> Math.abs(c.off()) > settled)
                .map(Check::name)
                .toList();
        return new Suspect(
                h.places().get(0),
                h.places().subList(1, h.places().size()),
                h.what(),
                h.typed(),
                h.suggested(),
                h.slip(),
                explained,
                OptionalDouble.of(chiSquare(typed)),
                OptionalDouble.of(chiSquare(tried.after())),
                typed.size());
    }

    private static double chiSquare(Map<String, Check> checks) {
        return checks.values().stream().mapToDouble(c -> c.off() * c.off()).sum();
    }

    /** Chi-square, how surprising it is that each check lies where it does, and how rare the slip is: what a Bayesian would rank by. */
    private static double score(Hypothesis hypothesis, Map<String, Check> after) {
        return chiSquare(after)
                + after.values().stream().mapToDouble(Check::surprise).sum()
                + hypothesis.handicap();
    }

    private record Screened(Hypothesis hypothesis, double score) {}

    private record Tried(Hypothesis hypothesis, Map<String, Check> after) {
        double score() {
            return SlipSearch.score(hypothesis, after);
        }
    }
}
