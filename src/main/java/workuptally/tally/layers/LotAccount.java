package workuptally.tally.layers;

import java.util.ArrayList;
import java.util.List;
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
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.MolarMasses;
import workuptally.tally.amounts.MoleRatios;
import workuptally.tally.amounts.NetMass;
import workuptally.tally.amounts.NmrPurity;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.amounts.YieldBasis;

/**
 * Lots: net mass, product fraction and crude over theory.
 *
 * <p>The product fraction comes from the assay in Isolated, else from an assay row of the lot, else from an internal-standard NMR row,
 * else from mole ratios as w = M / (M + Σ rₛ·Mₛ), which is an upper bound on w since it misses what the spectrum does not show.
 */
public final class LotAccount {
    private final Run run;
    private final Readings readings;
    private final Limits limits;
    private final InstrumentUncertainty uncertainty;
    private final Calibrations calibrations;
    private final MolarMasses molarMasses;
    private final LayerGraph graph;
    private final Omissions omissions;

    public LotAccount(
            Run run,
            Readings readings,
            Limits limits,
            Calibrations calibrations,
            MolarMasses molarMasses,
            LayerGraph graph,
            Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.limits = limits;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.calibrations = calibrations;
        this.molarMasses = molarMasses;
        this.graph = graph;
        this.omissions = omissions;
    }

    public List<LotTally> of(Optional<Theory> theory) {
        List<LotTally> lots = new ArrayList<>();
        for (Lot lot : run.lots()) {
            lots.add(of(lot, theory));
        }
        return lots;
    }

    private LotTally of(Lot lot, Optional<Theory> theory) {
        String name = "lot " + lot.label();
        Optional<MeasuredValue> net =
                new NetMass(readings, uncertainty).of(name, lot.grossGrams(), lot.tareGrams(), lot.netGrams());
        if (net.isEmpty()) {
            String why = NetMass.whyMissing(lot.grossGrams(), lot.tareGrams(), lot.netGrams());
            omissions.add(
                    "mass of " + name,
                    why,
                    (why.startsWith("tare") ? "Tare" : "Gross and Tare") + " of " + name + " in Isolated");
        }
        Optional<Fraction> fraction = fraction(lot);
        YieldBasis basis = fraction.map(Fraction::basis).orElse(basisWithoutAssay(lot));
        Optional<MeasuredValue> pure = net.flatMap(n -> fraction.map(f -> n.times(f.value())));
        if (pure.isEmpty() && basis == YieldBasis.ASSAY_NOT_RECORDED) {
            pure = net;
        }
        Optional<MeasuredValue> theoryGrams = theory.flatMap(t -> t.products().stream()
                        .filter(p -> p.product().name().equalsIgnoreCase(lot.product()))
                        .findFirst())
                .map(ProductTheory::massGrams);
        Optional<MeasuredValue> overTheory = net.flatMap(
                n -> theoryGrams.filter(t -> t.value() > 0).map(t -> n.over(t).times(100)));
        return new LotTally(
                lot,
                net,
                fraction.map(Fraction::value),
                basis,
                pure,
                overTheory,
                !graph.descendsFromLot(lot.label()) && !followsCrude(lot));
    }

    /** A crop or purified lot that does not say where it came from was made from the crude of the same product, where there is one. */
    private boolean followsCrude(Lot lot) {
        boolean saysWhere = !lot.from().isEmpty() || graph.givenBy(lot.label()).isPresent();
        boolean isCrude = lot.stage().filter(s -> s != Lot.Stage.CRUDE).isEmpty();
        return !saysWhere
                && !isCrude
                && run.lots().stream()
                        .anyMatch(l -> l.product().equalsIgnoreCase(lot.product())
                                && l.stage().filter(s -> s == Lot.Stage.CRUDE).isPresent());
    }

    private static YieldBasis basisWithoutAssay(Lot lot) {
        return lot.stage().filter(s -> s == Lot.Stage.CRUDE).isPresent()
                        || lot.stage().isEmpty()
                ? YieldBasis.NONE
                : YieldBasis.ASSAY_NOT_RECORDED;
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

    private Optional<Fraction> byAssayRow(Lot lot) {
        for (Assay assay : run.assays()) {
            boolean massPercent =
                    assay.unit().filter(u -> u == Assay.Unit.MASS_PERCENT).isPresent();
            if (massPercent
                    && assay.sample().equals(lot.label())
                    && assay.substance().equalsIgnoreCase(lot.product())) {
                Optional<Entered> result =
                        assay.result().entered().filter(e -> e.qualifier() != Qualifier.NOT_DETECTED);
                if (result.isPresent()) {
                    return Optional.of(new Fraction(
                            calibrations
                                    .result("assay of lot " + lot.label(), assay, result.get())
                                    .over(100),
                            result.get().qualifier() == Qualifier.BELOW ? YieldBasis.UPPER_LIMIT : YieldBasis.ASSAY));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Fraction> byInternalStandard(Lot lot) {
        for (NmrAssay assay : run.nmrAssays()) {
            OptionalDouble molarMass = molarMasses.of(assay.substance());
            if (!assay.sample().equals(lot.label())
                    || !assay.substance().equalsIgnoreCase(lot.product())
                    || molarMass.isEmpty()) {
                continue;
            }
            Optional<MeasuredValue> fraction = new NmrPurity(readings, limits).fraction(assay, molarMass.getAsDouble());
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
