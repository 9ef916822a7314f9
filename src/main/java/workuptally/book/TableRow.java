package workuptally.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.model.Amount;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.model.Step;

/** One row of a table of the book, read cell by cell by the headings of the form; what cannot be understood goes to the log. */
final class TableRow {
    static final String CORRECT = "Correct the cell and run again.";

    private static final int MOST_CHOICES_NAMED = 8;

    private final RawRow raw;
    private final MatchedHeadings headings;
    private final Map<String, Column> columns;
    private final FindingLog log;
    private final Recurring recurring;
    private final RowPlace place;
    private final NumberCells numbers;
    private String run = "";

    TableRow(RawRow raw, MatchedHeadings headings, Map<String, Column> columns, FindingLog log, Recurring recurring) {
        this.raw = raw;
        this.headings = headings;
        this.columns = columns;
        this.log = log;
        this.recurring = recurring;
        this.place = new RowPlace(headings.place(), raw.row(), raw.line());
        this.numbers = new NumberCells(this, headings);
    }

    /** Says which run the row belongs to, for the findings that follow. */
    void belongsTo(String runId) {
        this.run = runId;
    }

    RowPlace place() {
        return place;
    }

    boolean isBlank() {
        return columns.keySet().stream().allMatch(heading -> cell(heading).isEmpty());
    }

    boolean isBlank(String heading) {
        return cell(heading).isEmpty();
    }

    Optional<RawCell> cell(String heading) {
        return headings.cell(raw, heading);
    }

    /** Reports a fault at the cell under a heading. */
    void report(String code, Severity severity, String heading, String seen, String expected, String action) {
        log.add(code, severity, run, place.at(heading), seen, expected, action);
    }

    /** Reports a fault of a cell; without words of its own it says what the column wants. */
    void reportCell(String code, Column column, RawCell cell, String expected, String action) {
        if (cell.type() == RawCell.Type.MERGED) {
            return; // reported once for the region
        }
        report(
                code,
                column.need().severity(),
                column.heading(),
                "read '" + seen(cell) + "'",
                expected.isEmpty() ? column.expected() : expected,
                action.isEmpty() ? CORRECT : action);
    }

    static String seen(RawCell cell) {
        return cell.type() == RawCell.Type.NOT_CALCULATED ? "a formula without result" : CellNumber.shown(cell);
    }

    /** Text of a cell, trimmed; empty where blank or not readable. */
    String text(String heading) {
        // names of materials, vessels and layers stand in many rows
        return cell(heading)
                .map(cell -> text(columns.get(heading), cell).intern())
                .orElse("");
    }

    private String text(Column column, RawCell cell) {
        return switch (cell.type()) {
            case TEXT, NUMBER, COMPUTED_NUMBER -> CellNumber.shown(cell);
            case ERROR -> {
                reportCell("formula-error", column, cell, "", "Correct the formula, recalculate, save and run again.");
                yield "";
            }
            case NOT_CALCULATED -> {
                reportCell(
                        "formula-not-calculated",
                        column,
                        cell,
                        "a formula with its result",
                        "Open the book in a spreadsheet program, recalculate, save and run again.");
                yield "";
            }
            case MERGED -> "";
        };
    }

    /** Text of a cell that the row cannot do without; nothing if it is missing, which is then reported. */
    Optional<String> key(String heading) {
        Optional<RawCell> cell = cell(heading);
        if (cell.isEmpty()) {
            report(
                    heading.equals("Run") ? "run-missing" : "key-missing",
                    Severity.STOP,
                    heading,
                    "read an empty cell in a row with other entries",
                    columns.get(heading).help(),
                    "Fill the cell or empty the row, then run again; the row was left out.");
            return Optional.empty();
        }
        return Optional.of(text(heading)).filter(text -> !text.isEmpty());
    }

