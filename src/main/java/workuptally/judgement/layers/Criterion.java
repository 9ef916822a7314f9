package workuptally.judgement.layers;

/** What the evidence about a kept layer is asked for, in the order of asking. */
public enum Criterion {
    /** {@code R1}: identity of the layer. */
    IDENTITY("R1", "identity of the layer"),
    /** {@code R2}: product isolated and identified. */
    PRODUCT_ISOLATED("R2", "product isolated and identified"),
    /** {@code R3}: product measured or bounded. */
    CONTENT_KNOWN("R3", "product measured or bounded"),
    /** {@code R4}: at most the layer limit. */
    LAYER_LIMIT("R4", "at most the layer limit"),
    /** {@code R5}: kept layers together within the run limit. */
    RUN_LIMIT("R5", "kept layers together within the run limit"),
    /** {@code R6}: balance closes, or the open part is not here. */
    BALANCE("R6", "balance closes, or the open part is not here"),
    /** {@code R7}: no open stop on the run. */
    NO_OPEN_STOP("R7", "no open stop on the run"),
    /** {@code R8}: no second wanted component. */
    OTHER_PRODUCTS("R8", "no second wanted component"),
    /** {@code R9}: reactive content shown quenched. */
    QUENCHED("R9", "reactive content shown quenched"),
    /** {@code R10}: container fits. */
    CONTAINER_FITS("R10", "container fits"),
    /** {@code R11}: nothing external holds it. */
    NOT_HELD("R11", "nothing external holds it"),
    /** {@code R12}: waiting time has passed. */
    WAITING_TIME("R12", "waiting time has passed");

    private final String id;
    private final String title;

    Criterion(String id, String title) {
        this.id = id;
        this.title = title;
    }

    /** True for what asks how much wanted product a layer may hold. */
    public boolean isOfContent() {
        return switch (this) {
            case CONTENT_KNOWN, LAYER_LIMIT, RUN_LIMIT, BALANCE, OTHER_PRODUCTS -> true;
            default -> false;
        };
    }

    /** True for what asks about a proposed transfer; it decides nothing about the layer itself. */
    public boolean isOfTransfer() {
        return this == QUENCHED || this == CONTAINER_FITS;
    }

    /** Its number in reports and JSON, {@code R1} to {@code R12}. */
    public String id() {
        return id;
    }

    /** What it asks, in a few words. */
    public String title() {
        return title;
    }
}
