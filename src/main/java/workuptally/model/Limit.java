package workuptally.model;

/** The settings a book may override in its Limits table, each with default, unit, meaning and where the default comes from. */
public enum Limit {
    COVERAGE_FACTOR("Coverage factor", 2, "1", "k of the expanded uncertainty U = k·u", "JCGM 100:2008, 6.3"),
    FUNNEL_FILL(
            "Funnel fill",
            200.0 / 3,
            "%",
            "largest fill of a separating funnel, of its nominal volume",
            Limit.PRACTICE),
    FUNNEL_FILL_WITH_GAS("Funnel fill with gas", 50, "%", "largest fill where gas is expected", Limit.PRACTICE),
    FUNNEL_FILL_STOP("Funnel fill stop", 90, "%", "fill above which a planned contact is a stop", Limit.PRACTICE),
    LAYER_LIMIT(
            "Layer limit",
            2,
            "% of theory",
            "product that one layer may hold with its evidence complete",
            Limit.PRACTICE),
    RUN_LIMIT("Run limit", 2, "% of theory", "product that all kept layers of a run may hold together", Limit.PRACTICE),
    EVAPORATION_ALLOWANCE(
            "Evaporation allowance", 15, "% of organic solvent", "evaporation that needs no note", Limit.PRACTICE),
    EVAPORATION_ALLOWANCE_VOLATILE(
            "Evaporation allowance for ether and dichloromethane",
            30,
            "% of organic solvent",
            "the same for diethyl ether and dichloromethane",
            Limit.PRACTICE),
    CLOSURE_WIDTH(
            "Closure width", 10, "%", "expanded uncertainty of a closure above which it cannot decide", Limit.PRACTICE),
    CLOSURE_RESOLUTION(
            "Closure resolution",
            5,
            "%",
            "expanded uncertainty of a closure above which it is too coarse to be said to close",
            Limit.PRACTICE),
    TITRE_BELOW_LABEL("Titre below label", 5, "%", "difference between titre and label that is noted", Limit.PRACTICE),
    WEIGHING_TOLERANCE("Weighing tolerance", 1, "%", "how close to a planned amount is close enough", Limit.PRACTICE),
    NEUTRALISATION_RATIO(
            "Neutralisation ratio",
            1.10,
            "1",
            "capacity of a wash over the amount to neutralise, below which it is a check",
            Limit.PRACTICE),
    ROOM_TEMPERATURE("Room temperature", 20, "°C", "temperature of the room", Limit.PRACTICE),
    ROOM_PRESSURE("Room pressure", 101.325, "kPa", "pressure of the room", "standard atmosphere"),
    WEIGHING_5_DECIMALS(
            "Weighing uncertainty 5 decimals",
            LimitKind.UNCERTAINTY,
            0.00005,
            "g",
            "standard uncertainty of one net mass read to 0.01 mg",
            Limit.PRACTICE),
    WEIGHING_4_DECIMALS(
            "Weighing uncertainty 4 decimals",
            LimitKind.UNCERTAINTY,
            0.0005,
            "g",
            "standard uncertainty of one net mass read to 0.1 mg",
            Limit.PRACTICE),
    WEIGHING_3_DECIMALS(
            "Weighing uncertainty 3 decimals",
            LimitKind.UNCERTAINTY,
            0.002,
            "g",
            "standard uncertainty of one net mass read to 1 mg",
            Limit.PRACTICE),
    WEIGHING_2_DECIMALS(
            "Weighing uncertainty 2 decimals",
            LimitKind.UNCERTAINTY,
            0.02,
            "g",
            "standard uncertainty of one net mass read to 10 mg",
            Limit.PRACTICE),
    WEIGHING_1_DECIMAL(
            "Weighing uncertainty 1 decimal",
            LimitKind.UNCERTAINTY,
            0.15,
            "g",
            "standard uncertainty of one net mass read to 0.1 g",
            Limit.PRACTICE),
    WEIGHING_0_DECIMALS(
            "Weighing uncertainty 0 decimals",
            LimitKind.UNCERTAINTY,
            1.5,
            "g",
            "standard uncertainty of one net mass read to 1 g",
            Limit.PRACTICE),
    LAYER_VOLUME(
            "Layer volume uncertainty",
            LimitKind.UNCERTAINTY,
            0.6,
            "mL",
            "least standard uncertainty of a layer's volume",
            Limit.PRACTICE),
    LAYER_VOLUME_RELATIVE(
            "Layer volume uncertainty relative",
            LimitKind.UNCERTAINTY,
            1.2,
            "%",
            "relative standard uncertainty of a layer's volume, where larger",
            Limit.PRACTICE),
    ABOUT_VOLUME_RELATIVE(
            "About uncertainty relative",
            LimitKind.UNCERTAINTY,
            5,
            "%",
            "relative standard uncertainty of a number entered as 'ca.'",
            Limit.PRACTICE),
    DROPS_RELATIVE(
            "Drops uncertainty relative",
            LimitKind.UNCERTAINTY,
            25,
            "%",
            "relative standard uncertainty of a volume counted in drops, 0.03 to 0.07 mL each",
            Limit.PRACTICE),
    CHARGE_VOLUME_RELATIVE(
            "Charge volume uncertainty relative",
            LimitKind.UNCERTAINTY,
            0.3,
            "%",
            "relative standard uncertainty of a charged volume",
            Limit.PRACTICE),
    CHARGE_ASSAY(
            "Charge assay uncertainty",
            LimitKind.UNCERTAINTY,
            0.3,
            "%",
            "relative standard uncertainty of the assay of a charge",
            Limit.PRACTICE),
    TITRE(
            "Titre uncertainty",
            LimitKind.UNCERTAINTY,
            1,
            "%",
            "relative standard uncertainty of a titre or label molarity",
            Limit.PRACTICE),
    ASSAY_HPLC(
            "Assay uncertainty HPLC",
            LimitKind.UNCERTAINTY,
            2,
            "%",
            "relative standard uncertainty of an assay by this method",
            Limit.PRACTICE),
    ASSAY_GC(
            "Assay uncertainty GC",
            LimitKind.UNCERTAINTY,
            2,
            "%",
            "relative standard uncertainty of an assay by this method",
            Limit.PRACTICE),
    ASSAY_QNMR(
            "Assay uncertainty qNMR",
            LimitKind.UNCERTAINTY,
            2,
            "%",
            "relative standard uncertainty of an assay by this method",
            Limit.PRACTICE),
    ASSAY_NMR(
            "Assay uncertainty NMR",
            LimitKind.UNCERTAINTY,
            5,
            "%",
            "relative standard uncertainty of a routine NMR ratio",
            Limit.PRACTICE),
    ASSAY_TITRATION(
            "Assay uncertainty titration",
            LimitKind.UNCERTAINTY,
            1,
            "%",
            "relative standard uncertainty of an assay by this method",
            Limit.PRACTICE),
    CALIBRATION_SHARE(
            "Calibration share",
            50,
            "%",
            "share of the relative variance that results of one calibration have in common; HPLC and GC results of a run"
                    + " without a Calibration are taken to share one",
            Limit.PRACTICE),
    NMR_WEIGHING(
            "NMR weighing uncertainty",
            LimitKind.UNCERTAINTY,
            0.05,
            "mg",
            "standard uncertainty of each mass weighed for an internal-standard NMR",
            Limit.PRACTICE),
    ASSAY_LC_MS(
            "Assay uncertainty LC-MS",
            LimitKind.UNCERTAINTY,
            20,
            "%",
            "relative standard uncertainty of an assay by this method, where it counts",
            Limit.PRACTICE),
    ASSAY_OTHER(
            "Assay uncertainty other",
            LimitKind.UNCERTAINTY,
            5,
            "%",
            "relative standard uncertainty of an assay by any other method",
            Limit.PRACTICE),
    DETECTION_HPLC("Detection limit HPLC", Double.NaN, "mg/mL", "limit that 'n.d.' stands for", ""),
    DETECTION_GC("Detection limit GC", Double.NaN, "mg/mL", "limit that 'n.d.' stands for", ""),
    DETECTION_NMR("Detection limit NMR", Double.NaN, "mg/mL", "limit that 'n.d.' stands for", ""),
    DETECTION_LC_MS("Detection limit LC-MS", Double.NaN, "mg/mL", "limit that 'n.d.' stands for", ""),
    DETECTION_TLC("Detection limit TLC", Double.NaN, "mg/mL", "limit that 'n.d.' stands for", ""),
    CONTAINER_FILL("Container fill", 90, "%", "largest fill of a waste container, of its capacity", Limit.PRACTICE),
    CONTAINER_DAYS(
            "Container days",
            Double.NaN,
            "d",
            "longest time a waste container stays open; the local rule, no default",
            ""),
    CONTAINER_TRACE(
            "Container trace",
            Double.NaN,
            "% w/w",
            "components of a container below this share are printed together as traces; none unless the local rule allows it",
            ""),
    WAITING_DAYS(
            "Waiting days", Double.NaN, "d", "days a layer is kept after the run; none unless the group sets it", ""),
    HALOGEN_LIMIT(
            "Halogen limit",
            2,
            "% w/w",
            "halogenated solvent above which a liquid counts as halogenated waste",
            Limit.PRACTICE),
    AS_OF("As of", LimitKind.DAY, "day for which ages are computed"),
    TLC_COUNTS(
            "TLC counts",
            LimitKind.YES_OR_NO,
            "yes where the laboratory takes a spot on a TLC plate for evidence; no unless set"),
    LC_MS_COUNTS(
            "LC-MS counts",
            LimitKind.YES_OR_NO,
            "yes where the laboratory takes a result by LC-MS for evidence; no unless set"),
    PREDICTION_COUNTS(
            "Prediction counts",
            LimitKind.YES_OR_NO,
            "yes where the laboratory takes the upper end of what the partition model leaves in water for evidence; no unless set"),
    EXPERIENCE_COUNTS(
            "Experience counts",
            LimitKind.YES_OR_NO,
            "yes where the laboratory takes what earlier batches of a series held for evidence; no unless set"),
    YIELD_REPORTED(
            "Yield reported",
            LimitKind.STAGE_OF_YIELD,
            "workup or purified: the yield that stands first and counts in means; workup unless set, the other where that is not"
                    + " known by assay"),
    GROUP("Group", LimitKind.TEXT, "group that the report names"),
    SITE("Site", LimitKind.TEXT, "laboratory that the report names"),
    REVIEWERS("Reviewers", LimitKind.TEXT, "who signs, joined by ;"),
    LOCAL_RULE_WASTE("Local rule waste", LimitKind.TEXT, "local rule for waste, printed beside waste figures"),
    LOCAL_RULE_LAYERS(
            "Local rule layers", LimitKind.TEXT, "local rule for letting layers go, printed beside layer decisions"),
    HOLD_RUNS("Hold runs", LimitKind.TEXT, "runs that a supervisor keeps on hold, joined by ;");

