package workuptally.tally;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Run;

/**
 * Solvents of one run: what went in equals what was recovered, stands in layers, sits on cakes, is in the lots, and what was not found.
 *
 * <p>What was not found went to air, pump and glassware; it is never called waste. Layers, aliquots and cakes without a stated composition
 * are estimates of {@link LayerFlow}, cut where together with what was measured they would exceed what was put in. A cake's gain over its agent is split into water, up to the water its solution can hold and that was
 * carried along (1 mL per 100 mL of solution: common practice), and solution.
 */
final class SolventAccount {
    private static final double ENTRAINED_WATER_FRACTION = 0.01;

    private final Run run;
    private final Substances substances;
    private final Materials materials;

    SolventAccount(Run run, Substances substances) {
        this.run = run;
        this.substances = substances;
        this.materials = new Materials(substances);
    }

    List<SolventUse> of(
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers,
            List<LotTally> lots,
            Map<String, List<Content>> lotContents,
            LayerFlow flow) {
        if (run.status() == Run.Status.PLANNED) {
            return List.of();
        }
        Map<String, Double> charged = new LinkedHashMap<>();
        Map<String, Double> workup = new LinkedHashMap<>();
        Map<String, Double> purification = new LinkedHashMap<>();
        amounts.forEach(a -> add(charged, materials.of(a)));
        additions.forEach(a -> add(a.purification() ? purification : workup, materials.of(a)));
        Map<String, Double> recovered = new LinkedHashMap<>();
        Map<String, Double> inLayers = new LinkedHashMap<>();
        Map<String, Double> onCakes = new LinkedHashMap<>();
        for (LayerTally layer : layers) {
            if (layer.terminal() && layer.endsWorkup()) {
                Layer.Phase phase = layer.phase().orElse(Layer.Phase.AQUEOUS);
                if (phase == Layer.Phase.DISTILLATE) {
                    add(recovered, flow.portion(layer.label()));
                } else if (phase == Layer.Phase.SOLID) {
                    cake(layer, flow, additions, onCakes);
                } else {
                    add(inLayers, flow.portion(layer.label()));
                }
            }
        }
        Map<String, Double> inLots = new LinkedHashMap<>();
        for (LotTally lot : lots) {
            if (lot.endsWorkup()) {
                for (Content content : lotContents.getOrDefault(lot.lot().label(), List.of())) {
                    materials
                            .solventName(content.substance())
                            .ifPresent(name -> inLots.merge(
                                    name,
                                    content.massGrams()
                                            .map(MeasuredValue::value)
                                            .orElse(0.0),
                                    Double::sum));
                }
            }
        }
        Set<String> solvents = new LinkedHashSet<>(charged.keySet());
        solvents.addAll(workup.keySet());
        solvents.addAll(purification.keySet());
        List<SolventUse> uses = new ArrayList<>();
        for (String solvent : solvents) {
            uses.add(SolventUse.balanced(
                    solvent,
                    charged.getOrDefault(solvent, 0.0),
                    workup.getOrDefault(solvent, 0.0),
                    purification.getOrDefault(solvent, 0.0),
                    recovered.getOrDefault(solvent, 0.0),
                    Math.min(
                            inLayers.getOrDefault(solvent, 0.0),
                            Math.max(
                                    0,
                                    charged.getOrDefault(solvent, 0.0)
                                            + workup.getOrDefault(solvent, 0.0)
                                            - recovered.getOrDefault(solvent, 0.0)
                                            - onCakes.getOrDefault(solvent, 0.0)
                                            - inLots.getOrDefault(solvent, 0.0))),
                    onCakes.getOrDefault(solvent, 0.0),
                    inLots.getOrDefault(solvent, 0.0),
                    substances.densityGramsPerMillilitre(solvent).orElse(1)));
        }
        return uses;
    }

    /** Only listed organic solvents are solvents; water has an account of its own in the metrics. */
    private void add(Map<String, Double> sums, Mixture mixture) {
        mixture.parts().forEach((name, part) -> {
            if (substances.isOrganicSolvent(name)) {
                sums.merge(name, part.grams(), Double::sum);
            }
        });
    }

    private void cake(LayerTally cake, LayerFlow flow, List<Addition> additions, Map<String, Double> onCakes) {
        double agent = additions.stream()
                .filter(a -> substances.dryingAgent(a.material()).isPresent())
                .flatMap(a -> a.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        Mixture solution = cake.entry()
                .map(l -> flow.portion(parentOf(l.label(), flow)))
                .orElse(Mixture.EMPTY)
                .share(n -> substances.isOrganicSolvent(n) ? 1 : 0);
        double gain = cake.massGrams().map(MeasuredValue::value).orElse(0.0) - agent;
        if (gain <= 0 || solution.totalGrams() == 0) {
            return;
        }
        double water = solution.millilitres() * ENTRAINED_WATER_FRACTION;
        for (Map.Entry<String, Mixture.Part> part : solution.parts().entrySet()) {
            double massPercent = substances
                    .solvent(part.getKey())
                    .orElseThrow()
                    .waterMixing()
                    .waterInSolventMassPercent()
                    .orElse(0);
            water += part.getValue().grams() * massPercent / 100;
        }
        double held = Math.max(0, gain - Math.min(water, gain));
        solution.parts()
                .forEach((name, part) -> onCakes.merge(name, held * part.grams() / solution.totalGrams(), Double::sum));
    }

    private String parentOf(String label, LayerFlow flow) {
        return run.orderedSteps().stream()
                .filter(s -> s.gives().contains(label))
                .flatMap(s -> s.from().stream())
                .filter(l -> !flow.portion(l).parts().isEmpty())
                .findFirst()
                .orElse(label);
    }
}
