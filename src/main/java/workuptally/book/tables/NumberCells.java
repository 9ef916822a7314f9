package workuptally.book.tables;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.Doubt;
import workuptally.book.cells.NumberText;
import workuptally.book.cells.PortionText;
import workuptally.book.files.RawCell;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.Quantity;
import workuptally.book.words.Range;
import workuptally.book.words.SeveralProtons;
import workuptally.book.words.Unit;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;
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
    Field number(SchemaColumn column, Optional<RawCell> cell, Unit usual, Unit target) {
        return number(column, cell, usual, target, false);
    }

    /**
     * The same.
     *
     * @param total true where several numbers of the cell add up
     */
    Field number(SchemaColumn column, Optional<RawCell> cell, Unit usual, Unit target, boolean total) {
        if (cell.isEmpty()) {
            return Field.NoNumber.BLANK;
        }
        if (!headings.unitIsReadable(column.heading())) {
            return Field.NoNumber.UNREADABLE;
        }
        NumberText read = one(column, read(column, cell.get()), total);
        if (read instanceof NumberText.Number number) {
            return converted(column, cell.get(), number, number.unit().orElse(usual), target);
        }
        return notANumber(column, cell.get(), read);
    }

    /** The number of a cell, several numbers left apart; {@code 1,702} is read by what the column takes, else by how the book writes. */
    NumberText read(SchemaColumn column, RawCell cell) {
        NumberText read = headings.read(column, cell);
        if (read instanceof NumberText.Ambiguous ambiguous) {
            return inRange(column, ambiguous).orElseGet(() -> ambiguous.fault(cell.text()));
        }
        return read;
    }

    /** Unit written beside the number, if any. */
    Optional<Unit> unit(SchemaColumn column, RawCell cell) {
        return read(column, cell) instanceof NumberText.Number number ? number.unit() : Optional.empty();
    }

    /** The one reading that the column can take, if only one can. */
    private static Optional<NumberText> inRange(SchemaColumn column, NumberText.Ambiguous ambiguous) {
        boolean decimal = fits(column, ambiguous.decimal());
        boolean thousands = fits(column, ambiguous.thousands());
        return decimal == thousands
                ? Optional.empty()
                : Optional.of(decimal ? ambiguous.decimal() : ambiguous.thousands());
    }

    private static boolean fits(SchemaColumn column, NumberText text) {
        if (!(text instanceof NumberText.Number number)) {
            return false;
        }
        Unit own = column.unit().orElse(Unit.ONE);
        Unit typed = number.unit().orElse(own);
        return typed.quantity() != own.quantity()
                || column.range().holds(typed.convert(number.value(), own).doubleValue());
    }

    /** Several numbers as one, where the column means one by them. */
    NumberText one(SchemaColumn column, NumberText read, boolean total) {
        if (!(read instanceof NumberText.Several several)) {
            return read;
        }
        NumberText.Number a = several.numbers().get(0);
        NumberText.Number b = several.numbers().get(several.numbers().size() - 1);
        boolean alike = several.numbers().stream().allMatch(n -> n.unit().equals(a.unit()));
        return switch (several.together()) {
            case SUM -> total && alike ? total(several.numbers()) : severalNumbers(column);
            case PORTIONS ->
                total
                        ? product(a, b)
                        : headings.has("Portions")
                                ? portions()
                                : severalFault("Write the total of the portions and run again.");
            case DIFFERENCE ->
                column.means(SchemaColumn.Several.DIFFERENCE)
                                && alike
                                && a.unit()
                                        .filter(u -> u.quantity() != Quantity.MASS)
                                        .isEmpty()
                        ? new NumberText.Number(
                                        a.value().subtract(b.value()),
                                        Qualifier.EXACT,
                                        Math.max(a.decimals(), b.decimals()),
                                        a.unit())
                                .with(new NumberText.Remark(Severity.NOTE, ""))
                        : severalNumbers(column);
            case SLASH ->
                column.means(SchemaColumn.Several.STEPS) && alike
                        ? between(a, b)
                        : column.means(SchemaColumn.Several.QUOTIENT) ? quotient(a, b) : severalNumbers(column);
            case COLON -> column.means(SchemaColumn.Several.RATIO) ? ratio(a, b) : severalNumbers(column);
        };
    }

    /** Their sum; all of one unit. */
    static NumberText.Number total(List<NumberText.Number> numbers) {
        BigDecimal sum = numbers.stream().map(NumberText.Number::value).reduce(BigDecimal.ZERO, BigDecimal::add);
        int decimals =
                numbers.stream().mapToInt(NumberText.Number::decimals).max().orElse(0);
        return new NumberText.Number(
                sum, Qualifier.EXACT, decimals, numbers.get(0).unit());
    }

    private static NumberText product(NumberText.Number count, NumberText.Number each) {
        return PortionText.isCount(count)
                ? new NumberText.Number(
                        count.value().multiply(each.value()), Qualifier.EXACT, each.decimals(), each.unit())
                : severalFault("Write the total and run again.");
    }

    private static NumberText between(NumberText.Number a, NumberText.Number b) {
        BigDecimal half =
                b.value().subtract(a.value()).divide(BigDecimal.valueOf(2)).abs();
        return new NumberText.Number(
                a.value().min(b.value()).add(half),
                Qualifier.RANGE,
                Math.max(a.decimals(), b.decimals()),
                a.unit(),
                half,
                Optional.empty());
    }

    private static NumberText quotient(NumberText.Number a, NumberText.Number b) {
        boolean plain = a.unit().isEmpty() && b.unit().isEmpty() && b.value().signum() > 0;
        return plain
                ? new NumberText.Number(
                        a.value().divide(b.value(), 12, RoundingMode.HALF_EVEN), Qualifier.EXACT, 2, Optional.empty())
                : severalFault("Write one number and run again.");
    }

    /** {@code 60:1} as everybody means it; {@code 1:60} may have been written the other way about. */
    private static NumberText ratio(NumberText.Number a, NumberText.Number b) {
        NumberText read = quotient(a, b);
        return read instanceof NumberText.Number number && a.value().compareTo(b.value()) < 0
                ? number.with(new NumberText.Remark(Severity.CHECK, ""))
                : read;
    }

    private static NumberText portions() {
        return new NumberText.Fault(
                FindingCode.PORTIONS_IN_NUMBER,
                "one number; the number of portions has its own column",
                "Enter the count under Portions and the size of one portion here, then run again.");
    }

    private static NumberText severalNumbers(SchemaColumn column) {
        return severalFault(
                "Write one number under " + column.heading() + " and run again; the others go under Notes.");
    }

    private static NumberText severalFault(String action) {
        return NumberText.unreadable(action);
    }

    /**
     * {@code 1.87 g / 10 mmol}: one amount said twice, of which the first counts; nothing where the two are of one quantity or lack a unit.
     */
    static Optional<NumberText> saidTwice(NumberText read) {
        if (!(read instanceof NumberText.Several several)
                || several.numbers().size() != 2
                || several.numbers().stream().anyMatch(n -> n.unit().isEmpty())
                || several.together() != NumberText.Together.SLASH && several.together() != NumberText.Together.SUM) {
            return Optional.empty();
        }
        NumberText.Number first = several.numbers().get(0);
        Quantity other = several.numbers().get(1).unit().orElseThrow().quantity();
        return first.unit().orElseThrow().quantity() == other
                ? Optional.empty()
                : Optional.of(first.with(new NumberText.Remark(Severity.NOTE, "")));
    }

    /** What a cell without a number is: blank, or unreadable and reported. */
    Field notANumber(SchemaColumn column, RawCell cell, NumberText read) {
        boolean unknownShare = read instanceof NumberText.NotDetected && column.takesLimits() && !column.isResult();
        if (read instanceof NumberText.Nothing || unknownShare) {
            return Field.NoNumber.BLANK; // not determined, where nothing is looked for
        }
        if (read instanceof NumberText.Fault fault) {
            row.reportCell(fault.code(), column, cell, fault.expected(), fault.action());
        } else {
            row.reportCell(
                    FindingCode.NOT_DETECTED_OUTSIDE_ASSAYS,
                    column,
                    cell,
                    column.expected() + "; 'n.d.' is a result of an assay only",
                    "Enter the number, or '<' and a limit, and run again.");
        }
        return Field.NoNumber.UNREADABLE;
    }

    /** A number converted from the unit typed; unreadable and reported where unit or range do not fit the column. */
    Field converted(SchemaColumn column, RawCell cell, NumberText.Number number, Unit typed, Unit target) {
        Optional<Refusal> ofUnit = Refusal.ofUnit(column, typed, target, namesAcidOfSeveralProtons());
        if (ofUnit.isPresent()) {
            return refused(column, cell, ofUnit.get());
        }
        double value = typed.convert(number.value(), target).doubleValue();
        double halfWidth = number.halfWidth()
                .scaleByPowerOfTen(-typed.decimalsGainedIn(target))
                .doubleValue();
        Optional<Refusal> ofValue = Refusal.ofValue(column, cell, number, target, value, halfWidth);
        if (ofValue.isPresent()) {
            return refused(column, cell, ofValue.get());
        }
        Optional<Doubt> doubt = Doubt.of(column, number, value);
        if (doubt.isPresent()) {
            row.report(
                    doubt.get().code(),
                    column.need().severity(),
                    column.heading(),
                    "read '" + TableRow.seen(cell) + "'",
                    doubt.get().expected(),
                    doubt.get().action());
            return Field.NoNumber.UNREADABLE;
        }
        if (value == 0 && column.isUncertainty()) {
            row.report(
                    FindingCode.UNCERTAINTY_ZERO,
                    Severity.NOTE,
                    column.heading(),
                    "read '" + TableRow.seen(cell) + "'",
                    "a standard uncertainty above 0, or a blank cell; nothing is measured exactly",
                    "Enter what repeats or the certificate tell, or leave the cell blank; it was read as blank, so that the"
                            + " usual uncertainty of the method or instrument counts.");
            return Field.NoNumber.BLANK;
        }
        remark(column, cell, number, value);
        int decimals = Math.max(0, number.decimals() + typed.decimalsGainedIn(target));
        return row.entered(
                new Field.Figure(
                        value,
                        number.qualifier(),
                        decimals,
                        CellNumber.shown(cell, number),
                        CellNumber.showsItsDigits(cell),
                        halfWidth),
                column.heading());
    }

    private Field refused(SchemaColumn column, RawCell cell, Refusal refusal) {
        row.reportCell(refusal.code(), column, cell, refusal.expected(), refusal.action());
        return Field.NoNumber.UNREADABLE;
    }

    private void remark(SchemaColumn column, RawCell cell, NumberText.Number number, double value) {
        if (column.range() == Range.ASSAY && value > 100) {
            row.report(
                    FindingCode.ASSAY_OVER_100,
                    Severity.CHECK,
                    column.heading(),
                    "read '" + TableRow.seen(cell) + "'",
                    "a content by mass of up to 100 %",
                    "Correct the cell, or leave it if it is what was measured; it was used as it stands.");
        }
        if (number.qualifier() == Qualifier.DROPS) {
            row.report(
                    FindingCode.DROPS_COUNTED,
                    Severity.NOTE,
                    column.heading(),
                    "read drops as about " + number.value().stripTrailingZeros().toPlainString() + " mL",
                    "a volume; a drop is about 0.05 mL, 0.03 to 0.07 mL by dropper and liquid",
                    "Enter the volume in mL if the amount matters; until then the estimate counts with a standard"
                            + " uncertainty of 25 %.");
        }
        number.remark().ifPresent(remark -> remarked(column, cell, number, remark.severity()));
    }

    private void remarked(SchemaColumn column, RawCell cell, NumberText.Number number, Severity severity) {
        boolean spreads = number.halfWidth().signum() > 0;
        String half = number.halfWidth().stripTrailingZeros().toPlainString();
        row.report(
                FindingCode.WORDS_BESIDE_NUMBER,
                severity,
                column.heading(),
                "read " + number.value().toPlainString() + " from '" + TableRow.seen(cell) + "'"
                        + (spreads ? ", within " + half + " to either side" : ""),
                column.expected() + " alone",
                severity == Severity.CHECK
                        ? "Check that the number is the one the column means; write it alone, the rest under Notes."
                        : spreads
                                ? "Nothing, if that is meant: amounts and results count it as a range."
                                : "Nothing, if the number is the one the column means; what stands beside it was not used.");
    }

    /** True where the row is about an acid or base that counts more than once in a normal solution. */
    private boolean namesAcidOfSeveralProtons() {
        return row.hasColumn("Material")
                && SeveralProtons.named(
                        row.text("Material") + " " + (row.hasColumn("Formula") ? row.text("Formula") : ""));
    }
}
