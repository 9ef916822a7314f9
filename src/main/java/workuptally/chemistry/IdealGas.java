package workuptally.chemistry;

/**
 * Amount and volume of gas, pV = nRT. Holds within 1 % for CO2, H2 and N2 near room conditions.
 *
 * <p>Source: ideal gas law; at 20 °C and 101.325 kPa one mole fills 24.06 L.
 */
public final class IdealGas {
    /** Molar gas constant, kPa·L/(mol·K) = J/(mol·K). Source: CODATA 2018, 8.314 462 618, exact by the SI of 2019. */
    public static final double GAS_CONSTANT = 8.314462618;

    /** 0 °C in kelvin. Source: definition of the Celsius scale. */
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    private IdealGas() {}

    /**
     * Volume V = nRT/p.
     *
     * @param amountMoles n, mol, 0 or more
     * @param temperatureCelsius °C, above -273.15
     * @param pressureKilopascals kPa, above 0
     * @return L
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double volumeLitres(double amountMoles, double temperatureCelsius, double pressureKilopascals) {
        Require.notNegative(amountMoles, "amount");
        return amountMoles
                * GAS_CONSTANT
                * kelvin(temperatureCelsius)
                / Require.positive(pressureKilopascals, "pressure");
    }

    static double kelvin(double temperatureCelsius) {
        return Require.positive(temperatureCelsius + ZERO_CELSIUS_KELVIN, "temperature in kelvin");
    }
}
