package workuptally.report.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.ss.SpreadsheetVersion;
import workuptally.model.Finding;

/** Which cells of one sheet are marked, and how. */
final class SheetMarks {
    private final SortedMap<Integer, SortedMap<Integer, CellMark>> rows = new TreeMap<>();

    /**
     * Sorts findings by sheet.
     *
     * @return marks by sheet name in lower case; findings without a cell are left out
     */
    static Map<String, SheetMarks> bySheet(List<Finding> findings) {
        Map<String, Map<Integer, Map<Integer, List<Finding>>>> places = new TreeMap<>();
        for (Finding finding : findings) {
            if (isInSheet(finding)) {
                places.computeIfAbsent(key(finding.place().sheet()), k -> new TreeMap<>())
                        .computeIfAbsent(finding.place().row(), k -> new TreeMap<>())
                        .computeIfAbsent(Math.max(0, finding.place().column()), k -> new ArrayList<>())
                        .add(finding);
            }
        }
        Map<String, SheetMarks> marks = new TreeMap<>();
        places.forEach((sheet, rows) -> marks.put(sheet, new SheetMarks(rows)));
        return marks;
    }

    /** The key of a sheet name: spreadsheet programs do not tell upper from lower case. */
    static String key(String sheet) {
        return sheet.toLowerCase(Locale.ROOT);
    }

    /** No marks. */
    static SheetMarks none() {
        return new SheetMarks(Map.of());
    }

    private SheetMarks(Map<Integer, Map<Integer, List<Finding>>> findings) {
        findings.forEach((row, cells) -> cells.forEach((column, list) -> {
            list.sort(Comparator.comparing(Finding::severity));
            rows.computeIfAbsent(row, k -> new TreeMap<>())
                    .put(column, new CellMark(row, column, list.get(0).severity(), list));
        }));
    }

    private static boolean isInSheet(Finding finding) {
        return !finding.place().sheet().isEmpty()
                && finding.place().row() >= 1
                && finding.place().row() <= SpreadsheetVersion.EXCEL2007.getMaxRows()
                && finding.place().column() < SpreadsheetVersion.EXCEL2007.getMaxColumns();
    }

    /** Marked cells by column, by row. */
    SortedMap<Integer, SortedMap<Integer, CellMark>> rows() {
        return rows;
    }

    /** All marks, the most urgent first, then from top to bottom. */
    List<CellMark> worstFirst() {
        return rows.values().stream()
                .flatMap(cells -> cells.values().stream())
                .sorted(Comparator.comparing(CellMark::severity))
                .toList();
    }
}
