package workuptally.book.tables;

import java.time.LocalDate;
import java.util.Optional;
import workuptally.book.cells.DateText;
import workuptally.book.files.RawCell;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.SchemaColumn;

/** Reads a cell in which a day is expected. */
final class DayCell {
    private DayCell() {}

    /** The day; nothing where it is not understood, which is reported. */
    static Optional<LocalDate> read(SchemaColumn column, RawCell cell, TableRow row, MatchedHeadings headings) {
        DateText read = headings.date(column.heading(), cell);
        if (read instanceof DateText.Fault fault) {
            row.reportCell(fault.code(), column, cell, fault.expected(), TableRow.CORRECT);
        }
        return read instanceof DateText.Day day ? Optional.of(day.day()) : Optional.empty();
    }
}
