package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.Substances;

/**
 * What single entries of a run must agree with that no balance is needed for: a cake with its agent, a molar mass with its formula, an amount
 * with its plan, a tare with the register, a weighing with the second one, an assay with its repeat, and a purified lot with its crude.
 */
final class EntryChecks {
    private static final double ANYTHING = 1e9;

    private static final int FINE_DECIMALS = 3;
    private static final double MANY_TIMES = 3;

    private final Substances substances;
    private final InstrumentUncertainty instrument;
    private final TareRegister register;

    EntryChecks(Book book, Substances substances, TareRegister register) {
        this.substances = substances;
        this.instrument = new InstrumentUncertainty(book.limits());
        this.register = register;
    }

    /** The checks of a run, cakes first, in order of the tables; those of which a part is missing are not there. */
    List<Check> of(Run run) {
        List<Check> all = new ArrayList<>();
        run.steps().forEach(s -> all.addAll(cake(s, run)));
        for (Charge charge : run.charges()) {
            formula(charge.material(), charge.formula(), charge.molarMassGramsPerMole())
                    .ifPresent(all::add);
            plan(charge).ifPresent(all::add);
        }
        for (Product product : run.products()) {
            formula(product.name(), product.formula(), product.molarMassGramsPerMole())
                    .ifPresent(all::add);
        }
        for (Layer layer : run.layers()) {
            tare("layer " + layer.label(), layer.vessel(), layer.weighing().tareGrams())
                    .ifPresent(all::add);
        }
        for (Lot lot : run.lots()) {
            tare("lot " + lot.label(), lot.vessel(), lot.weighing().tareGrams()).ifPresent(all::add);
            secondWeighing(lot).ifPresent(all::add);
            all.addAll(purified(lot, run));
        }
        for (int i = 0; i < run.assays().size(); i++) {
            for (int j = 0; j < i; j++) {
                repeated(run.assays().get(j), run.assays().get(i)).ifPresent(all::add);
            }
        }
        return all;
    }

    /** A wet cake weighs no less than its agents and not many times as much. */
    private List<Check> cake(Step step, Run run) {
        double dry = isOperation(step, Step.Operation.FILTER) || isOperation(step, Step.Operation.DRY)
                ? agentGrams(step, run, new LinkedHashSet<>())
                : 0;
        Optional<Layer> cake = step.gives().stream()
                .flatMap(label -> run.layer(label).stream())
                .filter(EntryChecks::isSolid)
                .findFirst();
        Optional<Entered> net = cake.flatMap(c -> c.weighing().netGrams().entered());
        if (dry <= 0 || net.isEmpty()) {
            return List.of();
        }
        double gained = net.get().value() - dry;
        String label = cake.get().label();
        return List.of(
                new Check(
                        "cake " + label + " against its agent",
                        gained,
                        -dry,
                        substances.value(Threshold.SUSPECT_CAKE_GAIN) * dry,
                        substances.value(Threshold.SUSPECT_CAKE_GAIN) / 4 * dry,
                        dry),
                new Check(
                        "agent on cake " + label,
                        gained,
                        -substances.value(Threshold.SUSPECT_CAKE_LOST) * dry,
                        ANYTHING,
                        substances.value(Threshold.SUSPECT_CAKE_LOST) / 2 * dry,
                        dry));
    }

    private static boolean isOperation(Step step, Step.Operation operation) {
        return step.operation().isPresent() && step.operation().get() == operation;
    }

    /** Drying agents of a step and of the drying steps right before it whose agent no filter has taken off, g. */
    private static double agentGrams(Step step, Run run, Set<Step> seen) {
        double grams = isOperation(step, Step.Operation.DRY)
                ? step.added()
                        .massGrams()
                        .entered()
                        .map(m -> m.value() * step.added().portionCount())
                        .orElse(0.0)
                : 0;
        for (Step before : run.steps()) {
            if (before == step || !isOperation(before, Step.Operation.DRY)) {
                continue;
            }
            boolean gave = before.gives().stream().anyMatch(step.from()::contains);
            boolean filtered = before.gives().stream()
                    .flatMap(label -> run.layer(label).stream())
                    .anyMatch(EntryChecks::isSolid);
            if (gave && !filtered && seen.add(before)) {
                grams += agentGrams(before, run, seen);
            }
        }
        return grams;
    }

    private static boolean isSolid(Layer layer) {
        return layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
    }

    private Optional<Check> formula(String name, String formula, Field typed) {
        OptionalDouble computed = molarMass(formula);
        Optional<Entered> entered = typed.entered().filter(e -> e.value() > 0);
        if (computed.isEmpty() || entered.isEmpty()) {
            return Optional.empty();
        }
        double allowed = substances.value(Threshold.MOLAR_MASS_WRONG) * computed.getAsDouble();
        return Optional.of(new Check(
                "molar mass of " + name + " against its formula",
                entered.get().value() - computed.getAsDouble(),
                -allowed,
                allowed,
                Math.max(1e-9, allowed / 2)));
    }

    /** Molar mass by a formula, g/mol; empty for one that is blank or cannot be read. */
    OptionalDouble molarMass(String formula) {
        return substances.molarMassIn(formula);
    }

