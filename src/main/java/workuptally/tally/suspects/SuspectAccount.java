package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Transfer;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunBalances;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.ReconciledBalance;
import workuptally.tally.layers.GraphFault;

/**
 * The cells of a run to look at again, at most three.
 *
 * <p>What the entries say against each other is put into {@link CheckAccount}. Where one of them is off by more than three standard uncertainties,
 * the usual slips of what was typed that would bring all checks back are looked for ({@link SlipSearch}), and the run is tallied anew with the
 * cell read otherwise. A slip is kept where nothing is off any more and chi-square fell by more than chance makes
 * likely among so many trials. It is the single-fault form of the test for gross errors in a balance, with the slips as alternatives.
 */
public final class SuspectAccount {
    private static final int MOST = 3;

    /** With what was meant in its place nothing may be farther off, in standard uncertainties. */
    private static final double SETTLED = 2;

    private final Book book;
    private final Substances substances;
    private final TareRegister register;
    private final Map<String, List<Transfer>> transfers;

    /** For the runs of a book; asks the reference data on its own account. */
    public SuspectAccount(Book book, Substances substances) {
        this.book = book;
        this.substances = substances;
        this.register = new TareRegister(book.vesselTares());
        this.transfers = CheckAccount.transfers(book);
    }

    /** What is off in a run and the cells to look at; no cells where nothing is off or no usual slip explains all of it. */
    public RunSuspects of(RunTally tally) {
        if (tally.run().status() == Run.Status.PLANNED) {
            return RunSuspects.NONE;
        }
        if (BalanceEntries.lacksReading(tally.run())) {
            return new RunSuspects(List.of(), new MissingEntries(register).of(tally.run()), ReconciledBalance.NONE);
        }
        List<Suspect> found = new ArrayList<>(new MissingEntries(register).of(tally.run()));
        OfRun ofRun = new OfRun(tally);
        found.addAll(ofRun.list());
        return new RunSuspects(
                ofRun.search.offNames(),
                found.stream().limit(MOST).toList(),
                ReconciledBalance.of(tally.closures(), tally.massBalance(), ofRun.own.value(Threshold.TRANSFER_LOSS)));
    }

    private final class OfRun {
        private final Run run;
        private final double gasGrams;
        /** Each run is asked by itself, since runs are judged side by side. */
        private final Substances own = substances.apart();

        private final EntryChecks entryChecks = new EntryChecks(book, own, register);
        private final CheckAccount checks = new CheckAccount(transfers, own, entryChecks);
        private final RunTallying tallying = new RunTallying(book.limits(), own);
        private final RunBalances balances;
        private final SlipSearch search;
        private final List<GraphFault> faults;

        OfRun(RunTally tally) {
            this.faults = tally.evidence().gaps().graphFaults();
            this.run = tally.run();
            this.gasGrams = tally.massBalance().map(m -> m.gasGrams()).orElse(0.0);
            this.balances = RunBalances.of(tally);
            Map<String, Check> typed = checks.of(balances, Changes.NONE);
            // where no balance is off, what an entry would do to what is off needs none
            Set<String> off = SlipSearch.off(typed).keySet();
            boolean entriesAlone = off.isEmpty()
                    || CheckAccount.byName(entryChecks.of(run)).keySet().containsAll(off);
            this.search = new SlipSearch(
                    typed,
                    SETTLED,
                    changes -> entriesAlone ? CheckAccount.byName(entryChecks.of(changes.in(run))) : after(changes),
                    this::after);
        }

        private Map<String, Check> after(Changes changes) {
            return checks.of(tallying.balances(changes.in(run), gasGrams), changes);
        }

        List<Suspect> list() {
            if (search.offNames().isEmpty() || lacksStep()) {
                return List.of();
            }
            List<Entry> entries = new ArrayList<>(BalanceEntries.of(run));
            entries.removeIf(e -> e.sort() == Entry.Sort.DENSITY && isOfTheTable(e));
            checks.transfersOf(run).forEach(t -> entries.addAll(BalanceEntries.of(t)));
            List<Hypothesis> ofWords = new ArrayList<>(new MistypedWords(balances).list());
            ofWords.addAll(new OtherForms(run, own, entryChecks).list());
            List<Suspect> found =
                    search.list(entries, new Slips(this::formula, entries, register, entryChecks, own), ofWords);
            // a row that no step gives is no slip of a number elsewhere: only that it stands there twice explains it
            return rowsFit()
                    ? found
                    : found.stream()
                            .filter(s -> s.slip() == UsualSlip.COUNTED_TWICE)
                            .toList();
        }

        private boolean rowsFit() {
            return faults.stream().noneMatch(f -> f.kind() == GraphFault.Kind.NEVER_GIVEN);
        }

        /** True where a row of the steps is missing or out of order: what is off then is no matter of a digit. */
        private boolean lacksStep() {
            return faults.stream()
                    .anyMatch(f -> f.kind() == GraphFault.Kind.UNKNOWN_SOURCE
                            || f.kind() == GraphFault.Kind.TAKEN_BEFORE_GIVEN
                            || f.kind() == GraphFault.Kind.CYCLE);
        }

        /** A density that stands in the table of its material needs no other one. */
        private boolean isOfTheTable(Entry density) {
            String material = Stream.concat(
                            run.charges().stream()
                                    .filter(c -> density.cell().isIn(c.row()))
                                    .map(Charge::material),
                            run.steps().stream()
                                    .filter(s -> density.cell().isIn(s.row()))
                                    .map(s -> s.added().material()))
                    .findFirst()
                    .orElse("");
            OptionalDouble table = own.densityGramsPerMillilitre(material);
            return table.isPresent()
                    && Math.abs(density.number().value() / table.getAsDouble() - 1)
                            <= own.value(Threshold.SUSPECT_DENSITY_SCATTER);
        }

        /** The formula in the row of an entry; empty for a row without one. */
        private String formula(Entry entry) {
            return Stream.concat(
                            run.charges().stream()
                                    .filter(c -> entry.cell().isIn(c.row()))
                                    .map(Charge::formula),
                            run.products().stream()
                                    .filter(p -> entry.cell().isIn(p.row()))
                                    .map(Product::formula))
                    .findFirst()
                    .orElse("");
        }
    }
}
