package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.CompositionPart;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Step.Operation;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;

/**
 * Carries solvents, water and salts along the steps, to estimate what each portion is made of and how much stands in a funnel.
 *
 * <p>At a contact the two phases are those of {@link PhaseSplit}. A phase that a step gives no label is kept apart, so that it does not
 * vanish. Distillates take out what their composition states, else their mass or volume of the solvents there; a residue whose distillate
 * was not measured keeps none. A stated composition or a measured mass overrides the
 * estimate. These figures serve accounts of solvent and waste and the fill of funnels; no product content comes from them.
 */
public final class LayerFlow {
    /** Less of a phase than this is taken for a rounding of the estimates, mL. */
    private static final double LEAST_PHASE_MILLILITRES = 0.5;

    private final Run run;
    private final Substances substances;
    private final Materials materials;
    private final Map<String, LayerTally> layers;
    private final Map<Step, Addition> additions;
    private final Map<String, Ingredients> portions = new LinkedHashMap<>();
    private final Map<String, Double> put = new LinkedHashMap<>();
    private final Map<Step, List<Double>> volumesInFunnel = new IdentityHashMap<>();
    private final Map<Step, Phases> phases = new IdentityHashMap<>();
    private final List<UnlabelledPhase> unlabelled = new ArrayList<>();

    private LayerFlow(Run run, Substances substances, Map<String, LayerTally> layers, Map<Step, Addition> additions) {
        this.run = run;
        this.substances = substances;
        this.materials = new Materials(substances);
        this.layers = layers;
        this.additions = additions;
    }

    /** Follows the steps of a run. */
    public static LayerFlow of(
            Run run,
            Substances substances,
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers) {
        Map<String, LayerTally> byLabel = new LinkedHashMap<>();
        layers.forEach(l -> byLabel.put(l.label(), l));
        Map<Step, Addition> byStep = new IdentityHashMap<>();
        additions.forEach(a -> byStep.put(a.step(), a));
        LayerFlow flow = new LayerFlow(run, substances, byLabel, byStep);
        Ingredients mixture = Ingredients.EMPTY;
        for (ChargeAmount amount : amounts) {
            mixture = mixture.plus(flow.materials.of(amount));
        }
        flow.portions.put(Step.REACTION_MIXTURE, mixture);
        mixture.parts().forEach((name, part) -> flow.put.merge(name, part.grams(), Double::sum));
        additions.forEach(a ->
                flow.materials.of(a).parts().forEach((name, part) -> flow.put.merge(name, part.grams(), Double::sum)));
        for (Step step : run.orderedSteps()) {
            flow.follow(step);
        }
        for (LayerTally layer : layers) {
            flow.portions.merge(
                    layer.label(), flow.measured(layer.label(), Ingredients.EMPTY), (known, blank) -> known);
        }
        return flow;
    }

    /** Estimated make-up of a portion; empty mixture for an unknown label. */
    public Ingredients portion(String label) {
        return portions.getOrDefault(label, Ingredients.EMPTY);
    }

    /** Volume in the funnel at each shake of a step, mL; empty list for a step without a contact. */
    public List<Double> volumesInFunnel(Step step) {
        return volumesInFunnel.getOrDefault(step, List.of());
    }

    /** Estimated make-up of the two phases after a contact, before anything measured overrides it; empty for a step without a contact. */
    public Optional<Phases> phases(Step step) {
        return Optional.ofNullable(phases.get(step));
    }

    /** Gives a layer whose density fits the other phase of its contact the make-up of that phase. */
    public void correct(List<LayerIdentity> identities) {
        for (LayerIdentity identity : identities) {
            if (identity.verdict() == LayerIdentity.Verdict.SWAPPED) {
                phases(identity.step())
                        .ifPresent(p -> portions.put(
                                identity.label(), measured(identity.label(), p.of(opposite(identity.recorded())))));
            }
        }
    }

    /** Density of a component at a temperature over that at 20 °C. */
    double densityOver20(String component, double celsius) {
        return substances.densityOver20(component, celsius);
    }

    /** True for a listed organic solvent. */
    public boolean isOrganicSolvent(String component) {
        return substances.isOrganicSolvent(component);
    }

