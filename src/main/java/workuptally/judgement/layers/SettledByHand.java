package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.model.Correction;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Subject;

/**
 * What a named person has settled in Corrections: a dated row with the run, the step, layer or lot, and the code of the finding under Record,
 * {@code settled} under New, and a reason. A finding about the run as a whole, whether it was quenched, needs no more than run and code. Only
 * what was seen at the bench can be settled so, never a figure; the finding stays visible.
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

    /** Of these the ones about a run as a whole, wherever in it they are shown. */
    private static final Set<FindingCode> OF_THE_RUN =
            Set.of(FindingCode.QUENCH_NOT_SHOWN, FindingCode.QUENCH_TEST_POSITIVE);

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s,;:+&/()]+");

    private final Map<FindingCode, List<Row>> rows = new EnumMap<>(FindingCode.class);

    /** With the corrections of a book. */
    public SettledByHand(List<Correction> corrections) {
        for (Correction correction : corrections) {
            Row row = new Row(correction, spaced(correction.record()));
            correction
                    .settles()
                    .forEach(code ->
                            rows.computeIfAbsent(code, c -> new ArrayList<>()).add(row));
        }
    }

    /**
     * A finding as it stands beside the decisions about layers: one that a row settles stays visible, but asks for nothing any more. What was
     * a stop is still to be looked at, a hold is told. One that a row would settle if it named what it is about says so.
     */
    public Finding lowered(Finding finding) {
        if (!isOfTheBench(finding) || finding.severity().compareTo(Severity.HOLD) > 0) {
            return finding;
        }
        return settling(finding)
                .map(row -> settled(finding, row.correction()))
                .or(() -> ofRun(finding).findFirst().map(row -> notNamed(finding, row.correction())))
                .orElse(finding);
    }

    private static Finding settled(Finding finding, Correction c) {
        return new Finding(
                finding.code(),
                finding.severity() == Severity.STOP ? Severity.CHECK : Severity.NOTE,
                finding.subject(),
                finding.place(),
                finding.seen(),
                finding.expected(),
                finding.source(),
                Phrase.of("Settled by {}, {}: {}. It keeps no layer any more.", c.who(), c.when(), c.reason()));
    }

    private static Finding notNamed(Finding finding, Correction c) {
        return new Finding(
                finding.code(),
                finding.severity(),
                finding.subject(),
                finding.place(),
                finding.seen(),
                finding.expected(),
                finding.source(),
                Phrase.of(
                        "{} {} does not settle it: it does not name {}.",
                        finding.action(),
                        c.row().at("Record").inWords(),
                        String.join(", ", parts(finding.subject()))));
    }

    /** True for a finding about a quench, an emulsion, the pH of a step, the form of a lot, the volume or the density of a layer, a note. */
    static boolean isOfTheBench(Finding finding) {
        return CODES.contains(finding.code());
    }

    /** True where a row settles the finding. */
    boolean settles(Finding finding) {
        return settling(finding).isPresent();
    }

    private Optional<Row> settling(Finding finding) {
        return ofRun(finding)
                .filter(row -> OF_THE_RUN.contains(finding.code()) || row.namesPartsOf(finding.subject()))
                .findFirst();
    }

    /** The rows of a named person that name code and run of a finding. */
    private Stream<Row> ofRun(Finding finding) {
        return isOfTheBench(finding)
                ? rows.getOrDefault(finding.code(), List.of()).stream().filter(row -> row.names(finding.run()))
                : Stream.empty();
    }

    /** The step, layers and lot that a finding is about, as they are written under Record. */
    private static List<String> parts(Subject subject) {
        List<String> parts = new ArrayList<>();
        if (!subject.step().isEmpty()) {
            parts.add("step " + subject.step());
        }
        subject.layers().forEach(label -> parts.add("layer " + label));
        if (!subject.lot().isEmpty()) {
            parts.add("lot " + subject.lot());
        }
        return parts;
    }

    private static String spaced(String text) {
        return " "
                + BETWEEN_WORDS.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll(" ") + " ";
    }

    /**
     * A row that says something to be settled.
     *
     * @param correction the row
     * @param words the words under Record, in small letters, a blank around each
     */
    private record Row(Correction correction, String words) {
        /** True where a named and dated row with a reason names the run. */
        boolean names(String run) {
            return words.contains(spaced(run))
                    && !correction.who().isBlank()
                    && !correction.when().isBlank()
                    && !correction.reason().isBlank();
        }

        /** True where step, layers and lot are named, each of those that there are, by label or number. */
        boolean namesPartsOf(Subject subject) {
            String beside = words.replaceFirst(Pattern.quote(spaced(subject.run())), " ");
            return Stream.concat(
                            Stream.of(subject.step(), subject.lot()).filter(part -> !part.isEmpty()),
                            subject.layers().stream())
                    .allMatch(part -> beside.contains(spaced(part)));
        }
    }
}
