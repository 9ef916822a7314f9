package workuptally.tally.amounts;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;

/** Charges of a solution by volume: n = V·c, c by its titre where it was titrated, else by its label; V in mL, c in mol/L, n in mmol. */
final class SolutionCharge {
    private final Readings readings;
    private final Limits limits;

    SolutionCharge(Readings readings, Limits limits) {
        this.readings = readings;
        this.limits = limits;
    }

    /** The strength that counts: the titre before the label, mol/L. */
    static Optional<Entered> strength(Charge charge) {
        return charge.titreMolesPerLitre()
                .entered()
                .or(() -> charge.molarityMolesPerLitre().entered());
    }

    /** True for a charge whose titre or label says how strong it is. */
    static boolean hasStrength(Charge charge) {
        return strength(charge).isPresent();
    }

    /**
     * The amount of a charge that has a strength; where it was titrated, beside what its label would have given.
     *
     * @param mass mass of that volume, g, if the density is known
     */
    ChargeAmount of(
            Charge charge,
            boolean planned,
            MeasuredValue millilitres,
            Optional<MeasuredValue> mass,
            OptionalDouble molarMass) {
        Entered strength = strength(charge).orElseThrow();
        boolean titrated = charge.titreMolesPerLitre().entered().isPresent();
        MeasuredValue molarity = readings.enter(
                (titrated ? "titre of " : "label molarity of ") + charge.material(),
                "mol/L",
                strength.value(),
                relativeUncertainty(charge, titrated) * strength.value(),
                () -> strength.place().inWords());
        return new ChargeAmount(
                charge,
                planned,
                Optional.of(millilitres.times(molarity)),
                titrated ? byLabel(charge, millilitres) : OptionalDouble.empty(),
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

    private double relativeUncertainty(Charge charge, boolean titrated) {
        return charge.titreUncertaintyPercent()
                        .entered()
                        .filter(u -> titrated)
                        .map(Entered::value)
                        .orElse(limits.value(Limit.TITRE))
                / 100;
    }

    private static OptionalDouble byLabel(Charge charge, MeasuredValue millilitres) {
        Optional<Entered> label = charge.molarityMolesPerLitre().entered();
        return label.isPresent()
                ? OptionalDouble.of(millilitres.value() * label.get().value())
                : OptionalDouble.empty();
    }
}
