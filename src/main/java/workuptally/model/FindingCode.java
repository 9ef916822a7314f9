package workuptally.model;

import java.util.List;
import java.util.Locale;

/**
 * What a finding is about. A code has a section of its name in {@code reference/findings.md}, which says what triggers it, why it matters
 * and what to do.
 */
public enum FindingCode {
    // Charges
    FORMULA_DOUBTFUL(Severity.CHECK),
    MOLAR_MASS_MISMATCH(Severity.STOP, "C01", "C02"),
    MOLAR_MASS_ROUNDED(Severity.NOTE, "C01"),
    CHARGE_FORM_MISMATCH(Severity.CHECK, "C02"),
    PRODUCT_FORM_MISMATCH(Severity.STOP, "C03"),
    ISOLATED_FORM_OPEN(Severity.HOLD, "C03"),
    FORM_OF_UNKNOWN(Severity.CHECK),
    DENSITY_MISSING(Severity.CHECK, "C04"),
    STEP_MATERIAL_UNKNOWN(Severity.CHECK),
    MATERIAL_UNLISTED(Severity.CHECK),
    MATERIAL_AMBIGUOUS(Severity.CHECK),
    DENSITY_UNLIKELY(Severity.CHECK, "C04"),
    MASS_EQUALS_VOLUME(Severity.CHECK, "C04"),
    CHARGE_ASSAY_FORGOTTEN(Severity.CHECK, "C05"),
    TITRE_DIFFERS(Severity.NOTE, "C06"),
    TITRE_MISSING(Severity.NOTE, "C06"),
    LIMITING_AMBIGUOUS(Severity.CHECK, "C07"),
    LIMITING_NOT_SUBSTRATE(Severity.CHECK, "C07"),
    BELOW_ONE_EQUIVALENT(Severity.CHECK, "C07"),
    STATED_AMOUNT_DIFFERS(Severity.CHECK, "C10"),
    STATED_YIELD_DIFFERS(Severity.CHECK),
    COEFFICIENT_SUSPECT(Severity.CHECK, "C08"),
    RESOLUTION_ABOVE_HALF(Severity.STOP, "C09"),
    RESOLUTION_HALVED_TWICE(Severity.CHECK, "C09"),
    UNIT_SLIP(Severity.CHECK, "C10"),
    AMOUNT_FAR_FROM_PLAN(Severity.CHECK, "C10"),
    CHARGE_TWICE(Severity.CHECK),
    REAGENT_IN_LARGE_EXCESS(Severity.CHECK),
    PLAN_COPIED(Severity.NOTE, "C11"),
    RECOVERED_SOLVENT_AS_PURE(Severity.CHECK, "C36"),
    STRENGTH_DIFFERS(Severity.CHECK),
    SOLVENT_AMOUNT_MISSING(Severity.CHECK),

    // Steps and their labels
    LAYER_UNKNOWN_SOURCE(Severity.CHECK),
    STEP_SOURCE_MISSING(Severity.CHECK),
    LAYER_TAKEN_BEFORE_GIVEN(Severity.CHECK),
    LAYER_TAKEN_AFTER_CONSUMED(Severity.CHECK),
    LAYER_GIVEN_TWICE(Severity.CHECK),
    LAYER_NEVER_GIVEN(Severity.CHECK),
    LAYER_SAID_CONSUMED(Severity.CHECK),
    LAYER_SAID_KEPT(Severity.STOP),
    LAYER_CYCLE(Severity.STOP),
    LAYER_MISSING(Severity.HOLD, "C14"),
    LOADS_NOT_RECORDED(Severity.CHECK, "C40"),
    FUNNEL_OVERFULL(Severity.STOP, "C30"),
    GAS_EXPECTED(Severity.NOTE, "C32"),
    MATERIALS_MUST_NOT_MEET(Severity.STOP),
    CHARGED_TOGETHER(Severity.CHECK),
    CONTROLLED_MEETING(Severity.NOTE),
    CONCENTRATED_WITH_CARE(Severity.NOTE),
    WASH_TOO_SMALL(Severity.STOP, "C31"),
    NEUTRALISATION_SHORT(Severity.HOLD, "C03"),
    EXTRACTION_SPLIT(Severity.NOTE),
    STEP_AMOUNT_MISSING(Severity.HOLD, "C30"),
    QUENCH_NOT_SHOWN(Severity.HOLD, "C33"),
    QUENCH_NOT_ENTERED(Severity.HOLD, "C33"),
    QUENCH_TEST_POSITIVE(Severity.STOP, "C33"),
    REDUCTANT_SHORT(Severity.STOP, "C33"),
    OXIDANT_QUENCH(Severity.NOTE, "C33"),
    QUENCH_BY_PRODUCT(Severity.NOTE, "C33"),
    WATER_MISCIBLE_SOLVENT(Severity.NOTE, "C34"),
    PKA_SHIFTED(Severity.NOTE, "C43"),
    DRYING_AGENT_SHORT(Severity.CHECK, "C19"),
    CONTENT_AGAINST_PH(Severity.CHECK),
    PORTION_HELD_MORE(Severity.CHECK),
    WASH_TAKES_PRODUCT(Severity.CHECK),
    LAYER_LOST(Severity.CHECK),
    MASS_VOLUME_DENSITY(Severity.CHECK, "C16"),
    PRODUCT_VOLATILE(Severity.CHECK, "C24"),

