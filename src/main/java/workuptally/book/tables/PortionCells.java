package workuptally.book.tables;

import java.util.Optional;
import workuptally.book.cells.PortionText;
import workuptally.book.files.RawCell;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.Column;
import workuptally.book.words.Unit;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** Reads a count and a size out of one cell, {@code 3 x 30 mL}, as a wash in portions is written down at the bench. */
final class PortionCells {
    private final TableRow row;
    private final MatchedHeadings headings;
    private final NumberCells numbers;

    PortionCells(TableRow row, MatchedHeadings headings, NumberCells numbers) {
        this.row = row;
        this.headings = headings;
        this.numbers = numbers;
    }

    /**
     * A number of portions and the size of each, written in one cell.
     *
     * @param count number of portions
     * @param each size of one
     */
    record Portioned(Field count, Field each) {}

    /** Count and size of {@code 3 x 30 mL}; nothing for any other text, and where another count stands in its own column. */
    Optional<Portioned> portioned(Column column, Field count) {
        String heading = column.heading();
        Optional<RawCell> cell = row.cell(heading);
        Optional<PortionText> read = cell.flatMap(c -> PortionText.of(numbers.read(column, c)))
                .filter(p -> count.isBlank()
                        || count.entered().filter(c -> c.value() == p.count()).isPresent());
        if (read.isEmpty()) {
            return Optional.empty();
        }
        PortionText portions = read.get();
        Unit own = column.unit().orElse(Unit.ONE);
        Unit typed = portions.each().unit().orElse(headings.unit(heading).orElse(own));
        Field each = numbers.converted(column, cell.get(), portions.each(), typed, own);
        if (portions.unequal()) {
            row.report(
                    FindingCode.PORTIONS_UNEQUAL,
                    Severity.CHECK,
                    heading,
                    "read '" + TableRow.seen(cell.get()) + "'",
                    "portions of one size",
                    "Give each portion a row of its own; until then their total counts as one portion.");
        }
        Field counted =
                row.entered(new Field.Figure(portions.count(), Qualifier.EXACT, 0, TableRow.seen(cell.get())), heading);
        return Optional.of(new Portioned(count.isBlank() ? counted : count, each));
    }
}
