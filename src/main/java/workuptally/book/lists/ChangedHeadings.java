package workuptally.book.lists;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.BookWords;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/** Headings of a list that stand again further down, some of them in other words: the rows below would be read in the units of the first ones. */
final class ChangedHeadings {
    private final RawTable raw;
    private final OwnListHeader header;
    private final List<String> runHeadings;

    ChangedHeadings(RawTable raw, OwnListHeader header, List<String> runHeadings) {
        this.raw = raw;
        this.header = header;
        this.runHeadings = runHeadings;
    }

    /** The rows from changed headings on until the first ones stand again; each such place is reported. */
    Set<Integer> leaveOut(FindingLog log) {
        Set<Integer> rows = new HashSet<>();
        boolean changed = false;
        for (RawRow row : raw.rows()) {
            if (row.row() <= header.lastRow().row()) {
                continue;
            }
            if (header.isRepeatedBy(row)) {
                changed = false;
            } else if (changes(row)) {
                changed = true;
                log.add(
                        FindingCode.LIST_HEADING_MISSING,
                        Severity.STOP,
                        "",
                        new Place(raw.file(), raw.sheet(), row.row(), -1, ""),
                        "row " + row.row() + " repeats the headings in other words",
                        "the same headings, units and order throughout",
                        "Put the rows below it on a sheet of their own, with a part of the headings file of their own,"
                                + " and run again; they were left out.");
            }
            if (changed) {
                rows.add(row.row());
            }
        }
        return rows;
    }

    private boolean changes(RawRow row) {
        return row.cells().size() > 1
                && row.cells().stream().allMatch(cell -> cell.type() == RawCell.Type.TEXT)
                && row.cells().stream().filter(this::isHeading).count() > 1
                && runHeadings.stream()
                        .flatMap(name -> header.heading(name).stream())
                        .flatMap(heading -> row.cell(heading.column()).stream())
                        .anyMatch(this::isHeading);
    }

    private boolean isHeading(RawCell cell) {
        String typed = BookWords.loose(cell.text());
        return header.headings().stream()
                .filter(heading -> heading.column() == cell.column())
                .anyMatch(heading -> BookWords.loose(heading.text()).equals(typed)
                        || BookWords.loose(heading.key()).equals(typed));
    }
}
