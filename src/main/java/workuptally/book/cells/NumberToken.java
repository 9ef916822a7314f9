package workuptally.book.cells;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.words.Unit;

/**
 * One number within a text, with the unit behind it.
 *
 * @param value the number
 * @param decimals decimals written
 * @param unit unit behind it, if it is one
 * @param drops true where drops are counted
 * @param end where it ends in the text, behind the unit
 */
record NumberToken(BigDecimal value, int decimals, Optional<Unit> unit, boolean drops, int end) {
    /** Longest text behind a number that is tried as a unit. */
    private static final int LONGEST_UNIT = 18;

    private static final String DIGITS =
            "(?<sign>[+-] ?)?(?<digits>[1-9]\\d{0,2}(?:[ ']\\d{3})+(?!\\d)(?:[.,]\\d+)?|\\d+(?:[.,]\\d+)*|[.,]\\d+)(?:\\.(?=$|[ %]))?";
    private static final Pattern NUMBER = Pattern.compile(DIGITS
            + "(?:[eE](?<exponent>[+-]?\\d{1,2})(?!\\d)| ?[x*·] ?10 ?(?:\\^|\\*\\*) ?\\(?(?<power>[+-]?\\d{1,2})\\)?(?!\\d)"
            + "| ?[x*·] ?10(?<raised>⁻?[⁰¹²³⁴-⁹]{1,2}))?");
    private static final Pattern COMMA_GROUPS = Pattern.compile("[1-9]\\d{0,2}(,\\d{3})+");
    private static final Pattern POINT_GROUPS = Pattern.compile("[1-9]\\d{0,2}(\\.\\d{3})+");

    /** What the digits of a token are. */
    enum State {
        READ,
        TWO_WAYS,
        NONE
    }

    /**
     * A token, two readings of one, or none.
     *
     * @param state which of these
     * @param token the token where it was read
     */
    record Found(State state, Optional<NumberToken> token) {
        static final Found NONE = new Found(State.NONE, Optional.empty());
        static final Found TWO_WAYS = new Found(State.TWO_WAYS, Optional.empty());
    }

    /** The number that starts at a place of a text. */
    static Found at(String text, int start, NumberText.Marks marks, boolean signAllowed) {
        Matcher match = NUMBER.matcher(text);
        match.region(start, text.length());
        if (!match.lookingAt() || !signAllowed && match.group("sign") != null) {
            return Found.NONE;
        }
        String digits = match.group("digits").replaceAll("[ ']", "");
        int end = match.end();
        boolean loneComma = text.startsWith(",", end) && text.substring(end + 1).isBlank();
        boolean runsOn = end < text.length() && (Character.isDigit(text.charAt(end)) || text.startsWith("'", end));
        if (loneComma || runsOn) {
            return Found.NONE;
        }
        Behind behind = behind(text, end);
        if (twoWays(digits, marks) && !fineComma(digits, behind)) {
            return Found.TWO_WAYS;
        }
        Optional<String> plain =
                fineComma(digits, behind) ? Optional.of(digits.replace(",", "")) : plainDigits(digits, marks);
        return plain.map(p -> new Found(State.READ, Optional.of(token(match, p, behind))))
                .orElse(Found.NONE);
    }

    private static NumberToken token(Matcher match, String plain, Behind behind) {
        BigDecimal value = new BigDecimal(plain).scaleByPowerOfTen(exponent(match));
        int decimals = Math.max(0, value.scale());
        String sign = match.group("sign");
        return new NumberToken(
                sign != null && sign.startsWith("-") ? value.negate() : value,
                decimals,
                behind.unit(),
                behind.drops(),
                behind.end());
    }

    private static int exponent(Matcher match) {
        if (match.group("exponent") != null) {
            return Integer.parseInt(match.group("exponent"));
        }
        if (match.group("power") != null) {
            return Integer.parseInt(match.group("power"));
        }
        return match.group("raised") == null ? 0 : Integer.parseInt(Unit.raisedDigitsDown(match.group("raised")));
    }

    private record Behind(Optional<Unit> unit, boolean drops, int end) {}

    /** The longest text behind a number that names a unit; {@code mg / mL} before {@code mg}. */
    private static Behind behind(String text, int from) {
        int start = from;
        while (start < text.length()
                && (text.charAt(start) == ' ' || text.charAt(start) == '-' && startsUnit(text, start))) {
            start++;
        }
        int last = Math.min(text.length(), start + LONGEST_UNIT);
        for (int end = last; end > start; end--) {
            if (isBoundary(text, end) && !text.substring(start, end).isBlank()) {
                String word = text.substring(start, end);
                Optional<Unit> unit = Unit.named(word);
                boolean drops = NumberReader.DROPS.matcher(word).matches();
                if (unit.isPresent() || drops) {
                    return new Behind(unit, drops, end);
                }
            }
        }
        return new Behind(Optional.empty(), false, from);
    }

    /** A hyphen between number and unit, {@code 250-mL}. */
    private static boolean startsUnit(String text, int hyphen) {
        return hyphen + 1 < text.length() && Character.isLetter(text.charAt(hyphen + 1));
    }

    private static boolean isBoundary(String text, int end) {
        if (end == text.length()) {
            return true;
        }
        char before = text.charAt(end - 1);
        char after = text.charAt(end);
        if (before == ' ' || before == '(' || after == '/' || after == '^' || after == '%' && before != '%') {
            return false;
        }
        if (before == '%') {
            return !Character.isLetterOrDigit(after);
        }
        return !Character.isLetterOrDigit(after) && after != '³' && after != '⁻' && after != '·';
    }

    /** A comma with three digits behind it, or a point where the table writes decimal commas. */
    private static boolean twoWays(String digits, NumberText.Marks marks) {
        if (digits.length() > 7) {
            return false;
        }
        boolean oneComma = digits.indexOf(',') == digits.lastIndexOf(',')
                && COMMA_GROUPS.matcher(digits).matches();
        boolean onePoint = digits.indexOf('.') == digits.lastIndexOf('.')
                && POINT_GROUPS.matcher(digits).matches();
        return marks == NumberText.Marks.UNKNOWN && oneComma || marks == NumberText.Marks.COMMA && onePoint;
    }

    /** {@code 50,000 uL}: nobody measures a millionth of a millilitre, so the three zeros are those of thousands. */
    private static boolean fineComma(String digits, Behind behind) {
        return digits.endsWith(",000")
                && COMMA_GROUPS.matcher(digits).matches()
                && behind.unit().filter(Unit::isMicro).isPresent();
    }

    /** Digits with one decimal point at most, or nothing if the separators make no sense. */
    private static Optional<String> plainDigits(String digits, NumberText.Marks marks) {
        int commas = (int) digits.chars().filter(c -> c == ',').count();
        int points = (int) digits.chars().filter(c -> c == '.').count();
        boolean zeroBeforeGroups = digits.matches("0\\d+[.,].*");
        if (digits.length() > 30 || zeroBeforeGroups && commas + points > 0) {
            return Optional.empty();
        }
        if (commas == 0 && points <= 1) {
            return Optional.of(digits);
        }
        if (points == 0 && commas == 1) {
            boolean thousands = marks == NumberText.Marks.POINT
                    && COMMA_GROUPS.matcher(digits).matches();
            return Optional.of(thousands ? digits.replace(",", "") : digits.replace(',', '.'));
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
}
