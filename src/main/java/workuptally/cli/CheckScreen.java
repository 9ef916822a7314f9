package workuptally.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.lines.BareRuns;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;

/** All that is to settle in a book on the terminal: what belongs to no run, then the runs with the most urgent first. */
final class CheckScreen {
    private final Review review;
    private final Wording wording;
    private final PrintWriter out;

    CheckScreen(Review review, Wording wording, PrintWriter out) {
        this.review = review;
        this.wording = wording;
        this.out = out;
    }

    void print() {
        out.println(review.book().name() + ": " + review.runs().size()
                + (review.runs().size() == 1 ? " run; " : " runs; ") + TerminalFindings.counts(review.findings()));
        out.println();
        book();
        BareRuns bare = BareRuns.of(review);
        List<RunReview> others = bare.others(review);
        others.stream()
                .filter(run -> !RunScreen.isQuiet(run))
                .sorted(Comparator.comparing(CheckScreen::urgency))
                .forEach(run -> new RunScreen(run, wording, out).print(coverageFactor()));
        bare(bare);
        String quiet =
                others.stream().filter(RunScreen::isQuiet).map(RunReview::id).collect(Collectors.joining(", "));
        if (!quiet.isEmpty()) {
            Wrapped.lines("Nothing to settle: " + quiet, "", "  ").forEach(out::println);
        }
    }

    private double coverageFactor() {
        return review.period().coverageFactor();
    }

    /** Findings that belong to no run of the book: files, registers, rows of unknown runs. */
    private void book() {
        Set<String> runs = review.runs().stream().map(RunReview::id).collect(Collectors.toSet());
        List<Finding> ofBook =
                review.findings().stream().filter(f -> !runs.contains(f.run())).toList();
        if (!ofBook.isEmpty()) {
            out.println("Book");
            out.println("----");
            ofBook.forEach(finding -> TerminalFindings.print(finding, wording, out));
            out.println();
        }
    }

    /** Runs of a list in one table, and each kind of note of them once. */
    private void bare(BareRuns bare) {
        if (bare.runs().isEmpty()) {
            return;
        }
        String title = bare.runs().size() + " runs of which only the product was weighed";
        out.println(title);
        out.println("-".repeat(title.length()));
        new RunTable(bare.runs(), coverageFactor(), new ReadableNumbers(wording.mark())).print(out);
        out.println();
        for (BareRuns.Note note : bare.notes()) {
            TerminalFindings.print(note.first(), wording, out);
            if (note.runs() > 1) {
                out.println("    likewise " + (note.runs() - 1) + " more of these runs");
            }
        }
        bare.notComputedInWords()
                .ifPresent(words -> Wrapped.lines(words, "  ", "    ").forEach(out::println));
        out.println();
    }

    private static Severity urgency(RunReview run) {
        return run.findings().stream().map(Finding::severity).findFirst().orElse(Severity.NOTE);
    }
}
