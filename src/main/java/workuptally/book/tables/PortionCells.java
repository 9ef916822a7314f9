package workuptally.book.tables;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.cells.NumberText;
import workuptally.book.cells.PortionText;
import workuptally.book.files.RawCell;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** Reads a count and a size out of one cell, {@code 3 x 30 mL}, as a wash in portions is written down at the bench. */
final class PortionCells {
    /** Words that a size is that of one portion, before or behind it: {@code je 30 mL}, {@code 3x je 30 mL}, {@code 30 mL each}. */
    private static final Pattern EACH = Pattern.compile(
            "(?iu)(?<=^|[x×*] ?)(?:je(?:weils)?|each|à|chaque)(?= ?[\\d.,])|(?<=[\\d\\p{L}.] ?)(?<![\\p{L}])(?:each|je(?:weils)?|apiece|chacune?|chaque)$");

    /** Words how often a size was taken, behind it: {@code 30 mL twice}, {@code 30 mL, 3 times}. */
    private static final Pattern OFTEN = Pattern.compile(
            "(?iu)(?<=[\\d\\p{L}.])[ ,]+(?<count>(?:twice|thrice|(?:zwei|drei|vier)mal|(?:\\d{1,2}|two|three|four|zwei|drei|vier|deux|trois|quatre) (?:times|mal|fois)))$");

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

    /**
     * Count and size of {@code 3 x 30 mL}, and the size of {@code je 30 mL}, whose count stands elsewhere; nothing for any other text, and
     * where another count stands in its own column.
     */
    Optional<Portioned> portioned(SchemaColumn column, Field count) {
        String heading = column.heading();
        Optional<RawCell> cell = row.cell(heading);
        Optional<NumberText> number = cell.map(c -> numbers.read(column, withCount(withoutEach(c))));
        Optional<PortionText> read = number.flatMap(PortionText::of)
                .filter(p -> count.isBlank()
                        || count.entered().filter(c -> c.value() == p.count()).isPresent());
        if (read.isEmpty()) {
            return number.filter(NumberText.Number.class::isInstance)
                    .map(NumberText.Number.class::cast)
                    .filter(n -> n.remark().isEmpty() && saysEach(cell.get()))
                    .map(n -> ofEach(column, cell.get(), n, count));
        }
        PortionText portions = read.get();
        Field each = size(column, cell.get(), portions.each());
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

    /** The size of one portion; without a count anywhere it counts once, which is said. */
    private Portioned ofEach(SchemaColumn column, RawCell cell, NumberText.Number number, Field count) {
        if (count.isBlank()) {
            row.report(
                    FindingCode.WORDS_BESIDE_NUMBER,
                    Severity.CHECK,
                    column.heading(),
                    "read '" + TableRow.seen(cell) + "' without a number of portions",
                    "how many portions of this size",
                    "Enter the count under Portions; until then it counts as one portion.");
        }
        return new Portioned(count, size(column, cell, number));
    }

    private Field size(SchemaColumn column, RawCell cell, NumberText.Number number) {
        Unit own = column.unit().orElse(Unit.ONE);
        Unit typed = number.unit().orElse(headings.unit(column.heading()).orElse(own));
        return numbers.converted(column, cell, number, typed, own);
    }

    private static boolean saysEach(RawCell cell) {
        return cell.type() == RawCell.Type.TEXT
                && EACH.matcher(TypedText.plain(cell.text())).find();
    }

    private static RawCell withoutEach(RawCell cell) {
        return saysEach(cell)
                ? RawCell.text(
                        cell.column(),
                        EACH.matcher(TypedText.plain(cell.text()))
                                .replaceAll("")
                                .strip())
                : cell;
    }

    /** {@code 30 mL twice} as {@code 30 mL x 2}. */
    private static RawCell withCount(RawCell cell) {
        if (cell.type() != RawCell.Type.TEXT) {
            return cell;
        }
        Matcher often = OFTEN.matcher(TypedText.plain(cell.text()));
        return often.find() && NumberWords.count(often.group("count")) > 0
                ? RawCell.text(cell.column(), often.replaceAll(" x " + NumberWords.count(often.group("count"))))
                : cell;
    }
}
