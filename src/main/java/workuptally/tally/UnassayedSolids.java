package workuptally.tally;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.model.Layer;
import workuptally.tally.balance.Closure;
import workuptally.tally.bench.DriedLayer;
import workuptally.tally.layers.LayerTally;

/** Solids that nobody assayed and no estimate bounds, in a run whose balance does not close: what is missing may be in them. */
public final class UnassayedSolids {
    private UnassayedSolids() {}

    /** Their labels, in order of the layers; none where every balance closes, or where there is none. */
    public static List<String> of(RunTally tally) {
        boolean closed = tally.closures().stream().allMatch(c -> c.verdict() == Closure.Verdict.CLOSES);
        if (closed) {
            return List.of();
        }
        Set<String> estimated = tally.evidence().dried().stream()
                .filter(dried -> dried.productHighGrams().isPresent())
                .map(DriedLayer::cake)
                .collect(Collectors.toSet());
        return tally.layers().stream()
                .filter(layer -> layer.terminal() && !layer.aliquot() && isUnassayedSolid(layer))
                .map(LayerTally::label)
                .filter(label -> !estimated.contains(label))
                .toList();
    }

    private static boolean isUnassayedSolid(LayerTally layer) {
        Optional<Layer.Phase> phase = layer.phase();
        return phase.filter(p -> p == Layer.Phase.SOLID).isPresent()
                && layer.entry().isPresent()
                && layer.contents().stream().noneMatch(c -> c.massGrams().isPresent());
    }
}
