package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.judgement.measurements.NextTest.Kind;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerTally;

/** The tests that can be made on the portions of a run, each with the result that it must give. */
final class PossibleTests {
    private final RunTally tally;
    private final Limits limits;
    private final Substances substances;

    PossibleTests(RunTally tally, Limits limits, Substances substances) {
        this.tally = tally;
        this.limits = limits;
        this.substances = substances;
    }

    /** Wanted products that no reading of the layer tells; one whose dry residue alone is known can still be read. */
    List<String> unread(LayerTally layer) {
        return tally.run().products().stream()
                .filter(Product::wanted)
                .map(Product::name)
                .filter(name ->
                        layer.contents().stream().filter(c -> c.isOf(name)).noneMatch(Content::isOwnEvidence)
                                || isByResidueAlone(layer, name))
                .toList();
    }

    private boolean isByResidueAlone(LayerTally layer, String product) {
        List<Assay> rows = tally.run().assays().stream()
                .filter(a -> a.sample().equals(layer.label()) && a.isOf(product))
                .toList();
        return !rows.isEmpty()
                && rows.stream()
                        .allMatch(a -> a.method()
                                .filter(m -> m == Assay.Method.DRY_RESIDUE)
                                .isPresent());
    }

    NextTest drop(String label) {
        return test(Kind.DROP, List.of(label), List.of(), OptionalDouble.empty(), "");
    }

    private static NextTest test(
            Kind kind, List<String> samples, List<String> substances, OptionalDouble mustBeBelow, String unit) {
        return new NextTest(kind, samples, substances, List.of(), 1, mustBeBelow, unit, List.of(), 0);
    }

    NextTest assay(LayerTally layer) {
        List<String> names = unread(layer);
        boolean byVolume = layer.volumeMillilitres().isPresent();
        OptionalDouble grams = allowedGrams(List.of(layer), names);
        Optional<Double> size = byVolume
                ? layer.volumeMillilitres().map(v -> v.value() / 1000)
                : layer.massGrams().map(m -> m.value() / 100);
        boolean known = grams.isPresent() && size.filter(s -> s > 0).isPresent();
        return test(
                Kind.ASSAY,
                List.of(layer.label()),
                names,
                known ? OptionalDouble.of(grams.getAsDouble() / size.orElseThrow()) : OptionalDouble.empty(),
                known ? byVolume ? "mg/mL" : "% w/w" : "");
    }

    /**
     * The residue of an aliquot, which bounds every product at once: of a clear layer in which the steps leave nothing that stays behind but
     * products, none of which is volatile, and not of the layers right off the reaction mixture, since nobody knows its salts. Empty where it
     * would settle nothing, or was taken already.
     */
    Optional<NextTest> dryResidue(LayerTally layer) {
        List<String> names = unread(layer);
        OptionalDouble grams = allowedGrams(List.of(layer), names);
        if (!CompositeSets.isClear(layer)
                || grams.isEmpty()
                || names.isEmpty()
                || names.stream().anyMatch(name -> isByResidueAlone(layer, name) || isVolatile(name))
                || !leavesNothingElse(layer)) {
            return Optional.empty();
        }
        double mustBeBelow = 1000
                * grams.getAsDouble()
                / layer.volumeMillilitres().orElseThrow().value();
        return mustBeBelow > substances.value(Threshold.RESIDUE_LEAST)
                ? Optional.of(
                        test(Kind.DRY_RESIDUE, List.of(layer.label()), names, OptionalDouble.of(mustBeBelow), "mg/mL"))
                : Optional.empty();
    }

    private boolean isVolatile(String product) {
        return tally.run().product(product).filter(substances::isVolatile).isPresent();
    }

    private boolean leavesNothingElse(LayerTally layer) {
        boolean offTheMixture = tally.run().steps().stream()
                .filter(s -> s.gives().contains(layer.label()))
                .anyMatch(s -> s.from().contains(Step.REACTION_MIXTURE));
        Set<String> products = new LinkedHashSet<>();
        tally.run().products().forEach(p -> products.add(p.name()));
        return !offTheMixture
                && tally.makeUp(layer.label())
                        .filter(m -> !m.grams().isEmpty())
                        .filter(m -> m.grams().keySet().stream()
                                .allMatch(name -> products.contains(name)
                                        || substances.solvent(name).isPresent()))
                        .isPresent();
    }

    /** The tare of a layer whose assay by mass waits for it; empty where another entry is missing too. */
    Optional<NextTest> tare(LayerTally layer) {
        Optional<Layer> entry = layer.entry()
                .filter(l -> l.weighing().grossGrams().entered().isPresent()
                        && l.weighing().tareGrams().isBlank()
                        && l.weighing().netGrams().isBlank());
        List<String> names = unread(layer);
        boolean waiting = entry.isPresent()
                && !names.isEmpty()
                && names.stream().allMatch(name -> isAssayedByMass(tally.run(), layer.label(), name));
        return waiting
                ? Optional.of(test(Kind.TARE, List.of(layer.label()), names, OptionalDouble.empty(), ""))
                : Optional.empty();
    }

