package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.chemistry.Contraction;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.measure.MeasuredValue;
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
import workuptally.model.Transfer;
import workuptally.reference.Threshold;
import workuptally.tally.RunBalances;
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/**
 * Everything in which entries of a run must agree: units found and charged of each skeleton, total mass, mass against volume and density,
 * volumes into and out of a contact, tares against the register, a second weighing, a molar mass against its formula, an amount against its
 * plan, a layer's mass against what was entered for its transfer, and repeated assays.
 */
final class Checks {
    /** A side on which nothing is too far. */
    private static final double ANYTHING = 1e9;

    /** Lost on glass at bench scale without an explanation, % (common practice). */
    private static final double TRANSFER_LOSS_PERCENT = 2;

    /** Share of an organic solvent that has been seen to go into the air; missing mass is weak evidence (common practice). */
    private static final double MOST_EVAPORATED = 0.6;

    /** Share of what went in that volumes and densities of solvents leave open beside their stated uncertainty (common practice). */
    private static final double MASS_LEFT_OPEN = 0.002;

    /** Scatter of amounts about their plan (common practice). */
    private static final double PLAN_SCATTER = 0.15;

    /** Volume of a phase is estimated no better than this (common practice). */
    private static final double VOLUME_LEFT_OPEN = 0.01;

    /** Mass of a phase is estimated no better than this, beside solutes (common practice). */
    private static final double PHASE_LEFT_OPEN = 0.2;

    /** A cake holds up to so many times its agent of water and solution, and loses little of it (common practice). */
    private static final double CAKE_GAIN = 2;

    private static final double CAKE_LOST = 0.1;

    private static final int FINE_DECIMALS = 3;
    private static final double MANY_TIMES = 3;

    private final Substances substances;
    private final InstrumentUncertainty instrument;
    private final TareRegister register;
    private final Map<String, List<Transfer>> transfers;

    Checks(Book book, Substances substances, TareRegister register) {
        this.substances = substances;
        this.instrument = new InstrumentUncertainty(book.limits());
        this.register = register;
        this.transfers = book.transfers().stream()
                .filter(t -> t.layers().size() == 1)
                .collect(Collectors.groupingBy(Transfer::run));
    }

    /** The checks of a run by their names, in a fixed order; those of which a part is missing are not there. */
    Map<String, Check> of(RunBalances balances) {
        Map<String, Check> checks = new LinkedHashMap<>();
        List<Check> all = new ArrayList<>();
        balances.closures().forEach(c -> all.add(closure(c)));
        balances.massBalance().ifPresent(m -> all.add(totalMass(m)));
        balances.identities().forEach(i -> density(i, balances).ifPresent(all::add));
        double solutes = solutesGrams(balances);
        for (ContactMixture contact : balances.contacts()) {
            volumes(contact).ifPresent(all::add);
            ofPhase(contact.step().givesAqueous(), contact.aqueousGrams(), solutes, balances)
                    .ifPresent(all::add);
            ofPhase(contact.step().givesOrganic(), contact.organicGrams(), solutes, balances)
                    .ifPresent(all::add);
        }
        ofRows(balances.run(), all);
        for (Transfer transfer : transfers.getOrDefault(balances.run().id(), List.of())) {
            transferred(transfer, balances.layers()).ifPresent(all::add);
        }
        all.stream().filter(c -> Double.isFinite(c.residual())).forEach(c -> checks.putIfAbsent(c.name(), c));
        return checks;
    }

    private static Check closure(Closure closure) {
        double charged = closure.chargedMillimoles().value();
        // a portion that nobody assayed can hold all that is missing, so that a gap says nothing of the entries
        boolean unassayed = closure.candidates().stream().anyMatch(Closure.Candidate::keptWithoutAssay);
        double allowed = unassayed
                ? ANYTHING
                : Math.min(ANYTHING, Math.max(TRANSFER_LOSS_PERCENT, closure.candidatesAtMostPercent()));
        return new Check(
                "closure on " + closure.skeleton(),
                charged * (closure.percent().value() / 100 - 1),
                -allowed / 100 * charged,
                0,
                Math.max(1e-9, closure.percent().standardUncertainty() / 100 * charged),
                charged);
    }

