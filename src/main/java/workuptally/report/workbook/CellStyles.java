package workuptally.report.workbook;

import java.util.Collections;
import java.util.Map;
import java.util.Set;

/**
 * Style numbers of the marked cells of a sheet.
 *
 * @param numbers style number by mark
 * @param missing marks of cells that the sheet does not have yet
 */
record CellStyles(Map<CellMark, Integer> numbers, Set<CellMark> missing) {
    CellStyles {
        numbers = Collections.unmodifiableMap(numbers);
        missing = Collections.unmodifiableSet(missing);
    }
}
