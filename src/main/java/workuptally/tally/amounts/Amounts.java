package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Amount;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.reference.Wash;

/**
 * Charges as amounts of substance: n = m·w/M for what was weighed, V·ρ·w/M for a neat liquid, V·c for a solution, with the titre before
 * the label. Units: m in g, V in mL, ρ in g/mL, M in g/mol, c in mol/L, n in mmol.
 */
public final class Amounts {
    /** Relative difference of a typed molar mass above which the figure as typed is shown beside; common practice. */
    static final double TYPED_MOLAR_MASS_DIFFERS = 0.001;

    private final Readings readings;
    private final Limits limits;
    private final InstrumentUncertainty uncertainty;
    private final MolarMasses molarMasses;
    private final Substances substances;
    private final Omissions omissions;

    public Amounts(
            Readings readings, Limits limits, MolarMasses molarMasses, Substances substances, Omissions omissions) {
        this.readings = readings;
        this.limits = limits;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.molarMasses = molarMasses;
        this.substances = substances;
        this.omissions = omissions;
    }

    /** Every charge of a run; planned amounts stand in for actual ones only in a run that is only planned. */
    public List<ChargeAmount> of(Run run) {
        List<ChargeAmount> amounts = new ArrayList<>();
        boolean planned = isOnlyPlanned(run);
        for (Charge charge : run.charges()) {
            amounts.add(of(charge, planned));
        }
        return amounts;
    }

    /** Every charge of a run as it was planned, whatever was weighed. */
    public List<ChargeAmount> planned(Run run) {
        return run.charges().stream().map(c -> of(c, true)).toList();
    }

    static boolean isOnlyPlanned(Run run) {
        return run.charges().stream().allMatch(c -> c.actual().isEmpty());
    }

    private ChargeAmount of(Charge charge, boolean planned) {
        Optional<Amount> amount = planned ? charge.planned() : charge.actual();
        OptionalDouble molarMass = molarMass(charge);
        Optional<Entered> entered = amount.flatMap(a -> a.value().entered());
        if (entered.isEmpty()) {
            boolean unreadableAmount =
                    amount.filter(a -> a.value().isUnreadable()).isPresent();
            omissions.add(
                    "amount of " + charge.material(),
                    unreadableAmount
                            ? "the amount cannot be read"
                            : "no " + (planned ? "planned" : "actual") + " amount",
                    (planned ? "Planned amount" : "Actual amount") + " in Charges");
            return unknown(charge, planned, molarMass);
        }
        Optional<String> unreadable = unreadable(charge);
        if (unreadable.isPresent()) {
            omissions.add(
                    "amount of " + charge.material(),
                    "its " + unreadable.get().toLowerCase(Locale.ROOT) + " cannot be read",
                    unreadable.get() + " of " + charge.material() + " in Charges");
            return unknown(charge, planned, molarMass);
        }
        MeasuredValue value = readings.enter(
                "amount of " + charge.material(),
                amount.get().dimension() == Dimension.MASS
                        ? "g"
                        : amount.get().dimension() == Dimension.VOLUME ? "mL" : "mmol",
                entered.get().value(),
                uncertainty.amount(amount.get(), entered.get()),
                () -> entered.get().place().inWords());
        return switch (amount.get().dimension()) {
            case AMOUNT -> byAmount(charge, planned, value, molarMass);
            case MASS -> byMass(charge, planned, value, volumeOf(charge, value), molarMass);
            case VOLUME -> byVolume(charge, planned, value, molarMass);
        };
    }

    /** By formula or as typed; of a listed liquid without either, by its row. */
    private OptionalDouble molarMass(Charge charge) {
        boolean leftOut =
                charge.formula().isBlank() && charge.molarMassGramsPerMole().isBlank();
        return leftOut && substances.liquid(charge.material()).isPresent()
                ? substances.molarMassGramsPerMole(charge.material())
                : molarMasses.of(charge.formula(), charge.molarMassGramsPerMole());
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
        if (charge.assayPercent().isUnreadable()) {
            return Optional.of("Assay");
        }
        if (charge.titreMolesPerLitre().isUnreadable()) {
            return Optional.of("Titre");
        }
        boolean noTitre = charge.titreMolesPerLitre().isBlank();
        return noTitre && charge.molarityMolesPerLitre().isUnreadable() ? Optional.of("Molarity") : Optional.empty();
    }

