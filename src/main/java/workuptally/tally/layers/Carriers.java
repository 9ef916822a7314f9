package workuptally.tally.layers;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.reference.solutions.Solute;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/** The solvent in which a material is dissolved: as its name says it, else water where its strength shows that it is a solution. */
final class Carriers {
    /** An inorganic solute of less than this share by mass is a solution in water however it was measured (common practice). */
    private static final double WEIGHED_BELOW = 0.5;

    /** One that was measured by volume is a solution below this share: concentrated sulfuric acid, 95 to 98 %, is not counted as one. */
    private static final double POURED_BELOW = 0.9;

    private final Substances substances;

    Carriers(Substances substances) {
        this.substances = substances;
    }

    /** The solvent of a solution, {@code 2 M HCl in ether}. */
    Optional<String> of(String material) {
        return substances.material(material).carrierSolvent().map(IngredientAccount::inText);
    }

    /** The solvent of a charge. */
    Optional<String> of(ChargeAmount amount) {
        Charge charge = amount.charge();
        Optional<String> named = of(charge.material());
        if (named.isPresent()) {
            return named;
        }
        boolean strength = charge.goods().molarityMolesPerLitre().entered().isPresent()
                || charge.goods().titreMolesPerLitre().entered().isPresent();
        return strength && !holdsCarbon(charge.formula()) || isDiluteSolute(amount)
                ? Optional.of(IngredientAccount.WATER)
                : Optional.empty();
    }

    /** Bleach, hydrochloric acid or peroxide with its strength typed beside a name that says nothing of water. */
    private boolean isDiluteSolute(ChargeAmount amount) {
        Optional<Solute> solute = substances.solute(amount.charge().material()).filter(s -> !holdsCarbon(s.formula()));
        if (solute.isEmpty()
                || amount.massGrams().isEmpty()
                || amount.amountMillimoles().isEmpty()
                || amount.molarMassGramsPerMole().isEmpty()) {
            return false;
        }
        double grams = amount.massGrams().get().value();
        double share = amount.amountMillimoles().get().value()
                * amount.molarMassGramsPerMole().getAsDouble()
                / 1000
                / grams;
        boolean poured = amount.volumeMillilitres().map(MeasuredValue::value).orElse(0.0) > 0;
        return share < (poured ? POURED_BELOW : WEIGHED_BELOW);
    }

    /** Also true of a formula that cannot be read; a blank one holds none. */
    boolean holdsCarbon(String formula) {
        return !formula.isBlank()
                && substances.formulaIn(formula).map(f -> f.count("C") > 0).orElse(true);
    }
}
