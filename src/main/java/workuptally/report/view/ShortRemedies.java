package workuptally.report.view;

import java.util.Map;
import java.util.Optional;

/**
 * What to do about the findings that most often stop or hold something, in one line; the finding itself says it in full. {@code %s} stands
 * for what the finding is about.
 */
final class ShortRemedies {
    private static final Map<String, String> BY_CODE = Map.ofEntries(
            Map.entry("molar-mass-mismatch", "Compare label, formula and molar mass of %s; correct the wrong one"),
            Map.entry("charge-form-mismatch", "Say which form of %s was weighed: salt, hydrate or free"),
            Map.entry("product-form-mismatch", "Say which form of %s was isolated: salt, hydrate or free"),
            Map.entry("resolution-above-half", "Check %s: a resolution cannot give more than half"),
            Map.entry("yield-above-100", "Find what else is in %s: solvent, water, salt or a wrong tare"),
            Map.entry("closure-over", "More was found than was charged: look for a layer counted twice"),
            Map.entry("layers-swapped", "Test which layer is which with a drop of water: %s"),
            Map.entry("layer-phase-contradiction", "Test which layer is which with a drop of water: %s"),
            Map.entry("layer-said-kept", "Correct status or steps of %s: used up and kept at once"),
            Map.entry("layer-cycle", "Correct the steps: %s is made from itself"),
            Map.entry("layer-missing", "Find the portion that was never recorded and enter it: %s"),
            Map.entry("loads-not-recorded", "Find and enter the missing loads: %s"),
            Map.entry("emulsion-not-recorded", "Enter the emulsion as a layer of its own: %s"),
            Map.entry("rag-not-assayed", "Assay the rag layer %s, or break it and measure"),
            Map.entry("tare-missing", "Find the tare of %s, or weigh the vessel clean and dry"),
            Map.entry("gross-equals-tare", "Weigh %s again: gross and tare are the same"),
            Map.entry("quench-not-shown", "Show that the quench is complete before anything is kept closed: %s"),
            Map.entry("quench-test-positive", "Quench further and test again: %s"),
            Map.entry("reductant-short", "Bring more reductant, then test: %s"),
            Map.entry("oxidant-quench", "Bring more reductant, then test: %s"),
            Map.entry("wash-too-small", "Plan more of the wash, in portions with the gas let off: %s"),
            Map.entry("funnel-overfull", "Use more loads or a larger funnel: %s"),
            Map.entry("layers-not-assayed", "Assay what nobody assayed, together where it may be mixed: %s"),
            Map.entry("layer-waits", "Keep until the open question of the run is settled: %s"));

    /** The same in half a line, for runs that have not begun and may ask for several things at once. */
    private static final Map<String, String> BEFORE_THE_START = Map.of(
            "funnel-overfull", "use more loads or a larger funnel",
            "wash-too-small", "plan more of the wash",
            "gas-expected", "plan where the gas goes",
            "molar-mass-mismatch", "correct the molar mass",
            "charge-form-mismatch", "say which form is weighed",
            "materials-must-not-meet", "change what would bring together what must never meet");

    private ShortRemedies() {}

    /** What to do about a code before a run starts; empty for one that has no such words. */
    static Optional<String> beforeTheStart(String code) {
        return Optional.ofNullable(BEFORE_THE_START.get(code));
    }

    /** The line for a code; empty for one that has none. */
    static Optional<String> of(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }
}
