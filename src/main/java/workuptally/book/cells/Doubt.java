package workuptally.book.cells;

import java.util.Optional;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.Quantity;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;

/**
 * A number without a unit that is more likely one of a neighbouring scale: a fraction under per cent, a kelvin under °C (common practice).
 * Nothing is computed with it until somebody says which it is.
 *
 * @param code code of the finding
 * @param expected what the column holds
 * @param action what to do
 */
public record Doubt(FindingCode code, String expected, String action) {
    /** A share above this is rarely meant as per cent where contents, conversions and yields are written. */
    private static final double MOST_OF_A_FRACTION = 1;

    /** Standard uncertainties below this, in per cent, are beyond what a laboratory's assays or weighings reach. */
    private static final double LEAST_UNCERTAINTY_PERCENT = 0.1;

    /** From cold nights to hot days in kelvin; few work-ups are that hot in °C. */
    private static final Range ROOM_IN_KELVIN = new Range(263, 323, "");

    /** The doubt about a number as typed, if there is one. */
    public static Optional<Doubt> of(SchemaColumn column, NumberText.Number number, double value) {
        if (number.unit().isPresent() || number.qualifier() != Qualifier.EXACT || value <= 0) {
            return Optional.empty();
        }
        Quantity quantity = column.unit().map(Unit::quantity).orElse(Quantity.PURE);
        // what a wash held is most often below 1 %
        boolean percent = quantity == Quantity.PERCENT
                && column.kind() != SchemaColumn.Kind.SETTING
                && !column.heading().equals("Content");
        boolean uncertainty = column.isUncertainty();
        if (percent && (uncertainty ? value < LEAST_UNCERTAINTY_PERCENT : value <= MOST_OF_A_FRACTION)) {
            String typed = number.value().stripTrailingZeros().toPlainString();
            String hundredfold =
                    number.value().movePointRight(2).stripTrailingZeros().toPlainString();
            return Optional.of(new Doubt(
                    FindingCode.PERCENT_AS_FRACTION,
                    "a percentage; " + typed + " means " + typed + " %",
                    "Write " + hundredfold + " for " + hundredfold + " %, or '" + typed
                            + " %' if that is meant, and run again; it was not used."));
        }
        if (quantity == Quantity.TEMPERATURE && column.heading().equals("Temperature") && ROOM_IN_KELVIN.holds(value)) {
            return Optional.of(new Doubt(
                    FindingCode.KELVIN_AS_CELSIUS,
                    "a temperature in °C",
                    "Write '" + number.value().toPlainString() + " °C' or '"
                            + number.value().toPlainString()
                            + " K', whichever is meant, and run again; it was not used."));
        }
        return Optional.empty();
    }
}
