package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Assay;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.NmrAssay;
import workuptally.model.Run;
import workuptally.tally.amounts.Calibrations;
import workuptally.tally.amounts.FormAccount;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.MethodSight;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.MoleRatios;
import workuptally.tally.amounts.NetMass;
import workuptally.tally.amounts.NmrPurity;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.PooledReadings;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.amounts.YieldBasis;

/**
 * Lots: net mass, product fraction and crude over theory.
 *
 * <p>The product fraction comes from the assay in Isolated, else from an assay row of the lot, else from an internal-standard NMR row,
 * else from mole ratios as w = M / (M + Σ rₛ·Mₛ), which is an upper bound on w since it misses what the spectrum does not show.
 *
 * <p>A lot that holds several products is weighed once: its rows share one net mass, and without an assay a row of it has no product, since
 * the mass cannot stand for each of them.
 */
public final class LotAccount {
    private final Run run;
    private final Readings readings;
    private final Limits limits;
    private final InstrumentUncertainty uncertainty;
    private final Calibrations calibrations;
    private final MolarMassAccount molarMasses;
    private final FormAccount forms;
    private final MethodSight sight;
    private final LayerGraph graph;
    private final Omissions omissions;

    public LotAccount(
            Run run,
            Readings readings,
            Limits limits,
            Calibrations calibrations,
            MolarMassAccount molarMasses,
            LayerGraph graph,
            Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.limits = limits;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.calibrations = calibrations;
        this.molarMasses = molarMasses;
        this.forms = new FormAccount(run, molarMasses);
        this.sight = new MethodSight(run, molarMasses.substances());
        this.graph = graph;
        this.omissions = omissions;
    }

    public List<LotTally> of(Optional<Theory> theory) {
        Map<String, Optional<MeasuredValue>> nets = new HashMap<>();
        List<LotTally> lots = new ArrayList<>();
        for (Lot lot : run.lots()) {
            lots.add(of(lot, nets.computeIfAbsent(lot.label(), label -> net(lot)), theory));
        }
        return lots;
    }

    private Optional<MeasuredValue> net(Lot lot) {
        String name = "lot " + lot.label();
        Optional<MeasuredValue> net = new NetMass(readings, uncertainty)
                .of(
                        name,
                        lot.weighing().grossGrams(),
                        lot.weighing().tareGrams(),
                        lot.weighing().netGrams());
        if (net.isEmpty()) {
            String why = NetMass.whyMissing(
                    lot.weighing().grossGrams(),
                    lot.weighing().tareGrams(),
                    lot.weighing().netGrams());
            omissions.add(
                    "mass of " + name,
                    why,
                    weighing(
                            lot,
                            NetMass.lacksOnlyTheTare(
                                    lot.weighing().grossGrams(), lot.weighing().tareGrams())));
        }
        return net;
    }

    private LotTally of(Lot lot, Optional<MeasuredValue> net, Optional<Theory> theory) {
        boolean holdsSeveral =
                run.lots().stream().filter(l -> l.label().equals(lot.label())).count() > 1;
        Optional<Fraction> fraction = fraction(lot);
        YieldBasis basis =
                fraction.map(Fraction::basis).orElse(holdsSeveral ? YieldBasis.NONE : basisWithoutAssay(lot));
        OptionalDouble perGram = forms.gramsPerGram(lot.product());
        if (perGram.isEmpty()) {
            omissions.add(
                    lot.product() + " in lot " + lot.label() + " as " + run.countsAs(lot.product()),
                    "a molar mass is not known",
                    "Formula of both forms in Products");
        }
        Optional<MeasuredValue> pure = net.flatMap(n -> fraction.map(f -> n.times(f.value())));
        if (pure.isEmpty() && basis == YieldBasis.ASSAY_NOT_RECORDED) {
            pure = net;
        }
        String product = run.countsAs(lot.product());
        Optional<MeasuredValue> theoryGrams = theory.flatMap(
                        t -> t.products().stream().filter(p -> p.isOf(product)).findFirst())
                .map(ProductTheory::massGrams);
        Optional<MeasuredValue> overTheory = net.flatMap(n -> theoryGrams
                .filter(t -> t.value() > 0 && !holdsSeveral)
                .flatMap(t -> as(n, perGram).map(m -> m.over(t).times(100))));
        return new LotTally(
                lot,
                product,
                perGram.orElse(1),
                net,
                fraction.map(Fraction::value),
                basis,
                pure.flatMap(p -> as(p, perGram)),
                overTheory,
                !graph.descendsFromLot(lot.label()) && !followsCrude(lot));
    }

    /** A mass of the form in the lot as the form that it counts as. */
    private static Optional<MeasuredValue> as(MeasuredValue grams, OptionalDouble perGram) {
        return perGram.isEmpty()
                ? Optional.empty()
                : Optional.of(perGram.getAsDouble() == 1 ? grams : grams.times(perGram.getAsDouble()));
    }

    /** An assay of another form as that of the form in the lot. */
    private Optional<MeasuredValue> inFormOf(Lot lot, String substance, MeasuredValue fraction) {
        OptionalDouble assayed = forms.gramsPerGram(substance);
        OptionalDouble weighed = forms.gramsPerGram(lot.product());
        if (assayed.isEmpty() || weighed.isEmpty()) {
            return Optional.empty();
        }
        double factor = assayed.getAsDouble() / weighed.getAsDouble();
        return Optional.of(factor == 1 ? fraction : fraction.times(factor));
    }

