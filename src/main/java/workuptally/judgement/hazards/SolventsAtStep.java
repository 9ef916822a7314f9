package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.material.Material;
import workuptally.material.Part;
import workuptally.model.Charge;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.Substances;

/**
 * The organic solvents that stand in a step: its own, and those that came with its portions since solvent was last taken off, but for what
 * an aqueous layer carries over from the organic one.
 */
final class SolventsAtStep {
    private final Run run;
    private final Substances substances;
    private final List<Step> steps;

    SolventsAtStep(Run run, Substances substances) {
        this.run = run;
        this.substances = substances;
        this.steps = run.orderedSteps();
    }

    /** Each once, that of the step first. */
    List<Solvent> of(Step step) {
        Set<String> names = new LinkedHashSet<>(List.of(step.added().material()));
        Set<String> labels = new LinkedHashSet<>(step.from());
        List<Step> before = new ArrayList<>(steps.subList(0, indexOf(step)));
        for (int i = before.size() - 1; i >= 0; i--) {
            Step earlier = before.get(i);
            List<String> gives = earlier.gives().isEmpty() ? earlier.from() : earlier.gives();
            List<String> taken = gives.stream().filter(labels::contains).toList();
            if (taken.isEmpty()) {
                continue;
            }
            if (takesSolventOff(earlier) || earlier.given().aqueous().containsAll(taken)) {
                taken.forEach(labels::remove);
            } else {
                names.add(earlier.added().material());
                labels.addAll(earlier.from());
            }
        }
        if (labels.contains(Step.REACTION_MIXTURE)) {
            run.charges().stream().map(Charge::material).forEach(names::add);
        }
        return names.stream()
                .filter(name -> !name.isBlank())
                .flatMap(name -> solvent(name).stream())
                .distinct()
                .toList();
    }

    private int indexOf(Step step) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i) == step) {
                return i;
            }
        }
        return steps.size();
    }

    static boolean takesSolventOff(Step step) {
        return step.operation().filter(Operation::takesSolventOff).isPresent();
    }

    /** The solvent itself, or what a solution is in. */
    Optional<Solvent> solvent(String material) {
        Material meant = substances.material(material);
        return meant.solvent()
                .or(() -> meant.carrierSolvent()
                        .filter(s -> !meant.carrier().map(Part::isWater).orElse(false)));
    }
}
