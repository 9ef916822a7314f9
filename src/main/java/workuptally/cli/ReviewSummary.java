package workuptally.cli;

import java.io.PrintWriter;
import java.util.List;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;

/** A review in short on the terminal: the runs with yield and closure, and what must be settled first. */
final class ReviewSummary {
    private ReviewSummary() {}

    static void print(Review review, Wording wording, PrintWriter out) {
        out.println(review.book().name() + ": " + review.runs().size()
                + (review.runs().size() == 1 ? " run; " : " runs; ") + TerminalFindings.counts(review.findings()));
        out.println();
        new RunTable(review.runs(), review.period().coverageFactor(), new ReadableNumbers(wording.mark())).print(out);
        List<Finding> urgent = review.findings().stream()
                .filter(f -> f.severity().compareTo(Severity.HOLD) <= 0)
                .toList();
        if (!urgent.isEmpty()) {
            out.println();
            urgent.forEach(finding -> out.println(TerminalFindings.oneLine(finding, wording)));
        }
        out.println();
    }
}
