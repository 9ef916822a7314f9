package workuptally.book.words;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Units of the tables with their exact decimal factors. Each factor is by definition of the prefix; a litre is a cubic decimetre. */
public enum Unit {
    MICROGRAM("µg", Quantity.MASS, -6, "mcg", "microgram", "mikrogramm"),
    MILLIGRAM("mg", Quantity.MASS, -3, "mgs", "milligram", "milligramm"),
    GRAM("g", Quantity.MASS, 0, "gr", "gm", "gms", "gram", "gramm", "gramme"),
    KILOGRAM("kg", Quantity.MASS, 3, "kgs", "kilo", "kilogram", "kilogramm"),
    MICROLITRE("µL", Quantity.VOLUME, -3, "mcl", "microlitre", "microliter", "mikroliter"),
    MILLILITRE("mL", Quantity.VOLUME, 0, "cm3", "ccm", "cc", "mls", "mltr", "millilitre", "milliliter", "cucm"),
    CENTILITRE("cL", Quantity.VOLUME, 1),
    DECILITRE("dL", Quantity.VOLUME, 2),
    LITRE("L", Quantity.VOLUME, 3, "ltr", "lt", "litre", "liter", "dm3"),
    MICROMOLE("µmol", Quantity.AMOUNT, -3, "umole", "micromol", "micromole", "mikromol"),
    MILLIMOLE("mmol", Quantity.AMOUNT, 0, "mmole", "millimol", "millimole", "mmo"),
    MOLE("mol", Quantity.AMOUNT, 3, "mole"),
    EQUIVALENT("equiv", Quantity.EQUIVALENTS, 0, "eq", "equivalent", "äq", "äquiv", "éq", "équiv"),
    MOLE_PERCENT("mol %", Quantity.EQUIVALENTS, -2, "mol-%", "mole%"),
    MICROGRAM_PER_MILLILITRE("µg/mL", Quantity.MASS_PER_VOLUME, -3, "mg/l", "mcg/ml"),
    MILLIGRAM_PER_MILLILITRE("mg/mL", Quantity.MASS_PER_VOLUME, 0, "g/l", "kg/m3", "µg/µl", "mg/cm3"),
    MASS_PER_VOLUME_PERCENT(
            "% w/v",
            Quantity.MASS_PER_VOLUME, 1, "w/v%", "w/v", "%(w/v)", "% m/v", "m/v%", "m/v", "%(m/v)", "g/100ml", "g/dl"),
    GRAM_PER_MILLILITRE("g/mL", Quantity.MASS_PER_VOLUME, 3, "g/cm3", "g/ccm", "g/cc", "kg/l", "kg/dm3", "gcm-3"),
    MILLIMOLE_PER_LITRE("mmol/L", Quantity.CONCENTRATION, -3, "µmol/ml"),
    MOLE_PER_LITRE("mol/L", Quantity.CONCENTRATION, 0, "mmol/ml", "mol/dm3", "moldm-3", "molar"),
    /** Equivalents per litre: as many moles of an acid or base with one proton. */
    NORMAL("N", Quantity.CONCENTRATION, 0),
    GRAM_PER_MOLE("g/mol", Quantity.MOLAR_MASS, 0, "mg/mmol", "kg/kmol", "da", "u", "amu"),
    KILOGRAM_PER_MOLE("kg/mol", Quantity.MOLAR_MASS, 3, "kda"),
    PERCENT("%", Quantity.PERCENT, 0, "percent", "pct", "prozent", "pc", "pourcent", "%rel", "rel%"),
    MASS_PERCENT(
            "% w/w",
            Quantity.PERCENT,
            0,
            "wt%",
            "wt-%",
            "%wt",
            "w/w%",
            "w/w",
            "w%",
            "mass%",
            "mass-%",
            "%(w/w)",
            "%w/w",
            "m%",
            "%m/m",
            "m/m%",
            "%(m/m)",
            "m/m",
            "gew%",
            "gew-%",
            "masse%",
            "massen%",
            "%gew",
            "g/100g",
            "weight%",
            "%byweight",
            "%bymass",
            "wtpct"),
    PERMILLE("‰", Quantity.PERCENT, -1, "permille", "promille"),
    MILLIGRAM_PER_GRAM("mg/g", Quantity.PERCENT, -1, "g/kg"),
    PARTS_PER_MILLION("ppm", Quantity.PERCENT, -4),
    MILLIGRAM_PER_KILOGRAM("mg/kg", Quantity.PERCENT, -4, "µg/g"),
    CELSIUS(
            "°C",
            Quantity.TEMPERATURE,
            0,
            "ºc",
            "c",
            "degc",
            "deg",
            "degree",
            "°",
            "º",
            "grad",
            "gradc",
            "gradcelsius",
            "celsius",
            "˚c",
            "˚",
            "degcelsius",
            "degreecelsius",
            "degreec"),
    KELVIN("K", Quantity.TEMPERATURE, 0, "kelvin"),
    KILOPASCAL("kPa", Quantity.PRESSURE, 0),
    HECTOPASCAL("hPa", Quantity.PRESSURE, -1, "mbar"),
    PASCAL("Pa", Quantity.PRESSURE, -3),
    BAR("bar", Quantity.PRESSURE, 2),
    DAY("d", Quantity.TIME, 0, "day", "tag", "tage", "jour"),
    ONE("", Quantity.PURE, 0);

