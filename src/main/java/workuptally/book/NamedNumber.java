package workuptally.book;

import java.math.BigDecimal;
import java.util.Optional;
import workuptally.model.Field.Qualifier;

/**
 * A name followed by a number, as in {@code ethyl acetate 81 %}.
 *
 * @param name name
 * @param value number in the unit asked for
 */
record NamedNumber(String name, double value) {
    /**
     * Reads a name with a positive number.
     *
     * @param unit unit wanted, and meant where none is written
     * @return empty without a number, or with one of another quantity, or with a mere limit
     */
    static Optional<NamedNumber> read(String text, Unit unit) {
        for (int space = text.indexOf(' '); space > 0; space = text.indexOf(' ', space + 1)) {
            if (NumberText.parse(text.substring(space + 1)) instanceof NumberText.Number number
                    && number.qualifier() != Qualifier.BELOW
                    && number.qualifier() != Qualifier.ABOVE) {
                Unit typed = number.unit().orElse(unit);
                BigDecimal value = number.value();
                return typed.quantity() == unit.quantity() && value.signum() > 0
                        ? Optional.of(new NamedNumber(
                                text.substring(0, space).strip(),
                                typed.convert(value, unit).doubleValue()))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
