package workuptally.tally.amounts;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.chemistry.Formula;
import workuptally.material.Strength;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.measure.StandardUncertainty;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;

/** What a charge holds: its density and its content by mass, as typed, by the reference data or by its name. */
final class ChargeContent {
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final Substances substances;

    ChargeContent(Readings readings, Limits limits, Substances substances) {
        this.readings = readings;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.substances = substances;
    }

    /** Density of what was charged: as typed, else by the reference data, g/mL. */
    Optional<MeasuredValue> density(Charge charge) {
        Field density = charge.goods().densityGramsPerMillilitre();
        if (density.entered().isPresent()) {
            return Optional.of(typedDensity(charge, density.entered().get()));
        }
        OptionalDouble known = density.isUnreadable() ? OptionalDouble.empty() : listedDensity(charge);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double listed = substances.densityUncertaintyGramsPerMillilitre(charge.material());
        return Optional.of(
                listed == 0
                        ? readings.exact(known.getAsDouble())
                        : readings.enter(
                                "density of " + charge.material() + " by the reference data",
                                "g/mL",
                                known.getAsDouble(),
                                listed,
                                () -> "liquids.csv"));
    }

    /** Exact, but for what was typed with it: {@code 0.91 ± 0.02}. */
    private MeasuredValue typedDensity(Charge charge, Entered density) {
        return density.halfWidth() == 0
                ? readings.exact(density.value())
                : readings.enter(
                        "density of " + charge.material(),
                        "g/mL",
                        density.value(),
                        StandardUncertainty.rectangular(density.halfWidth()),
                        () -> density.place().inWords());
    }

    /** By the name of the charge, else as a solution in water of the strength that its assay tells: {@code phosphoric acid}, 85 %. */
    private OptionalDouble listedDensity(Charge charge) {
        OptionalDouble byName = substances.densityGramsPerMillilitre(charge.material());
        Optional<Entered> assay = charge.goods().assayPercent().entered();
        return byName.isPresent() || assay.isEmpty()
                ? byName
                : substances.densityGramsPerMillilitre(assay.get().value() + " % " + charge.material());
    }

    /** Content by mass of what was charged, as a fraction: by assay, else by its name, else taken as pure. */
    MeasuredValue assayFraction(Charge charge) {
        Optional<Entered> assay = charge.goods().assayPercent().entered();
        double stated = uncertainty.statedFraction(charge.goods().assayUncertaintyPercent(), Limit.CHARGE_ASSAY);
        double relative =
                assay.map(a -> InstrumentUncertainty.widenedBySpan(a, stated)).orElse(stated);
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

    /**
     * Content by mass that a name tells: {@code 2 M NaOH}, where the charge is entered as the solute, or {@code sodium hydride 60 %};
     * empty for anything else.
     */
    private OptionalDouble percentByName(Charge charge) {
        OptionalDouble solution = substances
                .wash(charge.material())
                .filter(w -> w.solute().isPresent()
                        && w.concentration().massPercent().orElse(0) > 0)
                .filter(w -> charge.formula().isBlank() || sameFormula(w.formula(), charge.formula()))
                .map(w -> w.concentration().massPercent())
                .orElse(OptionalDouble.empty());
        return solution.isPresent()
                ? solution
                : substances
                        .material(charge.material(), charge.formula())
                        .main()
                        .strength()
                        .filter(strength -> strength.kind() == Strength.Kind.MASS_PERCENT)
                        .map(Strength::value)
                        .orElse(OptionalDouble.empty());
    }

    private boolean sameFormula(String one, String other) {
        Optional<Map<String, Double>> first = substances.formulaIn(one).map(Formula::composition);
        return first.isPresent() && first.equals(substances.formulaIn(other).map(Formula::composition));
    }
}
