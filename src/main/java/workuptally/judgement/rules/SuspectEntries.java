package workuptally.judgement.rules;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
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
    private static final String TESTED = "least squares over all balances of the run; usual slips are common practice";

    private SuspectEntries() {}

    /** Codes of the findings. */
    static List<FindingCode> codes() {
        return List.of(FindingCode.ENTRY_SUSPECT, FindingCode.ENTRIES_DISAGREE);
    }

    /**
     * The findings of a run.
     *
     * @param told findings of the book so far: where one says the same of the same entries, it is not said again
     */
    public static List<Finding> of(Run run, RunSuspects suspects, List<Finding> told) {
        FindingList findings = new FindingList(run.id());
        for (Suspect suspect : suspects.list()) {
            if (told.stream().noneMatch(f -> f.run().equals(run.id()) && isToldBy(f, suspect))) {
                add(findings, suspect);
            }
        }
        if (!suspects.off().isEmpty() && suspects.list().isEmpty()) {
            findings.add(
                    FindingCode.ENTRIES_DISAGREE,
                    Severity.NOTE,
                    run.row().at("Run"),
                    Phrase.of(
                            "off: {}; no usual slip of one cell explains all of it", String.join(", ", suspects.off())),
                    Phrase.of("entries that agree within their uncertainty"),
                    TESTED,
                    Phrase.of("Look for two faults at once, for a portion without a row, a by-product or a loss."));
        }
        return findings.list();
    }

    /**
     * The findings of the containers: of one whose weighing and contents differ and no slip explains it, that finding says enough.
     *
     * @param told findings of the book so far: a cell that a run names is not named again
     */
    public static List<Finding> of(List<ContainerReview> containers, List<Finding> told) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            for (Suspect suspect : container.suspects().list()) {
                boolean isTold = told.stream()
                        .anyMatch(f -> f.code() == FindingCode.ENTRY_SUSPECT
                                && f.place().equals(suspect.place()));
                if (!isTold) {
                    add(findings, suspect);
                }
            }
        }
        return findings.list();
    }

    private static void add(FindingList findings, Suspect suspect) {
        if (suspect.slip() != UsualSlip.MISSING_ENTRY) {
            findings.add(
                    FindingCode.ENTRY_SUSPECT,
                    Severity.CHECK,
                    suspect.place(),
                    seen(suspect),
                    Phrase.of(
                            "chi-square {} as typed, {} with that entry, over {} balances",
                            Figure.decimals(suspect.chiSquareBefore().orElse(0), 0, ""),
                            Figure.decimals(suspect.chiSquareAfter().orElse(0), 1, ""),
                            suspect.degreesOfFreedom()),
                    TESTED,
                    Phrase.of(
                            "Look at the cell and at the sheet it was copied from{}; nothing is changed until a person"
                                    + " corrects it.",
                            together(suspect)));
        }
    }

    private static boolean isToldBy(Finding finding, Suspect suspect) {
        return switch (finding.code()) {
            case LAYERS_SWAPPED -> suspect.slip() == UsualSlip.LABELS_SWAPPED;
            case MOLAR_MASS_MISMATCH -> finding.place().equals(suspect.place());
            case PRODUCT_FORM_MISMATCH -> suspect.slip() == UsualSlip.SALT_FOR_BASE;
            default -> false;
        };
    }

    private static Phrase together(Suspect suspect) {
        return suspect.together().isEmpty()
                ? Phrase.NONE
                : Phrase.of(
                        ", and at {}",
                        suspect.together().stream().map(Place::inWords).collect(Collectors.joining(", ")));
    }

    private static Phrase seen(Suspect suspect) {
        String settled = String.join(", ", suspect.explains());
        return suspect.suggested().isEmpty()
                ? Phrase.of(
                        "{}: read '{}'; another figure there ({}) would settle {}",
                        suspect.what(),
                        suspect.typed(),
                        suspect.slip().word(),
                        settled)
                : Phrase.of(
                        "{}: read '{}'; '{}' ({}) would settle {}",
                        suspect.what(),
                        suspect.typed(),
                        suspect.suggested(),
                        suspect.slip().word(),
                        settled);
    }
}
