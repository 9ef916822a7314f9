package workuptally.book;

import java.util.Optional;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.Severity;

/** Numbers of one row: read by the decimal mark of the table, converted to the unit of the form, held against the range of the column. */
final class NumberCells {
    private final TableRow row;
    private final MatchedHeadings headings;

    NumberCells(TableRow row, MatchedHeadings headings) {
        this.row = row;
        this.headings = headings;
    }

    /** The number of a cell in the unit wanted; blank, or unreadable and reported, where there is none. */
    Field number(Column column, Optional<RawCell> cell, Unit usual, Unit target) {
        if (cell.isEmpty()) {
            return Field.NoNumber.BLANK;
        }
        if (!headings.unitIsReadable(column.heading())) {
            return Field.NoNumber.UNREADABLE;
        }
        NumberText read = read(cell.get());
        if (read instanceof NumberText.Number number) {
            return converted(column, cell.get(), number, number.unit().orElse(usual), target);
        }
        return notANumber(column, cell.get(), read);
    }

    /** The number of a cell; {@code 1,702} is read by the decimal comma where the other numbers of the table are written with one. */
    NumberText read(RawCell cell) {
        NumberText read = CellNumber.read(cell);
        boolean twoWays = read instanceof NumberText.Fault fault && fault.code().equals(NumberText.AMBIGUOUS);
        return twoWays && headings.writesDecimalCommas()
                ? NumberText.parse(cell.text().replace(',', '.'))
                : read;
    }

    /** What a cell without a number is: blank, or unreadable and reported. */
    Field notANumber(Column column, RawCell cell, NumberText read) {
        if (read instanceof NumberText.Nothing) {
            return Field.NoNumber.BLANK;
        }
        if (read instanceof NumberText.Fault fault) {
            row.reportCell(fault.code(), column, cell, fault.expected(), fault.action());
        } else {
            row.reportCell(
                    "not-detected-outside-assays",
                    column,
                    cell,
                    column.expected() + "; 'n.d.' is a result of an assay only",
                    "Enter the number, or '<' and a limit, and run again.");
        }
        return Field.NoNumber.UNREADABLE;
    }

    /** A number converted from the unit typed; unreadable and reported where unit or range do not fit the column. */
    Field converted(Column column, RawCell cell, NumberText.Number number, Unit typed, Unit target) {
        if (typed.quantity() != target.quantity()) {
            row.reportCell(
                    "unit-wrong",
                    column,
                    cell,
                    column.expectedIn(target),
                    "Correct the number or its unit and run again.");
            return Field.NoNumber.UNREADABLE;
        }
        boolean percentCell = cell.isNumber() && cell.shownAs().kind() == ShownAs.Kind.PERCENT;
        double value = typed.convert(number.value(), target).doubleValue();
        if (percentCell && value > 150) {
            row.reportCell(
                    "percent-cell-too-large",
                    column,
                    cell,
                    column.expectedIn(target),
                    "The cell has a percent format and shows a hundred times its number: enter it again and run again.");
            return Field.NoNumber.UNREADABLE;
        }
        boolean limit = number.qualifier() == Qualifier.BELOW || number.qualifier() == Qualifier.ABOVE;
        if (limit && column.kind() != Column.Kind.SETTING && !column.takesLimits()) {
            row.reportCell(
                    "limit-as-amount",
                    column,
                    cell,
                    column.expectedIn(target) + "; a limit tells no amount",
                    "Enter the amount, with 'ca.' before it if it is rough, and run again.");
            return Field.NoNumber.UNREADABLE;
        }
        if (!column.range().holds(value)) {
            row.reportCell("value-impossible", column, cell, column.expectedIn(target), TableRow.CORRECT);
            return Field.NoNumber.UNREADABLE;
        }
        if (column.range() == Range.ASSAY) {
            lookAtAssay(column, cell, number, value);
        }
        if (number.qualifier() == Qualifier.DROPS) {
            row.report(
                    "drops-counted",
                    Severity.NOTE,
                    column.heading(),
                    "read drops as about " + number.value().stripTrailingZeros().toPlainString() + " mL",
                    "a volume; a drop is about 0.05 mL, 0.03 to 0.07 mL by dropper and liquid",
                    "Enter the volume in mL if the amount matters; until then the estimate counts with a standard"
                            + " uncertainty of 25 %.");
        }
        int decimals = Math.max(0, number.decimals() + typed.decimalsGainedIn(target));
        return row.entered(
                new Field.Figure(
                        value,
                        number.qualifier(),
                        decimals,
                        CellNumber.shown(cell, number),
                        CellNumber.showsItsDigits(cell)),
                column.heading());
    }

    private void lookAtAssay(Column column, RawCell cell, NumberText.Number number, double value) {
        if (value > 100) {
            row.report(
                    "assay-over-100 C27",
                    Severity.CHECK,
                    column.heading(),
                    "read '" + TableRow.seen(cell) + "'",
                    "a content by mass of up to 100 %",
                    "Correct the cell, or leave it if it is what was measured; it was used as it stands.");
        } else if (value > 0 && value <= 1 && number.unit().isEmpty() && number.qualifier() == Qualifier.EXACT) {
            row.report(
                    "percent-as-fraction",
                    Severity.CHECK,
                    column.heading(),
                    "read '" + TableRow.seen(cell) + "'",
                    "a percentage; 0.95 means 0.95 %",
                    "Write 95 for 95 %, or '0.95 %' if that is meant, and run again; it was used as it stands.");
        }
    }
}
