package workuptally.book.lists;

import java.util.Set;
import java.util.stream.IntStream;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/**
 * Lines of a list in a CSV file with more cells than the line of its headings, blank headings at its end included: a comma within a number has moved all behind it, so that each
 * of them would be read under the heading of another.
 */
final class ShiftedRows {
    private ShiftedRows() {}

    /**
     * Names them and adds their numbers to the rows left out.
     *
     * @param leftOut rows that are no runs
     */
    static void leaveOut(
            RawTable raw, OwnListLayout layout, OwnListHeader header, Set<Integer> leftOut, FindingLog log) {
        if (raw.spreadsheet()) {
            return;
        }
        RawRow headings = header.lastRow();
        int last = IntStream.concat(
                        header.headings().stream().mapToInt(OwnListHeader.Heading::column),
                        layout.names().stream()
                                .flatMap(name -> header.heading(name).stream())
                                .mapToInt(OwnListHeader.Heading::column))
                .max()
                .orElse(0);
        for (RawRow row : raw.rows()) {
            if (row.row() <= headings.row() || leftOut.contains(row.row())) {
                continue;
            }
            boolean aside = row.width() > 0 && row.width() <= headings.width() && !row.holdsHalvesOfANumber();
            boolean beyond = !aside && row.cells().get(row.cells().size() - 1).column() > last;
            boolean longer = headings.width() > 0 && row.width() > headings.width() && row.holdsHalvesOfANumber();
            if (beyond || longer) {
                leftOut.add(row.row());
                log.add(
                        FindingCode.ROW_SHIFTED,
                        Severity.STOP,
                        "",
                        new Place(raw.file(), raw.sheet(), row.row(), -1, ""),
                        "read line " + row.line() + " with more cells than headings",
                        "a cell for each heading; a decimal comma needs quotes where commas part the cells",
                        "Put the number in quotes or write a decimal point, and run again; the line was left out.");
            }
        }
    }
}
