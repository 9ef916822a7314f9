package workuptally.book.tables;

import java.util.Optional;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawCell;
import workuptally.book.files.ShownAs;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;

/**
 * Why a number is not taken, with what its column allows and what to do.
 *
 * @param code the finding
 * @param expected what is allowed
 * @param action what to do
 */
record Refusal(FindingCode code, String expected, String action) {
    /** A cell with a percent format that shows more than this was typed as a percentage before it was given that format. */
    private static final double MOST_IN_A_PERCENT_CELL = 150;

    /** What speaks against reading the number in its unit; empty where nothing does. */
    static Optional<Refusal> ofUnit(SchemaColumn column, Unit typed, Unit target, boolean acidOfSeveralProtons) {
        if (typed.quantity() != target.quantity()) {
            return Optional.of(new Refusal(
                    FindingCode.UNIT_WRONG,
                    column.expectedIn(target),
                    "Correct the number or its unit and run again."));
        }
        return typed == Unit.NORMAL && acidOfSeveralProtons
                ? Optional.of(new Refusal(
                        FindingCode.UNIT_WRONG,
                        column.expectedIn(target) + "; N counts each proton of an acid",
                        "Write mol/L and run again."))
                : Optional.empty();
    }

    /**
     * What speaks against the number itself; empty where nothing does.
     *
     * @param value the number in the unit of the form
     * @param halfWidth half of the range that was typed, in that unit
     */
    static Optional<Refusal> ofValue(
            SchemaColumn column, RawCell cell, NumberText.Number number, Unit target, double value, double halfWidth) {
        boolean percentCell = cell.isNumber() && cell.shownAs().kind() == ShownAs.Kind.PERCENT;
        if (percentCell && value > MOST_IN_A_PERCENT_CELL) {
            return Optional.of(
                    new Refusal(
                            FindingCode.PERCENT_CELL_TOO_LARGE,
                            column.expectedIn(target),
                            "The cell has a percent format and shows a hundred times its number: enter it again and run again."));
        }
        if (!column.takes(number.qualifier())) {
            return Optional.of(ofQualifier(column, number.qualifier(), target));
        }
        // a measured value near an end of the range may spread beyond it
        double spread = number.qualifier() == Qualifier.EXACT ? 0 : halfWidth;
        if (!column.range().holds(value - spread) || !column.range().holds(value + spread)) {
            return Optional.of(new Refusal(FindingCode.VALUE_IMPOSSIBLE, column.expectedIn(target), TableRow.CORRECT));
        }
        return column.isCount() && value != Math.rint(value)
                ? Optional.of(new Refusal(FindingCode.VALUE_IMPOSSIBLE, "a whole number", TableRow.CORRECT))
                : Optional.empty();
    }

    private static Refusal ofQualifier(SchemaColumn column, Qualifier qualifier, Unit target) {
        return qualifier == Qualifier.RANGE
                ? new Refusal(
                        FindingCode.NUMBER_UNREADABLE,
                        column.expectedIn(target),
                        "Write the middle of the range with 'ca.' before it and run again.")
                : new Refusal(
                        FindingCode.LIMIT_AS_AMOUNT,
                        column.expectedIn(target) + "; a limit tells no amount",
                        "Enter the amount, with 'ca.' before it if it is rough, and run again.");
    }
}
