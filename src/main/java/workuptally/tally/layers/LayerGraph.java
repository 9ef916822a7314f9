package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;

/**
 * How the portions of a run come from each other: which step gives a label, which consumes it.
 *
 * <p>Whether a layer is consumed is read from the steps, not from its status word. A step that takes a label and gives it again goes on
 * under that label. Strip, distil and sample take a part away and leave the rest under its label unless they give that rest a new one.
 * Where a run records no steps at all, the status word decides.
 */
public final class LayerGraph {
    private final Run run;
    private final Map<String, Lot> lots = new LinkedHashMap<>();
    private final Map<String, Step> givenBy = new LinkedHashMap<>();
    private final Map<String, String> consumedBy = new LinkedHashMap<>();
    private final Map<String, Set<String>> parents = new LinkedHashMap<>();
    private final Map<String, Set<String>> children = new LinkedHashMap<>();
    private final Set<String> aliquots = new LinkedHashSet<>();
    private final List<GraphFault> faults = new ArrayList<>();

    private LayerGraph(Run run) {
        this.run = run;
        run.lots().forEach(lot -> lots.putIfAbsent(lot.label(), lot));
    }

    /** Reads the steps and lots of a run in the order of the table. */
    public static LayerGraph of(Run run) {
        LayerGraph graph = new LayerGraph(run);
        graph.readSteps();
        graph.readLots();
        graph.readStatusWords();
        graph.findCycles();
        return graph;
    }

    /** The run whose portions these are. */
    Run run() {
        return run;
    }

    /** What does not fit together, in order of the steps. */
    public List<GraphFault> faults() {
        return List.copyOf(faults);
    }

    /** Every label of a portion except the reaction mixture and lots: first as the steps give them, then those only in Layers. */
    public List<String> layerLabels() {
        Set<String> labels = new LinkedHashSet<>();
        givenBy.keySet().stream().filter(l -> !isLot(l)).forEach(labels::add);
        run.layers().forEach(l -> labels.add(l.label()));
        labels.remove(Step.REACTION_MIXTURE);
        return List.copyOf(labels);
    }

    /** True where no later step or lot consumes the portion. */
    public boolean isTerminal(String label) {
        return !consumedBy.containsKey(label);
    }

    /** The step number or lot label that consumes a portion, if one does. */
    public Optional<String> consumedBy(String label) {
        return Optional.ofNullable(consumedBy.get(label));
    }

    /** The step that first gives a label, if one does. */
    public Optional<Step> givenBy(String label) {
        return Optional.ofNullable(givenBy.get(label));
    }

    /** True for a sample taken for analysis. */
    public boolean isAliquot(String label) {
        return aliquots.contains(label);
    }

    /** The steps that hand a portion on under another label, all of it or a part, in order. */
    public List<Step> takenBy(String label) {
        return run.orderedSteps().stream()
                .filter(step -> step.from().contains(label) && consumes(step, label))
                .toList();
    }

