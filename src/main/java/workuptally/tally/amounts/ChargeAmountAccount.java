package workuptally.tally.amounts;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Formula;
import workuptally.material.Part;
import workuptally.material.State;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.measure.Rounding;
import workuptally.model.Amount;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field.Entered;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;

/**
 * Charges as amounts of substance: n = m·w/M for what was weighed, V·ρ·w/M for a neat liquid, V·c for a solution, with the titre before
 * the label. Units: m in g, V in mL, ρ in g/mL, M in g/mol, c in mol/L, n in mmol.
 */
public final class ChargeAmountAccount {
    private static final Rounding ROUNDING = Rounding.in(Locale.ROOT);

    private static final String CHARGES = "Charges";

    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final MolarMassAccount molarMasses;
    private final Substances substances;
    private final Omissions omissions;
    private final ChargeContent content;
    private final SolutionCharge solutions;

    public ChargeAmountAccount(
            Readings readings,
            Limits limits,
            MolarMassAccount molarMasses,
            Substances substances,
            Omissions omissions) {
        this.readings = readings;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.molarMasses = molarMasses;
        this.substances = substances;
        this.omissions = omissions;
        this.content = new ChargeContent(readings, limits, substances);
        this.solutions = new SolutionCharge(readings, limits, substances);
    }

    /** Every charge of a run; planned amounts stand in for actual ones only in a run that is only planned. */
    public List<ChargeAmount> of(Run run) {
        return of(run, isOnlyPlanned(run));
    }

    /** Every charge of a run as it was planned, whatever was weighed. */
    public List<ChargeAmount> planned(Run run) {
        return of(run, true);
    }

    /** Charges in equivalents are worked out last: they rest on the amount of the substrate. */
    private List<ChargeAmount> of(Run run, boolean planned) {
        Map<Charge, ChargeAmount> amounts = new IdentityHashMap<>();
        for (Charge charge : run.charges()) {
            if (!inEquivalents(charge, planned)) {
                amounts.put(charge, of(charge, planned, Optional.empty()));
            }
        }
        Optional<MeasuredValue> reference = OneEquivalent.of(run.charges().stream()
                .flatMap(c -> Optional.ofNullable(amounts.get(c)).stream())
                .toList());
        return run.charges().stream()
                .map(c -> amounts.containsKey(c) ? amounts.get(c) : of(c, planned, reference))
                .toList();
    }

    private static boolean inEquivalents(Charge charge, boolean planned) {
        return (planned ? charge.quantity().planned() : charge.quantity().actual())
                .filter(a -> a.dimension() == Dimension.EQUIVALENTS)
                .isPresent();
    }

    static boolean isOnlyPlanned(Run run) {
        return run.charges().stream().allMatch(c -> c.quantity().actual().isEmpty());
    }

    private ChargeAmount of(Charge charge, boolean planned, Optional<MeasuredValue> reference) {
        Optional<Amount> amount =
                planned ? charge.quantity().planned() : charge.quantity().actual();
        OptionalDouble molarMass = molarMass(charge);
        Optional<Entered> entered = amount.flatMap(a -> a.value().entered());
        Optional<MeasuredValue> stated = planned ? Optional.empty() : stated(charge);
        if (entered.isEmpty() && amount.isEmpty() && stated.isPresent()) {
            return byAmount(charge, planned, stated.get(), molarMass, "n as typed");
        }
        if (entered.isEmpty()) {
            boolean unreadableAmount =
                    amount.filter(a -> a.value().isUnreadable()).isPresent();
            omissions.add(
                    "amount of " + charge.material(),
                    unreadableAmount
                            ? "the amount cannot be read"
                            : "no " + (planned ? "planned" : "actual") + " amount",
                    charge.row().entry(planned ? "Planned amount" : "Actual amount", charge.material(), CHARGES));
            return unknown(charge, planned, molarMass);
        }
        Optional<String> unreadable = unreadable(charge);
        if (unreadable.isPresent()) {
            omissions.add(
                    "amount of " + charge.material(),
                    "its " + unreadable.get().toLowerCase(Locale.ROOT) + " cannot be read",
                    charge.row().entry(unreadable.get(), charge.material(), CHARGES));
            return unknown(charge, planned, molarMass);
        }
        MeasuredValue value = readings.enter(
                "amount of " + charge.material(),
                amount.get().dimension().unit(),
                entered.get().value(),
                uncertainty.amount(amount.get(), entered.get()),
                () -> entered.get().place().inWords());
        return switch (amount.get().dimension()) {
            case AMOUNT -> byAmount(charge, planned, value, molarMass, "n as entered");
            case EQUIVALENTS -> byEquivalents(charge, planned, value, reference, molarMass);
            case MASS -> byWeight(charge, planned, value, molarMass);
            case VOLUME -> byVolume(charge, planned, value, molarMass);
        };
    }

