package workuptally.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ContainerReviews;
import workuptally.judgement.layers.LayerDecisions;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.Substances;

/** Tallies and judges every run of a book. */
public final class ReviewBuilder {
    private final Reference reference;
    private final String toolVersion;

    /**
     * With the reference data in force.
     *
     * @param toolVersion version shown in reports
     */
    public ReviewBuilder(Reference reference, String toolVersion) {
        this.reference = reference;
        this.toolVersion = toolVersion;
    }

    /** The review of a book. */
    public Review review(Book book) {
        return review(book, done -> {});
    }

    /**
     * The review of a book.
     *
     * @param progress told the number of runs done so far
     */
    public Review review(Book book, IntConsumer progress) {
        Substances substances = new Substances(reference);
        RunTallying tallying = new RunTallying(book.limits(), substances);
        List<RunTally> tallies = new ArrayList<>();
        for (Run run : book.runs()) {
            tallies.add(tallying.tally(run));
            progress.accept(tallies.size());
        }
        List<Finding> findings = new ArrayList<>(book.findings());
        for (RunTally tally : tallies) {
            for (RunRule rule : Rules.ofRun(substances)) {
                findings.addAll(rule.judge(tally, book));
            }
        }
        for (BookRule rule : Rules.ofBook()) {
            findings.addAll(rule.judge(book, tallies));
        }
        List<ContainerReview> containers = new ContainerReviews(book, tallies, substances).list();
        HazardNotes hazardNotes = new HazardNotes(reference);
        List<RunReview> runs = new ArrayList<>();
        for (RunTally tally : tallies) {
            List<Finding> ofRun = findings.stream()
                    .filter(f -> f.run().equals(tally.run().id()))
                    .sorted(Comparator.comparing(Finding::severity))
                    .toList();
            runs.add(new RunReview(
                    tally, ofRun, new LayerDecisions(book, containers).of(tally, ofRun), hazardNotes.of(tally.run())));
        }
        for (ProposalRule rule : Rules.ofProposals(substances)) {
            findings.addAll(rule.judge(book, containers, runs));
        }
        List<Finding> ordered = findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        return new Review(
                book,
                runs,
                new PeriodAccount(book.limits()).of(runs),
                ordered,
                new BasisRows(book, substances).list(),
                toolVersion,
                containers);
    }
}
