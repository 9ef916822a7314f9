package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** Findings on the terminal. */
final class TerminalFindings {
    private static final int LABEL_WIDTH = 11;
    private static final String INDENT = "  ";

    private TerminalFindings() {}

    /** Number of findings of each severity in words: {@code 1 stop, 2 holds, 9 checks, 4 notes}. */
    static String counts(List<Finding> findings) {
        List<String> parts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = findings.stream().filter(f -> f.severity() == severity).count();
            parts.add(count + " " + severity.word() + (count == 1 ? "" : "s"));
        }
        return String.join(", ", parts);
    }

    /** One line: {@code stop  R26-047  Isolated!G9: tare missing. Weigh the empty flask again.} */
    static String oneLine(Finding finding, Wording wording) {
        List<String> parts = new ArrayList<>(List.of(pad(finding.severity().word(), 5)));
        if (!finding.run().isEmpty()) {
            parts.add(finding.run());
        }
        parts.add(finding.place().inWords() + ": " + sentence(wording.of(finding.seen())) + " "
                + wording.of(finding.action()));
        return String.join(INDENT, parts).replaceAll("\\R", " ").stripTrailing();
    }

    /** Several lines: what was seen, what was expected and by which source, what to do. */
    static void print(Finding finding, Wording wording, PrintWriter out) {
        out.println(INDENT + pad(finding.severity().word(), LABEL_WIDTH)
                + finding.place().inWords() + "  [" + finding.code().word() + "]");
        line(out, "seen", wording.of(finding.seen()));
        String expected = wording.of(finding.expected());
        line(out, "expected", finding.source().isEmpty() ? expected : expected + " (" + finding.source() + ")");
        line(out, "action", wording.of(finding.action()));
    }

    private static void line(PrintWriter out, String label, String text) {
        if (!text.isBlank()) {
            String start = INDENT + INDENT + pad(label, LABEL_WIDTH - INDENT.length());
            Wrapped.lines(text, start, " ".repeat(INDENT.length() + LABEL_WIDTH))
                    .forEach(out::println);
        }
    }

    private static String sentence(String text) {
        String last = text.isEmpty() ? "" : text.substring(text.length() - 1);
        return text.isEmpty() || Arrays.asList(".", "!", "?").contains(last) ? text : text + ".";
    }

    static String pad(String word, int width) {
        return word + " ".repeat(Math.max(1, width - word.length()));
    }
}