    private Optional<Check> plan(Charge charge) {
        if (charge.quantity().planned().isEmpty()
                || charge.quantity().actual().isEmpty()
                || charge.quantity().planned().get().dimension()
                        != charge.quantity().actual().get().dimension()) {
            return Optional.empty();
        }
        Optional<Entered> planned =
                charge.quantity().planned().get().value().entered().filter(p -> p.value() > 0);
        return charge.quantity()
                .actual()
                .get()
                .value()
                .entered()
                .flatMap(actual -> planned.map(p -> new Check(
                        "amount of " + charge.material() + " against the plan",
                        actual.value() - p.value(),
                        -substances.value(Threshold.SUSPECT_PLAN_SCATTER) * p.value(),
                        substances.value(Threshold.SUSPECT_PLAN_SCATTER) * p.value(),
                        substances.value(Threshold.SUSPECT_PLAN_SCATTER) * p.value())));
    }

    /** A tare against the nearest one that the register has of its vessel; empty where it has none. */
    Optional<Check> tare(String what, String vessel, Field tare) {
        List<Entered> known = register.of(vessel);
        if (tare.entered().isEmpty() || known.isEmpty()) {
            return Optional.empty();
        }
        Entered typed = tare.entered().get();
        double nearest = known.stream()
                .mapToDouble(k -> typed.value() - k.value())
                .boxed()
                .min((a, b) -> Double.compare(Math.abs(a), Math.abs(b)))
                .orElseThrow();
        double tolerance = toleranceGrams(typed);
        return Optional.of(
                new Check("tare of " + what + " against the register", nearest, -tolerance, tolerance, tolerance));
    }

    /** How near two readings of one tare come, g. */
    double toleranceGrams(Entered tare) {
        return tare.decimals() >= FINE_DECIMALS
                ? substances.value(Threshold.TARE_FINE)
                : substances.value(Threshold.TARE_COARSE);
    }

    /** What was purified is no more than the one lot that it was made from, and hardly less pure. */
    private List<Check> purified(Lot lot, Run run) {
        List<Lot> from = run.lots().stream()
                .filter(l -> lot.from().contains(l.label()) && l != lot)
                .toList();
        List<Check> checks = new ArrayList<>();
        if (lot.stage().filter(s -> s == Lot.Stage.PURIFIED).isEmpty() || from.size() != 1) {
            return checks;
        }
        Lot crude = from.get(0);
        OptionalDouble net = netGrams(lot);
        OptionalDouble before = netGrams(crude);
        if (net.isPresent() && before.isPresent() && before.getAsDouble() > 0) {
            checks.add(new Check(
                    "mass of lot " + lot.label() + " against lot " + crude.label(),
                    net.getAsDouble() - before.getAsDouble(),
                    -before.getAsDouble(),
                    substances.value(Threshold.SUSPECT_WET_LOT) * before.getAsDouble(),
                    substances.value(Threshold.SUSPECT_WET_LOT) * before.getAsDouble(),
                    before.getAsDouble()));
        }
        Optional<Entered> assay = lot.assayPercent().entered();
        Optional<Entered> crudeAssay = crude.assayPercent().entered();
        if (assay.isPresent() && crudeAssay.isPresent()) {
            checks.add(new Check(
                    "purity of lot " + lot.label() + " against lot " + crude.label(),
                    assay.get().value() - crudeAssay.get().value(),
                    -substances.value(Threshold.SUSPECT_LESS_PURE),
                    100,
                    substances.value(Threshold.SUSPECT_LESS_PURE) / 3,
                    100));
        }
        return checks;
    }

    /** Gross less tare, else the net entered, g; empty where neither is there. */
    static OptionalDouble netGrams(Lot lot) {
        Optional<Entered> gross = lot.weighing().grossGrams().entered();
        Optional<Entered> tare = lot.weighing().tareGrams().entered();
        Optional<Double> weighed = gross.flatMap(g -> tare.map(t -> g.value() - t.value()));
        return weighed.or(() -> lot.weighing().netGrams().entered().map(Entered::value))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private Optional<Check> secondWeighing(Lot lot) {
        Optional<Entered> second = lot.weighing().secondGrossGrams().entered();
        Optional<Entered> gross = lot.weighing().grossGrams().entered();
        Optional<Entered> tare = lot.weighing().tareGrams().entered();
        if (second.isEmpty() || gross.isEmpty() || tare.isEmpty()) {
            return Optional.empty();
        }
        double u = instrument.massGrams(gross.get());
        // what dries between two weighings is the rule's own subject; a slip is far beyond it
        double allowed = MANY_TIMES * u
                + substances.value(Threshold.CONSTANT_MASS)
                        * MANY_TIMES
                        * Math.abs(second.get().value() - tare.get().value());
        return Optional.of(new Check(
                "second weighing of lot " + lot.label(),
                gross.get().value() - second.get().value(),
                -allowed,
                allowed,
                Math.max(u, allowed / MANY_TIMES)));
    }

    private Optional<Check> repeated(Assay one, Assay other) {
        boolean same = one.sample().equals(other.sample())
                && one.isOf(other.substance())
                && one.unit().isPresent()
                && one.unit().equals(other.unit());
        Optional<Entered> first = one.result().entered().filter(EntryChecks::isResult);
        Optional<Entered> second = other.result().entered().filter(EntryChecks::isResult);
        if (!same || first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        double u = Math.hypot(
                instrument.assayFraction(one, first.get()) * first.get().value(),
                instrument.assayFraction(other, second.get()) * second.get().value());
        return Optional.of(new Check(
                "repeated assay of " + one.substance() + " in " + one.sample(),
                first.get().value() - second.get().value(),
                -u,
                u,
                Math.max(1e-9, u)));
    }

    private static boolean isResult(Entered entered) {
        return entered.qualifier() != Qualifier.BELOW
                && entered.qualifier() != Qualifier.ABOVE
                && entered.qualifier() != Qualifier.NOT_DETECTED
                && entered.value() > 0;
    }
}
