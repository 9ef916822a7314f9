package workuptally.report.workbook;

import java.util.Map;
import org.apache.poi.ss.util.CellAddress;

/**
 * What was noted about a sheet of the user's.
 *
 * @param styles style numbers that the marked cells have
 * @param numbers numbers of the cells that formulas may refer to; a cell that holds no number is not in it
 */
record ScannedSheet(CellStyles styles, Map<CellAddress, Double> numbers) {
    ScannedSheet {
        numbers = Map.copyOf(numbers);
    }
}
