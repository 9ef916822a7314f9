package workuptally.chemistry;

/** Estimates of product lost with evaporating solvent. Upper-level guesses, good to a factor of three. */
public final class Volatility {
    /** Entropy of vaporisation at the boiling point, J/(mol·K). Source: Trouton's rule, memory; alcohols and acids lie up to 25 % above. */
    public static final double TROUTON = 88;

    /** Normal pressure, kPa. Source: definition of the standard atmosphere. */
    public static final double NORMAL_PRESSURE_KILOPASCALS = 101.325;

    private Volatility() {}

    /**
     * Vapour pressure guessed from the normal boiling point: ln(p/101.325 kPa) = (ΔS/R)·(1 − Tb/T).
     *
     * <p>Holds within a factor of two or three for a liquid that does not associate, well below its boiling point. Source: Clausius and
     * Clapeyron with Trouton's rule, textbook.
     *
     * @param boilingPointCelsius normal boiling point, °C
     * @param temperatureCelsius °C
     * @return kPa
     * @throws IllegalArgumentException if a temperature is at or below absolute zero
     */
    public static double vapourPressureKilopascals(double boilingPointCelsius, double temperatureCelsius) {
        double ratio = IdealGas.kelvin(boilingPointCelsius) / IdealGas.kelvin(temperatureCelsius);
        return NORMAL_PRESSURE_KILOPASCALS * Math.exp(TROUTON / IdealGas.GAS_CONSTANT * (1 - ratio));
    }

    /**
     * Product carried off with evaporating solvent, n(lost) = n(solvent)·x·p(product)/p(solvent) for a product at mole fraction x.
     *
     * <p>Raoult's law for both, x taken as constant. Source: Raoult, textbook.
     *
     * @param solventMoles solvent evaporated, mol, 0 or more
     * @param productMoleFraction mean mole fraction of product in the liquid, 0 to 1
     * @param productKilopascals vapour pressure of the product at the bath temperature, kPa
     * @param solventKilopascals vapour pressure of the solvent there, kPa, above 0
     * @return mol
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double amountLostMoles(
            double solventMoles, double productMoleFraction, double productKilopascals, double solventKilopascals) {
        Require.notNegative(solventMoles, "solvent");
        Require.notNegative(productKilopascals, "vapour pressure of the product");
        Require.positive(solventKilopascals, "vapour pressure of the solvent");
        if (!(productMoleFraction >= 0 && productMoleFraction <= 1)) {
            throw new IllegalArgumentException("mole fraction " + productMoleFraction);
        }
        return solventMoles * productMoleFraction * productKilopascals / solventKilopascals;
    }
}
