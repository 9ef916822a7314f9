package workuptally.tally;

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
import workuptally.reference.Solvent;

/**
 * Carries solvents, water and salts along the steps, to estimate what each portion is made of and how much stands in a funnel.
 *
 * <p>At a contact, salts go with the water; solvent and water saturate each other (mass % of the reference data, a third of it in a
 * layer that holds a tenth or more of salt: common practice); a solvent that mixes with water stays with the water for the most part
 * (D = 0.3, common practice). Distillates take out what their composition states, else their mass or volume of the solvents there; a
 * residue whose distillate was not measured keeps none. A stated composition or a measured mass overrides the
 * estimate. These figures serve accounts of solvent and waste and the fill of funnels; no product content comes from them.
 */
final class LayerFlow {
    private static final double MISCIBLE_SOLVENT_DISTRIBUTION = 0.3;
    private static final double SALTING_OUT_FACTOR = 1.0 / 3;
    private static final double SALT_FRACTION_THAT_SALTS_OUT = 0.1;

    private final Run run;
    private final Substances substances;
    private final Materials materials;
    private final Map<String, LayerTally> layers;
    private final Map<Step, Addition> additions;
    private final Map<String, Mixture> portions = new LinkedHashMap<>();
    private final Map<String, Double> put = new LinkedHashMap<>();
    private final Map<Step, List<Double>> volumesInFunnel = new IdentityHashMap<>();
    private final Map<Step, Phases> phases = new IdentityHashMap<>();

    private LayerFlow(Run run, Substances substances, Map<String, LayerTally> layers, Map<Step, Addition> additions) {
        this.run = run;
        this.substances = substances;
        this.materials = new Materials(substances);
        this.layers = layers;
        this.additions = additions;
    }

