package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.measurements.NextTest.Kind;
import workuptally.judgement.measurements.TestChoice.Goal;
import workuptally.judgement.measurements.TestChoice.Option;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.reference.Reactivity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * The tests that would settle the open layers of a run, in the order in which to make them: an assay of one portion, a composite of several,
 * a drop of water or the density where the phase is in doubt. A layer that was read and holds too much waits for no test; nor does one that a
 * stop or a missing lot holds.
 */
public final class NextTests {
    /** What a laboratory reads in a liquid where no limit of the method is known, mg/mL (common practice). */
    private static final double USUAL_DETECTION = 0.1;

    /** Guard for the uncertainty of the result to come: 1.645 times 2 %, and as much for theory (common practice). */
    private static final double GUARD = 1.07;

    private static final double DILUTION = 2;
    private static final double SMALLEST_ALIQUOT_MILLILITRES = 0.1;
    private static final double ANY_COST = 1e9;
    private static final Set<String> ABOUT_THE_TRANSFER = Set.of("R9", "R10");

    private final RunTally tally;
    private final Map<String, LayerDecision> open = new LinkedHashMap<>();
    private final Limits limits;
    private final Pooling pooling;

    private NextTests(RunTally tally, List<LayerDecision> decisions, Limits limits, Reactivity reactivity) {
        this.tally = tally;
        this.limits = limits;
        this.pooling = new Pooling(tally, reactivity);
        decisions.stream().filter(d -> d.outcome() != Outcome.EVIDENCE_COMPLETE).forEach(d -> open.put(d.layer(), d));
    }

    /** The tests of a run; none where nothing that a test could settle is open. */
    public static List<NextTest> of(
            RunTally tally, List<LayerDecision> decisions, Limits limits, Reactivity reactivity) {
        return new NextTests(tally, decisions, limits, reactivity).list();
    }

    private List<NextTest> list() {
        List<Goal> goals = new ArrayList<>();
        for (LayerDecision decision : open.values()) {
            needs(decision).filter(n -> !n.isEmpty()).ifPresent(n -> goals.add(new Goal(decision.layer(), n, 1)));
        }
        if (goals.isEmpty()) {
            return List.of();
        }
        Map<String, NextTest> tests = new LinkedHashMap<>();
        List<Option> options = options(goals, tests);
        List<NextTest> next = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        for (Option option : TestChoice.of(goals, options, ANY_COST)) {
            known.addAll(option.covers());
            List<String> settled = goals.stream()
                    .filter(g -> known.containsAll(g.needs()))
                    .map(Goal::name)
                    .filter(name -> next.stream().noneMatch(t -> t.settles().contains(name)))
                    .toList();
            next.add(settling(tests.get(option.name()), settled));
        }
        return next;
    }

    private NextTest settling(NextTest test, List<String> settled) {
        double grams = 0;
        for (String label : settled) {
            OptionalDouble bound = boundGrams(label);
            if (bound.isEmpty()) {
                grams = 0;
                break;
            }
            grams += bound.getAsDouble();
        }
        return new NextTest(
                test.kind(),
                test.samples(),
                test.substances(),
                test.aliquotsMillilitres(),
                test.dilution(),
                test.mustBeBelow(),
                test.unit(),
                settled,
                grams);
    }