    private ChargeAmount byAmount(Charge charge, boolean planned, MeasuredValue millimoles, OptionalDouble molarMass) {
        MeasuredValue fraction = assayFraction(charge);
        Optional<MeasuredValue> mass = molarMass.isPresent() && fraction.value() > 0
                ? Optional.of(millimoles.times(molarMass.getAsDouble() / 1000).over(fraction))
                : Optional.empty();
        return new ChargeAmount(
                charge,
                planned,
                Optional.of(millimoles),
                OptionalDouble.empty(),
                mass,
                Optional.empty(),
                molarMass,
                OptionalDouble.empty(),
                "n as entered");
    }

    private ChargeAmount byMass(
            Charge charge,
            boolean planned,
            MeasuredValue massGrams,
            Optional<MeasuredValue> volume,
            OptionalDouble molarMass) {
        Optional<MeasuredValue> amount = Optional.empty();
        OptionalDouble asTyped = OptionalDouble.empty();
        String equation = "";
        if (molarMass.isPresent()) {
            MeasuredValue assayFraction = assayFraction(charge);
            MeasuredValue pure = massGrams.times(assayFraction).times(1000);
            amount = Optional.of(pure.over(molarMass.getAsDouble()));
            Optional<Entered> typed = charge.molarMassGramsPerMole().entered();
            if (typed.isPresent()
                    && Math.abs(typed.get().value() / molarMass.getAsDouble() - 1) > TYPED_MOLAR_MASS_DIFFERS) {
                asTyped = OptionalDouble.of(pure.value() / typed.get().value());
            }
            equation = String.format(
                    Locale.ROOT,
                    "n = m·w/M = %.4g g × %.4g / %.3f g/mol",
                    massGrams.value(),
                    assayFraction.value(),
                    molarMass.getAsDouble());
        } else if (isStoichiometric(charge)) {
            omissions.add(
                    "amount of " + charge.material(),
                    "no molar mass",
                    "Formula of " + charge.material() + " in Charges");
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
        Optional<MeasuredValue> mass = density(charge).map(millilitres::times);
        Optional<Entered> label = charge.molarityMolesPerLitre().entered();
        Optional<Entered> titre = charge.titreMolesPerLitre().entered();
        if (titre.isPresent()) {
            OptionalDouble byLabel = label.isPresent()
                    ? OptionalDouble.of(millilitres.value() * label.get().value())
                    : OptionalDouble.empty();
            return ofSolution(charge, planned, millilitres, titre.get(), byLabel, mass, molarMass);
        }
        if (label.isPresent()) {
            return ofSolution(charge, planned, millilitres, label.get(), OptionalDouble.empty(), mass, molarMass);
        }
        return mass.isPresent()
                ? byMass(charge, planned, mass.get(), Optional.of(millilitres), molarMass)
                : ofUnknownDensity(charge, planned, millilitres, molarMass);
    }

    /** n = V·c, c by its titre or its label. */
    private ChargeAmount ofSolution(
            Charge charge,
            boolean planned,
            MeasuredValue millilitres,
            Entered strength,
            OptionalDouble byLabel,
            Optional<MeasuredValue> mass,
            OptionalDouble molarMass) {
        boolean titrated = charge.titreMolesPerLitre().entered().isPresent();
        double relative = charge.titreUncertaintyPercent()
                        .entered()
                        .filter(u -> titrated)
                        .map(Entered::value)
                        .orElse(limits.value(Limit.TITRE))
                / 100;
        MeasuredValue molarity = readings.enter(
                (titrated ? "titre of " : "label molarity of ") + charge.material(),
                "mol/L",
                strength.value(),
                relative * strength.value(),
                () -> strength.place().inWords());
        return new ChargeAmount(
                charge,
                planned,
                Optional.of(millilitres.times(molarity)),
                byLabel,
                mass,
                Optional.of(millilitres),
                molarMass,
                OptionalDouble.empty(),
                String.format(
                        Locale.ROOT,
                        "n = V·c = %.4g mL × %.4g mol/L%s",
                        millilitres.value(),
                        strength.value(),
                        titrated ? " (titre)" : " (label)"));
    }

    private ChargeAmount ofUnknownDensity(
            Charge charge, boolean planned, MeasuredValue millilitres, OptionalDouble molarMass) {
        omissions.add(
                "mass of " + charge.material(),
                "charged by volume without a density",
                "Density of " + charge.material() + " in Charges");
        return new ChargeAmount(
                charge,
                planned,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(millilitres),
                molarMass,
                OptionalDouble.empty(),
                "");
    }

    /** Volume of a weighed liquid whose density is entered. */
    private static Optional<MeasuredValue> volumeOf(Charge charge, MeasuredValue massGrams) {
        return charge.densityGramsPerMillilitre()
                .entered()
                .filter(d -> d.value() > 0)
                .map(d -> massGrams.over(d.value()));
    }

    private Optional<MeasuredValue> density(Charge charge) {
        Field density = charge.densityGramsPerMillilitre();
        if (density.entered().isPresent()) {
            return Optional.of(readings.exact(density.entered().get().value()));
        }
        OptionalDouble known = density.isUnreadable() ? OptionalDouble.empty() : listedDensity(charge);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double uncertainty = substances.densityUncertaintyGramsPerMillilitre(charge.material());
        return Optional.of(
                uncertainty == 0
                        ? readings.exact(known.getAsDouble())
                        : readings.enter(
                                "density of " + charge.material() + " by the reference data",
                                "g/mL",
                                known.getAsDouble(),
                                uncertainty,
                                () -> "liquids.csv"));
    }

    /** By the name of the charge, else as a solution in water of the strength that its assay tells: {@code phosphoric acid}, 85 %. */
    private OptionalDouble listedDensity(Charge charge) {
        OptionalDouble byName = substances.densityGramsPerMillilitre(charge.material());
        Optional<Entered> assay = charge.assayPercent().entered();
        return byName.isPresent() || assay.isEmpty()
                ? byName
                : substances.densityGramsPerMillilitre(assay.get().value() + " % " + charge.material());
    }

    private MeasuredValue assayFraction(Charge charge) {
        Optional<Entered> assay = charge.assayPercent().entered();
        double relative =
                charge.assayUncertaintyPercent().entered().map(Entered::value).orElse(limits.value(Limit.CHARGE_ASSAY))
                        / 100;
        OptionalDouble byName = assay.isPresent() ? OptionalDouble.empty() : percentByName(charge);
        double fraction = assay.map(Entered::value).orElse(byName.orElse(100.0)) / 100;
        return readings.enter(
                "assay of " + charge.material()
                        + (assay.isPresent() ? "" : byName.isPresent() ? " by its name" : " taken as 100 %"),
                "1",
                fraction,
                relative * fraction,
                () -> charge.row().at("Assay").inWords());
    }

    /** Content by mass that a name tells, {@code 2 M NaOH}, where the charge is entered as the solute; empty for anything else. */
    private OptionalDouble percentByName(Charge charge) {
        return substances
                .wash(charge.material())
                .filter(w -> w.solute().isPresent() && w.massPercent().orElse(0) > 0)
                .filter(w -> charge.formula().isBlank() || sameFormula(w.formula(), charge.formula()))
                .map(Wash::massPercent)
                .orElse(OptionalDouble.empty());
    }

    private boolean sameFormula(String one, String other) {
        try {
            return substances
                    .formula(one)
                    .composition()
                    .equals(substances.formula(other).composition());
        } catch (IllegalFormulaException e) {
            return false;
        }
    }

    private static boolean isStoichiometric(Charge charge) {
        return charge.coefficient().entered().isPresent();
    }
}
