package workuptally.book.cells;

import java.math.BigDecimal;
import java.util.Optional;
import workuptally.book.words.Quantity;
import workuptally.book.words.Unit;
import workuptally.model.Severity;

/**
 * An uncertainty beside a number, as half of what the number spans.
 *
 * <p>Of which coverage it is, nobody knows. Behind ± it counts as half a range: {@code 2.2 ± 1.0} as {@code 1.2-3.2}, which is wider than
 * with {@code k = 2}.
 */
final class HalfWidth {
    private static final BigDecimal COVERAGE = BigDecimal.valueOf(2);

    private HalfWidth() {}

    /** {@code 0.912 ± 0.002}, {@code 52 mL ± 5 %}; nothing where the units do not go together or more follows. */
    static Optional<NumberText.Number> beside(NumberText.Number number, NumberToken uncertainty, String text) {
        String tail = text.substring(uncertainty.end()).strip();
        boolean closed = tail.isEmpty() || tail.equals(")") || Remarks.harmless(tail);
        return closed
                ? of(number, uncertainty)
                        .map(half -> spread(number, number.unit().or(uncertainty::unit), half, text))
                : Optional.empty();
    }

    /**
     * {@code 99.5(2)}: the standard uncertainty of the last digits, by the Guide to the Expression of Uncertainty in Measurement (JCGM
     * 100:2008, 7.2.2); the number spans twice that to either side.
     */
    static NumberText.Number ofDigits(NumberText.Number number, String digits, String text) {
        BigDecimal standard = new BigDecimal(digits).movePointLeft(number.decimals());
        return spread(number, number.unit(), standard.multiply(COVERAGE), text);
    }

    private static Optional<BigDecimal> of(NumberText.Number number, NumberToken uncertainty) {
        BigDecimal half = uncertainty.value();
        if (number.unit().isEmpty()
                || uncertainty.unit().isEmpty()
                || number.unit().equals(uncertainty.unit())) {
            return Optional.of(half);
        }
        Unit own = number.unit().get();
        Unit other = uncertainty.unit().get();
        if (other.quantity() == Quantity.PERCENT) {
            return Optional.of(number.value().abs().multiply(half).movePointLeft(2));
        }
        return other.quantity() == own.quantity()
                ? Optional.of(half.scaleByPowerOfTen(-other.decimalsGainedIn(own)))
                : Optional.empty();
    }

    private static NumberText.Number spread(
            NumberText.Number number, Optional<Unit> unit, BigDecimal half, String text) {
        return new NumberText.Number(
                number.value(),
                number.qualifier(),
                number.decimals(),
                unit,
                half,
                Optional.of(new NumberText.Remark(Severity.NOTE, text)));
    }
}