    /** Follows the steps of a run. */
    static LayerFlow of(
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
        Mixture mixture = Mixture.EMPTY;
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
            flow.portions.merge(layer.label(), flow.measured(layer.label(), Mixture.EMPTY), (known, blank) -> known);
        }
        return flow;
    }

    /** Estimated make-up of a portion; empty mixture for an unknown label. */
    Mixture portion(String label) {
        return portions.getOrDefault(label, Mixture.EMPTY);
    }

    /** Volume in the funnel at each shake of a step, mL; empty list for a step without a contact. */
    List<Double> volumesInFunnel(Step step) {
        return volumesInFunnel.getOrDefault(step, List.of());
    }

    /** Estimated make-up of the two phases after a contact, before anything measured overrides it; empty for a step without a contact. */
    Optional<Phases> phases(Step step) {
        return Optional.ofNullable(phases.get(step));
    }

    /** Gives a layer whose density fits the other phase of its contact the make-up of that phase. */
    void correct(List<LayerIdentity> identities) {
        for (LayerIdentity identity : identities) {
            if (identity.verdict() == LayerIdentity.Verdict.SWAPPED) {
                phases(identity.step())
                        .ifPresent(p -> portions.put(
                                identity.label(),
                                measured(
                                        identity.label(),
                                        identity.recorded() == Layer.Phase.ORGANIC ? p.aqueous() : p.organic())));
            }
        }
    }

    /** True for a listed organic solvent. */
    boolean isOrganicSolvent(String component) {
        return substances.isOrganicSolvent(component);
    }

    /** The two phases of a contact. */
    record Phases(Mixture organic, Mixture aqueous) {}

    private void follow(Step step) {
        Mixture source = Mixture.EMPTY;
        for (String label : step.from()) {
            source = source.plus(portion(label));
        }
        Mixture added =
                Optional.ofNullable(additions.get(step)).map(materials::of).orElse(Mixture.EMPTY);
        if (isContact(step)) {
            contact(step, source, added);
            return;
        }
        Mixture rest = source.plus(added);
        List<String> others = new ArrayList<>();
        for (String label : step.gives()) {
            if (isDistillate(label) || isSolid(label)) {
                Mixture taken =
                        isDistillate(label) ? measured(label, distilled(label, rest)) : measured(label, Mixture.EMPTY);
                for (Map.Entry<String, Mixture.Part> part : taken.parts().entrySet()) {
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
        Mixture left = isDistilledUnmeasured(step) ? rest.share(n -> substances.isOrganicSolvent(n) ? 0 : 1) : rest;
        for (String label : others) {
            portions.put(label, measured(label, left));
        }
    }

    /** Distillate of which only the mass or the volume is known: the solvents that were there, in equal shares; nothing where neither is. */
    private Mixture distilled(String label, Mixture source) {
        Mixture solvents = source.share(n -> substances.isOrganicSolvent(n) ? 1 : 0);
        Optional<Double> grams = layerGrams(label);
        Optional<Double> millilitres = layerMillilitres(label);
        double share = grams.isPresent()
                ? grams.get() / solvents.totalGrams()
                : millilitres.map(v -> v / solvents.millilitres()).orElse(0.0);
        return solvents.parts().isEmpty() ? Mixture.EMPTY : solvents.share(n -> share);
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

    private void contact(Step step, Mixture source, Mixture added) {
        Mixture all = source.plus(added);
        double salt = all.parts().entrySet().stream()
                .filter(e -> isSalt(e.getKey()))
                .mapToDouble(e -> e.getValue().grams())
                .sum();
        double water = all.grams(Materials.WATER);
        double saltFraction = water + salt > 0 ? salt / (water + salt) : 0;
        double aqueousGrams = water + salt;
        double organicMillilitres =
                all.share(n -> substances.isOrganicSolvent(n) ? 1 : 0).millilitres();
        double aqueousMillilitres = all.share(n -> goesWithWater(n) ? 1 : 0).millilitres();
        double organicGrams =
                all.share(n -> substances.isOrganicSolvent(n) ? 1 : 0).totalGrams();
        Mixture aqueous = all.share(name -> aqueousShare(
                name, all, aqueousGrams, organicGrams, aqueousMillilitres, organicMillilitres, saltFraction));
        Mixture organic = all.share(name -> 1
                - aqueousShare(
                        name, all, aqueousGrams, organicGrams, aqueousMillilitres, organicMillilitres, saltFraction));
        phases.put(step, new Phases(organic, aqueous));
        rememberVolumes(step, source, added);
        give(step.givesOrganic(), organic);
        give(step.givesAqueous(), aqueous);
        for (String label : step.givesOther()) {
            portions.put(label, measured(label, label.equals(Step.REACTION_MIXTURE) ? all : Mixture.EMPTY));
        }
        if (step.givesOrganic().isEmpty()
                && step.givesAqueous().isEmpty()
                && step.givesOther().isEmpty()) {
            step.from().forEach(label -> portions.put(label, all));
        }
    }

    private double aqueousShare(
            String name,
            Mixture all,
            double aqueousGrams,
            double organicGrams,
            double aqueousMillilitres,
            double organicMillilitres,
            double saltFraction) {
        double grams = all.grams(name);
        if (name.equals(Materials.WATER)) {
            return grams == 0 ? 0 : 1 - waterInOrganic(all, organicGrams) / grams;
        }
        if (!substances.isOrganicSolvent(name)) {
            return goesWithWater(name) ? 1 : 0;
        }
        Solvent solvent = substances.solvent(name).orElseThrow();
        if (solvent.waterMixing().miscible() == Solvent.Miscibility.YES) {
            double organic = MISCIBLE_SOLVENT_DISTRIBUTION * organicMillilitres;
            return aqueousMillilitres == 0 ? 0 : aqueousMillilitres / (aqueousMillilitres + organic);
        }
        double massPercent = solvent.waterMixing().inWaterMassPercent().orElse(0)
                * (saltFraction >= SALT_FRACTION_THAT_SALTS_OUT ? SALTING_OUT_FACTOR : 1);
        double dissolved = aqueousGrams * massPercent / (100 - massPercent);
        return grams == 0 ? 0 : Math.min(dissolved, grams) / grams;
    }

    private double waterInOrganic(Mixture all, double organicGrams) {
        double water = 0;
        for (Map.Entry<String, Mixture.Part> part : all.parts().entrySet()) {
            if (substances.isOrganicSolvent(part.getKey())) {
                double massPercent = substances
                        .solvent(part.getKey())
                        .orElseThrow()
                        .waterMixing()
                        .waterInSolventMassPercent()
                        .orElse(0);
                water += part.getValue().grams() * massPercent / (100 - Math.min(massPercent, 50));
            }
        }
        return organicGrams == 0 ? 0 : water;
    }

    /** First shake: all of source and the portion. Later shakes: the portion and the phase that stays. */
    private void rememberVolumes(Step step, Mixture source, Mixture added) {
        if (added.millilitres() == 0) {
            volumesInFunnel.put(step, List.of(sourceMillilitres(step, source)));
            return;
        }
        int portionCount = (int) Math.max(1, Math.round(step.portionCount()));
        double portion = added.millilitres() / portionCount;
        boolean organicAdded = materials.isOrganic(step);
        Mixture staying = source.share(n -> substances.isOrganicSolvent(n) == organicAdded ? 0 : 1);
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

    private double sourceMillilitres(Step step, Mixture source) {
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

    private void give(List<String> labels, Mixture mixture) {
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
    private Mixture measured(String label, Mixture estimate) {
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

    private Mixture stated(List<CompositionPart> stated, double grams) {
        Mixture mixture = Mixture.EMPTY;
        double percent = 0;
        for (CompositionPart part : stated) {
            String name = materials.solventName(part.substance()).orElse(part.substance());
            mixture = mixture.plus(liquid(name, grams * part.massPercent() / 100));
            percent += part.massPercent();
        }
        double rest = grams * (100 - percent) / 100;
        return rest > 1e-9 ? mixture.plus(Mixture.of(UNSTATED, rest, 0)) : mixture;
    }

    /** Name of the part of a distillate that its stated composition leaves out. */
    static final String UNSTATED = "not stated";

    private Mixture toMass(Mixture estimate, double grams) {
        String main = estimate.parts().entrySet().stream()
                .filter(e -> e.getValue().millilitres() > 0)
                .max((a, b) -> Double.compare(a.getValue().grams(), b.getValue().grams()))
                .map(Map.Entry::getKey)
                .orElse(Materials.WATER);
        double others = estimate.totalGrams() - estimate.grams(main);
        if (grams > others) {
            double most = main.equals(Materials.WATER) ? Double.MAX_VALUE : put.getOrDefault(main, 0.0);
            double ofMain = Math.min(grams - others, most);
            Mixture scaled = estimate.without(main, Double.MAX_VALUE).plus(liquid(main, ofMain));
            double rest = grams - others - ofMain;
            return rest > 1e-9 ? scaled.plus(Mixture.of(UNSTATED, rest, 0)) : scaled;
        }
        double factor = estimate.totalGrams() == 0 ? 1 : grams / estimate.totalGrams();
        return estimate.share(n -> factor);
    }

    private Mixture liquid(String name, double grams) {
        return Mixture.of(
                name, grams, grams / substances.densityGramsPerMillilitre(name).orElse(1));
    }

    private boolean isSalt(String name) {
        return goesWithWater(name) && !name.equals(Materials.WATER);
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