    /**
     * The most that an open layer can hold of what nobody read in it, else of the product that its decision rests on; empty where nothing
     * bounds it.
     */
    private OptionalDouble boundGrams(String label) {
        LayerTally layer = tally.layer(label).orElseThrow();
        List<String> unread = unread(layer);
        Optional<LayerDecision.AtMost> most = open.get(label).atMost();
        if (unread.isEmpty()
                || most.filter(m -> unread.stream().anyMatch(m.product()::equalsIgnoreCase))
                        .isPresent()) {
            return most.map(m -> OptionalDouble.of(m.grams())).orElse(OptionalDouble.empty());
        }
        double sum = 0;
        for (String substance : unread) {
            OptionalDouble bound = layer.contents().stream()
                    .filter(c -> c.substance().equalsIgnoreCase(substance))
                    .map(c -> c.upperBoundGrams().isPresent()
                            ? c.upperBoundGrams()
                            : c.massGrams()
                                    .map(m -> OptionalDouble.of(m.value()))
                                    .orElse(OptionalDouble.empty()))
                    .flatMapToDouble(OptionalDouble::stream)
                    .max();
            if (bound.isEmpty()) {
                return bound;
            }
            sum += bound.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    /** What has to be known for a layer; empty where no test would do. */
    private Optional<Set<String>> needs(LayerDecision decision) {
        Set<String> needs = new LinkedHashSet<>();
        LayerTally layer = tally.layer(decision.layer()).orElseThrow();
        for (Condition condition : decision.conditions()) {
            if (condition.state() == State.MET
                    || condition.state() == State.NOT_ASKED
                    || ABOUT_THE_TRANSFER.contains(condition.id())) {
                continue;
            }
            boolean unread = !unread(layer).isEmpty();
            Set<String> rags = unreadRags();
            switch (condition.id()) {
                case "R1" -> {
                    if (condition.state() == State.NOT_MET) {
                        return Optional.empty();
                    }
                    needs.add("phase " + layer.label());
                }
                case "R4", "R5" -> {
                    // what was read and is too much stays so, whatever else is looked for
                    if (!unread || isRead(layer, decision)) {
                        return Optional.empty();
                    }
                    needs.add(layer.label());
                }
                case "R3", "R8" -> {
                    if (!unread) {
                        return Optional.empty();
                    }
                    needs.add(layer.label());
                }
                case "R6" -> {
                    if (!tally.evidence().missingLayers().isEmpty() || rags.isEmpty() && !unread) {
                        return Optional.empty();
                    }
                    needs.addAll(rags.isEmpty() ? Set.of(layer.label()) : rags);
                }
                default -> {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(needs);
    }

    /** True where the product of which the layer may hold most was read in it. */
    private boolean isRead(LayerTally layer, LayerDecision decision) {
        return decision.atMost()
                .filter(most -> unread(layer).stream().noneMatch(most.product()::equalsIgnoreCase))
                .isPresent();
    }

    /** Rags of the workup that nobody assayed: they hold every layer of the run. */
    private Set<String> unreadRags() {
        Set<String> rags = new LinkedHashSet<>();
        for (LayerTally layer : tally.layers()) {
            boolean rag = layer.phase().filter(p -> p == Layer.Phase.RAG).isPresent();
            if (rag
                    && layer.terminal()
                    && layer.endsWorkup()
                    && layer.entry().isPresent()
                    && !unread(layer).isEmpty()) {
                rags.add(layer.label());
            }
        }
        return rags;
    }

    /** Wanted products that no reading of the layer tells. */
    private List<String> unread(LayerTally layer) {
        return tally.run().products().stream()
                .filter(Product::wanted)
                .map(Product::name)
                .filter(name -> layer.contents().stream()
                        .filter(c -> c.substance().equalsIgnoreCase(name))
                        .noneMatch(Content::isOwnEvidence))
                .toList();
    }

    private List<Option> options(List<Goal> goals, Map<String, NextTest> tests) {
        Set<String> needed = new LinkedHashSet<>();
        goals.forEach(g -> needed.addAll(g.needs()));
        List<Option> options = new ArrayList<>();
        List<LayerTally> unread = new ArrayList<>();
        for (String need : needed) {
            Optional<LayerTally> layer = tally.layer(need);
            if (layer.isPresent()) {
                unread.add(layer.get());
                add(need, Set.of(need), assay(layer.get()), tests, options);
            } else {
                String label = need.substring("phase ".length());
                NextTest drop = new NextTest(
                        Kind.DROP, List.of(label), List.of(), List.of(), 1, OptionalDouble.empty(), "", List.of(), 0);
                add(need, Set.of(need), drop, tests, options);
            }
        }
        List<LayerTally> judged =
                unread.stream().filter(l -> isWhollyJudged(l.label())).toList();
        for (List<LayerTally> set : pooling.sets(judged)) {
            composite(set).ifPresent(test -> {
                Set<String> labels = new LinkedHashSet<>(test.samples());
                add(String.join("+", labels), labels, test, tests, options);
            });
        }
        return options;
    }

    private boolean isWhollyJudged(String label) {
        return Optional.ofNullable(open.get(label))
                .filter(d -> d.notJudged().isEmpty())
                .isPresent();
    }

    private static void add(
            String name, Set<String> covers, NextTest test, Map<String, NextTest> tests, List<Option> options) {
        if (tests.putIfAbsent(name, test) == null) {
            options.add(new Option(name, covers, test.kind().cost()));
        }
    }

    private NextTest assay(LayerTally layer) {
        List<String> substances = unread(layer);
        boolean byVolume = layer.volumeMillilitres().isPresent();
        OptionalDouble grams = allowedGrams(List.of(layer), substances);
        Optional<Double> size = byVolume
                ? layer.volumeMillilitres().map(v -> v.value() / 1000)
                : layer.massGrams().map(m -> m.value() / 100);
        boolean known = grams.isPresent() && size.filter(s -> s > 0).isPresent();
        return new NextTest(
                Kind.ASSAY,
                List.of(layer.label()),
                substances,
                List.of(),
                1,
                known ? OptionalDouble.of(grams.getAsDouble() / size.orElseThrow()) : OptionalDouble.empty(),
                known ? byVolume ? "mg/mL" : "% w/w" : "",
                List.of(),
                0);
    }

    /** One assay of aliquots in proportion to the volumes: what it finds at most, all of them hold at most, and so does each. */
    private Optional<NextTest> composite(List<LayerTally> set) {
        Set<String> substances = new LinkedHashSet<>();
        set.forEach(l -> substances.addAll(unread(l)));
        double millilitres = set.stream()
                .mapToDouble(l -> l.volumeMillilitres().orElseThrow().value())
                .sum();
        double smallest = set.stream()
                .mapToDouble(l -> l.volumeMillilitres().orElseThrow().value())
                .min()
                .orElseThrow();
        OptionalDouble grams = allowedGrams(set, List.copyOf(substances));
        if (grams.isEmpty() || smallest <= 0) {
            return Optional.empty();
        }
        double mustBeBelow = 1000 * grams.getAsDouble() / millilitres;
        // a limit of detection as high as the limit to beat would settle nothing
        if (mustBeBelow <= DILUTION * detectionMilligramsPerMillilitre()) {
            return Optional.empty();
        }
        double part = SMALLEST_ALIQUOT_MILLILITRES / smallest;
        return Optional.of(new NextTest(
                Kind.COMPOSITE,
                set.stream().map(LayerTally::label).toList(),
                List.copyOf(substances),
                set.stream()
                        .map(l -> part * l.volumeMillilitres().orElseThrow().value())
                        .toList(),
                DILUTION,
                OptionalDouble.of(mustBeBelow),
                "mg/mL",
                List.of(),
                0));
    }

    /** The limit of the method in Limits, else the lowest that a non-detect of the run states, else a usual one. */
    private double detectionMilligramsPerMillilitre() {
        return limits.optional(Limit.DETECTION_HPLC)
                .orElseGet(() -> tally.run().assays().stream()
                        .filter(a -> a.unit()
                                .filter(u -> u == workuptally.model.Assay.Unit.MILLIGRAMS_PER_MILLILITRE)
                                .isPresent())
                        .flatMap(a -> a.result().entered().stream())
                        .filter(r -> r.qualifier() == Qualifier.BELOW && r.value() > 0)
                        .mapToDouble(r -> r.value())
                        .min()
                        .orElse(USUAL_DETECTION));
    }

    /**
     * Grams of the scarcest product that some layers may hold together: within the layer limit, and within what the run limit leaves beside
     * the kept layers that were read; empty where nothing is left, or theory is not known.
     */
    private OptionalDouble allowedGrams(List<LayerTally> layers, List<String> substances) {
        double least = Double.POSITIVE_INFINITY;
        for (String substance : substances) {
            Optional<Double> theory = tally.theory().stream()
                    .flatMap(t -> t.products().stream())
                    .filter(p -> p.product().name().equalsIgnoreCase(substance))
                    .map(p -> p.massGrams().value())
                    .findFirst();
            if (theory.isEmpty()) {
                return OptionalDouble.empty();
            }
            double layerLimit = limits.value(Limit.LAYER_LIMIT) / 100 * theory.get();
            double runLimit = limits.value(Limit.RUN_LIMIT) / 100 * theory.get();
            double beside = 0;
            for (LayerTally other : tally.layers()) {
                double held = heldGrams(other, substance);
                if (!layers.contains(other) && held <= layerLimit) {
                    beside += held;
                }
            }
            least = Math.min(least, Math.min(layerLimit, runLimit - beside) / GUARD);
        }
        return least > 0 && Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    /** Upper bound of what was read in a kept layer, g; 0 for another one. */
    private double heldGrams(LayerTally layer, String substance) {
        boolean kept = layer.terminal() && layer.endsWorkup() && layer.entry().isPresent();
        return !kept
                ? 0
                : layer.contents().stream()
                        .filter(c -> c.substance().equalsIgnoreCase(substance) && c.isOwnEvidence())
                        .mapToDouble(c -> c.upperBoundGrams()
                                .orElse(c.massGrams().map(MeasuredValue::value).orElse(0.0)))
                        .sum();
    }
}
