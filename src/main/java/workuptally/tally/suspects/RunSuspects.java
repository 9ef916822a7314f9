package workuptally.tally.suspects;

import java.util.List;
import workuptally.tally.balance.ReconciledBalance;

/**
 * What the entries of a run, or of a container, say against each other, and the cells that may be behind it.
 *
 * @param off names of the balances that are off, those by most first; empty where all entries agree
 * @param list cells to look at again, the likeliest first, at most three; empty where no usual slip of one cell explains all that is off
 * @param reconciled the readings of a run brought into agreement with the balances
 */
public record RunSuspects(List<String> off, List<Suspect> list, ReconciledBalance reconciled) {
    /** A run or container whose entries agree. */
    public static final RunSuspects NONE = new RunSuspects(List.of(), List.of(), ReconciledBalance.NONE);

    /** Copies the lists. */
    public RunSuspects {
        off = List.copyOf(off);
        list = List.copyOf(list);
    }
}