    /** Labels that a portion was made from, in order of the steps. */
    public Set<String> parents(String label) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(parents.getOrDefault(label, Set.of())));
    }

    /** Labels made from a portion, lots included, in order of the steps. */
    public List<String> children(String label) {
        return List.copyOf(children.getOrDefault(label, Set.of()));
    }

    /**
     * Labels of portions and lots that were made from one portion and from nothing else. What another stream joined is left out with all
     * that came of it, since what is found there may have come with that stream.
     */
    public Set<String> madeFromAlone(String label) {
        Set<String> known = new LinkedHashSet<>(Set.of(label));
        List<String> open = new ArrayList<>(children(label));
        while (!open.isEmpty()) {
            String next = open.remove(0);
            if (!known.contains(next) && known.containsAll(parents.getOrDefault(next, Set.of()))) {
                known.add(next);
                open.addAll(children(next));
            }
        }
        known.remove(label);
        return known;
    }

    /** True where a quench takes one of these portions: product may form in it. */
    public boolean isQuenched(Set<String> labels) {
        return run.steps().stream()
                .filter(s -> s.operation().filter(o -> o == Operation.QUENCH).isPresent())
                .anyMatch(s -> s.from().stream().anyMatch(labels::contains));
    }

    /** Nearest lots that a portion or lot was made from, through portions between them. */
    public Set<String> nearestLots(String label) {
        Set<String> lots = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>(Set.of(label));
        List<String> open = new ArrayList<>(parents.getOrDefault(label, Set.of()));
        while (!open.isEmpty()) {
            String next = open.remove(0);
            if (seen.add(next) && isLot(next)) {
                lots.add(next);
            } else if (!isLot(next)) {
                for (String parent : parents.getOrDefault(next, Set.of())) {
                    if (!seen.contains(parent)) {
                        open.add(parent);
                    }
                }
            }
        }
        return lots;
    }

    /** True where a portion or lot descends from a lot, so that it belongs to a purification. */
    public boolean descendsFromLot(String label) {
        return !nearestLots(label).isEmpty();
    }

    /** True where a step works on what a lot has become, or on what came of it. */
    public boolean isPurification(Step step) {
        return step.from().stream().anyMatch(l -> descendsFromLot(l) || isLot(l) && !isFinishing(step, l));
    }

    private boolean isLot(String label) {
        return lots.containsKey(label);
    }

    /**
     * True where a step belongs to the making of a lot: a lot is weighed when it is finished, so that what washes it, or dries it under its
     * own label, was there before. What such a step gives beside it comes from where the lot comes from.
     */
    private boolean isFinishing(Step step, String source) {
        return isLot(source)
                && (step.gives().contains(source)
                        || step.operation().filter(o -> o == Operation.RINSE).isPresent());
    }

    /** Where a lot comes from by the steps so far, else by its own row. */
    private Set<String> origins(String lot) {
        Set<String> known = parents.getOrDefault(lot, Set.of());
        List<String> from = lots.containsKey(lot) ? lots.get(lot).from() : List.of();
        return !known.isEmpty() ? new LinkedHashSet<>(known) : from.isEmpty() ? Set.of(lot) : new LinkedHashSet<>(from);
    }

    private void readSteps() {
        Set<String> known = new HashSet<>(Set.of(Step.REACTION_MIXTURE));
        Set<String> everGiven = new HashSet<>();
        List<Step> ordered = run.orderedSteps();
        ordered.forEach(s -> everGiven.addAll(s.gives()));
        Map<String, Step> taken = new HashMap<>();
        for (Step step : ordered) {
            for (String source : step.from()) {
                checkSource(step, source, known, everGiven, taken);
            }
            Set<String> given = new LinkedHashSet<>(step.gives());
            for (String label : given) {
                if (!step.from().contains(label)) {
                    if (givenBy.containsKey(label) && step.operation().orElse(Operation.COMBINE) != Operation.RINSE) {
                        faults.add(new GraphFault(
                                GraphFault.Kind.GIVEN_TWICE,
                                label,
                                "step " + step.number(),
                                step.row().at("Gives other")));
                    }
                    for (String source : step.from()) {
                        for (String origin : isFinishing(step, source) ? origins(source) : Set.of(source)) {
                            link(origin, label);
                        }
                    }
                }
                givenBy.putIfAbsent(label, step);
                known.add(label);
                if (step.operation().filter(o -> o == Operation.SAMPLE).isPresent()) {
                    aliquots.add(label);
                }
            }
            for (String source : step.from()) {
                if (consumes(step, source)) {
                    consumedBy.put(source, "step " + step.number());
                    // of a lot taken in part the rest is still there
                    if (!isLot(source) || !step.isOfPartOf(run)) {
                        taken.put(source, step);
                    }
                }
            }
        }
    }

    private void checkSource(
            Step step, String source, Set<String> known, Set<String> everGiven, Map<String, Step> taken) {
        boolean besideUnknown = source.equals(Step.REACTION_MIXTURE)
                && step.from().stream().anyMatch(s -> !known.contains(s) && !everGiven.contains(s) && !isLot(s));
        if (besideUnknown) {
            return; // it stands there because nothing gives the other label
        }
        if (taken.containsKey(source)) {
            faults.add(new GraphFault(
                    GraphFault.Kind.TAKEN_AFTER_CONSUMED,
                    source,
                    "step " + step.number(),
                    step.row().at("From")));
        } else if (!known.contains(source) && !isLot(source)) {
            GraphFault.Kind kind =
                    everGiven.contains(source) ? GraphFault.Kind.TAKEN_BEFORE_GIVEN : GraphFault.Kind.UNKNOWN_SOURCE;
            faults.add(new GraphFault(
                    kind, source, "step " + step.number(), step.row().at("From")));
        }
    }

    /** A step consumes its source when it hands the whole of it on under another label. */
    private boolean consumes(Step step, String source) {
        List<String> gives = step.gives();
        if (gives.isEmpty() || gives.contains(source)) {
            return false;
        }
        Operation operation = step.operation().orElse(Operation.COMBINE);
        return switch (operation) {
            case SAMPLE -> false;
            case RINSE -> !isLot(source) && !isPhase(source, Layer.Phase.SOLID);
            case STRIP, DISTIL -> !gives.stream().allMatch(given -> isPhase(given, Layer.Phase.DISTILLATE));
            default -> true;
        };
    }

    private boolean isPhase(String label, Layer.Phase phase) {
        return run.layer(label).flatMap(Layer::phase).equals(Optional.of(phase));
    }

    private void readLots() {
        // once for all products of a lot, which has one origin
        for (Lot lot : lots.values()) {
            for (String source : lot.from()) {
                boolean knownSource = source.equals(Step.REACTION_MIXTURE)
                        || givenBy.containsKey(source)
                        || isLot(source)
                        || run.layer(source).isPresent();
                if (!knownSource) {
                    faults.add(new GraphFault(
                            GraphFault.Kind.UNKNOWN_SOURCE,
                            source,
                            "lot " + lot.label(),
                            lot.row().at("From")));
                    continue;
                }
                link(source, lot.label());
                if (!isLot(source)) {
                    consumedBy.putIfAbsent(source, "lot " + lot.label());
                }
            }
        }
    }

    private void readStatusWords() {
        for (Layer layer : run.layers()) {
            String label = layer.label();
            // an aliquot is used up by its assay, and what another run took was not consumed in this one
            boolean used = isAliquot(label)
                    && layer.custody()
                            .status()
                            .filter(s -> s == Layer.Status.USED_UP)
                            .isPresent();
            boolean saysConsumed = layer.saysConsumed() && !used && !layer.isTakenIntoAnotherRun();
            if (run.steps().isEmpty()) {
                if (saysConsumed) {
                    consumedBy.putIfAbsent(label, "its status");
                }
                continue;
            }
            if (!givenBy.containsKey(label)) {
                faults.add(new GraphFault(
                        GraphFault.Kind.NEVER_GIVEN, label, "", layer.row().at("Layer")));
            }
            if (saysConsumed && !consumedBy.containsKey(label)) {
                faults.add(new GraphFault(
                        GraphFault.Kind.SAID_CONSUMED, label, "", layer.row().at("Status")));
            } else if (!saysConsumed && consumedBy.containsKey(label) && saysStillThere(layer)) {
                faults.add(new GraphFault(
                        GraphFault.Kind.SAID_KEPT,
                        label,
                        consumedBy.get(label),
                        layer.row().at("Status")));
            }
        }
    }

    private static boolean saysStillThere(Layer layer) {
        return layer.custody()
                .status()
                .filter(s -> s == Layer.Status.KEPT || s == Layer.Status.TO_REUSE)
                .isPresent();
    }

    /** One fault for each ring of portions; those that only descend from it have none of their own. */
    private void findCycles() {
        for (List<String> ring : new Rings(parents).list()) {
            Optional<Step> last = givenBy(ring.get(ring.size() - 1));
            faults.add(new GraphFault(
                    GraphFault.Kind.CYCLE,
                    String.join(" ← ", ring) + " ← " + ring.get(0),
                    last.map(Step::number).orElse(""),
                    last.map(s -> s.row().at("From")).orElse(run.row().at("Run"))));
        }
    }

    private void link(String source, String target) {
        if (!source.equals(target)) {
            parents.computeIfAbsent(target, k -> new LinkedHashSet<>()).add(source);
            children.computeIfAbsent(source, k -> new LinkedHashSet<>()).add(target);
        }
    }
}
