package workuptally.judgement.rules;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.model.Finding;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.Suspect;
import workuptally.tally.suspects.UsualSlip;

/**
 * The cells that a usual slip of the pen would put right, each a suggestion where to look and never a correction; and a note where entries
 * contradict each other and no slip of one cell explains all of it. A missing entry has its own finding already.
 */
public final class SuspectEntries {
    /** Code of a cell to look at again. */
    public static final String SUSPECT = "entry-suspect";
    /** Code of a run whose contradiction no single cell explains. */
    public static final String UNEXPLAINED = "entries-disagree";

    private static final String TESTED = "least squares over all balances of the run; usual slips are common practice";

    private SuspectEntries() {}

    /** Codes of the findings. */
    static List<String> codes() {
        return List.of(SUSPECT, UNEXPLAINED);
    }

    public static List<Finding> of(Run run, RunSuspects suspects) {
        FindingList findings = new FindingList(run.id());
        for (Suspect suspect : suspects.list()) {
            if (suspect.slip() != UsualSlip.MISSING_ENTRY) {
                findings.add(
                        SUSPECT,
                        Severity.CHECK,
                        suspect.place(),
                        seen(suspect),
                        FindingList.say(
                                "chi-square %.0f as typed, %.1f with that entry, over %d balances",
                                suspect.chiSquareBefore().orElse(0),
                                suspect.chiSquareAfter().orElse(0),
                                suspect.degreesOfFreedom()),
                        TESTED,
                        "Look at the cell and at the sheet it was copied from"
                                + suspect.together().stream()
                                        .map(Place::inWords)
                                        .collect(Collectors.joining(", ", ", and at ", ""))
                                        .replaceAll(", and at $", "")
                                + "; nothing is changed until a person corrects it.");
            }
        }
        if (!suspects.off().isEmpty() && suspects.list().isEmpty()) {
            findings.add(
                    UNEXPLAINED,
                    Severity.NOTE,
                    run.row().at("Run"),
                    "off: " + String.join(", ", suspects.off()) + "; no usual slip of one cell explains all of it",
                    "entries that agree within their uncertainty",
                    TESTED,
                    "Look for two faults at once, for a portion without a row, or for a loss.");
        }
        return findings.list();
    }

    private static String seen(Suspect suspect) {
        return suspect.what() + ": read '" + suspect.typed() + "'; '" + suspect.suggested() + "' ("
                + suspect.slip().word() + ") would settle " + String.join(", ", suspect.explains());
    }
}