    /** Phases of contacts to which no step gives a label, in order of the steps; {@link #portion} knows them by their names. */
    public List<UnlabelledPhase> unlabelledPhases() {
        return List.copyOf(unlabelled);
    }

    /** The two phases of a contact. */
    public record Phases(Ingredients organic, Ingredients aqueous) {
        Ingredients of(Layer.Phase phase) {
            return phase == Layer.Phase.ORGANIC ? organic : aqueous;
        }
    }

    private void follow(Step step) {
        Ingredients source = Ingredients.EMPTY;
        for (String label : step.from()) {
            source = source.plus(portion(label));
        }
        Ingredients added =
                Optional.ofNullable(additions.get(step)).map(materials::of).orElse(Ingredients.EMPTY);
        if (isContact(step)) {
            contact(step, source, added);
            return;
        }
        Ingredients rest = source.plus(added);
        List<String> others = new ArrayList<>();
        for (String label : step.gives()) {
            if (isDistillate(label) || isSolid(label)) {
                Ingredients taken = isDistillate(label)
                        ? measured(label, distilled(label, rest))
                        : measured(label, Ingredients.EMPTY);
                for (Map.Entry<String, Ingredients.Part> part : taken.parts().entrySet()) {
                    rest = rest.without(part.getKey(), part.getValue().grams());
                }
                portions.put(label, taken);
            } else if (step.operation().filter(o -> o == Operation.SAMPLE).isPresent()) {
                portions.put(label, measured(label, source));
                others.addAll(step.from());
            } else if (run.lot(label).isEmpty() || step.from().contains(label)) {
                others.add(label);
            }
        }
        if (step.gives().stream().allMatch(l -> isDistillate(l) || isSolid(l))) {
            others.addAll(step.from());
        }
        Ingredients left = isDistilledUnmeasured(step) ? rest.share(n -> substances.isOrganicSolvent(n) ? 0 : 1) : rest;
        for (String label : others) {
            portions.put(label, measured(label, left));
        }
    }

    /** Distillate of which only the mass or the volume is known: the solvents that were there, in equal shares; nothing where neither is. */
    private Ingredients distilled(String label, Ingredients source) {
        Ingredients solvents = source.share(n -> substances.isOrganicSolvent(n) ? 1 : 0);
        Optional<Double> grams = layerGrams(label);
        Optional<Double> millilitres = layerMillilitres(label);
        double share = grams.isPresent()
                ? grams.get() / solvents.totalGrams()
                : millilitres.map(v -> v / solvents.millilitres()).orElse(0.0);
        return solvents.parts().isEmpty() ? Ingredients.EMPTY : solvents.share(n -> share);
    }

    /** True where solvent was taken off and neither what went over nor what stayed was measured: nothing organic is taken to have stayed. */
    private boolean isDistilledUnmeasured(Step step) {
        return step.operation()
                        .filter(o -> o == Operation.CONCENTRATE || o == Operation.STRIP || o == Operation.DISTIL)
                        .isPresent()
                && step.gives().stream()
                        .noneMatch(l ->
                                layerGrams(l).isPresent() || layerMillilitres(l).isPresent());
    }

    private Optional<Double> layerMillilitres(String label) {
        return Optional.ofNullable(layers.get(label))
                .flatMap(LayerTally::volumeMillilitres)
                .map(MeasuredValue::value);
    }

    private static boolean isContact(Step step) {
        boolean shaken = step.operation()
                .filter(o -> o == Operation.EXTRACT || o == Operation.WASH || o == Operation.BACK_EXTRACT)
                .isPresent();
        return shaken || (!step.givesOrganic().isEmpty() && !step.givesAqueous().isEmpty());
    }

    private void contact(Step step, Ingredients source, Ingredients added) {
        Ingredients all = source.plus(added);
        PhaseSplit split = new PhaseSplit(substances, this::goesWithWater, all);
        Phases both = new Phases(split.organic(), split.aqueous());
        phases.put(step, both);
        rememberVolumes(step, source, added);
        for (String label : step.givesOther()) {
            portions.put(label, measured(label, Ingredients.EMPTY));
        }
        give(step.givesOrganic(), both.organic());
        give(step.givesAqueous(), both.aqueous());
        boolean twoPhases = both.organic().millilitres() > LEAST_PHASE_MILLILITRES
                && both.aqueous().millilitres() > LEAST_PHASE_MILLILITRES;
        if (twoPhases) {
            unlabelled(step, both);
        } else if (step.givesOrganic().isEmpty() && step.givesAqueous().isEmpty()) {
            Optional<String> only = liquidsAmongOthers(step).stream().findFirst();
            only.or(() -> sourceThatGoesOn(step)).ifPresent(label -> portions.put(label, measured(label, all)));
        }
    }

