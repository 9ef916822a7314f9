package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
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

    private static final Set<FindingCode> AGAINST_SOURCE = EnumSet.of(
            FindingCode.PORTION_HELD_MORE,
            FindingCode.PURIFIED_EXCEEDS_SOURCE,
            FindingCode.PURIFIED_BELOW_SOURCE,
            FindingCode.CAKE_LIGHTER_THAN_AGENT);

    private SuspectEntries() {}

    /** Codes of the findings. */
    static List<FindingCode> codes() {
        return List.of(FindingCode.ENTRY_SUSPECT, FindingCode.ENTRIES_DISAGREE);
    }

    /**
     * The findings of a run.
     *
     * @param told findings of the run so far: where one says the same of the same entries, it is not said again
     */
    public static List<Finding> of(Run run, RunSuspects suspects, List<Finding> told) {
        FindingList findings = new FindingList(run.id());
        for (Suspect suspect : suspects.list()) {
            if (told.stream().noneMatch(f -> isToldBy(f, suspect))) {
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
        Set<Place> named = told.stream()
                .filter(f -> f.code() == FindingCode.ENTRY_SUSPECT)
                .map(Finding::place)
                .collect(Collectors.toSet());
        for (ContainerReview container : containers) {
            for (Suspect suspect : container.suspects().list()) {
                if (!named.contains(suspect.place())) {
                    add(findings, suspect);
                }
            }
        }
        return findings.list();
    }

    /**
     * The findings without those that hold a portion, lot or cake against what it came from where a suspect stands in the same row: that
     * one says the same and what the figure may have been.
     */
    public static List<Finding> withoutToldBySuspects(List<Finding> findings) {
        Set<String> suspected = findings.stream()
                .filter(f -> f.code() == FindingCode.ENTRY_SUSPECT)
                .map(SuspectEntries::row)
                .collect(Collectors.toSet());
        return findings.stream()
                .filter(f -> !AGAINST_SOURCE.contains(f.code()) || !suspected.contains(row(f)))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static String row(Finding finding) {
        return finding.place().sheet() + "\n" + finding.place().row();
    }

    private static void add(FindingList findings, Suspect suspect) {
        if (suspect.slip() != UsualSlip.MISSING_ENTRY) {
            findings.add(
                    FindingCode.ENTRY_SUSPECT,
                    Severity.CHECK,
                    suspect.place(),
                    seen(suspect),
                    Phrase.of(
                            "balances off by {} times their uncertainty as typed, by {} with that entry",
                            Figure.decimals(times(suspect.chiSquareBefore(), suspect.degreesOfFreedom()), 1, ""),
                            Figure.decimals(times(suspect.chiSquareAfter(), suspect.degreesOfFreedom()), 1, "")),
                    TESTED,
                    Phrase.of(
                            "Look at the cell and at the sheet it was copied from{}; nothing is changed until a person"
                                    + " corrects it.",
                            together(suspect)));
        }
    }

    /** The root mean square of what the balances are off, in standard uncertainties. */
    private static double times(OptionalDouble chiSquare, int degreesOfFreedom) {
        return Math.sqrt(chiSquare.orElse(0) / Math.max(1, degreesOfFreedom));
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
