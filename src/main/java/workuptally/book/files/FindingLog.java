package workuptally.book.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.model.Subject;

/** Collects the findings of a reading and puts them in order of place. */
public final class FindingLog {
    /** A cell holds up to 32 767 characters; a reader knows it by its first. */
    private static final int LONGEST_SEEN = 200;

    private static final int LONGEST_NAME = 60;

    /** Formulas are left to be calculated all at once: said once a book, whatever the number of sheets. */
    public static final FindingCode STALE = FindingCode.FORMULAS_STALE;

    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Integer> order = new HashMap<>();
    private final Set<String> leftAlone = new TreeSet<>();

    /** Says that a sheet comes next, so that its findings stand behind those of the sheets before. */
    public void nextSheet(String sheet) {
        order.putIfAbsent(sheet, order.size());
    }

    public void add(
            FindingCode code, Severity severity, String run, Place place, String seen, String expected, String action) {
        add(code, severity, Subject.ofRun(run), place, seen, expected, action);
    }

    /** The same where it is known what it is about. */
    public void add(
            FindingCode code,
            Severity severity,
            Subject about,
            Place place,
            String seen,
            String expected,
            String action) {
        findings.add(new Finding(
                code,
                severity,
                about,
                place,
                Phrase.quoted(shortened(seen, LONGEST_SEEN)),
                Phrase.quoted(expected),
                "",
                Phrase.quoted(action)));
    }

    /** Adds what another log collected. */
    public void addAll(FindingLog other) {
        findings.addAll(other.findings);
        leftAlone.addAll(other.leftAlone);
    }

    /** Keeps the name of a column or sheet of the user's own, which is not read. */
    public void leaveAlone(String name) {
        leftAlone.add(shortened(name, LONGEST_NAME));
    }

    /** Names of columns and sheets that were not read, in order of the alphabet. */
    public List<String> leftAlone() {
        return List.copyOf(leftAlone);
    }

    /** A text cut visibly, never within a character. */
    public static String shortened(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return text;
        }
        String end = text.endsWith("'") ? "…'" : "…";
        return text.substring(0, text.offsetByCodePoints(0, most - 2)) + end;
    }

    /** All findings: those of whole files first, then sheet by sheet, row by row, column by column. */
    public List<Finding> inOrder() {
        List<Finding> sorted = once();
        sorted.sort(Comparator.comparingInt(
                        (Finding finding) -> order.getOrDefault(finding.place().sheet(), -1))
                .thenComparingInt(finding -> finding.place().row())
                .thenComparingInt(finding -> finding.place().column()));
        return List.copyOf(sorted);
    }

    /**
     * Findings, of those about the whole book only the first. Where it says that formulas are left to be calculated, cells without a result
     * have that one cause: a row then names the gravest of them.
     */
    private List<Finding> once() {
        boolean stale = findings.stream().anyMatch(finding -> finding.code().equals(STALE));
        Map<String, Finding> gravest = new HashMap<>();
        if (stale) {
            findings.stream()
                    .filter(FindingLog::isNotCalculated)
                    .forEach(finding -> gravest.merge(row(finding), finding, FindingLog::graver));
        }
        List<Finding> kept = new ArrayList<>();
        boolean said = false;
        for (Finding finding : findings) {
            boolean again = finding.code().equals(STALE)
                    ? said
                    : stale && isNotCalculated(finding) && gravest.get(row(finding)) != finding;
            if (!again) {
                kept.add(finding);
            }
            said |= finding.code().equals(STALE);
        }
        return kept;
    }

    private static boolean isNotCalculated(Finding finding) {
        return finding.code() == FindingCode.FORMULA_NOT_CALCULATED;
    }

    private static String row(Finding finding) {
        return finding.place().sheet() + "!" + finding.place().row();
    }

    private static Finding graver(Finding one, Finding other) {
        return other.severity().compareTo(one.severity()) < 0 ? other : one;
    }
}
