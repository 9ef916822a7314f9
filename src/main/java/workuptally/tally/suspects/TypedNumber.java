package workuptally.tally.suspects;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Figure;

/**
 * A number as it was typed, so that slips are made of the digits that a person sees: {@code 123.4} under mg, whatever unit the field has.
 */
final class TypedNumber {
    private static final Pattern DIGITS = Pattern.compile("\\d+(?:[.,]\\d+)?");
    private static final int MOST_PLACES = 9;

    private final Entered entered;
    private final BigDecimal shown;
    /** The number in the unit of its field, for one in the unit typed. */
    private final double perShown;

    TypedNumber(Entered entered) {
        this.entered = entered;
        BigDecimal value = BigDecimal.valueOf(entered.value()).setScale(entered.decimals(), RoundingMode.HALF_UP);
        Matcher digits = DIGITS.matcher(entered.asTyped());
        BigDecimal typed = digits.find() ? new BigDecimal(digits.group().replace(',', '.')) : value;
        boolean oneNumber = typed.signum() > 0 && !digits.find() && entered.value() > 0;
        double ratio = oneNumber ? entered.value() / typed.doubleValue() : 1;
        boolean unitFactor = oneNumber && isPowerOfTen(ratio);
        this.shown = unitFactor ? typed : value;
        this.perShown = unitFactor ? Math.pow(10, Math.rint(Math.log10(ratio))) : 1;
    }

    private static boolean isPowerOfTen(double ratio) {
        double power = Math.log10(ratio);
        return Math.abs(power - Math.rint(power)) < 1e-9;
    }

    double value() {
        return entered.value();
    }

    /** The same digits with the point moved so many places to the right; to the left for less than 0. */
    Figure moved(int places) {
        BigDecimal moved = shown.movePointRight(places);
        // 9000 becomes 900, no 900.0; the zeros of 50.0 were written on purpose
        int decimals = shown.scale() > 0
                ? shown.scale() - places
                : moved.stripTrailingZeros().scale();
        return figure(moved, Math.max(0, decimals));
    }

    /** 106.3 for 16.3: the first two digits were swapped, and a sheet keeps no zero in front of 016.3. */
    Optional<Figure> zeroLost() {
        String digits = shown.toPlainString();
        return digits.charAt(0) >= '1' && digits.charAt(0) <= '9'
                ? Optional.of(figure(new BigDecimal(digits.charAt(0) + "0" + digits.substring(1)), shown.scale()))
                : Optional.empty();
    }

    /** Each number that two neighbouring digits give in the other order. */
    List<Figure> swapped() {
        List<Figure> all = new ArrayList<>();
        String digits = shown.toPlainString();
        for (int i = 0; i + 1 < digits.length(); i++) {
            // two digits beside each other, or on both sides of the point
            int next = digits.charAt(i + 1) == '.' && i + 2 < digits.length() ? i + 2 : i + 1;
            boolean bothDigits = Character.isDigit(digits.charAt(i)) && Character.isDigit(digits.charAt(next));
            if (bothDigits && digits.charAt(i) != digits.charAt(next)) {
                char[] other = digits.toCharArray();
                other[i] = digits.charAt(next);
                other[next] = digits.charAt(i);
                // nobody means 06
                if (other[0] != '0' || !Character.isDigit(other[1])) {
                    all.add(figure(new BigDecimal(new String(other)), shown.scale()));
                }
            }
        }
        return all;
    }

    /** True where a number, to the digits typed, has the same digits with the point elsewhere or two of them in the other order. */
    boolean isSlipOf(double meant) {
        double lastDigit = Math.pow(10, -shown.scale()) * perShown;
        return Stream.concat(swapped().stream(), Stream.of(-3, -1, 1, 3).map(this::moved))
                .anyMatch(f -> Math.abs(f.value() - meant) <= Math.max(lastDigit, Math.pow(10, -f.decimals())) / 2);
    }

    /** Another number in the unit of the field, with the decimals of this one. */
    Figure with(double value) {
        return figure(BigDecimal.valueOf(value / perShown), shown.scale());
    }

    private Figure figure(BigDecimal number, int places) {
        BigDecimal rounded = number.setScale(Math.min(MOST_PLACES, Math.max(0, places)), RoundingMode.HALF_UP);
        int inField = Math.max(0, rounded.scale() - (int) Math.rint(Math.log10(perShown)));
        return new Figure(
                rounded.doubleValue() * perShown,
                entered.qualifier(),
                inField,
                rounded.toPlainString(),
                entered.digitsKnown(),
                entered.halfWidth());
    }
}
