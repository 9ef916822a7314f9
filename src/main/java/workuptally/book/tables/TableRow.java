package workuptally.book.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.cells.PartsText;
import workuptally.book.cells.ScaleWord;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.FootnoteMarks;
import workuptally.book.words.LabelsText;
import workuptally.book.words.NamedNumber;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TotalRow;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.Amount;
import workuptally.model.Assay;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.FindingCode;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.model.Subject;

/** One row of a table of the book, read cell by cell by the headings of the form; what cannot be understood goes to the log. */
final class TableRow {
    static final String CORRECT = "Correct the cell and run again.";

    private final RawRow raw;
    private final MatchedHeadings headings;
    private final Map<String, SchemaColumn> columns;
    private final FindingLog log;
    private final Recurring recurring;
    private final RowPlace place;
    private final NumberCells numbers;
    private final ChoiceCells choices;
    private String run = "";

    TableRow(
            RawRow raw,
            MatchedHeadings headings,
            Map<String, SchemaColumn> columns,
            FindingLog log,
            Recurring recurring) {
        this.raw = raw;
        this.headings = headings;
        this.columns = columns;
        this.log = log;
        this.recurring = recurring;
        this.place = new RowPlace(headings.place(), raw.row(), raw.line());
        this.numbers = new NumberCells(this, headings);
        this.choices = new ChoiceCells(this, headings);
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

    boolean hasColumn(String heading) {
        return columns.containsKey(heading);
    }

    boolean isBlank(String heading) {
        return cell(heading).isEmpty();
    }

    Optional<RawCell> cell(String heading) {
        return headings.cell(raw, heading);
    }

    /** Reports a fault at the cell under a heading. */
    void report(FindingCode code, Severity severity, String heading, String seen, String expected, String action) {
        log.add(code, severity, run, place.at(heading), seen, expected, action);
    }

    /** The same of layers of the run. */
    void reportOf(List<String> layers, FindingCode code, String heading, String seen, String expected, String action) {
        log.add(
                code,
                code.severity(),
                Subject.ofRun(run).withLayers(layers),
                place.at(heading),
                seen,
                expected,
                action);
    }

    /** Reports a fault of a cell; without words of its own it says what the column wants. */
    void reportCell(FindingCode code, SchemaColumn column, RawCell cell, String expected, String action) {
        if (cell.type() == RawCell.Type.MERGED) {
            return; // reported once for the region
        }
        if (cell.isStruck()) {
            report(
                    FindingCode.STRUCK_OUT,
                    column.need().severity(),
                    column.heading(),
                    "read '" + seen(cell) + "', struck out",
                    column.expected() + "; what is struck out does not count",
                    "Take the strike off if the entry counts, else put the one that counts in its place or empty the"
                            + " cell, and run again.");
            return;
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
        boolean empty = cell.type() == RawCell.Type.NOT_CALCULATED
                || cell.isStruck() && cell.text().isEmpty();
        return empty ? "a formula without result" : CellNumber.shown(cell);
    }

    /** Text of a cell, trimmed; empty where blank or not readable. */
    String text(String heading) {
        Optional<RawCell> cell = cell(heading);
        // names of materials, vessels and layers stand in many rows
        return cell.isEmpty()
                ? ""
                : FootnoteMarks.off(heading, text(columns.get(heading), cell.get()))
                        .intern();
    }

    private String text(SchemaColumn column, RawCell cell) {
        if (cell.type() == RawCell.Type.TEXT || cell.isNumber()) {
            return CellNumber.shown(cell);
        }
        if (CellNumber.read(cell) instanceof NumberText.Fault fault) {
            reportCell(fault.code(), column, cell, fault.expected(), fault.action());
        }
        return "";
    }

    /** Text of a cell that the row cannot do without; nothing if it is missing, which is then reported. */
    Optional<String> key(String heading) {
        Optional<RawCell> cell = cell(heading);
        if (cell.isEmpty()) {
            report(
                    heading.equals("Run") ? FindingCode.RUN_MISSING : FindingCode.KEY_MISSING,
                    Severity.STOP,
                    heading,
                    "read an empty cell in a row with other entries",
                    columns.get(heading).help(),
                    "Fill the cell or empty the row, then run again; the row was left out.");
            return Optional.empty();
        }
        return Optional.of(text(heading)).filter(text -> !text.isEmpty());
    }

    /** True where nothing stands in the row but under one heading. */
    boolean holdsOnly(String heading) {
        return columns.keySet().stream()
                .allMatch(other -> other.equals(heading) != cell(other).isEmpty());
    }

    /**
     * The label of a thing that is recorded in the row; nothing if it is missing, or if the row adds up others, which is reported.
     */
    Optional<String> label(String heading) {
        Optional<String> label = key(heading);
        if (label.filter(TotalRow::isNamed).isPresent()) {
            report(
                    FindingCode.TOTAL_ROW,
                    Severity.CHECK,
                    heading,
                    "read '" + label.get() + "' in a row of a run",
                    "a row for each weighing or material",
                    "Nothing if the row adds up others: it was left out. Else give it a label of its own and run"
                            + " again.");
            return Optional.empty();
        }
        return label;
    }

    /** A number in the unit of the form. */
    Field number(String heading) {
        return number(heading, false);
    }

    /** A number in the unit of the form, to which several of one cell add up. */
    Field total(String heading) {
        return number(heading, true);
    }

    private Field number(String heading, boolean total) {
        Unit own = columns.get(heading).unit().orElse(Unit.ONE);
        return numbers.number(
                columns.get(heading), cell(heading), headings.unit(heading).orElse(own), own, total);
    }

    /** A number, or a word that stands for one: {@code neutral}, {@code rt}. */
    Field numberOrWord(String heading) {
        SchemaColumn column = columns.get(heading);
        Unit own = column.unit().orElse(Unit.ONE);
        Optional<NumberText.Number> word = cell(heading)
                .filter(c -> c.type() == RawCell.Type.TEXT)
                .flatMap(c -> ScaleWord.of(column, TypedText.plain(c.text())));
        return word.isEmpty()
                ? number(heading)
                : numbers.converted(column, cell(heading).orElseThrow(), word.get(), own, own);
    }

    /** A count, which may be a word or carry a times sign: {@code 3 x}, {@code three}. */
    Field count(String heading) {
        Optional<RawCell> cell = cell(heading);
        int count = cell.filter(c ->
                        c.type() == RawCell.Type.TEXT || c.shownAs().format().isPresent())
                .map(c -> NumberWords.count(TypedText.plain(CellNumber.shown(c))))
                .orElse(0);
        return count == 0
                ? number(heading)
                : entered(new Field.Figure(count, Qualifier.EXACT, 0, seen(cell.get())), heading);
    }

    /** A number entered under a heading. */
    Field entered(Field.Figure figure, String heading) {
        return new Field.Entered(recurring.one(figure), place, heading);
    }

    /** Count and size of {@code 3 x 30 mL}; nothing for any other text, and where another count stands in its own column. */
    Optional<PortionCells.Portioned> portioned(String heading, Field count) {
        return new PortionCells(this, headings, numbers).portioned(columns.get(heading), count);
    }

    /** An amount, no theory needing one set aside, with its unit in the cell, the unit column or the heading; nothing where blank. */
    Optional<Amount> amount(String amount, String unit, boolean aside) {
        return new AmountCells(this, headings, numbers)
                .amount(columns.get(amount).detailIf(aside), columns.get(unit));
    }

    /**
     * A number in a given unit, for a cell whose unit stands in another column.
     *
     * @param usual unit where the cell has none
     * @param target unit of the number wanted
     * @param notDetectedAllowed true where {@code n.d.} is a value
     */
    Field numberIn(String heading, Unit usual, Unit target, boolean notDetectedAllowed) {
        SchemaColumn column = columns.get(heading);
        Optional<RawCell> cell = cell(heading);
        if (notDetectedAllowed && saysNotDetected(heading)) {
            return entered(new Field.Figure(0, Qualifier.NOT_DETECTED, 0, seen(cell.get())), heading);
        }
        return numbers.number(column, cell, usual, target);
    }

    /** True where a cell says {@code n.d.}. */
    boolean saysNotDetected(String heading) {
        return cell(heading)
                .filter(cell -> headings.read(columns.get(heading), cell) instanceof NumberText.NotDetected)
                .isPresent();
    }

    /** Unit written beside the number within the cell, if any. */
    Optional<Unit> unitInCell(String heading) {
        return cell(heading).flatMap(cell -> numbers.unit(columns.get(heading), cell));
    }

    /** Unit in the heading of a column, if it names one. */
    Optional<Unit> unitInHeading(String heading) {
        return headings.unit(heading);
    }

    /** True where a heading names another unit than stands beside its number; this was reported. */
    boolean headingContradicts(String heading, Unit beside) {
        return headings.contradicts(columns.get(heading), beside, log);
    }

    /** One of a choice; nothing where blank or not understood. */
    <E extends Enum<E>> Optional<E> choice(String heading, E[] values) {
        return recurring.one(choices.choice(columns.get(heading), values));
    }

    /** The result of a test, where a mere dash could mean one and more than the plain word could take {@code clear} back: it is asked about. */
    <E extends Enum<E>> Optional<E> result(String heading, E[] values, E clear) {
        return recurring.one(choices.result(columns.get(heading), values, clear));
    }

    /** The method of an assay; one whose calibration a word beside it takes back is asked about. */
    Optional<Assay.Method> method(String heading) {
        return recurring.one(choices.method(columns.get(heading)));
    }

    /** Yes or no; nothing where blank or not understood. */
    Optional<Boolean> yesOrNo(String heading) {
        return choices.yesOrNo(columns.get(heading));
    }

    /** A day; nothing where blank or not understood. */
    Optional<LocalDate> date(String heading) {
        return recurring.one(cell(heading).flatMap(cell -> DayCell.read(columns.get(heading), cell, this, headings)));
    }

    /** Labels joined by + or its like, each once; see {@link LabelsText}. */
    List<String> labels(String heading, Predicate<String> known) {
        return LabelsText.read(text(heading), known);
    }

    /**
     * Parts joined by ;, each a name with a number.
     *
     * @param unit unit wanted, and meant where none is written
     * @param example what a cell should look like
     * @param loneNumber number of a part that is only a name, if that is allowed
     */
    List<NamedNumber> parts(String heading, Unit unit, String example, Optional<Double> loneNumber) {
        PartsText.Read read = PartsText.read(text(heading), unit, loneNumber);
        read.fault()
                .ifPresent(text -> report(
                        FindingCode.PARTS_UNREADABLE,
                        columns.get(heading).need().severity(),
                        heading,
                        "read '" + text + "'",
                        "parts such as '" + example + "'",
                        CORRECT));
        return read.parts();
    }

    /** A list, the same for all rows of the table where it is equal. */
    <T> List<T> shared(List<T> list) {
        return recurring.one(List.copyOf(list));
    }
}