    /** A crop or purified lot that does not say where it came from was made from the crude of the same product, where there is one. */
    private boolean followsCrude(Lot lot) {
        boolean saysWhere = !lot.from().isEmpty() || graph.givenBy(lot.label()).isPresent();
        boolean isCrude = lot.stage().filter(s -> s != Lot.Stage.CRUDE).isEmpty();
        return !saysWhere
                && !isCrude
                && run.lots().stream()
                        .anyMatch(l -> forms.same(l.product(), lot.product())
                                && l.stage().filter(s -> s == Lot.Stage.CRUDE).isPresent());
    }

    private static YieldBasis basisWithoutAssay(Lot lot) {
        return lot.stage().filter(s -> s == Lot.Stage.CRUDE).isPresent()
                        || lot.stage().isEmpty()
                ? YieldBasis.NONE
                : YieldBasis.ASSAY_NOT_RECORDED;
    }

    private static String weighing(Lot lot, boolean onlyTare) {
        String name = "lot " + lot.label();
        boolean ownList = !lot.row().table().ownHeadings().isEmpty();
        return ownList
                ? lot.row().entry("Net", name, "Isolated")
                : lot.row().entry(onlyTare ? "Tare" : "Gross and Tare", name, "Isolated");
    }

    private Optional<Fraction> fraction(Lot lot) {
        if (lot.assayPercent().isUnreadable()) {
            return Optional.empty();
        }
        Optional<Entered> typed = lot.assayPercent().entered().filter(e -> e.qualifier() != Qualifier.NOT_DETECTED);
        if (typed.isPresent()) {
            return Optional.of(new Fraction(
                    readings.enter(
                            "assay of lot " + lot.label(),
                            "1",
                            typed.get().value() / 100,
                            uncertainty.assayFraction(lot, typed.get())
                                    * typed.get().value()
                                    / 100,
                            () -> typed.get().place().inWords()),
                    typed.get().qualifier() == Qualifier.BELOW ? YieldBasis.UPPER_LIMIT : YieldBasis.ASSAY));
        }
        return byAssayRow(lot).or(() -> byInternalStandard(lot)).or(() -> byMoleRatios(lot));
    }

    /** By the assay rows of the lot: their mean where they agree; where they do not, the largest, as no more than an upper limit. */
    private Optional<Fraction> byAssayRow(Lot lot) {
        List<Fraction> rows = new ArrayList<>();
        for (Assay assay : run.assays()) {
            boolean massPercent =
                    assay.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent();
            if (massPercent
                    && assay.sample().equals(lot.label())
                    && forms.same(assay.substance(), lot.product())
                    && sight.sees(assay)) {
                assay.result()
                        .entered()
                        .filter(e -> e.qualifier() != Qualifier.NOT_DETECTED && e.value() > 0)
                        .flatMap(e -> inFormOf(
                                        lot,
                                        assay.substance(),
                                        calibrations
                                                .result("assay of lot " + lot.label(), assay, e)
                                                .over(100))
                                .map(w -> new Fraction(
                                        w,
                                        e.qualifier() == Qualifier.BELOW ? YieldBasis.UPPER_LIMIT : YieldBasis.ASSAY)))
                        .ifPresent(rows::add);
            }
        }
        return rows.size() < 2 ? rows.stream().findFirst() : Optional.of(pooled(rows));
    }

    private Fraction pooled(List<Fraction> rows) {
        List<MeasuredValue> results = rows.stream()
                .filter(r -> r.basis() == YieldBasis.ASSAY)
                .map(Fraction::value)
                .toList();
        PooledReadings readings = new PooledReadings(molarMasses.substances());
        boolean agree = results.size() == rows.size()
                && results.stream().allMatch(one -> results.stream().allMatch(other -> readings.agree(one, other)));
        MeasuredValue largest = rows.stream()
                .map(Fraction::value)
                .reduce((a, b) -> b.value() > a.value() ? b : a)
                .orElseThrow();
        return agree
                ? new Fraction(
                        results.stream()
                                .reduce(MeasuredValue::plus)
                                .orElseThrow()
                                .over(results.size()),
                        YieldBasis.ASSAY)
                : new Fraction(largest, YieldBasis.UPPER_LIMIT);
    }

    private Optional<Fraction> byInternalStandard(Lot lot) {
        for (NmrAssay assay : run.nmrAssays()) {
            OptionalDouble molarMass = molarMasses.of(assay.substance());
            if (!assay.sample().equals(lot.label())
                    || !forms.same(assay.substance(), lot.product())
                    || molarMass.isEmpty()) {
                continue;
            }
            Optional<MeasuredValue> fraction = new NmrPurity(readings, limits)
                    .fraction(assay, molarMass.getAsDouble())
                    .flatMap(w -> inFormOf(lot, assay.substance(), w));
            if (fraction.isPresent()) {
                return Optional.of(new Fraction(fraction.get(), YieldBasis.ASSAY));
            }
        }
        return Optional.empty();
    }

    private Optional<Fraction> byMoleRatios(Lot lot) {
        return new MoleRatios(run, readings, limits, molarMasses)
                .of(lot)
                .map(r -> new Fraction(r.fraction(), YieldBasis.MOLE_RATIO_UPPER_BOUND));
    }

    private record Fraction(MeasuredValue value, YieldBasis basis) {}
}