    // Layers
    LAYERS_SWAPPED(Severity.STOP, "C12"),
    LAYER_IDENTITY_UNCLEAR(Severity.NOTE, "C12"),
    LAYER_POSITION_CONTRADICTION(Severity.CHECK, "C12"),
    LAYER_PHASE_CONTRADICTION(Severity.CHECK, "C12"),
    LAYER_PH_DIFFERS(Severity.CHECK),
    COMPOSITION_NOT_CHARGED(Severity.CHECK),
    COMPOSITION_INCOMPLETE(Severity.CHECK),
    LAYER_PART_ONLY(Severity.HOLD, "C15"),
    LAYER_VOLUME_IMPOSSIBLE(Severity.CHECK, "C15"),
    LAYER_DENSITY_UNEXPECTED(Severity.CHECK, "C16"),
    LAYER_DENSITY_IMPOSSIBLE(Severity.STOP, "C16"),
    RAG_NOT_ASSAYED(Severity.HOLD, "C17"),
    EMULSION_NOT_RECORDED(Severity.HOLD, "C17"),
    PRODUCT_ON_CAKE(Severity.NOTE, "C20"),
    CAKE_LIGHTER_THAN_AGENT(Severity.CHECK, "C20"),
    ALIQUOTS_TAKEN(Severity.NOTE, "C26"),
    LIQUOR_NOT_RECORDED(Severity.CHECK, "C28"),
    LIQUOR_NOT_ASSAYED(Severity.CHECK, "C28"),
    CONTENT_CARRIED(Severity.NOTE),
    LAYER_HOLDS_PRODUCT(Severity.HOLD, "C18"),
    LAYER_WAITS(Severity.HOLD),
    LAYER_LEFT_EARLY(Severity.HOLD),
    NOTE_AGAINST_FIGURE(Severity.HOLD),
    COMPOSITION_CONTRADICTED(Severity.HOLD, "C39"),
    LAYERS_NOT_ASSAYED(Severity.HOLD),
    ROUTES_AGREE(Severity.NOTE, "C18"),
    ROUTES_DISAGREE(Severity.CHECK, "C18"),

    // Weighings
    TARE_MISSING(Severity.STOP, "C21"),
    NET_AGAINST_WEIGHING(Severity.STOP, "C21"),
    TARE_REGISTER_DIFFERS(Severity.CHECK, "C21"),
    GROSS_EQUALS_TARE(Severity.CHECK, "C21"),
    CRUDE_ABOVE_THEORY(Severity.CHECK, "C22"),
    LOT_ABOVE_THEORY(Severity.CHECK, "C22"),
    CRUDE_WITHOUT_ASSAY(Severity.CHECK, "C22"),
    CRUDE_NOT_A_YIELD(Severity.CHECK, "C22"),
    ASSAY_BELOW_MOLE_RATIO(Severity.CHECK, "C22"),
    PURIFIED_EXCEEDS_SOURCE(Severity.CHECK),
    PURIFICATION_OPEN(Severity.CHECK),
    PURIFIED_BELOW_SOURCE(Severity.CHECK),
    NOT_AT_CONSTANT_MASS(Severity.CHECK, "C23"),
    WEIGHED_WARM(Severity.NOTE, "C42"),
    COPIED_WEIGHING(Severity.CHECK, "C41"),
    COPIED_ASSAY(Severity.CHECK, "C41"),
    RECORD_CORRECTED(Severity.NOTE),
    CORRECTION_NOT_MADE(Severity.CHECK),

