package workuptally.book.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One section of a number format: what it shows of a number (ISO/IEC 29500-1, 18.8.31).
 *
 * @param condition when it applies, {@code [<1]}; empty where its place among the sections says so
 * @param before text before the digits
 * @param digits placeholders of the digits with point and commas, {@code #,##0.00}; empty if it shows none
 * @param after text behind the digits
 * @param traits what else it is
 */
public record FormatSection(
        Optional<Condition> condition, String before, String digits, String after, Set<Trait> traits) {
    /** What a section is for, or what makes it uncertain what it shows. */
    public enum Trait {
        /** It shows a day or time. */
        DATE,
        /** It shows digits as a cell without format shows them. */
        GENERAL,
        /** It shows a text. */
        TEXT,
        /** Text stands between its digits, so that {@code 00"."00} shows 12.34 for 1234. */
        TEXT_BETWEEN_DIGITS,
        /** Its condition is none that the standard knows. */
        UNKNOWN_CONDITION
    }

    private static final Pattern CONDITION =
            Pattern.compile("\\s*(<=|>=|<>|<|>|=)\\s*([+-]?\\d{1,20}(?:\\.\\d{1,20})?(?:[eE][+-]?\\d{1,2})?)\\s*");
    /** Placeholders of a number that spreadsheet programs agree on. */
    private static final Pattern DIGITS =
            Pattern.compile("%*[0#?][0#?, ]*(\\.[0#?, ]*)?([Ee][+-][0#?]+)?(/[0-9#? ]+)?[,%]*|%*\\.[0#?]+[,%]*");

    private static final Pattern LOCALE_TEXT = Pattern.compile("\\$([^-\\]]*)(?:-.*)?");

    /**
     * A comparison with a number.
     *
     * @param sign the comparison
     * @param limit what is compared with
     */
    record Condition(String sign, BigDecimal limit) {
        boolean holds(BigDecimal value) {
            int order = value.compareTo(limit);
            return switch (sign) {
                case "<" -> order < 0;
                case "<=" -> order <= 0;
                case ">" -> order > 0;
                case ">=" -> order >= 0;
                case "=" -> order == 0;
                default -> order != 0;
            };
        }
    }

    /** The condition in brackets, if it is one. */
    static Optional<Condition> condition(String inner) {
        Matcher compared = CONDITION.matcher(inner);
        return compared.matches()
                ? Optional.of(new Condition(compared.group(1), new BigDecimal(compared.group(2))))
                : Optional.empty();
    }

    /** The currency or unit in brackets, {@code $ mL-409}. */
    static Optional<String> bracketed(String inner) {
        Matcher locale = LOCALE_TEXT.matcher(inner);
        return locale.matches() ? Optional.of(locale.group(1)) : Optional.empty();
    }

    public boolean date() {
        return traits.contains(Trait.DATE);
    }

    private boolean general() {
        return traits.contains(Trait.GENERAL) || traits.contains(Trait.TEXT);
    }

    boolean isOfText() {
        return traits.contains(Trait.TEXT);
    }

    /** False where only a spreadsheet program can tell what is shown. */
    public boolean isCertain() {
        return !traits.contains(Trait.UNKNOWN_CONDITION)
                && !traits.contains(Trait.TEXT_BETWEEN_DIGITS)
                && (!isOfText() || (before + digits + after).isBlank())
                && (digits.isEmpty() || DIGITS.matcher(digits).matches());
    }

    /** True where the number is shown and nothing beside it, as it is or as a percentage. */
    public boolean isPlain() {
        return !date()
                && hasDigits()
                && before.isBlank()
                && after.isBlank()
                && thousandsLeftOut() == 0
                && percents() <= 1
                && isCertain();
    }

    /** True where zero is shown as a digit; {@code #} and {@code ?} leave it out. */
    public boolean showsZero() {
        return general() || isFraction() || isScientific() || digits.indexOf('0') >= 0;
    }

    /** True where it shows a number at all. */
    public boolean hasDigits() {
        return general() || !digits.isEmpty();
    }

    /** What it would show of a number written so. */
    public String around(String number) {
        return (before + number + "%".repeat(percents()) + after).strip();
    }

    /** Decimals that it always shows. */
    public int decimals() {
        String places = afterPoint();
        int count = 0;
        while (count < places.length() && (places.charAt(count) == '0' || places.charAt(count) == '?')) {
            count++;
        }
        return count;
    }

    /** Decimals that it shows at most. */
    public int mostDecimals() {
        return general()
                ? 10
                : (int) afterPoint().chars().filter(c -> "0#?".indexOf(c) >= 0).count();
    }

    private String afterPoint() {
        int point = digits.indexOf('.');
        String places = point < 0 ? "" : digits.substring(point + 1);
        int exponent = places.toUpperCase(Locale.ROOT).indexOf('E');
        return exponent < 0 ? places : places.substring(0, exponent);
    }

    /** How many per cent signs it has; each shows a hundred times the number. */
    public int percents() {
        return (int) digits.chars().filter(c -> c == '%').count();
    }

    /** How many commas stand behind the last digit; each leaves three digits out. */
    public int thousandsLeftOut() {
        int last = Math.max(digits.lastIndexOf('0'), Math.max(digits.lastIndexOf('#'), digits.lastIndexOf('?')));
        int point = digits.indexOf('.');
        int lastBeforePoint = point < 0 ? last : lastPlace(digits.substring(0, point));
        int commas = 0;
        for (int i = lastBeforePoint + 1; i < digits.length() && digits.charAt(i) == ','; i++) {
            commas++;
        }
        for (int i = last + 1; point >= 0 && i < digits.length() && digits.charAt(i) == ','; i++) {
            commas++;
        }
        return commas;
    }

    private static int lastPlace(String digits) {
        return Math.max(digits.lastIndexOf('0'), Math.max(digits.lastIndexOf('#'), digits.lastIndexOf('?')));
    }

    private boolean isFraction() {
        return digits.indexOf('/') >= 0;
    }

    private boolean isScientific() {
        return digits.toUpperCase(Locale.ROOT).indexOf('E') >= 0;
    }

    /** The number as shown, without commas between its thousands. */
    String show(BigDecimal value) {
        if (!hasDigits()) {
            return (before + after).strip();
        }
        if (!isCertain()) {
            return value.toPlainString();
        }
        BigDecimal scaled = value.movePointRight(2 * percents()).movePointLeft(3 * thousandsLeftOut());
        String number = general() || isFraction() || isScientific()
                ? scaled.stripTrailingZeros().toPlainString()
                : fixed(scaled.abs());
        String sign = scaled.signum() < 0 && !number.startsWith("-") && !number.matches("[0.]*") ? "-" : "";
        return (sign + before + number + "%".repeat(percents()) + after).strip();
    }

    private String fixed(BigDecimal value) {
        BigDecimal rounded = value.setScale(mostDecimals(), RoundingMode.HALF_UP);
        if (rounded.signum() == 0 && !showsZero()) {
            return "";
        }
        String text = rounded.toPlainString();
        while (rounded.scale() > 0
                && text.indexOf('.') > 0
                && text.length() - text.indexOf('.') - 1 > decimals()
                && text.endsWith("0")) {
            text = text.substring(0, text.length() - 1);
        }
        String shown = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        int point = digits.indexOf('.');
        int least = (int) (point < 0 ? digits : digits.substring(0, point))
                .chars()
                .filter(c -> c == '0')
                .count();
        int whole = shown.indexOf('.') < 0 ? shown.length() : shown.indexOf('.');
        if (least == 0 && shown.startsWith("0")) {
            return shown.substring(1);
        }
        return "0".repeat(Math.max(0, least - whole)) + shown;
    }
}
