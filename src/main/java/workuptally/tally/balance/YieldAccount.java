package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field.Entered;
import workuptally.model.LeftOutRow;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.ProductYield.PercentOf;
import workuptally.tally.amounts.ProductYield.Stage;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.layers.LayerGraph;

/**
 * Yields Y = Σ m·w / m(theory) of each product, for what the workup gave and, beside it, for what purification gave.
 *
 * <p>Conversion X = 1 − n(recovered limiting material)/n₀ over every terminal layer and lot where it was looked for; adjusted yield Y/X,
 * not given below X = 0.2 (common practice). Aliquots are put back by Y/Π(1 − f), f the share of the product stream taken each time,
 * where the stream is what was found in all that became of it: isolated, lost to later layers, and sampled.
 */
public final class YieldAccount {

    private final Run run;
    private final Readings readings;
    private final Substances substances;
    private final LayerGraph graph;
    private final Optional<Theory> theory;
    private final Found found;
    private final Omissions omissions;

    public YieldAccount(
            Run run,
            Readings readings,
            Substances substances,
            LayerGraph graph,
            Optional<Theory> theory,
            Found found,
            Omissions omissions) {
        this.substances = substances;
        this.run = run;
        this.readings = readings;
        this.graph = graph;
        this.theory = theory;
        this.found = found;
        this.omissions = omissions;
    }

    public List<ProductYield> of(List<LotTally> lots, PurifiedLots purified) {
        List<ProductYield> yields = new ArrayList<>();
        if (theory.isEmpty()) {
            return yields;
        }
        for (ProductTheory product : theory.get().products()) {
            List<LotTally> workup = lots.stream()
                    .filter(l -> l.isOf(product.product().name()) && l.endsWorkup())
                    .toList();
            of(product, true, workup).ifPresent(yields::add);
        }
        for (ProductTheory product : theory.get().products()) {
            of(product, false, purified.of(product.product())).ifPresent(yields::add);
        }
        return yields;
    }

    /** True for a lot of a list that weighs the purified product alone. */
    private static boolean isPurified(LotTally lot) {
        return lot.lot().stage().filter(s -> s == Lot.Stage.PURIFIED).isPresent();
    }

    private Optional<ProductYield> of(ProductTheory product, boolean endsWorkup, List<LotTally> lots) {
        if (lots.isEmpty()) {
            return Optional.empty();
        }
        String name = product.product().name();
        List<LeftOutRow> leftOut = run.leftOutOfYields();
        if (!leftOut.isEmpty()) {
            omissions.add(
                    "yield of " + name,
                    "a row of what was isolated was left out",
                    leftOut.get(0).inWords());
            return Optional.empty();
        }
        for (LotTally lot : lots) {
            if (lot.netGrams().isEmpty()) {
                omissions.add(
                        "yield of " + name,
                        "lot " + lot.lot().label() + " has no mass",
                        entry(lot, "Gross and Tare", "Net"));
                return Optional.empty();
            }
            if (lot.pureGrams().isEmpty()) {
                omissions.add(
                        "yield of " + name,
                        "lot " + lot.lot().label() + " is crude and has no assay: only crude over theory",
                        entry(lot, "Assay", "Assay"));
                return Optional.empty();
            }
        }
        MeasuredValue grams = lots.stream()
                .map(l -> l.pureGrams().orElseThrow())
                .reduce(MeasuredValue::plus)
                .orElseThrow();
        MeasuredValue percent = grams.over(product.massGrams()).times(100);
        YieldBasis basis = lots.stream()
                .map(LotTally::basis)
                .max(Comparator.comparing(YieldBasis::isUpperBound))
                .orElse(YieldBasis.ASSAY);
        return Optional.of(new ProductYield(
                product.product(),
                endsWorkup && !lots.stream().allMatch(YieldAccount::isPurified) ? Stage.WORKUP : Stage.PURIFIED,
                endsWorkup,
                lots.stream().map(l -> l.lot().label()).toList(),
                grams,
                percent,
                run.kind() == Run.Kind.SEPARATION ? PercentOf.CHARGED : PercentOf.THEORY,
                basis,
                endsWorkup ? conversion().map(percent::over) : Optional.empty(),
                endsWorkup ? aliquotCorrected(product.product(), lots, percent) : Optional.empty()));
    }

