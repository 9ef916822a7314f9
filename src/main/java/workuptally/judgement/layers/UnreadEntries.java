package workuptally.judgement.layers;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Run;
import workuptally.model.Step;

/** Entries about a layer that nobody could read: what was meant may be the reason to keep it. */
final class UnreadEntries {
    /** Codes of cells that hold something and were not used. */
    private static final Set<FindingCode> UNREAD = Set.of(
            FindingCode.NUMBER_UNREADABLE,
            FindingCode.NUMBER_AMBIGUOUS,
            FindingCode.UNIT_WRONG,
            FindingCode.UNIT_UNKNOWN,
            FindingCode.UNIT_MISSING,
            FindingCode.UNIT_CONTRADICTION,
            FindingCode.CHOICE_UNKNOWN,
            FindingCode.VALUE_IMPOSSIBLE,
            FindingCode.LIMIT_AS_AMOUNT,
            FindingCode.PORTIONS_IN_NUMBER,
            FindingCode.NOT_DETECTED_OUTSIDE_ASSAYS,
            FindingCode.PARTS_UNREADABLE,
            FindingCode.DATE_IN_NUMBER,
            FindingCode.SHOWN_OTHERWISE,
            FindingCode.FORMULA_ERROR,
            FindingCode.FORMULA_NOT_CALCULATED,
            FindingCode.PERCENT_AS_FRACTION,
            FindingCode.PERCENT_CELL_TOO_LARGE,
            FindingCode.KELVIN_AS_CELSIUS,
            FindingCode.MERGED_CELLS,
            FindingCode.STRUCK_OUT);

    private UnreadEntries() {}

    /** Codes of unread entries in the row of a layer, of its assays and of the steps that gave it, in a step without a known operation, or for a quench test. */
    static List<String> of(Run run, String layer, List<Finding> findings) {
        Set<String> steps = run.steps().stream()
                .filter(s -> s.operation().isEmpty() || s.gives().contains(layer))
                .map(Step::number)
                .collect(Collectors.toSet());
        return findings.stream()
                .filter(f -> UNREAD.contains(f.code()))
                .filter(f -> f.subject().layers().contains(layer)
                        || steps.contains(f.subject().step())
                        || isTestOfQuench(run, f))
                .map(f -> f.code().word() + " at " + f.place().inWords())
                .distinct()
                .toList();
    }

    /** A quench test that cannot be read may have been positive, which holds every layer of the run. */
    private static boolean isTestOfQuench(Run run, Finding finding) {
        return run.steps().stream().anyMatch(s -> finding.place().equals(s.row().at("Quench test")));
    }
}