    /** The amount of substance typed beside the amount, known to half of its last digit. */
    private Optional<MeasuredValue> stated(Charge charge) {
        return charge.quantity()
                .statedMillimoles()
                .entered()
                .filter(n -> n.value() > 0)
                .map(n -> readings.enter(
                        "amount of substance of " + charge.material() + " as typed",
                        "mmol",
                        n.value(),
                        uncertainty.lastDigit(n),
                        () -> n.place().inWords()));
    }

    /**
     * By formula or as typed; where both are left out by the row of a listed liquid, or, of a charge that no theory rests on, of any
     * listed material: what gas and heat it gives is then known.
     */
    private OptionalDouble molarMass(Charge charge) {
        if (!charge.formula().isBlank() || !charge.molarMassGramsPerMole().isBlank()) {
            return molarMasses.of(charge.formula(), charge.molarMassGramsPerMole());
        }
        OptionalDouble ofLiquid = substances.liquid(charge.material()).isPresent()
                ? substances.molarMassGramsPerMole(charge.material())
                : OptionalDouble.empty();
        return ofLiquid.isPresent() || !charge.coefficient().isBlank() ? ofLiquid : listedMolarMass(charge);
    }

    private OptionalDouble listedMolarMass(Charge charge) {
        Part main = substances.material(charge.material(), charge.formula()).main();
        Optional<Formula> formula =
                main.state() == State.LISTED && main.choices().isEmpty() ? main.formula() : Optional.empty();
        return formula.isPresent()
                ? OptionalDouble.of(substances.molarMassGramsPerMole(formula.get()))
                : OptionalDouble.empty();
    }

    private static ChargeAmount unknown(Charge charge, boolean planned, OptionalDouble molarMass) {
        return new ChargeAmount(
                charge,
                planned,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                molarMass,
                OptionalDouble.empty(),
                "");
    }

    /** The entry that cannot be read and without which n would silently be another: blank has a meaning, unreadable has none. */
    private static Optional<String> unreadable(Charge charge) {
        if (charge.goods().assayPercent().isUnreadable()) {
            return Optional.of("Assay");
        }
        if (charge.goods().titreMolesPerLitre().isUnreadable()) {
            return Optional.of("Titre");
        }
        boolean noTitre = charge.goods().titreMolesPerLitre().isBlank();
        return noTitre && charge.goods().molarityMolesPerLitre().isUnreadable()
                ? Optional.of("Molarity")
                : Optional.empty();
    }

    private ChargeAmount byEquivalents(
            Charge charge,
            boolean planned,
            MeasuredValue equivalents,
            Optional<MeasuredValue> reference,
            OptionalDouble molarMass) {
        if (reference.isEmpty()) {
            omissions.add(
                    "amount of " + charge.material(),
                    "given in equivalents of a substrate whose amount is not known",
                    "amount of the substrate in Charges");
            return unknown(charge, planned, molarMass);
        }
        return byAmount(charge, planned, equivalents.times(reference.get()), molarMass, "n = equivalents·n(substrate)");
    }

    /** What has to be measured out for n: the volume V = n/c of a solution, else the mass m = n·M/w, and V = m/ρ of a liquid. */
    private ChargeAmount byAmount(
            Charge charge, boolean planned, MeasuredValue millimoles, OptionalDouble molarMass, String equation) {
        OptionalDouble strength = solutions.molesPerLitre(charge);
        Optional<MeasuredValue> mass;
        Optional<MeasuredValue> volume;
        if (strength.isPresent()) {
            MeasuredValue solution = millimoles.over(strength.getAsDouble());
            volume = Optional.of(solution);
            mass = content.density(charge).map(solution::times);
        } else {
            MeasuredValue fraction = content.assayFraction(charge);
            mass = molarMass.isPresent() && fraction.value() > 0
                    ? Optional.of(
                            millimoles.times(molarMass.getAsDouble() / 1000).over(fraction))
                    : Optional.empty();
            volume = mass.flatMap(m -> content.density(charge).map(m::over));
        }
        return new ChargeAmount(
                charge,
                planned,
                Optional.of(millimoles),
                OptionalDouble.empty(),
                mass,
                volume,
                molarMass,
                OptionalDouble.empty(),
                equation);
    }

