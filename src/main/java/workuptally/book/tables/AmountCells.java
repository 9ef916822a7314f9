package workuptally.book.tables;

import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawCell;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.Unit;
import workuptally.model.Amount;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** Amounts of one row, each a number whose unit says whether it is a mass, a volume or an amount of substance. */
final class AmountCells {
    private static final Pattern LISTED = Pattern.compile("[,;] |;");

    private final TableRow row;
    private final MatchedHeadings headings;
    private final NumberCells numbers;

    AmountCells(TableRow row, MatchedHeadings headings, NumberCells numbers) {
        this.row = row;
        this.headings = headings;
        this.numbers = numbers;
    }

    /** An amount whose unit stands in the cell, in the unit column or in the heading; nothing where blank. */
    Optional<Amount> amount(SchemaColumn column, SchemaColumn unitColumn) {
        String heading = column.heading();
        Optional<RawCell> cell = row.cell(heading);
        String typedBeside = row.text(unitColumn.heading());
        if (row.isBlank(heading) && typedBeside.chars().anyMatch(Character::isDigit)) {
            return Optional.of(besideItsColumn(column, unitColumn, typedBeside));
        }
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        boolean inDrops = NumberText.meansDrops(typedBeside);
        String beside = inDrops ? Unit.MILLILITRE.symbol() : typedBeside;
        NumberText typed = numbers.read(column, cell.get());
        NumberText read = inDrops
                ? inDrops(typed)
                : NumberCells.saidTwice(typed)
                        .or(() -> added(cell.get(), typed))
                        .orElseGet(() -> numbers.one(column, typed, false));
        Optional<Unit> unitBeside = Unit.named(beside);
        if (!(read instanceof NumberText.Number number)) {
            Field field = numbers.notANumber(column, cell.get(), read);
            return field.isBlank()
                    ? Optional.empty()
                    : Optional.of(new Amount(
                            field, unitBeside.flatMap(AmountCells::dimension).orElse(Dimension.MASS), beside));
        }
        return unit(column, unitColumn, cell.get(), number, beside)
                .map(unit -> new Amount(
                        numbers.converted(
                                column,
                                cell.get(),
                                number,
                                unit,
                                base(dimension(unit).orElseThrow())),
                        dimension(unit).orElseThrow(),
                        unit.symbol()))
                .or(() -> Optional.of(new Amount(
                        Field.NoNumber.UNREADABLE,
                        unitBeside.flatMap(AmountCells::dimension).orElse(Dimension.MASS),
                        beside)));
    }

    /** The unit of an amount, in its cell, beside it or in the heading; empty where the number cannot be used for want of one. */
    private Optional<Unit> unit(
            SchemaColumn column, SchemaColumn unitColumn, RawCell cell, NumberText.Number number, String beside) {
        String heading = column.heading();
        Optional<Unit> unitBeside = Unit.named(beside);
        if (!beside.isEmpty() && unitBeside.flatMap(AmountCells::dimension).isEmpty()) {
            row.report(
                    unitBeside.isEmpty() ? FindingCode.UNIT_UNKNOWN : FindingCode.UNIT_WRONG,
                    column.need().severity(),
                    unitColumn.heading(),
                    "read '" + beside + "'",
                    unitColumn.expected(),
                    TableRow.CORRECT);
            return Optional.empty();
        }
        if (number.unit().isPresent() && unitBeside.isPresent() && number.unit().get() != unitBeside.get()) {
            row.reportCell(
                    FindingCode.UNIT_CONTRADICTION,
                    column,
                    cell,
                    "the unit beside it, " + beside,
                    "Keep one of the two units and run again.");
            return Optional.empty();
        }
        if (number.unit().isEmpty()
                && (!headings.unitIsReadable(heading)
                        || unitBeside
                                .filter(unit -> row.headingContradicts(heading, unit))
                                .isPresent())) {
            return Optional.empty();
        }
        Optional<Unit> unit = number.unit().or(() -> unitBeside).or(() -> headings.unit(heading));
        if (unit.isEmpty()) {
            row.report(
                    FindingCode.UNIT_MISSING,
                    column.need().severity(),
                    unitColumn.heading(),
                    "read '" + TableRow.seen(cell) + "' without a unit",
                    unitColumn.expected(),
                    "Enter the unit and run again.");
            return Optional.empty();
        }
        Optional<Dimension> dimension = dimension(unit.get());
        if (dimension.isEmpty()) {
            row.reportCell(FindingCode.UNIT_WRONG, column, cell, unitColumn.expected(), TableRow.CORRECT);
            return Optional.empty();
        }
        return unit;
    }

    /** A figure in the column of the unit, and none where it belongs. */
    private Amount besideItsColumn(SchemaColumn column, SchemaColumn unitColumn, String typed) {
        row.report(
                FindingCode.UNIT_UNKNOWN,
                column.need().severity(),
                unitColumn.heading(),
                "read '" + typed + "', and nothing under " + column.heading(),
                unitColumn.expected(),
                "Put the figure under " + column.heading()
                        + ", see whether other cells of the row are shifted, and run again.");
        return new Amount(Field.NoNumber.UNREADABLE, Dimension.MASS, typed);
    }

    /** {@code 3.50 + 3.50}: what was added in several goes, and said; figures side by side are no sum. */
    private static Optional<NumberText> added(RawCell cell, NumberText read) {
        return read instanceof NumberText.Several several
                        && several.together() == NumberText.Together.SUM
                        && !LISTED.matcher(cell.text()).find()
                        && several.numbers().stream()
                                .allMatch(n ->
                                        n.unit().equals(several.numbers().get(0).unit()))
                ? Optional.of(NumberCells.total(several.numbers()).with(new NumberText.Remark(Severity.NOTE, "")))
                : Optional.empty();
    }

    private static NumberText inDrops(NumberText read) {
        return read instanceof NumberText.Number count && count.unit().isEmpty() ? count.ofDrops() : read;
    }

    private static Optional<Dimension> dimension(Unit unit) {
        return switch (unit.quantity()) {
            case MASS -> Optional.of(Dimension.MASS);
            case VOLUME -> Optional.of(Dimension.VOLUME);
            case AMOUNT -> Optional.of(Dimension.AMOUNT);
            case EQUIVALENTS -> Optional.of(Dimension.EQUIVALENTS);
            default -> Optional.empty();
        };
    }

    private static Unit base(Dimension dimension) {
        return switch (dimension) {
            case MASS -> Unit.GRAM;
            case VOLUME -> Unit.MILLILITRE;
            case AMOUNT -> Unit.MILLIMOLE;
            case EQUIVALENTS -> Unit.EQUIVALENT;
        };
    }
}
