package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision.AtMost;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.Phrase;
import workuptally.model.Transfer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.balance.Closure;
import workuptally.tally.layers.LayerTally;

/**
 * Decisions about the kept layers of a run.
 *
 * <p>R1 to R8 decide, and R11 and R12 where the book asks them: one not met keeps the layer, one missing asks for a measurement first.
 * R9 and R10 bear on a proposed transfer and stand beside.
 */
public final class LayerDeciding {
    private static final List<LayerCondition> CONDITIONS = List.of(
            new PhaseKnown(),
            new ProductIsolated(),
            new ContentKnown(),
            new ContentSmall(),
            new SumSmall(),
            new BalanceSettled(),
            new NoOpenStop(),
            new NoOtherWanted(),
            new QuenchShown(),
            new ContainerFits(),
            new NothingHolds(),
            new WaitingTimePassed());

    private final Book book;
    private final SettledByHand settled;
    private final Map<String, List<ContainerReview>> containersByRun;
    private final Map<String, List<Transfer>> transfersByRun;
    private final Map<String, List<RunMaterial>> materialsByRun;

    private final DoubleSupplier toleranceOfAmounts;

    /** The conditions so far, each by itself: layers of many runs rest on the same words. Runs may be judged beside each other. */
    private final Map<Condition, Condition> shared = new ConcurrentHashMap<>();

    /**
     * With the limits and transfers of a book.
     *
     * @param containers its containers with what is proposed for them
     * @param materialsByRun what the names of each run mean
     * @param toleranceOfAmounts share of a layer that may stay behind where all of it was transferred, fraction
     */
    public LayerDeciding(
            Book book,
            List<ContainerReview> containers,
            Map<String, List<RunMaterial>> materialsByRun,
            DoubleSupplier toleranceOfAmounts) {
        this.toleranceOfAmounts = toleranceOfAmounts;
        this.materialsByRun = materialsByRun;
        this.book = book;
        this.settled = new SettledByHand(book.corrections());
        this.containersByRun = byRun(containers);
        this.transfersByRun = book.transfers().stream().collect(Collectors.groupingBy(Transfer::run));
    }

    /** The containers for which something of each run is proposed, in order. */
    private static Map<String, List<ContainerReview>> byRun(List<ContainerReview> containers) {
        Map<String, List<ContainerReview>> byRun = new HashMap<>();
        for (ContainerReview container : containers) {
            container.proposals().stream()
                    .map(proposal -> proposal.addition().transfer().run())
                    .distinct()
                    .forEach(run ->
                            byRun.computeIfAbsent(run, k -> new ArrayList<>()).add(container));
        }
        return byRun;
    }

    /**
     * One decision for each kept layer, in order of the steps.
     *
     * @param run results
     * @param findings findings of the run so far
     */
    public List<LayerDecision> of(RunTally run, List<Finding> findings) {
        SumOfLayers sums = SumOfLayers.of(run, book.limits());
        List<Transfer> transfers = transfersByRun.getOrDefault(run.run().id(), List.of());
        List<ContainerReview> containers =
                containersByRun.getOrDefault(run.run().id(), List.of());
        List<RunMaterial> materials = materialsByRun.getOrDefault(run.run().id(), List.of());
        List<LayerDecision> decisions = new ArrayList<>();
        for (LayerTally layer : KeptLayers.of(run)) {
            LayerEvidence evidence =
                    new LayerEvidence(layer, run, book, settled, transfers, findings, sums, containers);
            decisions.add(decide(
                    layer.label(),
                    CONDITIONS.stream()
                            .map(c -> shared.computeIfAbsent(c.judge(evidence), first -> first))
                            .toList(),
                    layer.endsWorkup() ? openBalance(run) : Phrase.NONE,
                    ContentSmall.atMost(evidence),
                    Departure.of(layer, transfers, toleranceOfAmounts),
                    NotJudged.in(layer.label(), run.run(), materials),
                    UnreadNotes.of(layer.label(), run.run())));
        }
        return decisions;
    }

    /** The balance of a run that does not close, and by how much; nothing where all close. */
    private static Phrase openBalance(RunTally run) {
        return Closure.worst(run.closures())
                .filter(closure -> closure.verdict() != Closure.Verdict.CLOSES)
                .map(closure -> Phrase.of(
                        "balance on {} {}, {}",
                        closure.skeleton(),
                        closure.verdict().word(),
                        Figure.pair(closure.percent().value(), closure.expandedUncertaintyPercent(), 1, "%")))
                .orElse(Phrase.NONE);
    }

    private static LayerDecision decide(
            String layer,
            List<Condition> conditions,
            Phrase openBalance,
            Optional<AtMost> atMost,
            Optional<Departure> departure,
            List<String> notJudged,
            List<String> unreadNotes) {
        Optional<Condition> notMet = first(conditions, State.NOT_MET);
        Optional<Condition> missing = first(conditions, State.MISSING);
        if (notMet.isPresent()) {
            return new LayerDecision(
                    layer, Outcome.KEEP, notMet.get().evidence(), conditions, atMost, departure, notJudged, List.of());
        }
        if (missing.isPresent()) {
            return new LayerDecision(
                    layer,
                    Outcome.MEASURE_FIRST,
                    Phrase.of("missing: {}", missing.get().evidence()),
                    conditions,
                    atMost,
                    departure,
                    notJudged,
                    List.of());
        }
        Phrase bound = conditions.stream()
                .filter(c -> c.criterion() == Criterion.LAYER_LIMIT)
                .map(Condition::evidence)
                .findFirst()
                .orElse(Phrase.NONE);
        Phrase reason = openBalance.isEmpty() ? bound : Phrase.of("{}; {}", bound, openBalance);
        return new LayerDecision(
                layer, Outcome.EVIDENCE_COMPLETE, reason, conditions, atMost, departure, notJudged, unreadNotes);
    }

    /** The most telling condition in that state: the limit of the layer before all, then in order. */
    private static Optional<Condition> first(List<Condition> conditions, State state) {
        List<Condition> inState = conditions.stream()
                .filter(c -> c.state() == state && !c.criterion().isOfTransfer())
                .toList();
        return inState.stream()
                .filter(c -> c.criterion() == Criterion.LAYER_LIMIT)
                .findFirst()
                .or(() -> inState.stream().findFirst());
    }
}
