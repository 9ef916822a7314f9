package workuptally.book;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.model.Field.Qualifier;

/** Reads a raw cell as a number, whether it stores one or a text that says one. */
final class CellNumber {
    /** Digits that a stored binary number is good for. */
    private static final MathContext STORED_DIGITS = new MathContext(15);

    private static final Pattern STORED =
            Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,2})?");

    private CellNumber() {}

    /** The number, nothing, or the fault. */
    static NumberText read(RawCell cell) {
        return switch (cell.type()) {
            case TEXT -> NumberText.parse(cell.text());
            case NUMBER, COMPUTED_NUMBER -> stored(cell);
            case ERROR ->
                new NumberText.Fault("formula-error", "", "Correct the formula, recalculate, save and run again.");
            case NOT_CALCULATED ->
                new NumberText.Fault(
                        "formula-not-calculated",
                        "a formula with its result",
                        "Open the book in a spreadsheet program, recalculate, save and run again.");
            case MERGED -> new NumberText.Fault("merged-cells", "", "");
        };
    }

    private static NumberText stored(RawCell cell) {
        ShownAs shown = cell.shownAs();
        if (shown.isDate()) {
            return new NumberText.Fault(
                    "date-in-number", "", "The cell is formatted as a date: enter the number again and run again.");
        }
        if (!STORED.matcher(cell.text()).matches()) {
            return new NumberText.Fault("number-unreadable", "", "Correct the cell and run again.");
        }
        BigDecimal value = shortest(cell.text());
        if (shown.kind() == ShownAs.Kind.PERCENT) {
            value = value.movePointRight(2);
        }
        int own = Math.max(0, value.scale());
        int decimals = cell.type() == RawCell.Type.COMPUTED_NUMBER && shown.decimals() > 0
                ? shown.decimals()
                : Math.max(own, shown.decimals());
        Optional<Unit> unit =
                shown.kind() == ShownAs.Kind.PERCENT ? Optional.of(Unit.PERCENT) : Unit.named(shown.unitText());
        return new NumberText.Number(value, Qualifier.EXACT, decimals, unit);
    }

    /** A stored number without the tail that binary arithmetic leaves, 0.3 for 0.30000000000000004, and without trailing zeros. */
    private static BigDecimal shortest(String stored) {
        BigDecimal value = new BigDecimal(stored).round(STORED_DIGITS).stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    /** The text of a cell as a reader of the book sees it. */
    static String shown(RawCell cell) {
        if (!cell.isNumber()) {
            return Words.tidy(cell.text());
        }
        if (cell.shownAs().isDate()) {
            return DateText.shown(cell);
        }
        return read(cell) instanceof NumberText.Number number ? shown(cell, number) : cell.text();
    }

    /** False for a stored number without a number format: 4.00 is stored and shown as 4. */
    static boolean showsItsDigits(RawCell cell) {
        return !cell.isNumber() || !cell.shownAs().isGeneral();
    }

    /** The same for a cell that was read as a number already. */
    static String shown(RawCell cell, NumberText.Number number) {
        if (!cell.isNumber()) {
            return Words.tidy(cell.text());
        }
        BigDecimal value = number.value().scale() < number.decimals()
                ? number.value().setScale(number.decimals())
                : number.value();
        String unit = cell.shownAs().kind() == ShownAs.Kind.PERCENT
                ? "%"
                : cell.shownAs().unitText();
        return unit.isEmpty() ? value.toPlainString() : value.toPlainString() + " " + unit;
    }
}
