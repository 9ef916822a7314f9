package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.reference.Reactivity;
import workuptally.reference.Reactivity.Membership;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.layers.LayerTally;

/**
 * Which layers may stand in one composite sample: clear liquids of one phase whose contents no table knows to react with each other, not even
 * in an ordinary way, since a small vial is closed and no funnel that is vented; and of which every material is known. What a step added
 * to a layer counts as there, whichever phase takes it and whatever water or acid makes of it in time.
 */
final class Pooling {
    private static final double ACIDIC = 4;
    private static final double BASIC = 7.5;

    private final RunTally tally;
    private final Reactivity reactivity;
    private final Map<String, RunMaterial> materials = new LinkedHashMap<>();

    /**
     * Of the layers of a run.
     *
     * @param materials what the names of the run mean
     */
    Pooling(RunTally tally, Reactivity reactivity, List<RunMaterial> materials) {
        this.tally = tally;
        this.reactivity = reactivity;
        materials.forEach(m -> this.materials.put(m.written(), m));
    }

    /** True for a clear liquid with a volume. */
    static boolean isClear(LayerTally layer) {
        return layer.volumeMillilitres().isPresent()
                && layer.phase()
                        .filter(p -> p == Layer.Phase.AQUEOUS || p == Layer.Phase.ORGANIC)
                        .isPresent();
    }

    /** The largest sets of at least two layers that may stand together, in order; each layer starts one. */
    List<List<LayerTally>> sets(List<LayerTally> layers) {
        Set<List<LayerTally>> sets = new LinkedHashSet<>();
        for (LayerTally first : layers) {
            List<LayerTally> set = new ArrayList<>();
            for (LayerTally layer : layers) {
                boolean fits = layer == first
                        || mayMeet(first, layer)
                                && set.stream().allMatch(other -> other == first || mayMeet(other, layer));
                if (fits) {
                    set.add(layer);
                }
            }
            if (set.size() > 1) {
                sets.add(set);
            }
        }
        return List.copyOf(sets);
    }

    boolean mayMeet(LayerTally one, LayerTally other) {
        if (!isClear(one) || !isClear(other) || !one.phase().equals(other.phase())) {
            return false;
        }
        if (isAcidOnBase(one, other)) {
            return false;
        }
        Map<String, Membership> first = holds(one.label());
        Map<String, Membership> second = holds(other.label());
        Set<String> classes = new LinkedHashSet<>();
        first.values().forEach(m -> classes.addAll(m.classes()));
        second.values().forEach(m -> classes.addAll(m.classes()));
        for (Map.Entry<String, Membership> a : first.entrySet()) {
            for (Map.Entry<String, Membership> b : second.entrySet()) {
                boolean react = reactivity.between(a.getValue(), b.getValue(), classes).stream()
                        .anyMatch(pair -> !pair.ofChart());
                if (!a.getKey().equals(b.getKey()) && react) {
                    return false;
                }
            }
        }
        return !first.isEmpty() && !second.isEmpty();
    }

    /** By the pH written down, whatever acid or base it comes from: what was charged washes out under no name of its own. */
    private boolean isAcidOnBase(LayerTally one, LayerTally other) {
        Optional<Double> first = pH(one);
        Optional<Double> second = pH(other);
        return first.isPresent()
                && second.isPresent()
                && Math.min(first.get(), second.get()) < ACIDIC
                && Math.max(first.get(), second.get()) > BASIC;
    }

    private Optional<Double> pH(LayerTally layer) {
        return layer.entry()
                .flatMap(l -> l.pH().entered())
                .or(() -> tally.run().steps().stream()
                        .filter(s -> s.givesAqueous().contains(layer.label()))
                        .flatMap(s -> s.pHAfter().entered().stream())
                        .findFirst())
                .map(Entered::value);
    }

    /** What the steps leave in a layer and what the step that gave it brought, by name. */
    private Map<String, Membership> holds(String label) {
        Map<String, Membership> all = new LinkedHashMap<>();
        tally.evidence().meetings().in(label).forEach(p -> all.put(p.name(), p.membership()));
        tally.run().steps().stream()
                .filter(s -> s.gives().contains(label))
                .flatMap(s -> Optional.ofNullable(materials.get(s.material())).stream())
                .flatMap(m -> m.material().parts().stream())
                .forEach(p -> all.putIfAbsent(p.name(), p.membership()));
        return all;
    }
}
