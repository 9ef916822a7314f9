package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.reference.Reactivity;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.Present;

/**
 * Which layers may stand in one composite sample: clear liquids of one phase whose contents no table knows to react with each other, not even
 * in an ordinary way, since a small vial is closed and no funnel that is vented; and of which every material is known.
 */
final class Pooling {
    private final RunTally tally;
    private final Reactivity reactivity;

    Pooling(RunTally tally, Reactivity reactivity) {
        this.tally = tally;
        this.reactivity = reactivity;
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
        List<Present> first = tally.evidence().meetings().in(one.label());
        List<Present> second = tally.evidence().meetings().in(other.label());
        Set<String> classes = new LinkedHashSet<>();
        first.forEach(p -> classes.addAll(p.membership().classes()));
        second.forEach(p -> classes.addAll(p.membership().classes()));
        for (Present a : first) {
            for (Present b : second) {
                boolean react = reactivity.between(a.membership(), b.membership(), classes).stream()
                        .anyMatch(pair -> !pair.ofChart());
                if (!a.name().equals(b.name()) && react) {
                    return false;
                }
            }
        }
        return !first.isEmpty() && !second.isEmpty();
    }
}