    // Assays
    AREA_PERCENT(Severity.CHECK, "C25"),
    ASSAY_SAMPLE_UNKNOWN(Severity.CHECK),
    ASSAY_SUBSTANCE_UNKNOWN(Severity.CHECK),
    ASSAY_OVER_100(Severity.CHECK, "C27"),
    ASSAY_SUM_IMPOSSIBLE(Severity.CHECK, "C27"),
    COMPONENT_COUNTED_TWICE(Severity.NOTE, "C29"),
    ASSAYS_DISAGREE(Severity.HOLD, "C29"),
    LOT_ASSAY_DIFFERS(Severity.CHECK, "C29"),

    // Results
    CLOSURE_OVER(Severity.STOP, "C08"),
    CLOSURE_OPEN(Severity.NOTE),
    CLOSURE_CANNOT_DECIDE(Severity.CHECK),
    ENTRY_SUSPECT(Severity.CHECK),
    ENTRIES_DISAGREE(Severity.NOTE),
    COMPOSITE_REFUSED(Severity.CHECK),
    COMPOSITE_DISAGREES(Severity.HOLD),
    YIELD_ABOVE_100(Severity.STOP, "C22"),
    YIELD_UPPER_BOUND(Severity.NOTE, "C22"),
    CONVERSION_BELOW_YIELD(Severity.CHECK),
    THEORY_NOT_COMPUTED(Severity.CHECK, "C07"),
    MASS_GAP_NEGATIVE(Severity.CHECK),
    MASS_GAP_LARGE(Severity.NOTE),
    SERIES_OUT_OF_CONTROL(Severity.CHECK, "C35"),

    // Containers and proposals
    PROPOSAL_WRONG_STREAM(Severity.STOP, "C39"),
    PROPOSAL_STREAM_UNKNOWN(Severity.CHECK, "C39"),
    PROPOSAL_INCOMPATIBLE(Severity.STOP, "C38"),
    CONTAINER_INCOMPATIBLE(Severity.STOP, "C38"),
    CONTAINER_CONTENT_DIFFERS(Severity.HOLD, "C39"),
    TRANSFER_IN_WRONG_STREAM(Severity.HOLD, "C39"),
    TRANSFER_OF_REUSED(Severity.CHECK),
    CONTAINER_OVERFULL(Severity.STOP, "C39"),
    CONTAINER_NEARLY_FULL(Severity.NOTE, "C39"),
    PROPOSAL_HOLDS_PRODUCT(Severity.HOLD, "C18"),
    PROPOSAL_IS_EVIDENCE(Severity.HOLD),
    PROPOSAL_EVIDENCE_OPEN(Severity.HOLD),
    PROPOSAL_LABEL(Severity.NOTE, "C37"),
    DAY_CANNOT_BE(Severity.CHECK),
    TRANSFER_OF_GONE(Severity.HOLD),
    TRANSFER_DUPLICATE(Severity.CHECK),
    TRANSFER_EXCEEDS_LAYER(Severity.CHECK),
    TRANSFER_ESTIMATED(Severity.CHECK),
    TRANSFER_AMOUNT_UNKNOWN(Severity.HOLD),
    CONTAINER_OVERDUE(Severity.CHECK, "C39"),
    CONTAINER_DUE_SOON(Severity.NOTE, "C39"),
    CONTAINER_CONTENT_UNKNOWN(Severity.CHECK, "C37"),
    CONTAINER_WEIGHING_DIFFERS(Severity.CHECK, "C37"),
    CONTAINER_NAME_SHORT(Severity.CHECK, "C37"),
    LAYER_REVIEW_OVERDUE(Severity.CHECK),
    LAYER_RELEASED_BY_NOBODY(Severity.CHECK),