    /** A number in the unit of the form. */
    Field number(String heading) {
        Column column = columns.get(heading);
        Unit own = column.unit().orElse(Unit.ONE);
        return numbers.number(column, cell(heading), headings.unit(heading).orElse(own), own);
    }

    /** A number of portions, which may carry a times sign: {@code 3 x}. */
    Field count(String heading) {
        Optional<RawCell> cell = cell(heading);
        Optional<Integer> count = cell.flatMap(PortionText::of)
                .filter(p -> p.each().isEmpty() && p.count() > 0)
                .map(PortionText::count);
        return count.isEmpty()
                ? number(heading)
                : entered(new Field.Figure(count.get(), Qualifier.EXACT, 0, seen(cell.get())), heading);
    }

    /** A number entered under a heading. */
    Field entered(Field.Figure figure, String heading) {
        return new Field.Entered(recurring.one(figure), place, heading);
    }

    /**
     * A number of portions and the size of each, written in one cell.
     *
     * @param count number of portions
     * @param each size of one
     */
    record Portioned(Field count, Field each) {}

    /** Count and size of {@code 3 x 30 mL}; nothing for any other text, and where another count stands in its own column. */
    Optional<Portioned> portioned(String heading, Field count) {
        Optional<PortionText> text = cell(heading)
                .flatMap(PortionText::of)
                .filter(p -> p.count() > 0 && NumberText.parse(p.each()) instanceof NumberText.Number)
                .filter(p -> count.isBlank()
                        || count.entered().filter(c -> c.value() == p.count()).isPresent());
        if (text.isEmpty()) {
            return Optional.empty();
        }
        RawCell whole = cell(heading).orElseThrow();
        Column column = columns.get(heading);
        Unit own = column.unit().orElse(Unit.ONE);
        Field each = numbers.number(
                column,
                Optional.of(RawCell.text(whole.column(), text.get().each())),
                headings.unit(heading).orElse(own),
                own);
        Field portions = entered(new Field.Figure(text.get().count(), Qualifier.EXACT, 0, seen(whole)), heading);
        return Optional.of(new Portioned(count.isBlank() ? portions : count, each));
    }

    /** An amount whose unit stands in the cell, in the unit column or in the heading; nothing where blank. */
    Optional<Amount> amount(String heading, String unitHeading) {
        return new AmountCells(this, headings, numbers).amount(columns.get(heading), columns.get(unitHeading));
    }

    /**
     * A number in a given unit, for a cell whose unit stands in another column.
     *
     * @param usual unit where the cell has none
     * @param target unit of the number wanted
     * @param notDetectedAllowed true where {@code n.d.} is a value
     */
    Field numberIn(String heading, Unit usual, Unit target, boolean notDetectedAllowed) {
        Column column = columns.get(heading);
        Optional<RawCell> cell = cell(heading);
        if (notDetectedAllowed && cell.isPresent() && CellNumber.read(cell.get()) instanceof NumberText.NotDetected) {
            return entered(new Field.Figure(0, Qualifier.NOT_DETECTED, 0, seen(cell.get())), heading);
        }
        return numbers.number(column, cell, usual, target);
    }

    /** Unit written beside the number within the cell, if any. */
    Optional<Unit> unitInCell(String heading) {
        return cell(heading)
                .map(CellNumber::read)
                .filter(NumberText.Number.class::isInstance)
                .flatMap(number -> ((NumberText.Number) number).unit());
    }

    /** Unit in the heading of a column, if it names one. */
    Optional<Unit> unitInHeading(String heading) {
        return headings.unit(heading);
    }

    /** One of a choice; nothing where blank or not understood. */
    <E extends Enum<E>> Optional<E> choice(String heading, E[] values) {
        String text = text(heading);
        Optional<E> found = recurring.one(Words.find(values, headings.word(text)));
        if (found.isEmpty() && !text.isEmpty() && !isDash(text)) {
            reportUnknownChoice(heading, text);
        }
        return found;
    }

