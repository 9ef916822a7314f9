package workuptally.tally.amounts;

/**
 * A figure that was not computed.
 *
 * @param what the figure, for example {@code yield of benzyl p-tolyl ether}
 * @param because why not
 * @param unlockedBy the entry that would unlock it
 */
public record NotComputed(String what, String because, String unlockedBy) {
    /** Runs of a series lack the same. */
    public NotComputed {
        what = what.intern();
        because = because.intern();
        unlockedBy = unlockedBy.intern();
    }
}
