package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field.Entered;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.Substances;

/** What the workup steps added: masses and volumes of quenches, washes, extractants, agents and rinses, all portions of a step together. */
public final class AdditionAccount {
    private final Run run;
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final LayerGraph graph;
    private final Substances substances;

    public AdditionAccount(Run run, Readings readings, Limits limits, LayerGraph graph, Substances substances) {
        this.run = run;
        this.readings = readings;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.graph = graph;
        this.substances = substances;
    }

    /** Materials added in workup and purification, in order of the steps. */
    public List<Addition> list() {
        List<Addition> additions = new ArrayList<>();
        for (Step step : run.orderedSteps()) {
            if (!step.added().material().isBlank()) {
                boolean purification = StepOutputs.is(step, Step.Operation.CHROMATOGRAPH)
                        || StepOutputs.is(step, Step.Operation.CRYSTALLISE) && !hasLiquor(step)
                        || graph.isPurification(step);
                Optional<MeasuredValue> read = volume(step);
                Optional<MeasuredValue> mass = mass(step, read);
                Optional<MeasuredValue> volume = read.or(() -> mass.flatMap(m -> volumeOfWeighed(step, m)));
                additions.add(new Addition(step, step.added().material(), mass, volume, purification));
            }
        }
        return additions;
    }

    /** A liquor that stands in Layers, of the step or of the filtration behind it, counts among what came out, and so what it is made of among what went in. */
    private boolean hasLiquor(Step step) {
        Set<String> seen = new HashSet<>();
        List<String> open = new ArrayList<>(step.gives());
        while (!open.isEmpty()) {
            String label = open.remove(open.size() - 1);
            if (run.lot(label).isEmpty() && seen.add(label)) {
                if (run.layer(label).isPresent()) {
                    return true;
                }
                open.addAll(graph.children(label));
            }
        }
        return false;
    }

    private Optional<MeasuredValue> volume(Step step) {
        return step.added().volumeMillilitres().entered().map(v -> {
            double each = uncertainty.layerVolumeMillilitres(v);
            return readings.enter(
                    "volume of " + step.added().material() + " in step " + step.number(),
                    "mL",
                    v.value() * step.added().portionCount(),
                    each * Math.sqrt(step.added().portionCount()),
                    () -> v.place().inWords());
        });
    }

    private Optional<MeasuredValue> mass(Step step, Optional<MeasuredValue> volume) {
        if (step.added().massGrams().isUnreadable()
                || step.added().densityGramsPerMillilitre().isUnreadable()) {
            return Optional.empty();
        }
        Optional<Entered> mass = step.added().massGrams().entered();
        if (mass.isPresent() && !step.isOfPartOf(run)) {
            double each = uncertainty.massGrams(mass.get());
            return Optional.of(readings.enter(
                    "mass of " + step.added().material() + " in step " + step.number(),
                    "g",
                    mass.get().value() * step.added().portionCount(),
                    each * Math.sqrt(step.added().portionCount()),
                    () -> mass.get().place().inWords()));
        }
        OptionalDouble density = density(step);
        return density.isPresent() ? volume.map(v -> v.times(density.getAsDouble())) : Optional.empty();
    }

    /** Volume of a liquid that was weighed in; empty for a drying agent or an unreadable volume. */
    private Optional<MeasuredValue> volumeOfWeighed(Step step, MeasuredValue massGrams) {
        OptionalDouble density = density(step);
        boolean solid = substances.dryingAgent(step.added().material()).isPresent();
        return step.added().volumeMillilitres().isBlank() && !solid && density.isPresent()
                ? Optional.of(massGrams.over(density.getAsDouble()))
                : Optional.empty();
    }

    private OptionalDouble density(Step step) {
        Optional<Entered> typed = step.added().densityGramsPerMillilitre().entered();
        return typed.isPresent()
                ? OptionalDouble.of(typed.get().value())
                : substances.densityGramsPerMillilitre(step.added().material());
    }
}