    // Reading the book
    RUN_STATUS_CONTRADICTED(Severity.HOLD),
    NUMBER_UNREADABLE(Severity.CHECK),
    NUMBER_AMBIGUOUS(Severity.CHECK),
    PORTIONS_IN_NUMBER(Severity.CHECK),
    VALUE_IMPOSSIBLE(Severity.STOP),
    UNIT_UNKNOWN(Severity.STOP),
    LIMIT_AS_AMOUNT(Severity.CHECK),
    DROPS_COUNTED(Severity.NOTE),
    UNIT_WRONG(Severity.STOP),
    UNIT_MISSING(Severity.STOP),
    UNIT_CONTRADICTION(Severity.STOP),
    PERCENT_AS_FRACTION(Severity.CHECK),
    UNCERTAINTY_ZERO(Severity.NOTE),
    WORDS_BESIDE_NUMBER(Severity.NOTE),
    PORTIONS_UNEQUAL(Severity.CHECK),
    CHOICE_GUESSED(Severity.CHECK),
    TOTAL_ROW(Severity.CHECK),
    KELVIN_AS_CELSIUS(Severity.CHECK),
    ROW_SHIFTED(Severity.STOP),
    SHOWN_OTHERWISE(Severity.STOP),
    PERCENT_CELL_TOO_LARGE(Severity.STOP),
    NOT_DETECTED_OUTSIDE_ASSAYS(Severity.CHECK),
    DATE_UNREADABLE(Severity.CHECK),
    DATE_AMBIGUOUS(Severity.CHECK),
    DATE_IMPOSSIBLE(Severity.CHECK),
    DATE_IN_NUMBER(Severity.CHECK),
    EXPERIENCE_UNREADABLE(Severity.CHECK),
    FORMULA_ERROR(Severity.CHECK),
    FORMULA_NOT_CALCULATED(Severity.CHECK),
    FORMULAS_STALE(Severity.CHECK),
    WORKBOOK_SIGNED(Severity.NOTE),
    HEADING_NEAR_MISS(Severity.CHECK),
    SHEET_NEAR_MISS(Severity.CHECK),
    MERGED_CELLS(Severity.CHECK),
    ROWS_HIDDEN(Severity.NOTE),
    ROWS_STRUCK(Severity.NOTE),
    STRUCK_OUT(Severity.STOP),
    SHOWN_BY_CONDITION(Severity.CHECK),
    SHEET_HIDDEN(Severity.NOTE),
    CHOICE_UNKNOWN(Severity.CHECK),
    IDENTITY_UNCLEAR(Severity.CHECK),
    PARTS_UNREADABLE(Severity.CHECK),
    KEY_MISSING(Severity.STOP),
    RUN_MISSING(Severity.STOP),
    RUN_UNKNOWN(Severity.STOP),
    RUN_DUPLICATE(Severity.STOP),
    RUNS_EMPTY(Severity.STOP),
    PRODUCT_DUPLICATE(Severity.STOP),
    PRODUCT_UNKNOWN(Severity.STOP),
    SKELETON_NOT_GIVEN(Severity.CHECK),
    SKELETON_PARTNER_UNKNOWN(Severity.STOP),
    OPERATION_MISSING(Severity.STOP),
    LAYER_DUPLICATE(Severity.STOP),
    VESSEL_DUPLICATE(Severity.STOP, "C13"),
    LOT_DUPLICATE(Severity.STOP),
    LOT_ROWS_DIFFER(Severity.STOP),
    GROSS_BELOW_TARE(Severity.STOP, "C21"),
    CONTAINER_DUPLICATE(Severity.STOP),
    CONTAINER_UNKNOWN(Severity.STOP),
    LIMIT_UNKNOWN(Severity.CHECK),
    LIMIT_DUPLICATE(Severity.CHECK),
    HOLD_RUN_UNKNOWN(Severity.STOP),
    TABLE_MISSING(Severity.CHECK),
    LIST_AMOUNTS_MISSING(Severity.STOP),
    LIST_COLUMN_BLANK(Severity.CHECK),
    LIST_HEADING_MISSING(Severity.STOP),
    LIST_HEADING_OPEN(Severity.CHECK),
    LIST_HEADING_UNREAD(Severity.CHECK),
    LIST_ROWS_LEFT_OUT(Severity.NOTE),
    HEADING_MISSING(Severity.STOP),
    HEADING_DUPLICATE(Severity.CHECK),
    ENCODING_GUESSED(Severity.NOTE);

    private final String word;
    private final Severity severity;
    private final List<String> catalogue;

    FindingCode(Severity severity, String... catalogue) {
        this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
        this.severity = severity;
        this.catalogue = List.of(catalogue);
    }

    /** The stable word that reports and JSON carry and by which a row of Corrections names a finding: {@code tare-missing}. */
    public String word() {
        return word;
    }

    /** The word: what people read is never the name of a constant. */
    @Override
    public String toString() {
        return word();
    }

    /** The same as plain words: {@code tare missing}. */
    public String inWords() {
        return word.replace('-', ' ').replace(" ph ", " pH ");
    }

    /** How urgent it is unless its rule, which knows the circumstances, says otherwise. */
    public Severity severity() {
        return severity;
    }

    /** Numbers of the catalogue of errors at the bench that it stands for, {@code C01} to {@code C43}; empty where it stands for none. */
    public List<String> catalogue() {
        return catalogue;
    }
}
