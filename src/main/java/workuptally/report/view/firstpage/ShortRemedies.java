package workuptally.report.view.firstpage;

import java.util.Map;
import java.util.Optional;
import workuptally.model.FindingCode;

/**
 * What to do about the findings that most often stop or hold something, in one line; the finding itself says it in full. {@code %s} stands
 * for what the finding is about.
 */
final class ShortRemedies {
    private static final Map<FindingCode, String> BY_CODE = Map.ofEntries(
            Map.entry(
                    FindingCode.MOLAR_MASS_MISMATCH,
                    "Compare label, formula and molar mass of %s; correct the wrong one"),
            Map.entry(FindingCode.CHARGE_FORM_MISMATCH, "Say which form of %s was weighed: salt, hydrate or free"),
            Map.entry(FindingCode.PRODUCT_FORM_MISMATCH, "Say which form of %s was isolated: salt, hydrate or free"),
            Map.entry(FindingCode.RESOLUTION_ABOVE_HALF, "Check %s: a resolution cannot give more than half"),
            Map.entry(FindingCode.YIELD_ABOVE_100, "Find what else is in %s: solvent, water, salt or a wrong tare"),
            Map.entry(FindingCode.CLOSURE_OVER, "More was found than was charged: look for a layer counted twice"),
            Map.entry(FindingCode.LAYERS_SWAPPED, "Test which layer is which with a drop of water: %s"),
            Map.entry(FindingCode.LAYER_PHASE_CONTRADICTION, "Test which layer is which with a drop of water: %s"),
            Map.entry(FindingCode.LAYER_SAID_KEPT, "Correct status or steps of %s: used up and kept at once"),
            Map.entry(FindingCode.LAYER_CYCLE, "Correct the steps: %s is made from itself"),
            Map.entry(FindingCode.LAYER_MISSING, "Find the portion that was never recorded and enter it: %s"),
            Map.entry(FindingCode.LOADS_NOT_RECORDED, "Find and enter the missing loads: %s"),
            Map.entry(FindingCode.EMULSION_NOT_RECORDED, "Enter the emulsion as a layer of its own: %s"),
            Map.entry(FindingCode.RAG_NOT_ASSAYED, "Assay the rag layer %s, or break it and measure"),
            Map.entry(FindingCode.TARE_MISSING, "Find the tare of %s, or weigh the vessel clean and dry"),
            Map.entry(FindingCode.GROSS_EQUALS_TARE, "Weigh %s again: gross and tare are the same"),
            Map.entry(
                    FindingCode.QUENCH_NOT_SHOWN,
                    "Show that the quench is complete before anything is kept closed: %s"),
            Map.entry(
                    FindingCode.QUENCH_NOT_ENTERED,
                    "Test what is kept of runs with oxidant or hydride and no workup entered"),
            Map.entry(FindingCode.QUENCH_TEST_POSITIVE, "Quench further and test again: %s"),
            Map.entry(FindingCode.MATERIALS_MUST_NOT_MEET, "Keep open and apart: %s"),
            Map.entry(
                    FindingCode.CONTAINER_INCOMPATIBLE,
                    "Add nothing to this container, tell who is responsible for waste: %s"),
            Map.entry(
                    FindingCode.CONTAINER_CONTENT_DIFFERS,
                    "Look what the container holds, its label says another stream: %s"),
            Map.entry(
                    FindingCode.TRANSFER_IN_WRONG_STREAM,
                    "Made into another stream: add nothing, tell who is responsible for waste: %s"),
            Map.entry(FindingCode.REDUCTANT_SHORT, "Bring more reductant, then test: %s"),
            Map.entry(FindingCode.OXIDANT_QUENCH, "Bring more reductant, then test: %s"),
            Map.entry(FindingCode.WASH_TOO_SMALL, "Plan more of the wash, in portions with the gas let off: %s"),
            Map.entry(FindingCode.NEUTRALISATION_SHORT, "Settle whether the product was set free at all: %s"),
            Map.entry(FindingCode.ISOLATED_FORM_OPEN, "Settle whether the free substance or its salt was weighed: %s"),
            Map.entry(FindingCode.LAYER_PART_ONLY, "Enter the rest of the layer, or its whole volume: %s"),
            Map.entry(FindingCode.LAYER_PH_DIFFERS, "Measure the pH again; correct Layers or Workup: %s"),
            Map.entry(FindingCode.FUNNEL_OVERFULL, "Use more loads or a larger funnel: %s"),
            Map.entry(FindingCode.LAYERS_NOT_ASSAYED, "Assay what nobody assayed, together where it may be mixed: %s"),
            Map.entry(FindingCode.LAYER_LEFT_EARLY, "Left early: leave it as it is, or name the run that took it: %s"),
            Map.entry(FindingCode.COMPOSITION_CONTRADICTED, "Correct the composition, it leaves out what went in: %s"),
            Map.entry(FindingCode.NOTE_AGAINST_FIGURE, "A note speaks against the figure: settle which one holds: %s"),
            Map.entry(FindingCode.LAYER_WAITS, "Keep until the open question of the run is settled: %s"));