    /**
     * A phase for which the step has no label of its own is the liquid of that phase among the other portions it gives, else what goes on
     * under the label it came from where that is still spoken of; else it stays without a name.
     */
    private void unlabelled(Step step, Phases both) {
        List<String> others = new ArrayList<>(liquidsAmongOthers(step));
        Layer.Phase goesOn = materials.isOrganic(step) ? Layer.Phase.AQUEOUS : Layer.Phase.ORGANIC;
        boolean oneLabelled =
                !step.givesOrganic().isEmpty() || !step.givesAqueous().isEmpty();
        for (Layer.Phase phase : List.of(goesOn, opposite(goesOn))) {
            boolean labelled = !(phase == Layer.Phase.ORGANIC ? step.givesOrganic() : step.givesAqueous()).isEmpty();
            if (labelled) {
                continue;
            }
            Optional<String> other = others.stream()
                    .filter(label -> !hasPhase(label, opposite(phase)))
                    .findFirst();
            Optional<String> source = phase == goesOn || oneLabelled ? sourceThatGoesOn(step) : Optional.empty();
            if (other.isPresent()) {
                others.remove(other.get());
                portions.put(other.get(), measured(other.get(), both.of(phase)));
            } else if (source.isPresent()) {
                portions.put(source.get(), both.of(phase));
            } else if (Optional.ofNullable(additions.get(step))
                    .filter(Addition::purification)
                    .isEmpty()) {
                UnlabelledPhase left = new UnlabelledPhase(step, phase);
                unlabelled.add(left);
                portions.put(left.name(), both.of(phase));
            }
        }
    }

    private List<String> liquidsAmongOthers(Step step) {
        return step.givesOther().stream()
                .filter(label -> run.lot(label).isEmpty())
                .filter(label -> !isDistillate(label) && !isSolid(label) && !hasPhase(label, Layer.Phase.RAG))
                .toList();
    }

    private static Layer.Phase opposite(Layer.Phase phase) {
        return phase == Layer.Phase.ORGANIC ? Layer.Phase.AQUEOUS : Layer.Phase.ORGANIC;
    }

    private Optional<String> sourceThatGoesOn(Step step) {
        return step.from().stream()
                .filter(label -> !step.gives().contains(label))
                .filter(label -> step.gives().isEmpty() || isTakenAfter(step, label))
                .findFirst();
    }

    private boolean isTakenAfter(Step step, String label) {
        boolean laterStep = run.orderedSteps().stream()
                .dropWhile(later -> later != step)
                .skip(1)
                .anyMatch(later -> later.from().contains(label));
        return laterStep || run.lots().stream().anyMatch(lot -> lot.from().contains(label));
    }

    /** First shake: all of source and the portion. Later shakes: the portion and the phase that stays. */
    private void rememberVolumes(Step step, Ingredients source, Ingredients added) {
        if (added.millilitres() == 0) {
            volumesInFunnel.put(step, List.of(sourceMillilitres(step, source)));
            return;
        }
        int portionCount = (int) Math.max(1, Math.round(step.portionCount()));
        double portion = added.millilitres() / portionCount;
        boolean organicAdded = materials.isOrganic(step);
        Ingredients staying = source.share(n -> substances.isOrganicSolvent(n) == organicAdded ? 0 : 1);
        boolean twoPhases = staying.millilitres() > 0;
        List<Double> volumes = new ArrayList<>();
        for (int i = 0; i < portionCount; i++) {
            double stays = i == 0 || !twoPhases
                    ? sourceMillilitres(step, source)
                    : Math.min(staying.millilitres(), sourceMillilitres(step, source));
            volumes.add(stays + portion);
        }
        volumesInFunnel.put(step, volumes);
    }