    private void reportUnknownChoice(String heading, String text) {
        Column column = columns.get(heading);
        report(
                "choice-unknown",
                column.need().severity(),
                heading,
                "read '" + text + "'",
                column.expected(),
                (column.choices().size() > MOST_CHOICES_NAMED
                                ? "Write a word of the column's list"
                                : "Write " + String.join(", ", column.choices()))
                        + ", or map your own in the headings file, and run again.");
    }

    private static boolean isDash(String text) {
        return NumberText.parse(text) instanceof NumberText.Nothing;
    }

    /** Yes or no; nothing where blank or not understood. */
    Optional<Boolean> yesOrNo(String heading) {
        String text = text(heading);
        return switch (Words.loose(headings.word(text))) {
            case "yes", "y", "true" -> Optional.of(true);
            case "no", "n", "false" -> Optional.of(false);
            case "" -> Optional.empty();
            default -> {
                reportUnknownChoice(heading, text);
                yield Optional.empty();
            }
        };
    }

    /** A day; nothing where blank or not understood. */
    Optional<LocalDate> date(String heading) {
        Optional<RawCell> cell = cell(heading);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        DateText read = DateText.read(cell.get());
        if (read instanceof DateText.Fault fault) {
            reportCell(fault.code(), columns.get(heading), cell.get(), fault.expected(), CORRECT);
        }
        return read instanceof DateText.Day day ? recurring.one(Optional.of(day.day())) : Optional.empty();
    }

    /** Labels joined by + (or by comma or semicolon), each once; the reaction mixture is always {@code RM}. */
    List<String> labels(String heading) {
        String text = text(heading);
        if (text.isEmpty() || isDash(text)) {
            return List.of();
        }
        return Arrays.stream(text.split("[+,;]"))
                .map(String::strip)
                .filter(label -> !label.isEmpty())
                .map(label -> label.equalsIgnoreCase(Step.REACTION_MIXTURE) ? Step.REACTION_MIXTURE : label)
                .distinct()
                .toList();
    }

    /**
     * Parts joined by ;, each a name followed by a number.
     *
     * @param unit unit wanted, and meant where none is written
     * @param example what a cell should look like
     * @param loneNumber number of a part that is only a name, if that is allowed
     */
    List<NamedNumber> parts(String heading, Unit unit, String example, Optional<Double> loneNumber) {
        List<NamedNumber> parts = new ArrayList<>();
        for (String piece : text(heading).split(";")) {
            String text = piece.strip();
            if (text.isEmpty() || isDash(text)) {
                continue;
            }
            Optional<NamedNumber> part = NamedNumber.read(text, unit)
                    .or(() -> loneNumber
                            .filter(n -> !text.matches(".*\\s[\\d.,]+"))
                            .map(n -> new NamedNumber(text, n)));
            if (part.isEmpty()) {
                report(
                        "parts-unreadable",
                        columns.get(heading).need().severity(),
                        heading,
                        "read '" + text + "'",
                        "parts such as '" + example + "'",
                        CORRECT);
                return List.of();
            }
            parts.add(part.get());
        }
        return parts;
    }

    /** A list, the same for all rows of the table where it is equal. */
    <T> List<T> shared(List<T> list) {
        return recurring.one(List.copyOf(list));
    }

    /** Gross with its tare: a gross below the tare is reported and cannot be used. */
    Field grossAbove(Field gross, Field tare) {
        if (gross instanceof Field.Entered g && tare instanceof Field.Entered t && g.value() < t.value()) {
            log.add(
                    "gross-below-tare",
                    Severity.STOP,
                    run,
                    g.place(),
                    "read gross '" + g.asTyped() + "' and tare '" + t.asTyped() + "'",
                    "a gross of at least the tare",
                    "Look up which of the two is wrong, correct it and run again.");
            return Field.NoNumber.UNREADABLE;
        }
        return gross;
    }
}
