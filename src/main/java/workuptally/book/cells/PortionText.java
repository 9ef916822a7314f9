package workuptally.book.cells;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import workuptally.model.Field.Qualifier;

/**
 * Portions as benches write them into a volume: {@code 3 x 30 mL}, {@code 50 + 50}, {@code 100/2}.
 *
 * @param count number of portions, 1 or more
 * @param each the size of one
 * @param unequal true where the portions differ; they then count as one of their total
 */
public record PortionText(int count, NumberText.Number each, boolean unequal) {
    /** More portions than this are rather a size written first. */
    private static final BigDecimal MOST = BigDecimal.valueOf(20);

    /** By common practice no layer is washed more often than this with parts of one volume. */
    private static final BigDecimal MOST_PARTS = BigDecimal.valueOf(6);

    /** The portions that several numbers of a volume mean. */
    public static Optional<PortionText> of(NumberText read) {
        if (!(read instanceof NumberText.Several several)) {
            return Optional.empty();
        }
        List<NumberText.Number> numbers = several.numbers();
        NumberText.Number first = numbers.get(0);
        NumberText.Number last = numbers.get(numbers.size() - 1);
        return switch (several.together()) {
            case PORTIONS ->
                isSizeFirst(first, last)
                        ? Optional.of(new PortionText(last.value().intValueExact(), first, false))
                        : isCount(first)
                                        && (last.unit().isPresent()
                                                || first.value().compareTo(last.value()) < 0)
                                ? Optional.of(new PortionText(first.value().intValueExact(), last, false))
                                : Optional.empty();
            case SUM -> sum(numbers);
            case SLASH -> parts(first, last);
            default -> Optional.empty();
        };
    }

    /** {@code 25 x 2}: more portions than anybody takes, so the size stands first. */
    private static boolean isSizeFirst(NumberText.Number first, NumberText.Number last) {
        return first.value().compareTo(MOST) > 0 && first.unit().isEmpty() && isCount(last);
    }

    /** True for a plain whole number that can be a number of portions. */
    public static boolean isCount(NumberText.Number number) {
        return number.unit().isEmpty()
                && number.value().signum() > 0
                && number.value().compareTo(MOST) <= 0
                && number.decimals() == 0;
    }

    private static Optional<PortionText> sum(List<NumberText.Number> numbers) {
        NumberText.Number first = numbers.get(0);
        if (!numbers.stream().allMatch(n -> n.unit().equals(first.unit()))) {
            return Optional.empty();
        }
        boolean equal = numbers.stream().allMatch(n -> n.value().compareTo(first.value()) == 0);
        BigDecimal total = numbers.stream().map(NumberText.Number::value).reduce(BigDecimal.ZERO, BigDecimal::add);
        return Optional.of(
                equal
                        ? new PortionText(numbers.size(), first, false)
                        : new PortionText(
                                1,
                                new NumberText.Number(total, Qualifier.EXACT, first.decimals(), first.unit()),
                                true));
    }

    /** {@code 100/2}: a total and its parts. */
    private static Optional<PortionText> parts(NumberText.Number total, NumberText.Number parts) {
        boolean plausible = parts.decimals() == 0
                && parts.value().compareTo(BigDecimal.ONE) > 0
                && parts.value().compareTo(MOST_PARTS) <= 0
                && total.value().compareTo(parts.value().multiply(BigDecimal.TEN)) >= 0;
        return plausible
                ? Optional.of(new PortionText(
                        parts.value().intValueExact(),
                        new NumberText.Number(
                                total.value().divide(parts.value(), 6, RoundingMode.HALF_EVEN),
                                Qualifier.EXACT,
                                total.decimals(),
                                total.unit()),
                        false))
                : Optional.empty();
    }
}
