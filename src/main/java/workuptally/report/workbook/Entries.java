package workuptally.report.workbook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.poi.ss.util.CellAddress;
import workuptally.model.Place;
import workuptally.report.view.Cell;
import workuptally.report.view.TableView;

/** The cells of the user's sheets that formulas of the result sheets may refer to, and the numbers that stand in them. */
final class Entries {
    private final Map<String, Set<CellAddress>> wanted = new HashMap<>();
    private final Map<String, Map<CellAddress, Double>> numbers = new HashMap<>();

    /** The cells that the tables refer to. */
    Entries(List<TableView> tables) {
        tables.stream()
                .flatMap(table -> table.rows().stream())
                .flatMap(row -> row.cells().stream())
                .filter(Cell.Number.class::isInstance)
                .map(Cell.Number.class::cast)
                .flatMap(number -> number.live().stream())
                .flatMap(live -> live.entries())
                .filter(Entries::isCell)
                .forEach(place -> wanted.computeIfAbsent(SheetMarks.key(place.sheet()), k -> new HashSet<>())
                        .add(address(place)));
    }

    /** Cells of a sheet that are referred to. */
    Set<CellAddress> wanted(String sheet) {
        return wanted.getOrDefault(SheetMarks.key(sheet), Set.of());
    }

    /** Notes the numbers found in a sheet. */
    void found(String sheet, Map<CellAddress, Double> values) {
        numbers.put(SheetMarks.key(sheet), values);
    }

    /** The number in a cell; empty if it holds none. */
    OptionalDouble number(Place place) {
        Double value = isCell(place)
                ? numbers.getOrDefault(SheetMarks.key(place.sheet()), Map.of()).get(address(place))
                : null;
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Address of a place within its sheet. */
    static CellAddress address(Place place) {
        return new CellAddress(place.row() - 1, place.column());
    }

    private static boolean isCell(Place place) {
        return place.row() >= 1 && place.column() >= 0;
    }
}
