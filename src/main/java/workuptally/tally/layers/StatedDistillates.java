package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.CompositionPart;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;

/**
 * Holds the stated compositions of the distillates of a step against the solvents that the step took. A composition copied from another week
 * shows here: it gives more of a solvent than there was, or leaves out a halogenated one that must have come over.
 */
public final class StatedDistillates {
    private final Substances substances;
    private final LayerFlow flow;
    private final double halogenLimitPercent;
    private final List<Step> steps;
    private final Map<String, Step> stepByLabel = new HashMap<>();
    private final Map<String, LayerTally> layers = new LinkedHashMap<>();

    /** Those of a run. */
    public StatedDistillates(Run run, Limits limits, Substances substances, LayerFlow flow, List<LayerTally> layers) {
        this.substances = substances;
        this.flow = flow;
        this.halogenLimitPercent = limits.value(Limit.HALOGEN_LIMIT);
        layers.forEach(layer -> this.layers.put(layer.label(), layer));
        this.steps = run.orderedSteps();
        steps.stream()
                .filter(StepOutputs::isDistillation)
                .forEach(step -> step.gives().stream()
                        .filter(this::isDistillate)
                        .forEach(label -> stepByLabel.putIfAbsent(label, step)));
    }

    private boolean isDistillate(String label) {
        return Optional.ofNullable(layers.get(label))
                .flatMap(LayerTally::phase)
                .filter(phase -> phase == Layer.Phase.DISTILLATE)
                .isPresent();
    }

    /** What does not fit; empty where the layer has no composition or mass, or what its step took is not known. */
    public List<SolventMismatch> of(LayerTally layer) {
        Optional<Step> step = Optional.ofNullable(stepByLabel.get(layer.label()));
        if (step.isEmpty() || composition(layer).isEmpty() || layer.massGrams().isEmpty()) {
            return List.of();
        }
        Map<String, Double> grams = new LinkedHashMap<>();
        flow.taken(step.get()).parts().forEach((name, part) -> grams.put(name, part.grams()));
        Map<String, Double> taken = byFullName(grams);
        Map<String, Double> stated = stated(step.get());
        List<SolventMismatch> found = new ArrayList<>();
        double organic = taken.entrySet().stream()
                .filter(e -> substances.isOrganicSolvent(e.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        taken.forEach((name, mass) -> {
            boolean halogenated = substances
                    .solvent(name)
                    .filter(s -> s.hazards().halogenated())
                    .isPresent();
            if (halogenated
                    && !stated.containsKey(name)
                    && 100 * mass > halogenLimitPercent * organic
                    && mass > takenOverBefore(step.get(), name)) {
                found.add(new SolventMismatch(name, 0, mass));
            }
        });
        Map<String, Double> brought = byFullName(flow.broughtGrams());
        composition(layer).stream()
                .map(part -> substances.material(part.substance()).main().name())
                .distinct()
                // a solvent charged without an amount tells nothing
                .filter(name -> substances.isOrganicSolvent(name) && brought.getOrDefault(name, 0.0) > 0)
                .filter(name -> stated.get(name) > most(brought.get(name)))
                .forEach(name -> found.add(new SolventMismatch(name, stated.get(name), brought.get(name))));
        return found;
    }

    /** Mass of a solvent in distillates of earlier steps, g: of what has mostly gone over, the rest went to the pump. */
    private double takenOverBefore(Step step, String name) {
        return stepByLabel.entrySet().stream()
                .filter(e -> isBefore(e.getValue(), step))
                .flatMap(e -> flow.portion(e.getKey()).parts().entrySet().stream())
                .filter(part -> substances.material(part.getKey()).main().name().equals(name))
                .mapToDouble(part -> part.getValue().grams())
                .sum();
    }

    private boolean isBefore(Step one, Step other) {
        return steps.indexOf(one) < steps.indexOf(other);
    }

    private Map<String, Double> byFullName(Map<String, Double> grams) {
        Map<String, Double> byName = new LinkedHashMap<>();
        grams.forEach(
                (name, mass) -> byName.merge(substances.material(name).main().name(), mass, Double::sum));
        return byName;
    }

    /** Rinses of flasks and funnels are often not written down. */
    private double most(double broughtGrams) {
        return (1 + substances.value(Threshold.COMPOSITION_EXCESS) / 100) * broughtGrams;
    }

    private Map<String, Double> stated(Step step) {
        Map<String, Double> stated = new LinkedHashMap<>();
        for (String label : step.gives()) {
            Optional.ofNullable(layers.get(label)).ifPresent(layer -> {
                double grams = layer.massGrams().map(MeasuredValue::value).orElse(0.0);
                composition(layer)
                        .forEach(part -> stated.merge(
                                substances.material(part.substance()).main().name(),
                                grams * part.massPercent() / 100,
                                Double::sum));
            });
        }
        return stated;
    }

    private static List<CompositionPart> composition(LayerTally layer) {
        return layer.entry().map(Layer::composition).orElse(List.of());
    }
}
