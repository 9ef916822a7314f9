package workuptally.book.tables;

import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** Gross with its tare: a gross below the tare is reported and cannot be used. */
final class GrossAboveTare {
    private GrossAboveTare() {}

    /**
     * The gross, if it is at least the tare or one of them is not known.
     *
     * @param heading heading of the gross
     */
    static Field of(TableRow row, String heading, Field gross, Field tare) {
        boolean below = gross instanceof Field.Entered g && tare instanceof Field.Entered t && g.value() < t.value();
        if (!below) {
            return gross;
        }
        row.report(
                FindingCode.GROSS_BELOW_TARE,
                Severity.STOP,
                heading,
                "read gross '" + gross.entered().orElseThrow().asTyped() + "' and tare '"
                        + tare.entered().orElseThrow().asTyped() + "'",
                "a gross of at least the tare",
                "Look up which of the two is wrong, correct it and run again.");
        return Field.NoNumber.UNREADABLE;
    }
}