    private static Check totalMass(MassBalance balance) {
        MeasuredValue gap = balance.gapGrams();
        return new Check(
                "total mass",
                gap.value(),
                0,
                balance.complete()
                        ? balance.gasGrams()
                                + Math.max(
                                        balance.evaporationAllowanceGrams(),
                                        MOST_EVAPORATED * balance.organicSolventGrams())
                        : ANYTHING,
                Math.max(
                        1e-9,
                        Math.hypot(
                                gap.standardUncertainty(),
                                MASS_LEFT_OPEN * balance.inGrams().value())));
    }

    private Optional<Check> density(LayerIdentity identity, RunBalances balances) {
        LayerTally layer = balances.layers().stream()
                .filter(l -> l.label().equals(identity.label()))
                .findFirst()
                .orElseThrow();
        if (identity.densityGramsPerMillilitre().isEmpty()) {
            return Optional.empty();
        }
        double millilitres = layer.volumeMillilitres().orElseThrow().value();
        double grams = layer.massGrams().orElseThrow().value();
        double tolerance = substances.value(Threshold.SMALL_VOLUME_TOLERANCE);
        LayerIdentity.Expected expected = identity.expectedAsRecorded();
        double low = expected.lowGramsPerMillilitre() * (1 - tolerance);
        double high = expected.highGramsPerMillilitre() * (1 + tolerance);
        double middle = (low + high) / 2;
        return Optional.of(new Check(
                "density of layer " + identity.label(),
                grams - middle * millilitres,
                (low - middle) * millilitres,
                (high - middle) * millilitres,
                // of the residual, not of the quotient: a volume that is far too small says no less for that
                Math.hypot(
                        layer.massGrams().orElseThrow().standardUncertainty(),
                        middle * layer.volumeMillilitres().orElseThrow().standardUncertainty()),
                middle * millilitres));
    }

    /** Charges that are no solvent, g: nobody says in which phase they are. */
    private double solutesGrams(RunBalances balances) {
        return balances.massBalance().stream()
                .flatMap(m -> m.lines().stream())
                .filter(l -> l.side() == MassBalance.Side.IN
                        && l.category().equals("charge")
                        && !substances.isOrganicSolvent(l.label()))
                .mapToDouble(l -> l.grams().value())
                .sum();
    }

    /** The one layer of a phase against what the contact must have put there. */
    private Optional<Check> ofPhase(List<String> labels, double grams, double solutes, RunBalances balances) {
        if (labels.size() != 1 || grams <= 0) {
            return Optional.empty();
        }
        return balances.layers().stream()
                .filter(l -> l.label().equals(labels.get(0)) && l.entry().isPresent())
                .findFirst()
                .flatMap(LayerTally::massGrams)
                .map(mass -> new Check(
                        "mass of layer " + labels.get(0) + " against what went in",
                        mass.value() - grams,
                        -PHASE_LEFT_OPEN * grams,
                        PHASE_LEFT_OPEN * grams + solutes,
                        1 + PHASE_LEFT_OPEN / 2 * grams,
                        grams));
    }

    /** A wet cake weighs no less than its agent and not many times as much. */
    private static Optional<Check> cake(Step step, Run run) {
        Optional<Entered> agent = step.massGrams().entered().filter(m -> m.value() > 0);
        if (step.operation().filter(o -> o == Step.Operation.DRY).isEmpty() || agent.isEmpty()) {
            return Optional.empty();
        }
        double dry = agent.get().value() * step.portionCount();
        return step.givesOther().stream()
                .flatMap(label -> run.layer(label).stream())
                .filter(l -> l.phase().filter(p -> p == Layer.Phase.SOLID).isPresent())
                .findFirst()
                .flatMap(l -> l.netGrams()
                        .entered()
                        .map(net -> new Check(
                                "cake " + l.label() + " against its agent",
                                net.value() - dry,
                                -CAKE_LOST * dry,
                                CAKE_GAIN * dry,
                                CAKE_GAIN / 4 * dry,
                                dry)));
    }

