package workuptally.book.tables;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Step;

/**
 * Where the steps of a run start. A step that names nothing, or only what nothing gives ({@code pot}), starts from the reaction mixture: all
 * that was charged may be in it, and leaving the entry out makes nothing harmless. The label that nothing gives stays beside it.
 */
final class StepSources {
    private final Set<String> known = new HashSet<>(Set.of(Step.REACTION_MIXTURE));

    StepSources(List<Step> steps, List<Layer> layers, List<Lot> lots) {
        steps.forEach(step -> known.addAll(step.gives()));
        layers.forEach(layer -> known.add(layer.label()));
        lots.forEach(lot -> known.add(lot.label()));
    }

    List<Step> settled(List<Step> steps) {
        return steps.stream().map(this::settled).toList();
    }

    private Step settled(Step step) {
        if (step.from().stream().anyMatch(known::contains)) {
            return step;
        }
        List<String> from = new ArrayList<>(step.from());
        from.add(Step.REACTION_MIXTURE);
        return step.takenFrom(from);
    }
}