    /** Conversion of the limiting material as a fraction; empty where it was not looked for or is below 0.2. */
    private Optional<MeasuredValue> conversion() {
        Optional<Entered> typed = run.head().conversionPercent().entered();
        Optional<MeasuredValue> conversion;
        if (typed.isPresent()) {
            conversion = Optional.of(readings.exact(typed.get().value() / 100));
        } else if (theory.orElseThrow().limiting().size() != 1) {
            return Optional.empty();
        } else {
            Theory.Limiting limiting = theory.get().limiting().get(0);
            Optional<MeasuredValue> recovered = found.terms().stream()
                    .filter(t -> t.content().isOf(limiting.material()))
                    .flatMap(t -> t.content().amountMillimoles().stream())
                    .reduce(MeasuredValue::plus);
            conversion = recovered.map(r -> readings.exact(1).minus(r.over(limiting.amountMillimoles())));
        }
        return conversion.filter(x -> x.value() >= substances.value(Threshold.LEAST_CONVERSION));
    }

    /** The yield over Π(1 − f), with f the share of the product stream that each aliquot took; empty without such an aliquot. */
    private Optional<MeasuredValue> aliquotCorrected(Product product, List<LotTally> lots, MeasuredValue percent) {
        Optional<MeasuredValue> corrected = Optional.empty();
        for (Found.Term term : found.terms()) {
            boolean ofProduct = term.content().isOf(product.name());
            Optional<MeasuredValue> taken = term.content().massGrams();
            boolean isAliquot = term.takenFrom().isPresent() || graph.isAliquot(term.label());
            if (isAliquot && ofProduct && taken.isPresent()) {
                Collection<String> from =
                        term.takenFrom().<Collection<String>>map(List::of).orElseGet(() -> graph.parents(term.label()));
                Optional<MeasuredValue> stream = streamGrams(from, product, lots);
                Optional<MeasuredValue> left =
                        stream.map(s -> s.minus(taken.get())).filter(m -> m.value() > 0);
                if (left.isPresent()) {
                    MeasuredValue kept = left.get().over(stream.get());
                    corrected = Optional.of(corrected.orElse(percent).over(kept));
                }
            }
        }
        return corrected;
    }

    /** Product in the stream an aliquot was taken from, by what was found in all that became of it, g; empty off the product's stream. */
    private Optional<MeasuredValue> streamGrams(Collection<String> takenFrom, Product product, List<LotTally> lots) {
        Set<String> became = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(takenFrom);
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (became.add(next)) {
                open.addAll(graph.children(next));
            }
        }
        lots.stream()
                .map(LotTally::lot)
                .filter(l -> graph.parents(l.label()).isEmpty())
                .forEach(l -> became.add(l.label()));
        boolean isProductStream =
                lots.stream().anyMatch(l -> became.contains(l.lot().label()));
        Optional<MeasuredValue> isolated = lots.stream()
                .flatMap(l -> l.pureGrams().stream())
                .reduce(MeasuredValue::plus)
                .filter(m -> m.value() > 0);
        return isProductStream && isolated.isPresent()
                ? found.terms().stream()
                        .filter(t -> t.isOf(became) && t.content().isOf(product.name()))
                        .flatMap(t -> t.content().massGrams().stream())
                        .reduce(MeasuredValue::plus)
                : Optional.empty();
    }

    /** Where the entry stands; a list of the laboratory's own has one column for the mass. */
    private static String entry(LotTally lot, String heading, String ofOwnList) {
        RowPlace row = lot.lot().row();
        return row.entry(
                row.table().ownHeadings().isEmpty() ? heading : ofOwnList,
                "lot " + lot.lot().label(),
                "Isolated");
    }
}
