package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.SubjectNames;
import workuptally.report.view.wording.Wording;
import workuptally.report.view.wording.Words;

/**
 * Like findings as one line.
 *
 * @param severity severity
 * @param code what they are about
 * @param findings the findings
 * @param seen what was seen, of each of them
 * @param action what to do
 * @param places where they stand
 */
public record RunFindings(
        Severity severity, FindingCode code, List<Finding> findings, String seen, String action, String places) {
    private static final int TOLD = 3;
    private static final int TOLD_CHARACTERS = 200;
    private static final int NOTES_CHARACTERS = 260;

    /** Stops, holds and checks, a line for each code, the most urgent first. */
    public static List<RunFindings> toSettle(List<Finding> findings, Wording wording) {
        List<RunFindings> lines = new ArrayList<>();
        byCode(findings.stream().filter(f -> f.severity() != Severity.NOTE).toList())
                .values()
                .forEach(alike -> lines.add(of(alike, wording)));
        return lines;
    }

    /** Stops, holds and checks, each on a line of its own: what must not be done is never counted away. */
    public static List<RunFindings> each(List<Finding> findings, Wording wording) {
        return findings.stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .map(f -> of(List.of(f), wording))
                .toList();
    }

    private static Map<Kind, List<Finding>> byCode(List<Finding> findings) {
        Map<Kind, List<Finding>> byCode = new LinkedHashMap<>();
        for (Finding finding : findings) {
            byCode.computeIfAbsent(new Kind(finding.severity(), finding.code()), c -> new ArrayList<>())
                    .add(finding);
        }
        return byCode;
    }

    private static RunFindings of(List<Finding> alike, Wording wording) {
        // a stop is told in full, each of it
        int limit = alike.get(0).severity() == Severity.STOP ? Integer.MAX_VALUE : TOLD_CHARACTERS;
        return new RunFindings(
                alike.get(0).severity(),
                alike.get(0).code(),
                List.copyOf(alike),
                told(alike, f -> wording.of(f.seen()), "; ", limit, "; likewise ", ""),
                told(alike, f -> wording.of(f.action()), " ", limit, " Likewise ", "."),
                Words.listed(
                        alike.stream().map(f -> f.place().inWords()).distinct().toList(),
                        ", ",
                        TOLD_CHARACTERS,
                        more -> more + " more cells"));
    }

    /** What is said of each finding, as far as there is room; of the others what they are about. */
    private static String told(
            List<Finding> alike,
            Function<Finding, String> words,
            String between,
            int most,
            String likewise,
            String end) {
        Map<String, List<Finding>> said = new LinkedHashMap<>();
        alike.forEach(f ->
                said.computeIfAbsent(words.apply(f), w -> new ArrayList<>()).add(f));
        StringBuilder text = new StringBuilder();
        List<Finding> left = new ArrayList<>();
        int told = 0;
        for (Map.Entry<String, List<Finding>> one : said.entrySet()) {
            boolean fits = told == 0
                    || most == Integer.MAX_VALUE
                    || told < TOLD
                            && left.isEmpty()
                            && text.length() + one.getKey().length() <= most;
            if (fits) {
                text.append(told == 0 ? "" : between).append(one.getKey());
                told++;
            } else {
                left.addAll(one.getValue());
            }
        }
        return left.isEmpty() ? text.toString() : text + likewise + about(left) + end;
    }

    private static String about(List<Finding> findings) {
        List<String> subjects = SubjectNames.of(findings);
        return subjects.isEmpty()
                ? findings.stream().map(f -> f.place().inWords()).distinct().collect(Collectors.joining(", "))
                : String.join(", ", subjects);
    }

    /** The kinds of findings as words, {@code rag not assayed; titre differs (2)}. */
    public static String kinds(List<RunFindings> lines) {
        return lines.stream()
                .map(l -> l.code().inWords()
                        + (l.findings().size() == 1 ? "" : " (" + l.findings().size() + ")"))
                .collect(Collectors.joining("; "));
    }

    /** The notes folded into a line, {@code titre differs; gas expected (2)}; empty without notes. */
    public static String notes(List<Finding> findings) {
        List<String> words = new ArrayList<>();
        byCode(findings.stream().filter(f -> f.severity() == Severity.NOTE).toList())
                .values()
                .forEach(alike -> words.add(
                        alike.get(0).code().inWords() + (alike.size() == 1 ? "" : " (" + alike.size() + ")")));
        return Words.listed(words, "; ", NOTES_CHARACTERS, more -> more + " more");
    }

    /** What makes findings alike. */
    private record Kind(Severity severity, FindingCode code) {}
}
