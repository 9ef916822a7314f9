package workuptally.book.cells;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/**
 * A number as a person writes it: decimal point or comma, thousands grouped, {@code <0.10}, {@code ca. 40}, {@code 12,5 mL}, {@code 1-2},
 * {@code 97 (HPLC)}, {@code n.d.}.
 *
 * <p>What can be read in two ways is not decided here: {@code 1,234} may be a thousand or a little over one. The JDK's locale-bound parsing
 * is not used, since it stops silently at the first character it does not know.
 */
public sealed interface NumberText {

    /**
     * A number.
     *
     * @param value the number in the unit written beside it; the middle of a range
     * @param qualifier how it was qualified
     * @param decimals decimals written, 0 or more
     * @param unit unit written beside it, if any
     * @param halfWidth half of what it spans, by a range or an uncertainty beside it; 0 for one number
     * @param remark what else stands in the cell, if it is worth a finding
     */
    record Number(
            BigDecimal value,
            Qualifier qualifier,
            int decimals,
            Optional<Unit> unit,
            BigDecimal halfWidth,
            Optional<Remark> remark)
            implements NumberText {
        public Number(BigDecimal value, Qualifier qualifier, int decimals, Optional<Unit> unit) {
            this(value, qualifier, decimals, unit, BigDecimal.ZERO, Optional.empty());
        }

        /** The same number as a count of drops: a rough volume. */
        public Number ofDrops() {
            BigDecimal millilitres = value.multiply(MILLILITRES_PER_DROP);
            return new Number(
                    millilitres,
                    qualifier == Qualifier.EXACT || qualifier == Qualifier.ABOUT ? Qualifier.DROPS : qualifier,
                    Math.max(0, millilitres.scale()),
                    Optional.of(Unit.MILLILITRE));
        }

        Number qualified(Qualifier other) {
            return new Number(value, other, decimals, unit, halfWidth, remark);
        }

        Number in(Optional<Unit> other) {
            return new Number(value, qualifier, decimals, other, halfWidth, remark);
        }

        public Number with(Remark other) {
            return new Number(value, qualifier, decimals, unit, halfWidth, Optional.of(other));
        }
    }

    /**
     * What stands beside a number and was not used.
     *
     * @param severity how much it asks of the reader
     * @param words the words
     */
    record Remark(Severity severity, String words) {}

    /** How several numbers of one cell belong together. */
    enum Together {
        /** {@code 80 + 40}, {@code 50, 50}. */
        SUM,
        /** {@code 95.012 - 94.100}. */
        DIFFERENCE,
        /** {@code 2 x 50 mL}: the count, then the size of each. */
        PORTIONS,
        /** {@code 6/7}. */
        SLASH,
        /** {@code 60:1}. */
        COLON
    }

    /**
     * Several numbers; the column says whether they mean one.
     *
     * @param together how they belong together
     * @param numbers the numbers as written, each plain
     */
    record Several(Together together, List<Number> numbers) implements NumberText {}

    /**
     * A text with a comma or point that can be read in two ways.
     *
     * @param decimal the reading with a decimal mark
     * @param thousands the reading with a mark between thousands
     */
    record Ambiguous(NumberText decimal, NumberText thousands) implements NumberText {
        /**
         * The fault, where nothing tells which reading is meant.
         *
         * @param typed the text
         */
        public Fault fault(String typed) {
            boolean point = typed.indexOf(',') < 0;
            return new Fault(
                    AMBIGUOUS,
                    "a number that can be read in one way only; this is " + plain(thousands) + " or " + plain(decimal),
                    point
                            ? "Write it with a decimal comma, as the rest of the table, or without the point and run again."
                            : "Write it with a decimal point or without the comma and run again.");
        }

        private static String plain(NumberText text) {
            return text instanceof Number number ? number.value().toPlainString() : "another number";
        }
    }

    /** Not detected. */
    record NotDetected() implements NumberText {}

    /** Nothing, or a word or mark that stands for nothing. */
    record Nothing() implements NumberText {}

    /**
     * Not understood.
     *
     * @param code code of the finding
     * @param expected what would be understood; empty to say what the column holds
     * @param action what to do
     */
    record Fault(FindingCode code, String expected, String action) implements NumberText {}

    /** Which mark a table writes before decimals. */
    enum Marks {
        UNKNOWN,
        COMMA,
        POINT
    }

    /** The point of {@code 1.500} where the table writes decimals behind commas. */
    Pattern POINT_OF_THOUSANDS = Pattern.compile("(?<![\\d.,])([1-9]\\d{0,2})\\.(?=\\d{3}(?!\\d))");

    /** Code of a number that can be read in two ways. */
    FindingCode AMBIGUOUS = FindingCode.NUMBER_AMBIGUOUS;

    /** By common practice a drop of a water-like liquid from a usual dropper is about 0.05 mL. */
    BigDecimal MILLILITRES_PER_DROP = new BigDecimal("0.05");

    /** Reads a text that stands alone. */
    static NumberText parse(String typed) {
        return parse(typed, Marks.UNKNOWN, NumberSymbols.ANY);
    }

    /**
     * Reads a text of a column.
     *
     * @param marks how the table writes decimals
     * @param symbols what may stand before a number, {@code pH 7}
     */
    static NumberText parse(String typed, Marks marks, NumberSymbols symbols) {
        if (symbols.name("result") && Remarks.sayThatNobodyMeasured(typed)) {
            return unreadable();
        }
        NumberText read = new NumberReader(HowItWasGot.off(TypedText.plain(typed)), marks, symbols).read();
        if (marks == Marks.UNKNOWN && read instanceof Ambiguous) {
            return new Ambiguous(parse(typed, Marks.COMMA, symbols), parse(typed, Marks.POINT, symbols));
        }
        return marks == Marks.COMMA && read instanceof Ambiguous
                ? new Ambiguous(
                        parse(typed, Marks.UNKNOWN, symbols),
                        parse(POINT_OF_THOUSANDS.matcher(typed).replaceAll("$1"), Marks.UNKNOWN, symbols))
                : read;
    }

    /** True for a word that means drops. */
    static boolean meansDrops(String unit) {
        return NumberReader.DROPS.matcher(unit).matches();
    }

    static Fault unreadable() {
        return unreadable(
                "Write one number, such as 12.5, ca. 12 or <0.1 mL, or leave the cell blank; a remark goes under"
                        + " Notes. Then run again.");
    }

    static Fault unreadable(String action) {
        return new Fault(FindingCode.NUMBER_UNREADABLE, "", action);
    }

    static Fault unknownUnit(String unit) {
        return new Fault(
                FindingCode.UNIT_UNKNOWN,
                "",
                "Write a unit of the book's form instead of '" + unit + "' and run again.");
    }
}
