package workuptally.judgement.totals;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.NamedIn;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Run.Kind;
import workuptally.model.Run.Status;
import workuptally.model.SubstanceName;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.layers.LayerTally;

/**
 * How much of what the runs of a book isolated went into other runs of it, so that no sum counts it twice. A charge comes from a run where
 * its supplier lot names the run, and one of its lots or the product that the charge is; a separation, such as a purification, also takes a
 * product of the runs before it where its charge has that name and no supplier lot. What a charge took from liquors, which it names or which are
 * said to be consumed while nothing in their own run takes them, came from no lot; it is no longer in a layer either.
 */
public final class CarriedOn {
    private final Map<String, Double> gramsByRun = new HashMap<>();
    private final Map<String, Double> liquorGramsByRun = new HashMap<>();
    private final Set<LayerTally> takenLiquors = new HashSet<>();
    private final Map<String, Deque<RunTally>> makers = new HashMap<>();

    private CarriedOn() {}

    /** What is carried on among these runs; they stand in order of the book. */
    public static CarriedOn of(List<RunTally> runs) {
        CarriedOn carried = new CarriedOn();
        NamedIn<Run> names = new NamedIn<>(runs.stream().map(RunTally::run).toList(), Run::id);
        Map<Run, RunTally> tallies = new HashMap<>();
        runs.forEach(run -> tallies.put(run.run(), run));
        for (RunTally run : runs) {
            if (run.run().status() != Status.PLANNED) {
                for (ChargeAmount charge : run.amounts()) {
                    carried.take(run.run(), charge, names, tallies);
                }
            }
            for (Product product : run.run().products()) {
                if (product.wanted()) {
                    carried.makers
                            .computeIfAbsent(key(product.name()), name -> new ArrayDeque<>())
                            .push(run);
                }
            }
        }
        return carried;
    }

    private void take(Run run, ChargeAmount amount, NamedIn<Run> names, Map<Run, RunTally> tallies) {
        OptionalDouble grams = pureGrams(amount);
        if (amount.isSolvent() || grams.isEmpty()) {
            return;
        }
        Charge charge = amount.charge();
        double rest = grams.getAsDouble();
        Optional<RunTally> source = Optional.empty();
        for (Map.Entry<Run, String> named :
                names.behindNames(charge.goods().supplierLot()).entrySet()) {
            RunTally other = tallies.get(named.getKey());
            if (named.getKey() != run) {
                List<LayerTally> liquors = layersNamed(other, named.getValue());
                rest -= takeLiquors(other, liquors, charge.material(), rest);
                source =
                        source.or(() -> isOf(named, charge, liquors.isEmpty()) ? Optional.of(other) : Optional.empty());
            }
        }
        if (source.isPresent()) {
            add(source.get(), rest);
        } else if (run.kind() == Kind.SEPARATION && charge.goods().supplierLot().isBlank()) {
            Deque<RunTally> made = makers.getOrDefault(key(charge.material()), new ArrayDeque<>());
            for (RunTally maker : made) {
                rest -= takeLiquors(maker, maker.layers(), charge.material(), rest);
            }
            takeByName(made, rest);
        }
    }

    /** True where a supplier lot that names a run means its lots: one of them is named, or nothing else while it made what was charged. */
    private static boolean isOf(Map.Entry<Run, String> named, Charge charge, boolean withoutLiquor) {
        Run run = named.getKey();
        List<String> lots = run.lots().stream().map(Lot::label).distinct().toList();
        return !NamedIn.labelsIn(withoutLiquor ? charge.goods().supplierLot() : named.getValue(), lots)
                        .isEmpty()
                || withoutLiquor
                        && run.products().stream()
                                .anyMatch(p -> p.wanted() && key(p.name()).equals(key(charge.material())));
    }

    private static List<LayerTally> layersNamed(RunTally run, String text) {
        List<String> labels = NamedIn.labelsIn(
                text, run.layers().stream().map(LayerTally::label).toList());
        return run.layers().stream()
                .filter(layer -> labels.contains(layer.label()))
                .toList();
    }

    /** Takes what was found of a product in those of some layers that are gone and that their own run did not use, g, up to a limit. */
    private double takeLiquors(RunTally run, List<LayerTally> layers, String product, double limit) {
        double taken = 0;
        for (LayerTally layer : layers) {
            boolean goneOn = layer.terminal()
                    && layer.endsWorkup()
                    && !layer.aliquot()
                    && layer.entry().filter(Layer::saysConsumed).isPresent();
            double grams = layer.contents().stream()
                    .filter(c -> c.isOf(product))
                    .flatMap(c -> c.massGrams().stream())
                    .mapToDouble(MeasuredValue::value)
                    .sum();
            if (goneOn && taken < limit && takenLiquors.add(layer)) {
                taken += grams;
                liquorGramsByRun.merge(run.run().id(), grams, Double::sum);
            }
        }
        return Math.min(taken, limit);
    }

    /** From the last runs that made it, each up to what it isolated: several batches are often purified together. */
    private void takeByName(Deque<RunTally> made, double grams) {
        double rest = grams;
        while (rest > 0 && !made.isEmpty()) {
            double left = isolatedGrams(made.peek()) - grams(made.peek().run().id());
            add(made.peek(), Math.min(rest, Math.max(0, left)));
            rest -= Math.max(0, left);
            if (rest >= 0) {
                made.pop();
            }
        }
    }

    private void add(RunTally run, double grams) {
        gramsByRun.merge(run.run().id(), grams, Double::sum);
    }

    private static double isolatedGrams(RunTally run) {
        return run.yields().stream()
                .filter(y -> y.product().wanted() && y.headline())
                .map(ProductYield::massGrams)
                .mapToDouble(MeasuredValue::value)
                .sum();
    }

    /** Mass without what else is in the material, g. */
    private static OptionalDouble pureGrams(ChargeAmount amount) {
        if (amount.amountMillimoles().isPresent()
                && amount.molarMassGramsPerMole().isPresent()) {
            return OptionalDouble.of(amount.amountMillimoles().get().value()
                    * amount.molarMassGramsPerMole().getAsDouble()
                    / 1000);
        }
        return amount.massGrams().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(amount.massGrams().get().value()
                        * amount.charge()
                                .goods()
                                .assayPercent()
                                .entered()
                                .map(assay -> assay.value() / 100)
                                .orElse(1.0));
    }

    private static String key(String name) {
        return SubstanceName.key(name);
    }

    /** Mass of the products of a run that went into other runs with its liquors, and is in none of its layers any more, g; 0 where none did. */
    public double inLiquorsGrams(String run) {
        return liquorGramsByRun.getOrDefault(run, 0.0);
    }

    /** Mass of the products of a run that went into other runs from its lots, g; 0 where none did. */
    public double grams(String run) {
        return gramsByRun.getOrDefault(run, 0.0);
    }
}