    private double sourceMillilitres(Step step, Ingredients source) {
        double measured = 0;
        for (String label : step.from()) {
            Optional<MeasuredValue> volume =
                    Optional.ofNullable(layers.get(label)).flatMap(LayerTally::volumeMillilitres);
            if (volume.isEmpty()) {
                return source.millilitres();
            }
            measured += volume.get().value();
        }
        return measured;
    }

    private void give(List<String> labels, Ingredients mixture) {
        boolean allWeighed = labels.stream().allMatch(l -> layerGrams(l).isPresent());
        double total =
                labels.stream().mapToDouble(l -> layerGrams(l).orElse(0.0)).sum();
        for (String label : labels) {
            double share = allWeighed && total > 0 ? layerGrams(label).orElseThrow() / total : 1.0 / labels.size();
            portions.put(label, measured(label, mixture.share(n -> share)));
        }
    }

    private Optional<Double> layerGrams(String label) {
        return Optional.ofNullable(layers.get(label))
                .flatMap(LayerTally::massGrams)
                .map(MeasuredValue::value);
    }

    /** The estimate brought to a stated composition, or to the measured mass by its main liquid. */
    private Ingredients measured(String label, Ingredients estimate) {
        Optional<LayerTally> layer = Optional.ofNullable(layers.get(label));
        Optional<Double> grams = layerGrams(label);
        if (grams.isEmpty()) {
            return estimate;
        }
        List<CompositionPart> stated =
                layer.flatMap(LayerTally::entry).map(Layer::composition).orElse(List.of());
        if (!stated.isEmpty()) {
            return stated(stated, grams.get());
        }
        double solutes = layer.stream()
                .flatMap(l -> l.contents().stream())
                .flatMap(c -> c.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        return estimate.parts().isEmpty() ? estimate : toMass(estimate, Math.max(0, grams.get() - solutes));
    }

    private Ingredients stated(List<CompositionPart> stated, double grams) {
        Ingredients mixture = Ingredients.EMPTY;
        double percent = 0;
        for (CompositionPart part : stated) {
            String name = materials.solventName(part.substance()).orElse(part.substance());
            mixture = mixture.plus(liquid(name, grams * part.massPercent() / 100));
            percent += part.massPercent();
        }
        double rest = grams * (100 - percent) / 100;
        return rest > 1e-9 ? mixture.plus(Ingredients.of(UNSTATED, rest, 0)) : mixture;
    }

    /** Name of the part of a distillate that its stated composition leaves out. */
    public static final String UNSTATED = "not stated";

    private Ingredients toMass(Ingredients estimate, double grams) {
        String main = estimate.parts().entrySet().stream()
                .filter(e -> e.getValue().millilitres() > 0)
                .max((a, b) -> Double.compare(a.getValue().grams(), b.getValue().grams()))
                .map(Map.Entry::getKey)
                .orElse(Materials.WATER);
        double others = estimate.totalGrams() - estimate.grams(main);
        if (grams > others) {
            double most = main.equals(Materials.WATER) ? Double.MAX_VALUE : put.getOrDefault(main, 0.0);
            double ofMain = Math.min(grams - others, most);
            Ingredients scaled = estimate.without(main, Double.MAX_VALUE).plus(liquid(main, ofMain));
            double rest = grams - others - ofMain;
            return rest > 1e-9 ? scaled.plus(Ingredients.of(UNSTATED, rest, 0)) : scaled;
        }
        double factor = estimate.totalGrams() == 0 ? 1 : grams / estimate.totalGrams();
        return estimate.share(n -> factor);
    }

    private Ingredients liquid(String name, double grams) {
        return Ingredients.of(
                name, grams, grams / substances.densityGramsPerMillilitre(name).orElse(1));
    }

    boolean goesWithWater(String name) {
        Optional<Charge> charge =
                run.charges().stream().filter(c -> c.material().equals(name)).findFirst();
        return materials.goesWithWater(name, charge);
    }

    private boolean isDistillate(String label) {
        return hasPhase(label, Layer.Phase.DISTILLATE);
    }

    private boolean isSolid(String label) {
        return hasPhase(label, Layer.Phase.SOLID);
    }

    private boolean hasPhase(String label, Layer.Phase phase) {
        return run.layer(label).flatMap(Layer::phase).filter(p -> p == phase).isPresent();
    }
}
