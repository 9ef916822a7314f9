package workuptally.book.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One section of a number format: what it shows of a number (ISO/IEC 29500-1, 18.8.31).
 *
 * @param condition when it applies, {@code [<1]}; empty where its place among the sections says so
 * @param before text before the digits
 * @param digits placeholders of the digits with point and commas, {@code #,##0.00}; empty if it shows none
 * @param after text behind the digits
 * @param date true if it shows a day or time
 * @param general true if the digits are shown as a cell without format shows them
 */
public record FormatSection(
        Optional<Condition> condition, String before, String digits, String after, boolean date, boolean general) {
    private static final Pattern CONDITION = Pattern.compile("(<=|>=|<>|<|>|=)(-?\\d+(?:\\.\\d+)?)");
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

    /** Reads the code of one section. */
    static FormatSection of(String code) {
        Optional<Condition> condition = Optional.empty();
        StringBuilder before = new StringBuilder();
        StringBuilder digits = new StringBuilder();
        StringBuilder after = new StringBuilder();
        StringBuilder symbols = new StringBuilder();
        boolean elapsed = false;
        boolean general = false;
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            StringBuilder literal = digits.isEmpty() && !general ? before : after;
            if (c == '"') {
                int end = code.indexOf('"', i + 1);
                literal.append(code, i + 1, end < 0 ? code.length() : end);
                i = end < 0 ? code.length() : end;
            } else if (c == '\\' && i + 1 < code.length()) {
                literal.append(code.charAt(++i));
            } else if ((c == '_' || c == '*') && i + 1 < code.length()) {
                i++; // a space as wide as the next character, or that character repeated
            } else if (c == '[') {
                int end = code.indexOf(']', i);
                String inner = end < 0 ? "" : code.substring(i + 1, end);
                Matcher compared = CONDITION.matcher(inner);
                Matcher locale = LOCALE_TEXT.matcher(inner);
                if (compared.matches()) {
                    condition = Optional.of(new Condition(compared.group(1), new BigDecimal(compared.group(2))));
                } else if (locale.matches()) {
                    literal.append(locale.group(1));
                }
                elapsed |= inner.matches("[hHmMsS]+");
                i = end < 0 ? code.length() : end;
            } else if (code.regionMatches(true, i, "General", 0, 7)) {
                general = true;
                i += 6;
            } else if ("0#?.,%/".indexOf(c) >= 0
                    || (c == 'E' || c == 'e') && i + 1 < code.length() && "+-".indexOf(code.charAt(i + 1)) >= 0) {
                boolean exponent = c == 'E' || c == 'e';
                digits.append(c);
                if (exponent) {
                    digits.append(code.charAt(++i));
                }
            } else if (Character.isLetter(c)) {
                symbols.append(Character.toLowerCase(c));
            } else if (c == '@') {
                general = true;
            } else if (c == ' '
                    && digits.length() > 0
                    && code.indexOf('/', i) > 0
                    && code.substring(i).matches("[ 0-9?#/]+.*")) {
                digits.append(' ');
            } else {
                literal.append(c);
            }
        }
        boolean date = elapsed || symbols.toString().matches(".*[ymdhsbge].*");
        return new FormatSection(condition, before.toString(), digits.toString(), after.toString(), date, general);
    }

    /** True where the number is shown and nothing beside it, as it is or as a percentage. */
    public boolean isPlain() {
        return !date
                && (general || !digits.isEmpty())
                && before.isBlank()
                && after.isBlank()
                && thousandsLeftOut() == 0
                && percents() <= 1
                && (general || digits.matches(".*[0#?].*"));
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
        return general
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
        if (!general && digits.isEmpty()) {
            return (before + after).strip();
        }
        BigDecimal scaled = value.movePointRight(2 * percents()).movePointLeft(3 * thousandsLeftOut());
        String number = general || isFraction() || isScientific()
                ? scaled.stripTrailingZeros().toPlainString()
                : fixed(scaled.abs());
        String sign = scaled.signum() < 0 && !number.startsWith("-") && !number.matches("[0.]*") ? "-" : "";
        return (sign + before + number + "%".repeat(percents()) + after).strip();
    }

    private String fixed(BigDecimal value) {
        BigDecimal rounded = value.setScale(mostDecimals(), RoundingMode.HALF_UP);
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
