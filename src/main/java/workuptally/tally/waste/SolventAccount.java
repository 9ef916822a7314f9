package workuptally.tally.waste;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.reference.substances.Solvent;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.CakeContents;
import workuptally.tally.layers.DryingCake;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerTally;

/**
 * Solvents of one run: what went in equals what was recovered, stands in other distillates and in layers, sits on cakes, is in the lots, and what was not found.
 *
 * <p>What was not found went to air, pump and glassware; it is never called waste. Layers, aliquots and cakes without a stated composition
 * are estimates of {@link LayerFlow} and {@link CakeContents}, cut where together with what was measured they would exceed what was put in.
 * A weighed solid that is neither a drying cake nor has a composition holds none that is known.
 */
public final class SolventAccount {
    private final Run run;
    private final Omissions omissions;
    private final Substances substances;
    private final IngredientAccount materials;

    public SolventAccount(Run run, Substances substances, Omissions omissions) {
        this.omissions = omissions;
        this.run = run;
        this.substances = substances;
        this.materials = new IngredientAccount(substances);
    }

    public List<SolventUse> of(
            List<ChargeAmount> amounts,
            List<Addition> additions,
            List<LayerTally> layers,
            List<DryingCake> cakes,
            List<LotTally> lots,
            Map<String, List<Content>> lotContents,
            LayerFlow flow) {
        if (run.status() == Run.Status.PLANNED) {
            return List.of();
        }
        Grams charged = new Grams();
        amounts.forEach(a -> addCharged(a, charged));
        Grams workup = new Grams();
        Grams purification = new Grams();
        additions.forEach(a -> (a.purification() ? purification : workup).add(materials.of(a)));
        Taken taken = new Taken(cakes, flow);
        layers.forEach(taken::add);
        flow.unlabelledPhases().forEach(phase -> taken.inLayers.add(flow.portion(phase.name())));
        Grams inLots = inLots(lots, lotContents);
        Grams reacted = new Grams();
        reacted.add(new ReactedSolvents(run, substances, materials).of(amounts, layers, lots, lotContents));
        Map<String, Integer> missing = missing(amounts, additions);
        Set<String> solvents = new LinkedHashSet<>(charged.names());
        solvents.addAll(missing.keySet());
        solvents.addAll(workup.names());
        solvents.addAll(purification.names());
        return solvents.stream()
                .map(solvent -> use(
                        solvent,
                        charged.of(solvent),
                        workup.of(solvent),
                        purification.of(solvent),
                        inLots.of(solvent),
                        reacted.of(solvent),
                        taken,
                        missing.getOrDefault(solvent, 0)))
                .toList();
    }

    private SolventUse use(
            String solvent,
            double chargedGrams,
            double workupGrams,
            double purificationGrams,
            double inCrudeGrams,
            double reactedGrams,
            Taken taken,
            int missing) {
        double in = chargedGrams + workupGrams;
        // of what was distilled off, what the workup cannot have given belongs to the purification
        Distilled.Part back = taken.distilled.of(solvent).upTo(in);
        double measured = back.grams() + taken.onCakes.of(solvent) + inCrudeGrams;
        // with the yield's own uncertainty no more than what the rest leaves
        double rest = Math.max(0, in - measured);
        double inProductGrams = Math.min(reactedGrams, rest);
        double left = rest - inProductGrams;
        Distilled.Part backAfter = taken.distilledAfter
                .of(solvent)
                .plus(taken.distilled.of(solvent).minus(back))
                .upTo(purificationGrams);
        return SolventUse.balanced(
                solvent,
                substances.solvent(solvent).flatMap(Solvent::cas),
                chargedGrams,
                workupGrams,
                new SolventUse.Purification(
                        purificationGrams,
                        backAfter.reuseGrams(),
                        backAfter.otherGrams(),
                        Math.min(taken.inLiquors.of(solvent), purificationGrams - backAfter.grams())),
                back.reuseGrams(),
                back.otherGrams(),
                Math.min(taken.inLayers.of(solvent), left),
                taken.onCakes.of(solvent),
                inCrudeGrams + inProductGrams,
                substances.densityGramsPerMillilitre(solvent).orElse(1),
                missing);
    }

    /** Where the layers took the solvents of workup and purification. */
    private final class Taken {
        private final Distilled distilled = new Distilled();
        private final Distilled distilledAfter = new Distilled();
        private final Grams inLayers = new Grams();
        private final Grams onCakes = new Grams();
        private final Grams inLiquors = new Grams();
        private final List<DryingCake> cakes;
        private final LayerFlow flow;

        Taken(List<DryingCake> cakes, LayerFlow flow) {
            this.cakes = cakes;
            this.flow = flow;
        }