    /** Vessel of a layer; empty for none. */
    String vessel(LayerTally layer) {
        return layer.entry().map(Layer::vessel).orElse("").strip();
    }

    private static boolean isAssayedByMass(Run run, String label, String product) {
        return run.assays().stream()
                .anyMatch(a -> a.sample().equals(label)
                        && a.isOf(product)
                        && a.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent()
                        && a.result().entered().filter(r -> r.value() > 0).isPresent());
    }

    /** One assay of aliquots in proportion to the volumes: what it finds at most, all of them hold at most, and so does each. */
    Optional<NextTest> composite(List<LayerTally> set) {
        Set<String> names = new LinkedHashSet<>();
        set.forEach(l -> names.addAll(unread(l)));
        List<Double> volumes = new ArrayList<>();
        set.forEach(l -> volumes.add(l.volumeMillilitres().orElseThrow().value()));
        double millilitres = volumes.stream().mapToDouble(v -> v).sum();
        double smallest = volumes.stream().mapToDouble(v -> v).min().orElseThrow();
        OptionalDouble grams = allowedGrams(set, List.copyOf(names));
        if (grams.isEmpty() || smallest <= 0) {
            return Optional.empty();
        }
        double mustBeBelow = 1000 * grams.getAsDouble() / millilitres;
        double dilution = substances.value(Threshold.COMPOSITE_DILUTION);
        // a limit of detection as high as the limit to beat would settle nothing
        if (mustBeBelow <= dilution * detectionMilligramsPerMillilitre()) {
            return Optional.empty();
        }
        double part = substances.value(Threshold.COMPOSITE_ALIQUOT_LEAST) / smallest;
        return Optional.of(new NextTest(
                Kind.COMPOSITE,
                set.stream().map(LayerTally::label).toList(),
                List.copyOf(names),
                volumes.stream().map(v -> part * v).toList(),
                dilution,
                OptionalDouble.of(mustBeBelow),
                "mg/mL",
                List.of(),
                0));
    }

    /** The limit of the method in Limits, else the lowest that a non-detect of the run states, else a usual one. */
    private double detectionMilligramsPerMillilitre() {
        return limits.optional(Limit.DETECTION_HPLC)
                .orElseGet(() -> tally.run().assays().stream()
                        .filter(a -> a.unit()
                                .filter(u -> u == Assay.Unit.MILLIGRAMS_PER_MILLILITRE)
                                .isPresent())
                        .flatMap(a -> a.result().entered().stream())
                        .filter(r -> r.qualifier() == Qualifier.BELOW && r.value() > 0)
                        .mapToDouble(r -> r.value())
                        .min()
                        .orElseGet(() -> substances.value(Threshold.USUAL_DETECTION)));
    }

    /**
     * Grams of the scarcest product that some layers may hold together: within the layer limit, and within what the run limit leaves beside
     * the kept layers that were read; empty where nothing is left, or theory is not known.
     */
    private OptionalDouble allowedGrams(List<LayerTally> layers, List<String> names) {
        double least = Double.POSITIVE_INFINITY;
        for (String substance : names) {
            Optional<Double> theory = tally.theory().stream()
                    .flatMap(t -> t.products().stream())
                    .filter(p -> p.isOf(substance))
                    .map(p -> p.massGrams().value())
                    .findFirst();
            if (theory.isEmpty()) {
                return OptionalDouble.empty();
            }
            double layerLimit = limits.value(Limit.LAYER_LIMIT) / 100 * theory.get();
            double runLimit = limits.value(Limit.RUN_LIMIT) / 100 * theory.get();
            double beside = 0;
            for (LayerTally other : tally.layers()) {
                double held = heldGrams(other, substance);
                if (!layers.contains(other) && held <= layerLimit) {
                    beside += held;
                }
            }
            least = Math.min(least, Math.min(layerLimit, runLimit - beside) / substances.value(Threshold.TEST_GUARD));
        }
        return least > 0 && Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    /** Upper bound of what was read in a kept layer, g; 0 for another one. */
    private static double heldGrams(LayerTally layer, String substance) {
        boolean kept = layer.terminal() && layer.endsWorkup() && layer.entry().isPresent();
        return !kept
                ? 0
                : layer.contents().stream()
                        .filter(c -> c.isOf(substance) && c.isOwnEvidence())
                        .mapToDouble(c -> c.upperBoundGrams()
                                .orElse(c.massGrams().map(MeasuredValue::value).orElse(0.0)))
                        .sum();
    }
}