    /** Zero of the Celsius scale in kelvin, by definition. */
    private static final BigDecimal CELSIUS_ZERO_KELVIN = new BigDecimal("273.15");

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
    private static final String DOWN = "0123456789-";

    /** {@code g mol-1} and its like. */
    private static final Pattern INVERSE = Pattern.compile("(\\D+?)[ ·*.]*?\\b([a-zA-Zμ]+(?:3)?) ?-1");

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
                map.put(unit.symbol, unit);
                map.put(key(unit.symbol), unit);
                unit.otherWords.forEach(word -> map.put(key(word), unit));
            }
        }
        return Map.copyOf(map);
    }

    private static String key(String word) {
        String plain = raisedDigitsDown(word)
                .replace("^", "")
                .replace('µ', 'μ')
                .replace('℃', 'C')
                .replaceAll("^(?i:in) (?=\\p{L}+$)", "")
                .replaceAll("^[(\\[](.*)[)\\]]$", "$1");
        if (plain.endsWith("-1")) {
            Matcher inverse = INVERSE.matcher(plain);
            plain = inverse.matches() ? inverse.group(1).replaceAll("[ ·*.]+$", "") + "/" + inverse.group(2) : plain;
        }
        String key = plain.replace(" per ", "/")
                .replaceAll("[ .]", "")
                .toLowerCase(Locale.ROOT)
                .replace('μ', 'u');
        return key.length() > 3 && key.endsWith("s") ? key.substring(0, key.length() - 1) : key;
    }

    /** Superscript digits as plain ones. */
    public static String raisedDigitsDown(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            int at = RAISED.indexOf(text.charAt(i));
            plain.append(at < 0 ? text.charAt(i) : DOWN.charAt(at));
        }
        return plain.toString();
    }

    /**
     * The unit a text names. Case matters only where it tells units apart: {@code M}, {@code mM} and {@code N} are concentrations,
     * {@code m} and {@code n} are no units here, and {@code Mg} is a megagram or a slip.
     */
    public static Optional<Unit> named(String text) {
        String word = text.strip();
        switch (word) {
            case "M":
                return Optional.of(MOLE_PER_LITRE);
            case "mM":
                return Optional.of(MILLIMOLE_PER_LITRE);
            case "N", "n":
                return word.equals("N") ? Optional.of(NORMAL) : Optional.empty();
            default:
                break;
        }
        if (word.isEmpty() || word.startsWith("Mg") || word.startsWith("Mm") || word.endsWith("-")) {
            return Optional.empty();
        }
        Unit asWritten = BY_WORD.get(word);
        return Optional.ofNullable(asWritten == null ? BY_WORD.get(key(word)) : asWritten);
    }

    /** True for a share of the mass said as such; a bare % or ppm can be one of area or volume. */
    public boolean isShareOfMass() {
        return this == MASS_PERCENT || this == MILLIGRAM_PER_GRAM || this == MILLIGRAM_PER_KILOGRAM;
    }

    /** True for a millionth of gram, litre or mole. */
    public boolean isMicro() {
        return this == MICROGRAM || this == MICROLITRE || this == MICROMOLE;
    }

    /** True where a number means the same in both, as in % and % w/w. */
    public boolean isSameAs(Unit other) {
        return this == other
                || quantity == other.quantity
                        && powerOfTen == other.powerOfTen
                        && (this == KELVIN) == (other == KELVIN);
    }

    public String symbol() {
        return symbol;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** Decimal places that a number gains when converted to another unit of the same quantity; negative if it loses some. */
    public int decimalsGainedIn(Unit other) {
        return other.powerOfTen - powerOfTen;
    }

    /**
     * A number of this unit in another.
     *
     * @throws IllegalArgumentException if the quantities differ
     */
    public BigDecimal convert(BigDecimal value, Unit other) {
        if (quantity != other.quantity) {
            throw new IllegalArgumentException(this + " is no unit of " + other.quantity);
        }
        if ((this == KELVIN) != (other == KELVIN)) {
            return this == KELVIN ? value.subtract(CELSIUS_ZERO_KELVIN) : value.add(CELSIUS_ZERO_KELVIN);
        }
        return value.scaleByPowerOfTen(powerOfTen - other.powerOfTen);
    }
}
