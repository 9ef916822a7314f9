package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.layers.MostInLayers;
import workuptally.judgement.measurements.TestChoice.Goal;
import workuptally.judgement.measurements.TestChoice.Option;
import workuptally.model.Layer;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Pooling;
import workuptally.tally.layers.LayerTally;

/**
 * The open layers of a run, what has to be known for each, and the tests that would tell it: an assay of one portion, a composite of several,
 * the dry residue of an aliquot, a tare that is missing, a drop of water or the density where the phase is in doubt. A layer that was read
 * and holds too much waits for no test; nor does one that a stop or a missing lot holds.
 */
public final class OpenLayers {
    private final RunTally tally;
    private final Map<String, LayerDecision> open = new LinkedHashMap<>();
    private final PossibleTests tests;
    private final CompositeSets pooling;
    private final List<Goal> goals = new ArrayList<>();
    private final List<Option> options = new ArrayList<>();
    private final Map<String, NextTest> byName = new LinkedHashMap<>();

    private OpenLayers(RunTally tally, List<LayerDecision> decisions, PossibleTests tests, CompositeSets pooling) {
        this.tally = tally;
        this.tests = tests;
        this.pooling = pooling;
        decisions.stream()
                .filter(d -> d.outcome() != Outcome.EVIDENCE_COMPLETE && !d.isGoneEarly())
                .forEach(d -> open.put(d.layer(), d));
        for (LayerDecision decision : open.values()) {
            needs(decision).filter(n -> !n.isEmpty()).ifPresent(n -> goals.add(new Goal(decision.layer(), n, 1)));
        }
        if (!goals.isEmpty()) {
            gather();
        }
    }

    /** Those of a run. */
    public static OpenLayers of(RunTally tally, List<LayerDecision> decisions, Limits limits, Substances substances) {
        return new OpenLayers(
                tally,
                decisions,
                new PossibleTests(tally, limits, substances),
                new CompositeSets(
                        new Pooling(tally.run(), tally.evidence().meetings(), substances),
                        substances.reference().reactivity()));
    }

    /** Id of the run. */
    public String run() {
        return tally.run().id();
    }

    /** Layers that tests can settle, with what has to be known for each. */
    List<Goal> goals() {
        return goals;
    }

    /** Tests by name, with what they make known. */
    List<Option> options() {
        return options;
    }

    NextTest test(Option option) {
        return byName.get(option.name());
    }

    /** Vessel whose tare a test would give; empty for another test, or a vessel without a name. */
    String vessel(Option option) {
        NextTest test = test(option);
        return test.kind() == NextTest.Kind.TARE
                ? tests.vessel(tally.layer(test.samples().get(0)).orElseThrow())
                : "";
    }

    /** The tests in the order in which to make them, each with what it settles; none where nothing that a test could settle is open. */
    public List<NextTest> list() {
        List<NextTest> next = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        for (Option option : TestChoice.of(goals, options, Double.MAX_VALUE)) {
            List<String> before = TestChoice.reached(goals, known);
            known.addAll(option.covers());
            List<String> settled = new ArrayList<>(TestChoice.reached(goals, known));
            settled.removeAll(before);
            next.add(settling(test(option), settled));
        }
        return next;
    }

    /** A test with the layers that it settles, and what these hold at most as things stand. */
    NextTest settling(NextTest test, List<String> settled) {
        MostInLayers most = MostInLayers.of(
                tally,
                settled.isEmpty() ? test.samples() : settled,
                test.substances().isEmpty() ? wanted() : test.substances());
        return test.settling(settled, most.unbounded() > 0 ? 0 : most.grams());
    }

    private List<String> wanted() {
        return tally.run().products().stream()
                .filter(Product::wanted)
                .map(Product::name)
                .toList();
    }

    /** What has to be known for a layer; empty where no test would do. */
    private Optional<Set<String>> needs(LayerDecision decision) {
        Set<String> needs = new LinkedHashSet<>();
        LayerTally layer = tally.layer(decision.layer()).orElseThrow();
        for (Condition condition : decision.conditions()) {
            if (condition.state() == State.MET
                    || condition.state() == State.NOT_ASKED
                    || condition.criterion().isOfTransfer()) {
                continue;
            }
            boolean unread = !tests.unread(layer).isEmpty();
            Set<String> rags = unreadRags();
            switch (condition.criterion()) {
                case IDENTITY -> {
                    if (condition.state() == State.NOT_MET) {
                        return Optional.empty();
                    }
                    needs.add("phase " + layer.label());
                }
                case LAYER_LIMIT, RUN_LIMIT -> {
                    // what was read and is too much stays so, whatever else is looked for
                    if (!unread || isRead(layer, decision)) {
                        return Optional.empty();
                    }
                    needs.add(layer.label());
                }
                case CONTENT_KNOWN, OTHER_PRODUCTS -> {
                    if (!unread) {
                        return Optional.empty();
                    }
                    needs.add(layer.label());
                }
                case BALANCE -> {
                    if (!tally.evidence().gaps().missingLayers().isEmpty() || rags.isEmpty() && !unread) {
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
                .filter(most -> tests.unread(layer).stream().noneMatch(most.product()::equalsIgnoreCase))
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
                    && !tests.unread(layer).isEmpty()) {
                rags.add(layer.label());
            }
        }
        return rags;
    }

    private void gather() {
        Set<String> needed = new LinkedHashSet<>();
        goals.forEach(g -> needed.addAll(g.needs()));
        List<LayerTally> unread = new ArrayList<>();
        for (String need : needed) {
            Optional<LayerTally> layer = tally.layer(need);
            if (layer.isPresent()) {
                unread.add(layer.get());
                add("assay " + need, Set.of(need), tests.assay(layer.get()));
                tests.dryResidue(layer.get()).ifPresent(t -> add("residue " + need, Set.of(need), t));
                tests.tare(layer.get()).ifPresent(t -> add("tare " + need, Set.of(need), t));
            } else {
                String label = need.substring("phase ".length());
                add(need, Set.of(need), tests.drop(label));
            }
        }
        List<LayerTally> judged =
                unread.stream().filter(l -> isWhollyJudged(l.label())).toList();
        for (List<LayerTally> set : pooling.sets(judged)) {
            tests.composite(set).ifPresent(test -> {
                Set<String> labels = new LinkedHashSet<>(test.samples());
                add(String.join("+", labels), labels, test);
            });
        }
    }

    private boolean isWhollyJudged(String label) {
        return Optional.ofNullable(open.get(label))
                .filter(d -> d.notJudged().isEmpty())
                .isPresent();
    }

    private void add(String name, Set<String> covers, NextTest test) {
        if (byName.putIfAbsent(name, test) == null) {
            options.add(new Option(name, covers, test.kind().cost()));
        }
    }
}
