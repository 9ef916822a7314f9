package workuptally.book;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Units of the tables with their exact decimal factors. Each factor is by definition of the prefix; a litre is a cubic decimetre. */
enum Unit {
    MICROGRAM("µg", Quantity.MASS, -6, "ug", "μg", "mcg"),
    MILLIGRAM("mg", Quantity.MASS, -3),
    GRAM("g", Quantity.MASS, 0, "gram", "grams"),
    KILOGRAM("kg", Quantity.MASS, 3),
    MICROLITRE("µL", Quantity.VOLUME, -3, "ul", "μl"),
    MILLILITRE("mL", Quantity.VOLUME, 0, "cm3", "cm³", "ccm", "cc"),
    LITRE("L", Quantity.VOLUME, 3, "litre", "liter", "litres", "liters"),
    MICROMOLE("µmol", Quantity.AMOUNT, -3, "umol", "μmol"),
    MILLIMOLE("mmol", Quantity.AMOUNT, 0),
    MOLE("mol", Quantity.AMOUNT, 3),
    EQUIVALENT(
            "equiv",
            Quantity.EQUIVALENTS,
            0,
            "eq",
            "eq.",
            "equiv.",
            "equivalent",
            "equivalents",
            "äq",
            "äq.",
            "äquiv",
            "äquiv.",
            "éq",
            "éq.",
            "équiv",
            "équiv."),
    MOLE_PERCENT("mol %", Quantity.EQUIVALENTS, -2, "mol-%", "mole%"),
    MICROGRAM_PER_MILLILITRE("µg/mL", Quantity.MASS_PER_VOLUME, -3, "ug/ml", "μg/ml", "mg/l"),
    MILLIGRAM_PER_MILLILITRE("mg/mL", Quantity.MASS_PER_VOLUME, 0, "g/l", "kg/m3", "kg/m³"),
    GRAM_PER_MILLILITRE("g/mL", Quantity.MASS_PER_VOLUME, 3, "g/cm3", "g/cm³", "kg/l"),
    MILLIMOLE_PER_LITRE("mmol/L", Quantity.CONCENTRATION, -3),
    MOLE_PER_LITRE("mol/L", Quantity.CONCENTRATION, 0, "mmol/ml", "mol/dm3", "mol/dm³"),
    GRAM_PER_MOLE("g/mol", Quantity.MOLAR_MASS, 0, "mg/mmol"),
    KILOGRAM_PER_MOLE("kg/mol", Quantity.MOLAR_MASS, 3),
    PERCENT("%", Quantity.PERCENT, 0, "percent"),
    MASS_PERCENT("% w/w", Quantity.PERCENT, 0, "wt%", "%wt", "w/w%", "mass%", "%(w/w)", "m%", "%m/m"),
    CELSIUS("°C", Quantity.TEMPERATURE, 0, "ºc", "degc", "℃"),
    KILOPASCAL("kPa", Quantity.PRESSURE, 0),
    HECTOPASCAL("hPa", Quantity.PRESSURE, -1, "mbar"),
    PASCAL("Pa", Quantity.PRESSURE, -3),
    BAR("bar", Quantity.PRESSURE, 2),
    DAY("d", Quantity.TIME, 0, "day", "days"),
    ONE("", Quantity.PURE, 0);

    private static final Map<String, Unit> BY_WORD = words();

    private final String symbol;
    private final Quantity quantity;
    private final int powerOfTen;
    private final List<String> otherWords;

    Unit(String symbol, Quantity quantity, int powerOfTen, String... otherWords) {
        this.symbol = symbol;
        this.quantity = quantity;
        this.powerOfTen = powerOfTen;
        this.otherWords = List.of(otherWords);
    }

    private static Map<String, Unit> words() {
        Map<String, Unit> map = new HashMap<>();
        for (Unit unit : values()) {
            if (unit != ONE) {
                map.put(key(unit.symbol), unit);
                unit.otherWords.forEach(word -> map.put(key(word), unit));
            }
        }
        return Map.copyOf(map);
    }

    private static String key(String word) {
        return word.replace(" ", "").toLowerCase(Locale.ROOT);
    }

    /**
     * The unit a text names. Case matters only where it tells units apart: {@code M} and {@code mM} are concentrations, {@code m} is no
     * unit here.
     */
    static Optional<Unit> named(String text) {
        String word = text.strip();
        if (word.equals("M")) {
            return Optional.of(MOLE_PER_LITRE);
        }
        if (word.equals("mM")) {
            return Optional.of(MILLIMOLE_PER_LITRE);
        }
        if (word.startsWith("Mg") || word.startsWith("Mm")) {
            return Optional.empty();
        }
        return Optional.ofNullable(BY_WORD.get(key(word)));
    }

    String symbol() {
        return symbol;
    }

    Quantity quantity() {
        return quantity;
    }

    /** Decimal places that a number gains when converted to another unit of the same quantity; negative if it loses some. */
    int decimalsGainedIn(Unit other) {
        return other.powerOfTen - powerOfTen;
    }

    /**
     * A number of this unit in another.
     *
     * @throws IllegalArgumentException if the quantities differ
     */
    BigDecimal convert(BigDecimal value, Unit other) {
        if (quantity != other.quantity) {
            throw new IllegalArgumentException(this + " is no unit of " + other.quantity);
        }
        return value.scaleByPowerOfTen(powerOfTen - other.powerOfTen);
    }
}
