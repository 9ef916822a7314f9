package workuptally.judgement.layers;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import workuptally.model.Correction;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;

/**
 * What a named person has settled in Corrections: a dated row with the run, the step and the code of the finding under Record, {@code
 * settled} under New, and a reason. Only what was seen at the bench can be settled so, never a figure; the finding stays visible.
 */
public final class SettledByHand {
    /** Findings about a quench, an emulsion, the pH of a step, the form of a lot, the volume or the density of a layer, a note. */
    static final Set<FindingCode> CODES = Set.of(
            FindingCode.QUENCH_NOT_SHOWN,
            FindingCode.QUENCH_TEST_POSITIVE,
            FindingCode.EMULSION_NOT_RECORDED,
            FindingCode.CONTENT_AGAINST_PH,
            FindingCode.ISOLATED_FORM_OPEN,
            FindingCode.NEUTRALISATION_SHORT,
            FindingCode.LAYER_PART_ONLY,
            FindingCode.NOTE_AGAINST_FIGURE,
            FindingCode.LAYER_DENSITY_UNEXPECTED);

    private static final Pattern LIST_MARKS = Pattern.compile("[,;:]");

    private SettledByHand() {}

    /**
     * A finding as it stands beside the decisions about layers: one that a row settles stays visible, but asks for nothing any more. What was
     * a stop is still to be looked at, a hold is told.
     */
    public static Finding lowered(List<Correction> corrections, Finding finding) {
        if (!isOfTheBench(finding) || finding.severity().compareTo(Severity.HOLD) > 0) {
            return finding;
        }
        return corrections.stream()
                .filter(c -> settles(c, finding))
                .findFirst()
                .map(c -> new Finding(
                        finding.code(),
                        finding.severity() == Severity.STOP ? Severity.CHECK : Severity.NOTE,
                        finding.subject(),
                        finding.place(),
                        finding.seen(),
                        finding.expected(),
                        finding.source(),
                        Phrase.of("Settled by {}, {}: {}. It keeps no layer any more.", c.who(), c.when(), c.reason())))
                .orElse(finding);
    }

    /** True for a finding about a quench, an emulsion, the pH of a step, the form of a lot, the volume or the density of a layer, a note. */
    static boolean isOfTheBench(Finding finding) {
        return CODES.contains(finding.code());
    }

    /** True where a row settles the finding. */
    static boolean settles(List<Correction> corrections, Finding finding) {
        return isOfTheBench(finding) && corrections.stream().anyMatch(c -> settles(c, finding));
    }

    private static boolean settles(Correction correction, Finding finding) {
        return correction.settles().contains(finding.code())
                && names(correction.record(), finding.run())
                && !correction.who().isBlank()
                && !correction.when().isBlank()
                && !correction.reason().isBlank();
    }

    private static boolean names(String record, String run) {
        return (" " + LIST_MARKS.matcher(record.toLowerCase(Locale.ROOT)).replaceAll(" ") + " ")
                .contains(" " + run.toLowerCase(Locale.ROOT) + " ");
    }
}