    private static final String PRACTICE = "common practice";

    private final String title;
    private final double defaultValue;
    private final String unit;
    private final String meaning;
    private final String origin;
    private final LimitKind kind;

    Limit(String title, double defaultValue, String unit, String meaning, String origin) {
        this(title, LimitKind.NUMBER, defaultValue, unit, meaning, origin);
    }

    Limit(String title, LimitKind kind, double defaultValue, String unit, String meaning, String origin) {
        this.title = title;
        this.defaultValue = defaultValue;
        this.unit = unit;
        this.meaning = meaning;
        this.origin = origin;
        this.kind = kind;
    }

    Limit(String title, LimitKind kind, String meaning) {
        this.title = title;
        this.defaultValue = Double.NaN;
        this.unit = "";
        this.meaning = meaning;
        this.origin = "";
        this.kind = kind;
    }

    /** The name in the Limits table. */
    public String title() {
        return title;
    }

    /** Default in {@link #unit()}, if there is one. */
    public java.util.OptionalDouble defaultValue() {
        return Double.isNaN(defaultValue)
                ? java.util.OptionalDouble.empty()
                : java.util.OptionalDouble.of(defaultValue);
    }

    /** Unit; empty for a text. */
    public String unit() {
        return unit;
    }

    /** Meaning in one line. */
    public String meaning() {
        return meaning;
    }

    /** Where the default comes from; empty without a default. */
    public String origin() {
        return origin;
    }

    /** True for a standard uncertainty, absolute or relative, which is above 0. */
    public boolean isUncertainty() {
        return kind == LimitKind.UNCERTAINTY;
    }

    /** True for a text, a date or an answer, false for a number. */
    public boolean isText() {
        return kind != LimitKind.NUMBER && kind != LimitKind.UNCERTAINTY;
    }

    /** What stands under Value. */
    public LimitKind kind() {
        return kind;
    }
}