    /** A weighed solution is taken by the volume that its density gives: what its strength is told in. */
    private ChargeAmount byWeight(Charge charge, boolean planned, MeasuredValue massGrams, OptionalDouble molarMass) {
        if (solutions.molesPerLitre(charge).isEmpty()
                || !charge.goods().assayPercent().isBlank()) {
            return byMass(charge, planned, massGrams, volumeOf(charge, planned, massGrams), molarMass);
        }
        Optional<MeasuredValue> density = content.density(charge);
        if (density.isPresent()) {
            return solutions.of(charge, planned, massGrams.over(density.get()), Optional.of(massGrams), molarMass);
        }
        omissions.add(
                "amount of " + charge.material(),
                "a solution was weighed, and its density is not known",
                charge.row().entry("Density", charge.material(), CHARGES));
        return new ChargeAmount(
                charge,
                planned,
                planned ? Optional.empty() : stated(charge),
                OptionalDouble.empty(),
                Optional.of(massGrams),
                Optional.empty(),
                molarMass,
                OptionalDouble.empty(),
                "");
    }

    private ChargeAmount byMass(
            Charge charge,
            boolean planned,
            MeasuredValue massGrams,
            Optional<MeasuredValue> volume,
            OptionalDouble molarMass) {
        Optional<MeasuredValue> amount = planned ? Optional.empty() : stated(charge);
        OptionalDouble asTyped = OptionalDouble.empty();
        String equation = amount.isPresent() ? "n as typed" : "";
        if (molarMass.isPresent()) {
            MeasuredValue assayFraction = content.assayFraction(charge);
            MeasuredValue pure = massGrams.times(assayFraction).times(1000);
            amount = Optional.of(pure.over(molarMass.getAsDouble()));
            Optional<Entered> typed = charge.molarMassGramsPerMole().entered();
            if (typed.isPresent()
                    && Math.abs(typed.get().value() / molarMass.getAsDouble() - 1)
                            > substances.value(Threshold.MOLAR_MASS_DIFFERS)) {
                asTyped = OptionalDouble.of(pure.value() / typed.get().value());
            }
            equation = "n = m·w/M = " + ROUNDING.toSignificant(massGrams.value(), 4) + " g × "
                    + ROUNDING.toSignificant(assayFraction.value(), 4) + " / "
                    + ROUNDING.toDecimals(molarMass.getAsDouble(), 3) + " g/mol";
        } else if (amount.isEmpty() && isStoichiometric(charge)) {
            omissions.add(
                    "amount of " + charge.material(),
                    "no molar mass",
                    charge.row().entry("Formula", charge.material(), CHARGES));
        }
        return new ChargeAmount(
                charge,
                planned,
                amount,
                OptionalDouble.empty(),
                Optional.of(massGrams),
                volume,
                molarMass,
                asTyped,
                equation);
    }

    private ChargeAmount byVolume(Charge charge, boolean planned, MeasuredValue millilitres, OptionalDouble molarMass) {
        Optional<MeasuredValue> mass = content.density(charge).map(millilitres::times);
        if (solutions.molesPerLitre(charge).isPresent()) {
            return solutions.of(charge, planned, millilitres, mass, molarMass);
        }
        return mass.isPresent()
                ? byMass(charge, planned, mass.get(), Optional.of(millilitres), molarMass)
                : ofUnknownDensity(charge, planned, millilitres, molarMass);
    }

    private ChargeAmount ofUnknownDensity(
            Charge charge, boolean planned, MeasuredValue millilitres, OptionalDouble molarMass) {
        Optional<MeasuredValue> amount = planned ? Optional.empty() : stated(charge);
        omissions.add(
                "mass of " + charge.material(),
                "charged by volume without a density",
                charge.row().entry("Density", charge.material(), CHARGES));
        return new ChargeAmount(
                charge,
                planned,
                amount,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(millilitres),
                molarMass,
                OptionalDouble.empty(),
                amount.isPresent() ? "n as typed" : "");
    }

    /** Volume of a weighed liquid whose density is entered; in a plan, by which it is measured out, the reference data will do too. */
    private Optional<MeasuredValue> volumeOf(Charge charge, boolean planned, MeasuredValue massGrams) {
        if (planned) {
            return content.density(charge).map(massGrams::over);
        }
        return charge.goods().densityGramsPerMillilitre().entered().map(d -> massGrams.over(d.value()));
    }

    private static boolean isStoichiometric(Charge charge) {
        return charge.coefficient().entered().isPresent();
    }
}
