package workuptally.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.reference.Wash;

/** Puts what the layer map carries and what was measured together to the make-up of each terminal layer. */
final class LayerMakeUps {
    private static final double LEAST_GRAMS = 1e-9;

    private final Substances substances;
    private final LayerFlow flow;

    LayerMakeUps(Substances substances, LayerFlow flow) {
        this.substances = substances;
        this.flow = flow;
    }

    /** One make-up for each terminal layer with a mass; cakes, whose solids are not followed, left out. */
    List<LayerMakeUp> of(List<LayerTally> layers) {
        List<LayerMakeUp> makeUps = new ArrayList<>();
        for (LayerTally layer : layers) {
            boolean solid = layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
            if (layer.terminal() && !solid && layer.massGrams().isPresent()) {
                makeUps.add(of(layer, layer.massGrams().get().value()));
            }
        }
        return makeUps;
    }

    private LayerMakeUp of(LayerTally layer, double grams) {
        Mixture mixture = flow.portion(layer.label());
        boolean stated =
                layer.entry().map(Layer::composition).filter(c -> !c.isEmpty()).isPresent();
        Map<String, Double> components = new LinkedHashMap<>();
        mixture.parts().forEach((name, part) -> components.merge(fullName(name), part.grams(), Double::sum));
        if (!stated) {
            layer.contents()
                    .forEach(c -> c.massGrams()
                            .map(MeasuredValue::value)
                            .ifPresent(m -> components.merge(fullName(c.substance()), m, Double::sum)));
        }
        double rest = grams
                - components.values().stream().mapToDouble(Double::doubleValue).sum();
        if (rest > LEAST_GRAMS) {
            components.merge(LayerFlow.UNSTATED, rest, Double::sum);
        }
        Map<String, Double> largestFirst = new LinkedHashMap<>();
        components.entrySet().stream()
                .filter(e -> e.getValue() > LEAST_GRAMS)
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(e -> largestFirst.put(e.getKey(), e.getValue()));
        double volume = layer.volumeMillilitres().map(MeasuredValue::value).orElseGet(mixture::millilitres);
        return new LayerMakeUp(layer.label(), largestFirst, volume, stated);
    }

    /** A solvent under its listed name, a solution under its solute's; the water of the solution is a component of its own. */
    private String fullName(String component) {
        return new Materials(substances)
                .solventName(component)
                .or(() -> Optional.of(component)
                        .filter(c -> substances.dryingAgent(c).isEmpty())
                        .flatMap(substances::wash)
                        .flatMap(Wash::solute))
                .orElse(component);
    }
}
