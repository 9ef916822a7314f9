package workuptally.report.pdf;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.report.view.ReadableNumbers;

/**
 * A measured value and its expanded uncertainty as two cells.
 *
 * @param figures numbers as text
 * @param coverageFactor k of the expanded uncertainty
 */
record MeasuredCells(ReadableNumbers figures, double coverageFactor) {
    /** The value, to the place its uncertainty allows; a dash if there is none. */
    TableCell value(Optional<MeasuredValue> value) {
        return TableCell.of(
                value.map(v -> figures.pair(v, coverageFactor).value()).orElse("–"));
    }

    /** U; empty if there is none. */
    TableCell uncertainty(Optional<MeasuredValue> value) {
        return TableCell.of(
                value.map(v -> figures.pair(v, coverageFactor).uncertainty()).orElse(""));
    }
}
