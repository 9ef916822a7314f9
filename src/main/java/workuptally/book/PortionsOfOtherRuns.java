package workuptally.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.NamedIn;
import workuptally.model.Run;
import workuptally.model.Step;

/**
 * Portions that one run takes from another: liquors of several batches are often worked up together as a run of its own, which names them as
 * {@code PC-1 ML1} under Supplier lot or Material of a charge, or under From or Material of a step.
 *
 * <p>What its own row says to be consumed has then gone into that run. A step or lot that starts from it starts from what was charged; the
 * name beside portions of the run itself stays, since what joined them is not in the account.
 */
final class PortionsOfOtherRuns {
    private final List<Run> runs;
    private final NamedIn<Run> names;
    private final Map<Run, Map<String, String>> takers = new HashMap<>();

    private PortionsOfOtherRuns(List<Run> runs) {
        this.runs = runs;
        this.names = new NamedIn<>(runs, Run::id);
    }

    /** The runs of a book with what they take from each other. */
    static List<Run> settled(List<Run> runs) {
        PortionsOfOtherRuns portions = new PortionsOfOtherRuns(runs);
        runs.stream().filter(run -> run.status() != Run.Status.PLANNED).forEach(portions::findTaken);
        return runs.stream().map(portions::settled).toList();
    }

    private void findTaken(Run run) {
        Stream<String> ofCharges = run.charges().stream()
                .flatMap((Charge c) -> Stream.of(c.material(), c.goods().supplierLot()));
        Stream<String> ofSteps = run.steps().stream()
                .flatMap(s ->
                        Stream.concat(s.from().stream(), Stream.of(s.added().material())));
        Stream<String> ofLots = run.lots().stream().flatMap(lot -> lot.from().stream());
        Stream.of(ofCharges, ofSteps, ofLots)
                .flatMap(texts -> texts)
                .distinct()
                .forEach(text -> names.behindNames(text).forEach((other, behind) -> {
                    if (other != run) {
                        NamedIn.labelsIn(behind, consumed(other))
                                .forEach(label -> takers.computeIfAbsent(other, o -> new HashMap<>())
                                        .putIfAbsent(label, run.id()));
                    }
                }));
    }

    private static List<String> consumed(Run run) {
        return run.layers().stream()
                .filter(Layer::saysConsumed)
                .map(Layer::label)
                .toList();
    }

    private Run settled(Run run) {
        Map<String, String> takerOf = takers.getOrDefault(run, Map.of());
        Set<String> own = new HashSet<>();
        run.layers().forEach(layer -> own.add(layer.label()));
        run.lots().forEach(lot -> own.add(lot.label()));
        run.steps().forEach(step -> own.addAll(step.gives()));
        List<Step> steps = new ArrayList<>();
        for (Step step : run.steps()) {
            List<String> from = ownSources(run, step.from(), own);
            steps.add(from.equals(step.from()) ? step : step.takenFrom(from));
        }
        List<Lot> lots = new ArrayList<>();
        for (Lot lot : run.lots()) {
            List<String> from = ownSources(run, lot.from(), own);
            lots.add(from.equals(lot.from()) ? lot : lot.madeFrom(from));
        }
        boolean same = takerOf.isEmpty() && steps.equals(run.steps()) && lots.equals(run.lots());
        return same
                ? run
                : run.with(
                        steps,
                        run.layers().stream()
                                .map(l -> takerOf.containsKey(l.label()) ? l.takenInto(takerOf.get(l.label())) : l)
                                .toList(),
                        lots);
    }

    /** The reaction mixture for portions of other runs; where own portions stand beside them, all as they are. */
    private List<String> ownSources(Run run, List<String> from, Set<String> own) {
        boolean ofOthers = from.stream().anyMatch(label -> !own.contains(label) && isOfAnotherRun(run, label));
        boolean alone = from.stream()
                .allMatch(label ->
                        label.equals(Step.REACTION_MIXTURE) || !own.contains(label) && isOfAnotherRun(run, label));
        return ofOthers && alone ? List.of(Step.REACTION_MIXTURE) : from;
    }

    private boolean isOfAnotherRun(Run run, String label) {
        return names.behindNames(label).entrySet().stream()
                .anyMatch(named -> named.getKey() != run
                        && !NamedIn.labelsIn(
                                        named.getValue(),
                                        Stream.concat(
                                                        named.getKey().layers().stream()
                                                                .map(Layer::label),
                                                        named.getKey().lots().stream()
                                                                .map(Lot::label))
                                                .toList())
                                .isEmpty());
    }
}
