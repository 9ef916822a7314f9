package workuptally.book;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.model.Field.Qualifier;

/**
 * A number as a person writes it: decimal point or comma, thousands grouped, {@code <0.10}, {@code ca. 40}, {@code 12,5 mL}, {@code n.d.}.
 *
 * <p>What can be read in two ways is refused: {@code 1,234} may be a thousand or a little over one. The JDK's locale-bound parsing is not
 * used, since it stops silently at the first character it does not know.
 */
sealed interface NumberText {

    /**
     * A number.
     *
     * @param value the number in the unit written beside it
     * @param qualifier how it was qualified
     * @param decimals decimals written, 0 or more
     * @param unit unit written beside it, if any
     */
    record Number(BigDecimal value, Qualifier qualifier, int decimals, Optional<Unit> unit) implements NumberText {
        /** The same number as a count of drops: a rough volume. */
        Number ofDrops() {
            BigDecimal millilitres = value.multiply(MILLILITRES_PER_DROP);
            return new Number(
                    millilitres,
                    qualifier == Qualifier.EXACT || qualifier == Qualifier.ABOUT ? Qualifier.DROPS : qualifier,
                    Math.max(0, millilitres.scale()),
                    Optional.of(Unit.MILLILITRE));
        }
    }

    /** Not detected. */
    record NotDetected() implements NumberText {}

    /** Nothing, or a dash that stands for nothing. */
    record Nothing() implements NumberText {}

    /**
     * Not understood.
     *
     * @param code code of the finding
     * @param expected what would be understood; empty to say what the column holds
     * @param action what to do
     */
    record Fault(String code, String expected, String action) implements NumberText {}

    /** Code of a number that can be read in two ways. */
    String AMBIGUOUS = "number-ambiguous";

    /** Longest text that is tried. */
    int LONGEST = 60;

    /** Length of the longest word that stands for nothing. */
    int LONGEST_FOR_NOTHING = 16;

    Pattern PLAIN = Pattern.compile("\\d{1,15}+(?:\\.\\d{1,15}+)?+");
    Pattern NOT_DETECTED = Pattern.compile(
            "n\\.? ?d\\.?|not detected|n\\. ?n\\.|nicht (?:nachweisbar|nachgewiesen|detektiert)",
            Pattern.CASE_INSENSITIVE);
    Pattern NOTHING = Pattern.compile(
            "-{0,3}|\\?{1,3}|n/?a|n\\. ?[abm]\\.|t\\.?b\\.?[cd]\\.?|(?:not|nicht) "
                    + "(?:measured|determined|recorded|weighed|taken|known|bestimmt|gemessen|gewogen)|unknown|unbekannt",
            Pattern.CASE_INSENSITIVE);
    Pattern DROPS = Pattern.compile("drops?|gtt\\.?|Tropfen|Tr\\.", Pattern.CASE_INSENSITIVE);
    Pattern RANGE = Pattern.compile("[\\d.,]+ ?(?:-|to|bis) ?[\\d.,]+(?: ?[^\\d.,]*)?", Pattern.CASE_INSENSITIVE);
    Pattern GIVEN_WITH_UNCERTAINTY = Pattern.compile("[\\d.,]+ ?(?:±|\\+/-).*");
    Pattern FIRST_WORD = Pattern.compile("[^ (?!;]+");

    /** By common practice a drop of a water-like liquid from a usual dropper is about 0.05 mL. */
    BigDecimal MILLILITRES_PER_DROP = new BigDecimal("0.05");

    Pattern PORTIONS = Pattern.compile("\\d+ ?[x×*] ?[\\d.,].*", Pattern.CASE_INSENSITIVE);
    Pattern NUMBER = Pattern.compile(
            "(?<qualifier><=|>=|[<>≤≥~≈]|(?:ca|circa|approx|about|approximately)\\b\\.?)? ?"
                    + "(?<sign>[+-]?) ?"
                    + "(?<digits>\\d{1,3}(?:[ '’]\\d{3})+(?!\\d)(?:[.,]\\d+)?|\\d[\\d.,]*|[.,]\\d+)"
                    + "(?:[eE](?<exponent>[+-]?\\d{1,2})(?!\\d))?"
                    + "(?<gap> ?)(?<unit>\\D.*)?",
            Pattern.CASE_INSENSITIVE);
    Pattern ONE_COMMA_THREE_DIGITS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
    Pattern COMMA_GROUPS = Pattern.compile("\\d{1,3}(,\\d{3})+");
    Pattern POINT_GROUPS = Pattern.compile("\\d{1,3}(\\.\\d{3})+");

