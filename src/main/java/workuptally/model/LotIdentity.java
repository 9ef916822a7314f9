package workuptally.model;

/**
 * What is entered as evidence that a lot is its product.
 *
 * @param by the evidence as typed; empty if there is none
 * @param open true where the entry denies that the lot is its product, or puts that off: no assay stands for it then
 */
public record LotIdentity(String by, boolean open) {
    /** No entry: an assay of the lot may stand for it. */
    public static final LotIdentity NONE = new LotIdentity("", false);

    /** Evidence that counts. */
    public static LotIdentity shownBy(String evidence) {
        return new LotIdentity(evidence, false);
    }

    /** Denied or put off. */
    public static LotIdentity open(String typed) {
        return new LotIdentity(typed, true);
    }
}
