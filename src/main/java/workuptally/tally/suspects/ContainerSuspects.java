package workuptally.tally.suspects;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Transfer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.ReconciledBalance;
import workuptally.tally.containers.ContainerAccount;
import workuptally.tally.containers.ContainerTally;

/**
 * The cells of a container to look at again, as {@link SuspectAccount} for a run: its tare and gross, each part of its contents, and what was
 * poured into it, held against {@link ContainerChecks}. A slip has to leave a gap far smaller than what needs no look, since many figures
 * come near by chance.
 */
public final class ContainerSuspects {
    private static final int MOST = 3;

    /** With what was meant in its place nothing may be farther off, in standard uncertainties. */
    private static final double SETTLED = 0.5;

    private final Map<String, List<Transfer>> done;
    private final ContainerAccount account;
    private final TareRegister register;
    private final Substances substances;
    private final EntryChecks entryChecks;
    private final ContainerChecks checks;

    /**
     * For the containers of a book; asks the reference data on its own account.
     *
     * @param tallies results of its runs
     */
    public ContainerSuspects(Book book, List<RunTally> tallies, Substances substances) {
        this.done = book.transfers().stream()
                .filter(t -> t.status() == Transfer.Status.DONE)
                .collect(Collectors.groupingBy(Transfer::container));
        this.substances = substances.apart();
        this.account = new ContainerAccount(book, tallies, this.substances);
        this.register = new TareRegister(book.vesselTares());
        this.entryChecks = new EntryChecks(book, this.substances, register);
        this.checks = new ContainerChecks(this.substances, entryChecks);
    }

    /** What is off in a container and the cells to look at; no cells where nothing is off or no usual slip explains all of it. */
    public RunSuspects of(ContainerTally ledger) {
        Container container = ledger.container();
        List<Transfer> transfers = done.getOrDefault(container.id(), List.of());
        SlipSearch search = new SlipSearch(
                checks.of(ledger),
                SETTLED,
                changes -> after(container, transfers, changes),
                changes -> after(container, transfers, changes));
        List<Suspect> missing = new MissingEntries(register).of(container);
        if (search.offNames().isEmpty()) {
            return new RunSuspects(List.of(), missing, ReconciledBalance.NONE);
        }
        List<Entry> entries = ContainerEntries.of(container, transfers);
        List<Suspect> found =
                search.list(entries, new Slips(e -> "", entries, register, entryChecks, substances), List.of());
        return new RunSuspects(search.offNames(), found.stream().limit(MOST).toList(), ReconciledBalance.NONE);
    }

    private Map<String, Check> after(Container container, List<Transfer> transfers, Changes changes) {
        return checks.of(account.ledger(
                ContainerEntries.changed(container, changes),
                transfers.stream()
                        .map(t -> ContainerEntries.changed(t, changes))
                        .toList()));
    }
}
