package workuptally.book.cells;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.book.files.FormatSection;
import workuptally.book.files.NumberFormat;
import workuptally.book.files.RawCell;
import workuptally.book.files.ShownAs;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;

/** Reads a raw cell as a number, whether it stores one or a text that says one. */
public final class CellNumber {
    /** Digits that a stored binary number is good for. */
    private static final MathContext STORED_DIGITS = new MathContext(15);

    private static final Pattern STORED =
            Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,2})?");

    private CellNumber() {}

    /** The number, nothing, or the fault. */
    public static NumberText read(RawCell cell) {
        return read(cell, NumberText.Marks.UNKNOWN, NumberSymbols.ANY);
    }

    /** The same for a cell of a column; see {@link NumberText#parse(String, NumberText.Marks, NumberSymbols)}. */
    public static NumberText read(RawCell cell, NumberText.Marks marks, NumberSymbols symbols) {
        return switch (cell.type()) {
            case TEXT -> NumberText.parse(cell.text(), marks, symbols);
            case NUMBER, COMPUTED_NUMBER -> stored(cell, symbols);
            case ERROR ->
                new NumberText.Fault(
                        FindingCode.FORMULA_ERROR, "", "Correct the formula, recalculate, save and run again.");
            case NOT_CALCULATED ->
                new NumberText.Fault(
                        FindingCode.FORMULA_NOT_CALCULATED,
                        "a formula with its result",
                        "Open the book in a spreadsheet program, recalculate, save and run again; write the value in place of a"
                                + " formula that changes with each opening, such as TODAY.");
            case MERGED -> new NumberText.Fault(FindingCode.MERGED_CELLS, "", "");
            case STRUCK -> new NumberText.Fault(FindingCode.STRUCK_OUT, "", "");
        };
    }

    private static NumberText stored(RawCell cell, NumberSymbols symbols) {
        ShownAs shown = cell.shownAs();
        if (shown.isDate()) {
            return dateInNumber();
        }
        if (!STORED.matcher(cell.text()).matches()) {
            return new NumberText.Fault(FindingCode.NUMBER_UNREADABLE, "", "Correct the cell and run again.");
        }
        BigDecimal value = shortest(cell.text());
        if (shown.format().isPresent()) {
            return dressed(cell, value, shown.format().get(), symbols);
        }
        boolean percent = shown.kind() == ShownAs.Kind.PERCENT;
        return plain(cell, percent ? value.movePointRight(2) : value, shown.decimals(), percent);
    }

    private static NumberText.Number plain(RawCell cell, BigDecimal value, int shownDecimals, boolean percent) {
        int own = Math.max(0, value.scale());
        int decimals = cell.type() == RawCell.Type.COMPUTED_NUMBER && shownDecimals > 0
                ? shownDecimals
                : Math.max(own, shownDecimals);
        return new NumberText.Number(
                value, Qualifier.EXACT, decimals, percent ? Optional.of(Unit.PERCENT) : Optional.empty());
    }

    private static NumberText.Fault dateInNumber() {
        return new NumberText.Fault(
                FindingCode.DATE_IN_NUMBER,
                "",
                "The cell is formatted as a date: enter the number again and run again.");
    }

    /** A number that its format dresses: what is shown counts where it says the stored number, and more; else neither does. */
    private static NumberText dressed(RawCell cell, BigDecimal value, NumberFormat format, NumberSymbols symbols) {
        Optional<FormatSection> section = format.section(value);
        if (section.filter(FormatSection::date).isPresent()) {
            return dateInNumber();
        }
        String text = format.show(value).orElse("");
        if (section.isEmpty() || !section.get().isCertain() || text.isEmpty()) {
            return shownOtherwise(value);
        }
        if (section.get().isPlain() && !format.hidesSign(value)) {
            boolean percent = section.get().percents() == 1;
            return plain(
                    cell,
                    percent ? value.movePointRight(2) : value,
                    section.get().decimals(),
                    percent);
        }
        NumberText read = NumberText.parse(text, NumberText.Marks.UNKNOWN, symbols);
        boolean nothing = read instanceof NumberText.Nothing && value.signum() == 0;
        if (read instanceof NumberText.NotDetected || nothing || isLimitInWords(read, value, section.get())) {
            return read;
        }
        int power = 2 * section.get().percents();
        BigDecimal meant = value.movePointRight(power);
        if (read instanceof NumberText.Number number
                && section.get().thousandsLeftOut() == 0
                && number.halfWidth().signum() == 0
                && number.qualifier() != Qualifier.DROPS
                && number.qualifier() != Qualifier.RANGE
                && section.get().hasDigits()
                && (number.value().signum() != 0 || saysOne(section.get(), symbols))
                && number.value().subtract(meant).abs().compareTo(rounding(section.get())) <= 0) {
            NumberText.Number stored = plain(cell, meant, section.get().decimals(), false);
            return new NumberText.Number(
                    stored.value(),
                    number.qualifier(),
                    stored.decimals(),
                    number.unit(),
                    BigDecimal.ZERO,
                    number.remark());
        }
        return shownOtherwise(value);
    }

    /** True where a format says a limit instead of the number, {@code [<0.1]"<0.1"}, and the number keeps it. */
    private static boolean isLimitInWords(NumberText read, BigDecimal value, FormatSection section) {
        if (section.hasDigits() || !(read instanceof NumberText.Number limit)) {
            return false;
        }
        int order = value.compareTo(limit.value());
        return limit.qualifier() == Qualifier.BELOW && order <= 0 || limit.qualifier() == Qualifier.ABOVE && order >= 0;
    }

    /** True where the text of a format leaves a number what it is; a zero does not show whether thousands are meant. */
    private static boolean saysOne(FormatSection section, NumberSymbols symbols) {
        String one = section.around("1");
        return NumberText.parse(one, NumberText.Marks.UNKNOWN, symbols) instanceof NumberText.Number number
                && number.value().compareTo(BigDecimal.ONE) == 0;
    }

    /** What rounding to the decimals shown can change. */
    private static BigDecimal rounding(FormatSection section) {
        return new BigDecimal("0.5000001").movePointLeft(section.mostDecimals());
    }

    private static NumberText.Fault shownOtherwise(BigDecimal stored) {
        return new NumberText.Fault(
                FindingCode.SHOWN_OTHERWISE,
                "what the cell shows to be the number it stores, " + stored.toPlainString(),
                "Give the cell a plain number format, or write what is meant as text, and run again.");
    }

    /** A stored number without the tail that binary arithmetic leaves, 0.3 for 0.30000000000000004, and without trailing zeros. */
    private static BigDecimal shortest(String stored) {
        BigDecimal value = new BigDecimal(stored).round(STORED_DIGITS).stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    /** The text of a cell as a reader of the book sees it. */
    public static String shown(RawCell cell) {
        if (cell.isStruck() && !cell.shownAs().isGeneral()) {
            return shown(new RawCell(cell.column(), RawCell.Type.NUMBER, cell.text(), cell.shownAs()));
        }
        if (!cell.isNumber()) {
            return BookWords.tidy(cell.text());
        }
        if (cell.shownAs().isDate()) {
            return DateText.shown(cell);
        }
        if (cell.shownAs().format().isPresent()) {
            return dressedText(cell);
        }
        return read(cell) instanceof NumberText.Number number ? shown(cell, number) : cell.text();
    }

    private static String dressedText(RawCell cell) {
        boolean number = STORED.matcher(cell.text()).matches();
        BigDecimal value = number ? shortest(cell.text()) : BigDecimal.ZERO;
        NumberFormat format = cell.shownAs().format().orElseThrow();
        boolean date = format.section(value).filter(FormatSection::date).isPresent();
        return number && !date ? format.show(value).orElse(cell.text()) : cell.text();
    }

    /** False for a stored number without a number format: 4.00 is stored and shown as 4. */
    public static boolean showsItsDigits(RawCell cell) {
        return !cell.isNumber() || !cell.shownAs().isGeneral();
    }

    /** The same for a cell that was read as a number already. */
    public static String shown(RawCell cell, NumberText.Number number) {
        if (!cell.isNumber()) {
            return BookWords.tidy(cell.text());
        }
        if (cell.shownAs().format().isPresent()) {
            return dressedText(cell);
        }
        BigDecimal value = number.value().scale() < number.decimals()
                ? number.value().setScale(number.decimals())
                : number.value();
        return cell.shownAs().kind() == ShownAs.Kind.PERCENT ? value.toPlainString() + " %" : value.toPlainString();
    }
}