    /** What to do about entries that were not read, or that contradict each other. */
    private static final Map<FindingCode, String> OF_ENTRIES = Map.ofEntries(
            Map.entry(FindingCode.STEP_AMOUNT_MISSING, "Enter how much goes in, else nothing judges the fill: %s"),
            Map.entry(
                    FindingCode.LAYER_DENSITY_IMPOSSIBLE, "Weigh and measure again, such a density does not exist: %s"),
            Map.entry(FindingCode.NET_AGAINST_WEIGHING, "Correct the net or the weighing, they disagree: %s"),
            Map.entry(FindingCode.ASSAYS_DISAGREE, "Repeat the assays that disagree: %s"),
            Map.entry(FindingCode.COMPOSITE_DISAGREES, "Repeat the composite or the single assays, they disagree: %s"),
            Map.entry(FindingCode.VALUE_IMPOSSIBLE, "Correct the impossible value: %s"),
            Map.entry(FindingCode.UNIT_UNKNOWN, "Correct the unit: %s"),
            Map.entry(FindingCode.UNIT_WRONG, "Correct the unit: %s"),
            Map.entry(FindingCode.UNIT_MISSING, "Enter the unit: %s"),
            Map.entry(FindingCode.UNIT_CONTRADICTION, "Say which of two units holds: %s"),
            Map.entry(FindingCode.ROW_SHIFTED, "Put the cells of the row under their headings: %s"),
            Map.entry(FindingCode.SHOWN_OTHERWISE, "Enter the figure that is meant, the cell shows another: %s"),
            Map.entry(FindingCode.PERCENT_CELL_TOO_LARGE, "Correct the percentage: %s"),
            Map.entry(FindingCode.STRUCK_OUT, "Say whether what is struck out counts, or enter what does: %s"),
            Map.entry(FindingCode.KEY_MISSING, "Give the row its label, it is not read: %s"),
            Map.entry(FindingCode.RUN_MISSING, "Enter the run of the row, it is not read: %s"),
            Map.entry(FindingCode.RUN_UNKNOWN, "Correct the run, or enter it under Runs: %s"),
            Map.entry(FindingCode.HOLD_RUN_UNKNOWN, "Name the runs to hold; until then every layer waits: %s"),
            Map.entry(FindingCode.RUN_STATUS_CONTRADICTED, "Correct the status, the run is measured: %s"),
            Map.entry(FindingCode.RUN_DUPLICATE, "Give each of two runs its own id: %s"),
            Map.entry(FindingCode.RUNS_EMPTY, "Enter a run under Runs"),
            Map.entry(FindingCode.PRODUCT_DUPLICATE, "Give each of two products its own name: %s"),
            Map.entry(FindingCode.PRODUCT_UNKNOWN, "Correct the product, or enter it under Products: %s"),
            Map.entry(FindingCode.SKELETON_PARTNER_UNKNOWN, "Correct the partner, or enter it under Charges: %s"),
            Map.entry(FindingCode.OPERATION_MISSING, "Enter the operation of the step: %s"),
            Map.entry(FindingCode.LAYER_DUPLICATE, "Give each of two layers its own label: %s"),
            Map.entry(FindingCode.VESSEL_DUPLICATE, "Say which of two tares of one vessel holds: %s"),
            Map.entry(FindingCode.LOT_DUPLICATE, "Give each of two lots its own label: %s"),
            Map.entry(FindingCode.LOT_ROWS_DIFFER, "Make the rows of the lot agree, or make them two lots: %s"),
            Map.entry(FindingCode.GROSS_BELOW_TARE, "Weigh again, gross is below tare: %s"),
            Map.entry(FindingCode.CONTAINER_DUPLICATE, "Give each of two containers its own id: %s"),
            Map.entry(FindingCode.CONTAINER_UNKNOWN, "Correct the container, or enter it under Containers: %s"),
            Map.entry(FindingCode.LIST_AMOUNTS_MISSING, "Say in the headings file where the amounts stand: %s"),
            Map.entry(FindingCode.LIST_HEADING_MISSING, "Correct the headings file, the list lacks a heading: %s"),
            Map.entry(FindingCode.HEADING_MISSING, "Add the heading that the table needs: %s"));

    /** The same in half a line, for runs that have not begun and may ask for several things at once. */
    private static final Map<FindingCode, String> BEFORE_THE_START = Map.of(
            FindingCode.FUNNEL_OVERFULL, "more loads or a larger funnel",
            FindingCode.WASH_TOO_SMALL, "more of the wash",
            FindingCode.GAS_EXPECTED, "a way for the gas",
            FindingCode.MOLAR_MASS_MISMATCH, "correct the molar mass",
            FindingCode.CHARGE_FORM_MISMATCH, "say which form is weighed",
            FindingCode.MATERIALS_MUST_NOT_MEET, "keep apart what must never meet");

    private ShortRemedies() {}

    /** What to do about a code before a run starts; empty for one that has no such words. */
    static Optional<String> beforeTheStart(FindingCode code) {
        return Optional.ofNullable(BEFORE_THE_START.get(code));
    }

    /** The line for a code; empty for one that has none. */
    static Optional<String> of(FindingCode code) {
        return Optional.ofNullable(BY_CODE.getOrDefault(code, OF_ENTRIES.get(code)));
    }
}
