package workuptally.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ContainerReviewing;
import workuptally.judgement.layers.LayerDeciding;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.SettledByHand;
import workuptally.judgement.measurements.OpenLayers;
import workuptally.judgement.measurements.WeekTestChoice;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.HeldLayers;
import workuptally.judgement.rules.ProposalRule;
import workuptally.judgement.rules.RunRule;
import workuptally.judgement.rules.SuspectEntries;
import workuptally.judgement.totals.PeriodAccount;
import workuptally.judgement.totals.RunShare;
import workuptally.material.MaterialReader;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.reference.bench.Threshold;
import workuptally.reference.tables.Cited;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Experience;
import workuptally.tally.series.SeriesAccount;
import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.SuspectAccount;
import workuptally.tally.suspects.TareRegister;

/** Tallies and judges every run of a book. */
public final class ReviewBuilder {
    /** Lines of what to measure next for the whole book. */
    private static final int MOST_TESTS = 3;

    private final Reference reference;
    private final String toolVersion;
    private final MaterialReader materials;

    /**
     * With the reference data in force.
     *
     * @param toolVersion version shown in reports
     */
    public ReviewBuilder(Reference reference, String toolVersion) {
        this.reference = reference;
        this.toolVersion = toolVersion;
        this.materials = MaterialReader.of(reference);
    }

    /** The review of a book. */
    public Review review(Book book) {
        return review(book, done -> {});
    }

    /**
     * The review of a book. Runs are tallied and judged beside each other on all processors; nothing depends on the order in which they are
     * done.
     *
     * @param progress told the number of runs done so far, by one thread at a time
     */
    public Review review(Book book, IntConsumer progress) {
        Substances substances = new Substances(reference, materials);
        Experience experience = Experience.of(book);
        List<RunTally> tallies = tallies(book, substances, experience, progress);
        List<Finding> first = new ArrayList<>(book.findings());
        first.addAll(ofRuns(book, tallies, substances));
        SuspectAccount suspects = new SuspectAccount(book, substances);
        List<RunSuspects> suspected = tallies.parallelStream().map(suspects::of).toList();
        for (BookRule rule : Rules.ofBook(substances)) {
            first.addAll(rule.judge(book, tallies));
        }
        SubjectsOfBook subjects = new SubjectsOfBook(book);
        List<Finding> before = subjects.named(first);
        List<ContainerReview> containers = new ContainerReviewing(book, tallies, substances).list();
        Map<String, List<RunMaterial>> materialsByRun = RunMaterial.ofBook(book, substances);
        Map<String, List<Finding>> beforeByRun = byRun(before);
        List<List<LayerDecision>> decided = decided(
                tallies,
                new LayerDeciding(
                        book, containers, materialsByRun, () -> substances.value(Threshold.PROPOSAL_AMOUNT_RELATIVE)),
                beforeByRun);
        List<Finding> held = new ArrayList<>(before);
        for (int i = 0; i < tallies.size(); i++) {
            Run run = tallies.get(i).run();
            held.addAll(HeldLayers.of(tallies.get(i), decided.get(i), book.limits(), substances.apart(), experience));
            held.addAll(SuspectEntries.of(run, suspected.get(i), beforeByRun.getOrDefault(run.id(), List.of())));
        }
        held.addAll(SuspectEntries.of(containers, held));
        List<Finding> all = new ArrayList<>(SuspectEntries.withoutToldBySuspects(held));
        Map<String, List<LayerDecision>> decisions = byRun(tallies, decided);
        for (ProposalRule rule : Rules.ofProposals(substances)) {
            all.addAll(rule.judge(book, containers, decisions));
        }
        SettledByHand settled = new SettledByHand(book.corrections());
        List<Finding> ordered = subjects.named(all).stream()
                .map(settled::lowered)
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        RunReviewing runs = new RunReviewing(book, substances, byRun(ordered), decisions, materialsByRun);
        List<OpenLayers> asked = runs.asked(tallies);
        return new Review(
                book,
                runs.list(tallies, byRun(tallies, suspected), byRun(tallies, asked)),
                PeriodAccount.of(
                        book.limits().value(Limit.COVERAGE_FACTOR),
                        tallies.stream().map(t -> RunShare.of(t, book.limits())).toList()),
                ordered,
                new BasisAccount(book, substances, tallies).list(),
                toolVersion,
                containers,
                new SeriesAccount(book, tallies, substances).list(),
                RegistryNumbers.of(substances, tallies, containers),
                WeekTestChoice.of(asked, MOST_TESTS));
    }

    /** The decisions about the layers of each run, in order of the runs. */
    private static List<List<LayerDecision>> decided(
            List<RunTally> tallies, LayerDeciding decisions, Map<String, List<Finding>> findings) {
        return tallies.parallelStream()
                .map(t -> decisions.of(t, findings.getOrDefault(t.run().id(), List.of())))
                .toList();
    }

    /** What was made of each run, by its id. */
    private static <T> Map<String, T> byRun(List<RunTally> tallies, List<T> made) {
        Map<String, T> byRun = new LinkedHashMap<>();
        for (int i = 0; i < tallies.size(); i++) {
            byRun.put(tallies.get(i).run().id(), made.get(i));
        }
        return byRun;
    }

    /** Something made for one run, with the reference rows that it rests on. */
    private record OfRun<T>(T made, List<Cited> used) {}

    private static List<RunTally> tallies(
            Book book, Substances substances, Experience experience, IntConsumer progress) {
        RunsDone done = new RunsDone(progress);
        List<OfRun<RunTally>> tallied = book.runs().parallelStream()
                .map(run -> {
                    Substances own = substances.apart();
                    RunTally tally = new RunTallying(book.limits(), own, experience).tally(run);
                    done.oneMore();
                    return new OfRun<>(tally, own.used());
                })
                .toList();
        tallied.forEach(t -> substances.use(t.used()));
        return tallied.stream().map(OfRun::made).toList();
    }

    private static List<Finding> ofRuns(Book book, List<RunTally> tallies, Substances substances) {
        TareRegister vessels = new TareRegister(book.vesselTares());
        List<OfRun<List<Finding>>> judged = tallies.parallelStream()
                .map(tally -> {
                    Substances own = substances.apart();
                    List<Finding> findings = new ArrayList<>();
                    for (RunRule rule : Rules.ofRun(own, vessels)) {
                        findings.addAll(rule.judge(tally, book));
                    }
                    return new OfRun<>(findings, own.used());
                })
                .toList();
        judged.forEach(j -> substances.use(j.used()));
        return judged.stream().flatMap(j -> j.made().stream()).toList();
    }

    /** Counts runs as threads finish them. */
    private static final class RunsDone {
        private final IntConsumer progress;
        private int count;

        RunsDone(IntConsumer progress) {
            this.progress = progress;
        }

        synchronized void oneMore() {
            progress.accept(++count);
        }
    }

    private static Map<String, List<Finding>> byRun(List<Finding> findings) {
        return findings.stream().collect(Collectors.groupingBy(Finding::run));
    }
}
