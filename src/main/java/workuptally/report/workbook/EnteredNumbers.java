package workuptally.report.workbook;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.poi.ss.util.CellAddress;
import workuptally.model.Place;

/** The numbers that stand in the user's sheets, to which formulas of the result sheets may refer. */
final class EnteredNumbers {
    private final Map<String, SheetNumbers> numbers = new HashMap<>();

    /** Notes the numbers of a sheet. */
    void put(String sheet, SheetNumbers ofSheet) {
        numbers.put(SheetMarks.key(sheet), ofSheet);
    }

    /** The number in a cell; empty if it holds none. */
    OptionalDouble number(Place place) {
        SheetNumbers ofSheet = numbers.get(SheetMarks.key(place.sheet()));
        return ofSheet == null || !isCell(place) ? OptionalDouble.empty() : ofSheet.at(place.row(), place.column());
    }

    /** Address of a place within its sheet. */
    static CellAddress address(Place place) {
        return new CellAddress(place.row() - 1, place.column());
    }

    private static boolean isCell(Place place) {
        return place.row() >= 1 && place.column() >= 0;
    }
}
