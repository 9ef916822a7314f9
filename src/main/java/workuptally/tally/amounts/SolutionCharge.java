package workuptally.tally.amounts;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.material.Strength;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Place;

/**
 * Charges of a solution by volume: n = V·c, c by its titre where it was titrated, else by its label, else by its name ({@code n-BuLi 2.5 M in
 * hexanes}); V in mL, c in mol/L, n in mmol.
 */
final class SolutionCharge {
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final Substances substances;

    SolutionCharge(Readings readings, Limits limits, Substances substances) {
        this.readings = readings;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.substances = substances;
    }

    /** Where a strength was read. */
    private enum Source {
        TITRE,
        LABEL,
        NAME
    }

    /**
     * How strong the solution of a charge is.
     *
     * @param molesPerLitre mol/L
     */
    private record Concentration(double molesPerLitre, Source source, Place place) {}

    /** The strength that counts: the titre before the label, the label before the name. */
    private Optional<Concentration> concentration(Charge charge) {
        Optional<Entered> titre = charge.goods().titreMolesPerLitre().entered();
        Optional<Entered> label = charge.goods().molarityMolesPerLitre().entered();
        if (titre.isPresent() || label.isPresent()) {
            return titre.map(t -> new Concentration(t.value(), Source.TITRE, t.place()))
                    .or(() -> label.map(l -> new Concentration(l.value(), Source.LABEL, l.place())));
        }
        boolean told = !charge.goods().assayPercent().isBlank()
                || !charge.goods().molarityMolesPerLitre().isBlank();
        return told ? Optional.empty() : byName(charge);
    }

    /** By its name; a solution in water that the tables know is reckoned by its mass per cent and density instead. */
    private Optional<Concentration> byName(Charge charge) {
        boolean listed = substances
                .wash(charge.material())
                .filter(w -> w.concentration().massPercent().orElse(0) > 0)
                .isPresent();
        return listed
                ? Optional.empty()
                : substances
                        .material(charge.material(), charge.formula())
                        .main()
                        .strength()
                        .filter(strength -> strength.kind() == Strength.Kind.MOLES_PER_LITRE)
                        .flatMap(strength -> strength.value().stream().boxed().findFirst())
                        .map(value -> new Concentration(
                                value, Source.NAME, charge.row().at("Material")));
    }

    /** mol/L of a charge that is a solution; empty for any other. */
    OptionalDouble molesPerLitre(Charge charge) {
        return concentration(charge).stream()
                .mapToDouble(Concentration::molesPerLitre)
                .findFirst();
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
        Concentration strength = concentration(charge).orElseThrow();
        boolean titrated = strength.source() == Source.TITRE;
        MeasuredValue molarity = readings.enter(
                switch (strength.source()) {
                    case TITRE -> "titre of " + charge.material();
                    case LABEL -> "label molarity of " + charge.material();
                    case NAME -> "molarity of " + charge.material() + " by its name";
                },
                "mol/L",
                strength.molesPerLitre(),
                relativeUncertainty(charge, titrated) * strength.molesPerLitre(),
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
                        "n = V·c = %.4g mL × %.4g mol/L (%s)",
                        millilitres.value(),
                        strength.molesPerLitre(),
                        strength.source().name().toLowerCase(Locale.ROOT)));
    }

    private double relativeUncertainty(Charge charge, boolean titrated) {
        double stated = uncertainty.statedFraction(
                titrated ? charge.goods().titreUncertaintyPercent() : Field.NoNumber.BLANK, Limit.TITRE);
        return (titrated ? charge.goods().titreMolesPerLitre() : charge.goods().molarityMolesPerLitre())
                .entered()
                .map(strength -> InstrumentUncertainty.widenedBySpan(strength, stated))
                .orElse(stated);
    }

    private static OptionalDouble byLabel(Charge charge, MeasuredValue millilitres) {
        Optional<Entered> label = charge.goods().molarityMolesPerLitre().entered();
        return label.isPresent()
                ? OptionalDouble.of(millilitres.value() * label.get().value())
                : OptionalDouble.empty();
    }
}