    private static Optional<Check> volumes(ContactMixture contact) {
        if (contact.outMillilitres().isEmpty() || contact.inMillilitres() <= 0) {
            return Optional.empty();
        }
        double in = contact.inMillilitres();
        return Optional.of(new Check(
                "volumes of step " + contact.step().number(),
                contact.outMillilitres().getAsDouble() - in,
                -Contraction.MOST_SHRINKAGE_PERCENT / 100 * in,
                Contraction.MOST_GROWTH_PERCENT / 100 * in,
                1 + VOLUME_LEFT_OPEN * in));
    }

    private void ofRows(Run run, List<Check> all) {
        run.steps().forEach(s -> cake(s, run).ifPresent(all::add));
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
            tare("layer " + layer.label(), layer.vessel(), layer.tareGrams()).ifPresent(all::add);
        }
        for (Lot lot : run.lots()) {
            tare("lot " + lot.label(), lot.vessel(), lot.tareGrams()).ifPresent(all::add);
            secondWeighing(lot).ifPresent(all::add);
        }
        for (int i = 0; i < run.assays().size(); i++) {
            for (int j = 0; j < i; j++) {
                repeated(run.assays().get(j), run.assays().get(i)).ifPresent(all::add);
            }
        }
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
        if (formula.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(substances.molarMassGramsPerMole(substances.formula(formula)));
        } catch (IllegalFormulaException e) {
            return OptionalDouble.empty();
        }
    }

    private static Optional<Check> plan(Charge charge) {
        if (charge.planned().isEmpty()
                || charge.actual().isEmpty()
                || charge.planned().get().dimension() != charge.actual().get().dimension()) {
            return Optional.empty();
        }
        Optional<Entered> planned = charge.planned().get().value().entered().filter(p -> p.value() > 0);
        return charge.actual()
                .get()
                .value()
                .entered()
                .flatMap(actual -> planned.map(p -> new Check(
                        "amount of " + charge.material() + " against the plan",
                        actual.value() - p.value(),
                        -PLAN_SCATTER * p.value(),
                        PLAN_SCATTER * p.value(),
                        PLAN_SCATTER * p.value())));
    }

    private Optional<Check> tare(String what, String vessel, Field tare) {
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

    private Optional<Check> secondWeighing(Lot lot) {
        Optional<Entered> second = lot.secondWeighingGrams().entered();
        Optional<Entered> gross = lot.grossGrams().entered();
        Optional<Entered> tare = lot.tareGrams().entered();
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
                && one.substance().equalsIgnoreCase(other.substance())
                && one.unit().isPresent()
                && one.unit().equals(other.unit());
        Optional<Entered> first = one.result().entered().filter(Checks::isResult);
        Optional<Entered> second = other.result().entered().filter(Checks::isResult);
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

    private Optional<Check> transferred(Transfer transfer, List<LayerTally> layers) {
        Optional<Entered> entered = transfer.massGrams().entered().filter(m -> m.value() > 0);
        return entered.flatMap(amount -> layers.stream()
                .filter(l -> l.label().equals(transfer.layers().get(0)))
                .findFirst()
                .flatMap(LayerTally::massGrams)
                .map(mass -> {
                    double allowed = Math.max(
                            substances.value(Threshold.PROPOSAL_AMOUNT_LEAST),
                            substances.value(Threshold.PROPOSAL_AMOUNT_RELATIVE) * mass.value());
                    return new Check(
                            "mass of layer " + transfer.layers().get(0) + " against transfer " + transfer.id(),
                            mass.value() - amount.value(),
                            -allowed,
                            allowed,
                            Math.max(allowed, mass.standardUncertainty()));
                }));
    }
}
