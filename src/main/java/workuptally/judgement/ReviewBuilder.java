package workuptally.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ContainerReviews;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecisions;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.HeldLayers;
import workuptally.judgement.rules.ProposalRule;
import workuptally.judgement.rules.Rules;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunEstimates;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.SeriesAccount;
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
        List<RunRule> rules = Rules.ofRun(substances, new RunEstimates(book.limits(), substances));
        for (RunTally tally : tallies) {
            for (RunRule rule : rules) {
                findings.addAll(rule.judge(tally, book));
            }
        }
        for (BookRule rule : Rules.ofBook()) {
            findings.addAll(rule.judge(book, tallies));
        }
        List<ContainerReview> containers = new ContainerReviews(book, tallies, substances).list();
        LayerDecisions layerDecisions = new LayerDecisions(book, containers);
        Map<String, List<Finding>> before = byRun(findings);
        Map<String, List<LayerDecision>> decisions = new LinkedHashMap<>();
        for (RunTally tally : tallies) {
            String id = tally.run().id();
            List<LayerDecision> ofRun = layerDecisions.of(tally, before.getOrDefault(id, List.of()));
            decisions.put(id, ofRun);
            findings.addAll(HeldLayers.of(tally, ofRun));
        }
        for (ProposalRule rule : Rules.ofProposals(substances)) {
            findings.addAll(rule.judge(book, containers, decisions));
        }
        List<Finding> ordered = findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        HazardNotes hazardNotes = new HazardNotes(reference, book.limits());
        Map<String, List<Finding>> orderedByRun = byRun(ordered);
        List<RunReview> runs = new ArrayList<>();
        for (RunTally tally : tallies) {
            String id = tally.run().id();
            runs.add(new RunReview(
                    tally, orderedByRun.getOrDefault(id, List.of()), decisions.get(id), hazardNotes.of(tally.run())));
        }
        return new Review(
                book,
                runs,
                PeriodAccount.of(
                        book.limits().value(Limit.COVERAGE_FACTOR),
                        tallies.stream().map(t -> RunShare.of(t, book.limits())).toList()),
                ordered,
                new BasisRows(book, substances).list(),
                toolVersion,
                containers,
                new SeriesAccount(book, tallies).list());
    }

    private static Map<String, List<Finding>> byRun(List<Finding> findings) {
        return findings.stream().collect(Collectors.groupingBy(Finding::run));
    }
}