    /** Reads a text. */
    static NumberText parse(String typed) {
        String text = dashesAsMinus(Words.tidy(typed));
        if (PLAIN.matcher(text).matches()) {
            BigDecimal value = new BigDecimal(text);
            return new Number(value, Qualifier.EXACT, value.scale(), Optional.empty());
        }
        if (text.length() <= LONGEST_FOR_NOTHING && NOTHING.matcher(text).matches()) {
            return new Nothing();
        }
        if (NOT_DETECTED.matcher(text).matches()) {
            return new NotDetected();
        }
        if (PORTIONS.matcher(text).matches()) {
            return new Fault(
                    "portions-in-number",
                    "one number; the number of portions has its own column",
                    "Enter the count under Portions and the size of one portion here, then run again.");
        }
        Matcher match = NUMBER.matcher(text);
        if (text.length() > LONGEST || !match.matches()) {
            return unreadable();
        }
        if (RANGE.matcher(text).matches()) {
            return unreadable("Write the middle of the range with 'ca.' before it and run again.");
        }
        if (GIVEN_WITH_UNCERTAINTY.matcher(text).matches()) {
            return unreadable("Write the number alone, with 'ca.' before it if it is rough, and run again.");
        }
        return number(match);
    }

    private static NumberText number(Matcher match) {
        String digits = match.group("digits").replaceAll("[ '’]", "");
        if (ONE_COMMA_THREE_DIGITS.matcher(digits).matches()) {
            return new Fault(
                    AMBIGUOUS,
                    "a number that can be read in one way only; this is " + digits.replace(",", "") + " or "
                            + digits.replace(',', '.'),
                    "Write it with a decimal point or without the comma and run again.");
        }
        Optional<String> plain = plainDigits(digits);
        if (plain.isEmpty()) {
            return unreadable();
        }
        Optional<Unit> unit = Optional.empty();
        if (match.group("unit") != null) {
            unit = Unit.named(match.group("unit"));
            boolean drops = DROPS.matcher(match.group("unit")).matches();
            if (unit.isEmpty() && !drops) {
                Matcher first = FIRST_WORD.matcher(match.group("unit"));
                if (first.find() && Unit.named(first.group()).isPresent()) {
                    return unreadable();
                }
                boolean looksLikeOne = !match.group("gap").isEmpty()
                        && Character.isLetter(match.group("unit").charAt(0));
                return looksLikeOne ? unknownUnit(match.group("unit")) : unreadable();
            }
        }
        int exponent = match.group("exponent") == null ? 0 : Integer.parseInt(match.group("exponent"));
        BigDecimal value = new BigDecimal(plain.get()).scaleByPowerOfTen(exponent);
        int decimals = Math.max(0, value.scale());
        if (match.group("sign").equals("-")) {
            value = value.negate();
        }
        Number number = new Number(value, qualifier(match.group("qualifier")), decimals, unit);
        return match.group("unit") != null && unit.isEmpty() ? number.ofDrops() : number;
    }

    /** True for a word that means drops. */
    static boolean meansDrops(String unit) {
        return DROPS.matcher(unit).matches();
    }

    private static Qualifier qualifier(String mark) {
        if (mark == null) {
            return Qualifier.EXACT;
        }
        return switch (mark.charAt(0)) {
            case '<', '≤' -> Qualifier.BELOW;
            case '>', '≥' -> Qualifier.ABOVE;
            default -> Qualifier.ABOUT;
        };
    }

    /** Digits with one decimal point at most, or nothing if the separators make no sense. */
    private static Optional<String> plainDigits(String digits) {
        int commas = (int) digits.chars().filter(c -> c == ',').count();
        int points = (int) digits.chars().filter(c -> c == '.').count();
        if (commas == 0 && points <= 1) {
            return Optional.of(digits.endsWith(".") ? digits.substring(0, digits.length() - 1) : digits);
        }
        if (points == 0 && commas == 1) {
            return digits.endsWith(",") ? Optional.empty() : Optional.of(digits.replace(',', '.'));
        }
        if (points == 0) {
            return COMMA_GROUPS.matcher(digits).matches() ? Optional.of(digits.replace(",", "")) : Optional.empty();
        }
        if (commas == 0) {
            return POINT_GROUPS.matcher(digits).matches() ? Optional.of(digits.replace(".", "")) : Optional.empty();
        }
        char decimal = digits.lastIndexOf(',') > digits.lastIndexOf('.') ? ',' : '.';
        int at = digits.lastIndexOf(decimal);
        String whole = digits.substring(0, at);
        Pattern groups = decimal == ',' ? POINT_GROUPS : COMMA_GROUPS;
        return groups.matcher(whole).matches() && at < digits.length() - 1
                ? Optional.of(whole.replace(".", "").replace(",", "") + "." + digits.substring(at + 1))
                : Optional.empty();
    }

    private static String dashesAsMinus(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            out.append(c == '−' || Character.getType(c) == Character.DASH_PUNCTUATION ? '-' : c);
        }
        return out.toString();
    }

    private static Fault unreadable() {
        return unreadable(
                "Write one number, such as 12.5, ca. 12 or <0.1 mL, or leave the cell blank; a remark goes under"
                        + " Notes. Then run again.");
    }

    private static Fault unreadable(String action) {
        return new Fault("number-unreadable", "", action);
    }

    private static Fault unknownUnit(String unit) {
        return new Fault(
                "unit-unknown", "", "Write a unit of the book's form instead of '" + unit + "' and run again.");
    }
}
