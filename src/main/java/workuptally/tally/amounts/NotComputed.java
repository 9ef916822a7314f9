package workuptally.tally.amounts;

/**
 * A figure that was not computed.
 *
 * @param what the figure, for example {@code yield of benzyl p-tolyl ether}
 * @param because why not
 * @param unlockedBy the entry that would unlock it
 * @param isTheory true where the figure is the theory, on which yields and percentages rest
 */
public record NotComputed(String what, String because, String unlockedBy, boolean isTheory) {
    /** Runs of a series lack the same. */
    public NotComputed {
        what = what.intern();
        because = because.intern();
        unlockedBy = unlockedBy.intern();
    }

    /** A figure other than the theory. */
    public NotComputed(String what, String because, String unlockedBy) {
        this(what, because, unlockedBy, false);
    }
}