        void add(LayerTally layer) {
            if (!layer.terminal()) {
                return;
            }
            Layer.Phase phase = layer.phase().orElse(Layer.Phase.AQUEOUS);
            // what is set aside to be used again is so whatever word stands under Phase
            boolean distillate = phase == Layer.Phase.DISTILLATE || phase != Layer.Phase.SOLID && isToReuse(layer);
            if (!layer.endsWorkup()) {
                if (distillate) {
                    distilledAfter.add(layer, flow);
                } else {
                    inLiquors.add(flow.portion(layer.label()));
                }
            } else if (!layer.isLost()) {
                if (distillate) {
                    distilled.add(layer, flow);
                } else if (phase == Layer.Phase.SOLID) {
                    onCakes.add(onCake(layer, cakes, flow));
                } else {
                    inLayers.add(flow.portion(layer.label()));
                }
            }
        }
    }

    /** How many charges and additions of each solvent have no amount: not zero, but not known. */
    private Map<String, Integer> missing(List<ChargeAmount> amounts, List<Addition> additions) {
        Map<String, Integer> missing = new LinkedHashMap<>();
        amounts.stream()
                .filter(a -> a.massGrams().isEmpty() && a.volumeMillilitres().isEmpty())
                .filter(a -> a.charge()
                        .role()
                        .filter(r -> r == Charge.Role.SUBSTRATE)
                        .isEmpty())
                .flatMap(a -> materials.organicSolvent(a.charge().material()).stream())
                .forEach(name -> missing.merge(name, 1, Integer::sum));
        additions.stream()
                .filter(a -> a.massGrams().isEmpty() && a.volumeMillilitres().isEmpty())
                .flatMap(a -> materials.organicSolvent(a.material()).stream())
                .forEach(name -> missing.merge(name, 1, Integer::sum));
        return missing;
    }

    /** Of a solution without a density the solvent is unknown, which is not zero: it is left out and said. */
    private void addCharged(ChargeAmount amount, Grams charged) {
        Optional<String> unknown = materials.solventOfUnknownMass(amount);
        if (unknown.isPresent()) {
            String material = amount.charge().material();
            omissions.add(
                    "mass of " + unknown.get() + " in " + material,
                    "a solution charged by volume without a density",
                    amount.charge().row().entry("Density", material, "Charges"));
        } else {
            charged.add(materials.of(amount));
        }
    }

    private static boolean isToReuse(LayerTally layer) {
        return layer.entry()
                .flatMap(l -> l.custody().status())
                .filter(status -> status == Layer.Status.TO_REUSE)
                .isPresent();
    }

    /** What stands in distillates: set aside to be re-used, and all the rest. */
    private final class Distilled {
        private final Grams reuse = new Grams();
        private final Grams other = new Grams();

        void add(LayerTally layer, LayerFlow flow) {
            (isToReuse(layer) ? reuse : other).add(flow.portion(layer.label()));
        }

        Part of(String solvent) {
            return new Part(reuse.of(solvent), other.of(solvent));
        }

        /** What there is of one solvent, g. */
        private record Part(double reuseGrams, double otherGrams) {
            double grams() {
                return reuseGrams + otherGrams;
            }

            /** At most that much of both together, each cut by the same share. */
            Part upTo(double mostGrams) {
                double share = grams() > mostGrams ? mostGrams / grams() : 1;
                return new Part(reuseGrams * share, otherGrams * share);
            }

            Part plus(Part more) {
                return new Part(reuseGrams + more.reuseGrams, otherGrams + more.otherGrams);
            }

            Part minus(Part less) {
                return new Part(reuseGrams - less.reuseGrams, otherGrams - less.otherGrams);
            }
        }
    }

    /** As stated for the solid, else by the drying cake it is. */
    private static Ingredients onCake(LayerTally layer, List<DryingCake> cakes, LayerFlow flow) {
        return cakes.stream()
                .filter(cake -> cake.label().equals(layer.label()))
                .findFirst()
                .map(DryingCake::heldSolvents)
                .orElseGet(() -> flow.portion(layer.label()));
    }

    private Grams inLots(List<LotTally> lots, Map<String, List<Content>> lotContents) {
        Grams inLots = new Grams();
        Set<String> counted = new HashSet<>();
        for (LotTally lot : lots) {
            if (lot.endsWorkup() && counted.add(lot.lot().label())) {
                for (Content content : lotContents.getOrDefault(lot.lot().label(), List.of())) {
                    if (run.product(content.substance()).isPresent()) {
                        continue; // a product is none of the solvents, though a table lists it as one
                    }
                    materials
                            .solventName(content.substance())
                            .ifPresent(name -> inLots.add(Ingredients.of(
                                    name,
                                    content.massGrams()
                                            .map(MeasuredValue::value)
                                            .orElse(0.0),
                                    0)));
                }
            }
        }
        return inLots;
    }

    /** Sums by solvent; only listed organic solvents are solvents, water has an account of its own in the metrics. */
    private final class Grams {
        private final Map<String, Double> sums = new LinkedHashMap<>();

        void add(Ingredients mixture) {
            mixture.parts().forEach((name, part) -> {
                if (substances.isOrganicSolvent(name)) {
                    sums.merge(name, part.grams(), Double::sum);
                }
            });
        }

        double of(String solvent) {
            return sums.getOrDefault(solvent, 0.0);
        }

        Set<String> names() {
            return sums.keySet();
        }
    }
}
