package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Book;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.tally.RunBalances;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.ReconciledBalance;

/**
 * The cells of a run to look at again, at most three.
 *
 * <p>What the entries say against each other is put into {@link Checks}. Where one of them is off by more than three standard uncertainties,
 * each entry is changed a little once, which tells along a straight line what any other number in its place would do, since every residual
 * is linear in each entry alone. The usual slips of what was typed that would bring all checks back are then tried in earnest: the run is
 * tallied anew with the cell read otherwise. A slip is kept where nothing is off any more and chi-square fell by more than chance makes
 * likely among so many trials. It is the single-fault form of the test for gross errors in a balance, with the slips as alternatives.
 */
public final class Suspects {
    private static final int MOST = 3;

    /** A check that is farther off, in standard uncertainties, needs an explanation (common practice). */
    private static final double OFF = 2.6;

    /** With what was meant in its place nothing may be farther off. */
    private static final double SETTLED = 2;

    /** Least fall of chi-square: 1 in 10 000 by chance for one trial (15.1 at one degree of freedom), so 1 in 100 for a hundred. */
    private static final double LEAST_FALL = 6;

    private static final int TRIED_IN_EARNEST = 14;
    private static final double NUDGE = 0.01;

    /** Slips that stand further behind the best one explain the run markedly worse. */
    private static final double BEHIND = 12;

    private final Book book;
    private final Substances substances;
    private final TareRegister register;

    /** For the runs of a book; asks the reference data on its own account. */
    public Suspects(Book book, Substances substances) {
        this.book = book;
        this.substances = substances;
        this.register = new TareRegister(book.vesselTares());
    }

    /** What is off in a run and the cells to look at; no cells where nothing is off or no usual slip explains all of it. */
    public RunSuspects of(RunTally tally) {
        if (tally.run().status() == Run.Status.PLANNED) {
            return RunSuspects.NONE;
        }
        List<Suspect> found = new ArrayList<>(new MissingEntries(tally.run(), register).list());
        // each run is asked by itself, since runs are judged side by side
        Substances own = substances.apart();
        EntryChecks entryChecks = new EntryChecks(book, own, register);
        OfRun ofRun = new OfRun(tally, new Checks(book, own, entryChecks), entryChecks, own);
        found.addAll(ofRun.list());
        return new RunSuspects(
                ofRun.offNames(),
                found.stream().limit(MOST).toList(),
                ReconciledBalance.of(tally.closures(), tally.massBalance()));
    }

    private final class OfRun {
        private final Run run;
        private final double gasGrams;
        private final Checks checks;
        private final EntryChecks entryChecks;
        private final RunTallying tallying;
        private final RunBalances balances;
        private final Map<String, Check> typed;
        private final Map<String, Check> off;
        private final Substances own;

        /** True where no balance is off, so that what an entry would do to what is off needs none. */
        private final boolean entriesAlone;

        OfRun(RunTally tally, Checks checks, EntryChecks entryChecks, Substances own) {
            this.entryChecks = entryChecks;
            this.run = tally.run();
            this.gasGrams = tally.massBalance().map(m -> m.gasGrams()).orElse(0.0);
            this.checks = checks;
            this.own = own;
            this.tallying = new RunTallying(book.limits(), own);
            this.balances = RunBalances.of(tally);
            this.typed = checks.of(balances);
            this.off = new LinkedHashMap<>(typed);
            off.values().removeIf(c -> c.off() == 0);
            this.entriesAlone = Checks.byName(entryChecks.of(run)).keySet().containsAll(off.keySet());
        }

        /** Checks that need an explanation, those off by most first. */
        List<String> offNames() {
            return off.values().stream()
                    .filter(c -> Math.abs(c.off()) > OFF)
                    .sorted(Comparator.comparingDouble((Check c) -> -Math.abs(c.off())))
                    .map(Check::name)
                    .toList();
        }

        List<Suspect> list() {
            if (offNames().isEmpty()) {
                return List.of();
            }
            List<Tried> tried = screened().stream()
                    .sorted(Comparator.comparingDouble(Screened::score))
                    .limit(TRIED_IN_EARNEST)
                    .map(s -> new Tried(s.hypothesis(), after(s.hypothesis().changes())))
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

        private Map<String, Check> after(Changes changes) {
            return checks.of(tallying.balances(changes.in(run), gasGrams));
        }

        /** What is off, after changes; other checks may stand beside it. */
        private Map<String, Check> offAfter(Changes changes) {
            return entriesAlone ? Checks.byName(entryChecks.of(changes.in(run))) : after(changes);
        }

        /** Slips with what they would leave, the numbers along a straight line, the words by tallying. */
        private List<Screened> screened() {
            List<Screened> all = new ArrayList<>();
            List<Entry> entries = Entries.of(run);
            Slips slips = new Slips(run, entries, register, entryChecks, own);
            Map<Cell, Line> lines = new LinkedHashMap<>();
            for (Entry entry : entries) {
                double nudge = NUDGE * entry.number().value();
                Line line = new Line(entry.number().value(), nudge, offAfter(Slips.nudged(entry, nudge)));
                if (line.moves(typed)) {
                    lines.put(entry.cell(), line);
                    slips.of(entry, line.settling(typed))
                            .forEach(h -> all.add(new Screened(h, score(h, predicted(lines, h)))));
                }
            }
            for (Hypothesis exchange : slips.exchanges()) {
                boolean moved = exchange.changes().numbers().stream().anyMatch(n -> lines.containsKey(n.cell()));
                if (moved) {
                    all.add(new Screened(exchange, score(exchange, predicted(lines, exchange))));
                }
            }
            List<Hypothesis> ofWords = new ArrayList<>(new Portions(balances).list());
            ofWords.addAll(new OtherForms(run, own, entryChecks).list());
            for (Hypothesis words : ofWords) {
                Map<String, Check> after = offAfter(words.changes());
                after.keySet().retainAll(off.keySet());
                all.add(new Screened(words, score(words, after)));
            }
            return all;
        }

        /** Only of what is off: a line that far says little of an estimate, and the trial in earnest looks at the rest. */
        private Map<String, Check> predicted(Map<Cell, Line> lines, Hypothesis hypothesis) {
            Map<String, Check> predicted = new LinkedHashMap<>(off);
            for (Changes.Number number : hypothesis.changes().numbers()) {
                Line line = lines.get(number.cell());
                if (line != null) {
                    line.move(
                            predicted,
                            typed,
                            number.field().entered().orElseThrow().value() - line.value());
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
                    && tried.after().values().stream().allMatch(c -> Math.abs(c.off()) <= SETTLED);
        }

        private Suspect suspect(Tried tried) {
            Hypothesis h = tried.hypothesis();
            List<String> explained = typed.values().stream()
                    .filter(c -> Math.abs(c.off()) > SETTLED)
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
            return Suspects.score(hypothesis, after);
        }
    }
}
