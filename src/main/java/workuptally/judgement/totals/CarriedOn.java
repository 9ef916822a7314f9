package workuptally.judgement.totals;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
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

/**
 * How much of what the runs of a book isolated went into other runs of it, so that no sum counts it twice. A charge comes from a run where
 * its supplier lot names the run, and one of its lots or the product that the charge is; a separation, such as a purification, also takes a
 * product of the runs before it where its charge has that name and no supplier lot.
 */
public final class CarriedOn {
    private final Map<String, Double> gramsByRun = new HashMap<>();
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
        Optional<Run> source = names.in(charge.goods().supplierLot()).stream()
                .filter(named -> named != run && isOf(named, charge))
                .findFirst();
        if (source.isPresent()) {
            add(tallies.get(source.get()), grams.getAsDouble());
        } else if (run.kind() == Kind.SEPARATION && charge.goods().supplierLot().isBlank()) {
            takeByName(makers.getOrDefault(key(charge.material()), new ArrayDeque<>()), grams.getAsDouble());
        }
    }

    private static boolean isOf(Run run, Charge charge) {
        List<String> lots = run.lots().stream().map(Lot::label).distinct().toList();
        return !NamedIn.labelsIn(charge.goods().supplierLot(), lots).isEmpty()
                || run.products().stream()
                        .anyMatch(p -> p.wanted() && key(p.name()).equals(key(charge.material())));
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

    /** Mass of the products of a run that went into other runs, g; 0 where none did. */
    public double grams(String run) {
        return gramsByRun.getOrDefault(run, 0.0);
    }
}
