package workuptally.book.headings;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.book.cells.BookMarks;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.DateText;
import workuptally.book.cells.DayOrder;
import workuptally.book.cells.NumberSymbols;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.TablePlace;

/** The headings of a table of the book, matched with those of the form. */
public final class MatchedHeadings {
    /** Rows from the top within which the headings must stand. */
    private static final int DEEPEST_HEADING_ROW = 20;

    /** Three digits behind a point, which are thousands where decimals stand behind commas. */
    private static final Pattern THREE_BEHIND_A_POINT = Pattern.compile(".*[1-9]\\d{0,2}\\.\\d{3}(?!\\d).*");

    /** A line of several cells that the marks of the file do not part. */
    private static final Pattern OTHER_SEPARATORS = Pattern.compile("[^;,\\t|]*(?:;[^;]*;.*|,[^,]*,.*|\\t.*|\\|.*)");

    /** Column of what stands in no cell of a list but holds for all its rows. */
    private static final int NO_COLUMN = -1;

    private final RawRow headingRow;
    private final HeadingAliases aliases;
    private final BookMarks marks;
    private final String table;
    private final Map<SchemaColumn, NumberSymbols> symbols = new IdentityHashMap<>();
    private final Map<String, DayOrder> dayOrders = new HashMap<>();
    private final TablePlace place;
    private final HeadingUnits units;

    private final RawTable raw;
    private final Map<String, String> constants;
    private final boolean ofList;

    /** What a reading of headings goes by. */
    public record Reading(HeadingAliases aliases, BookMarks marks, FindingLog log) {}

    private MatchedHeadings(
            RawTable raw,
            Table table,
            HeadingRow candidate,
            Map<String, String> constants,
            boolean isList,
            Reading reading) {
        FindingLog log = reading.log();
        this.raw = raw;
        this.ofList = isList;
        this.headingRow = candidate.row();
        this.table = table.name();
        this.aliases = reading.aliases();
        this.marks = reading.marks();
        this.constants = Map.copyOf(constants);
        Map<String, Integer> columns = new HashMap<>();
        constants.keySet().forEach(heading -> columns.put(heading, NO_COLUMN));
        candidate
                .first()
                .forEach((column, typed) ->
                        columns.put(column.heading(), typed.cell().column()));
        Map<String, String> own = new HashMap<>();
        if (isList) {
            candidate
                    .first()
                    .forEach((column, typed) ->
                            own.put(column.heading(), typed.cell().text()));
        }
        this.place = new TablePlace(raw.file(), raw.sheet(), raw.spreadsheet(), columns, own);
        this.units = new HeadingUnits(raw, candidate);
        candidate.first().forEach((column, typed) -> units.read(column, typed, log));
        new OtherHeadings(raw, table, candidate, log).report(isList);
    }

    /** Looks for the row that holds the headings; the first row with all key headings wins, else the one with most headings. */
    public static Optional<MatchedHeadings> find(
            RawTable raw, Table table, HeadingAliases aliases, BookMarks marks, FindingLog log) {
        HeadingRow best = null;
        for (RawRow row :
                raw.rows().subList(0, Math.min(DEEPEST_HEADING_ROW, raw.rows().size()))) {
            HeadingRow candidate = HeadingRow.of(row, table, aliases);
            int most = best == null ? 0 : best.first().size();
            if (candidate.first().size() > most) {
                best = candidate;
            }
            if (!table.keyHeadings().isEmpty() && candidate.holds(table.keyHeadings())) {
                break;
            }
        }
        return best == null
                ? Optional.empty()
                : Optional.of(new MatchedHeadings(raw, table, best, Map.of(), false, new Reading(aliases, marks, log)));
    }

    /** The headings of a row further down that has all key headings again: those of a second table on the sheet. */
    public Optional<MatchedHeadings> repeatedIn(RawRow row, RawTable raw, Table form, FindingLog log) {
        if (form.keyHeadings().isEmpty() || !row.cells().stream().allMatch(cell -> cell.type() == RawCell.Type.TEXT)) {
            return Optional.empty();
        }
        String firstKey = form.keyHeadings().get(0);
        boolean mayBe = cell(row, firstKey)
                        .filter(c -> BookWords.loose(c.text()).equals(BookWords.loose(firstKey)))
                        .isPresent()
                || row.cells().stream().anyMatch(c -> BookWords.loose(c.text()).equals(BookWords.loose(firstKey)));
        if (!mayBe) {
            return Optional.empty();
        }
        HeadingRow candidate = HeadingRow.of(row, form, aliases);
        return candidate.holds(form.keyHeadings())
                ? Optional.of(
                        new MatchedHeadings(raw, form, candidate, Map.of(), false, new Reading(aliases, marks, log)))
                : Optional.empty();
    }

    /**
     * Takes a row below the headings that holds nothing but units, {@code (mg)}, as belonging to them; true if it is one.
     *
     * <p>A unit that a column cannot have is reported, and its numbers are not used.
     */
    public boolean takeUnits(RawRow row, Table form, FindingLog log) {
        if (row.row() > headingRow.row() + 2 || !HeadingUnits.isRowOfUnits(row)) {
            return false;
        }
        for (SchemaColumn column : form.columns()) {
            cell(row, column.heading())
                    .filter(cell -> !BookWords.loose(cell.text()).isEmpty())
                    .ifPresent(cell -> units.readBelow(column, cell, row, log));
        }
        return true;
    }

    /** The headings of a laboratory's own list, as a feed of a table matches them; what the list lacks is reported. */
    public static MatchedHeadings ofList(RawTable raw, OwnListFeed feed, OwnListHeader header, Reading reading) {
        FindingLog log = reading.log();
        HeadingRow candidate = new HeadingRow(header.lastRow(), new LinkedHashMap<>(), new LinkedHashMap<>());
        feed.columns().forEach((column, names) -> {
            Optional<OwnListHeader.Heading> own = header.heading(names.get(0));
            if (own.isPresent()) {
                String unit = Optional.ofNullable(feed.units().get(column))
                        .or(() -> OwnHeadingUnit.of(own.get().text()).map(OwnHeadingUnit::text))
                        .orElse("");
                candidate.add(
                        column,
                        new HeadingRow.Typed(
                                RawCell.text(own.get().column(), own.get().key()),
                                unit.isEmpty() ? column.heading() : column.heading() + " (" + unit + ")"));
            } else {
                log.add(
                        FindingCode.LIST_HEADING_MISSING,
                        column.need().severity(),
                        "",
                        new Place(raw.file(), raw.sheet(), header.lastRow().row(), -1, ""),
                        "the headings file names '" + names.get(0) + "' for " + column.heading() + " of "
                                + feed.table().name() + ", which the list lacks",
                        "a heading of the list",
                        "Correct the name in the headings file or in the list and run again; until then it counts as"
                                + " blank.");
            }
        });
        Map<String, String> constants = new LinkedHashMap<>();
        feed.constants().forEach((column, text) -> constants.put(column.heading(), text));
        MatchedHeadings matched = new MatchedHeadings(raw, feed.table(), candidate, constants, true, reading);
        candidate.first().forEach((column, typed) -> matched.units.require(column, typed, log));
        return matched;
    }

    /** Reads a cell of a column by the marks of the table. */
    public NumberText read(SchemaColumn column, RawCell cell) {
        NumberSymbols names = symbols.computeIfAbsent(column, NumberSymbols::of);
        if (cell.type() != RawCell.Type.TEXT) {
            if (cell.isNumber() && cell.text().indexOf('.') >= 0) {
                marks.meet(table, cell.text()); // the same evidence as in the CSV form of the book
            }
            return CellNumber.read(cell, NumberText.Marks.UNKNOWN, names);
        }
        NumberText.Marks known = marks.of(table);
        NumberText read = CellNumber.read(cell, known, names);
        if (read instanceof NumberText.Ambiguous) {
            marks.leaveOpen();
        } else if (read instanceof NumberText.Number) {
            marks.meet(table, cell.text());
            if (THREE_BEHIND_A_POINT.matcher(cell.text()).matches()) {
                marks.leaveOpen();
            }
        }
        return read;
    }

    /**
     * The date of a cell. Where day and month cannot be told apart, the other dates of its column decide, else the marks of the book: who
     * writes decimal commas puts the day first.
     */
    public DateText date(String heading, RawCell cell) {
        DateText alone = DateText.read(cell, DayOrder.OPEN);
        if (!(alone instanceof DateText.Fault fault) || fault.code() != DateText.AMBIGUOUS) {
            return alone;
        }
        DayOrder order = dayOrders.computeIfAbsent(heading, this::dayOrder);
        if (order == DayOrder.OPEN) {
            marks.leaveOpen();
        }
        return DateText.read(
                cell, order == DayOrder.OPEN && marks.of(table) == NumberText.Marks.COMMA ? DayOrder.DAY_FIRST : order);
    }

    private DayOrder dayOrder(String heading) {
        return DayOrder.of(raw.rows().stream()
                .flatMap(row -> cell(row, heading).stream())
                .filter(cell -> cell.type() == RawCell.Type.TEXT)
                .map(RawCell::text)
                .toList());
    }

    /** The word of the form for a word of a choice. */
    public String word(String typed) {
        return aliases.word(typed);
    }

    public int row() {
        return headingRow.row();
    }

    /** True for the headings of a laboratory's own list. */
    public boolean isOfList() {
        return ofList;
    }

    /** The last column that has a heading, from 0. */
    public int lastColumn() {
        return headingRow.cells().get(headingRow.cells().size() - 1).column();
    }

    /**
     * True for a line of a CSV file that does not fit the headings: filled beyond the last of them by more than a remark, parted by other marks, or longer than their line by blank cells
     * where two cells side by side can be the halves of a number whose decimal comma was taken for a separator.
     */
    public boolean isShifted(RawRow row, Table form) {
        if (raw.spreadsheet() || row.cells().isEmpty()) {
            return false;
        }
        RawCell last = row.cells().get(row.cells().size() - 1);
        boolean filledBeyond = last.column() > lastColumn()
                && !new RemarkBehindHeadings(form.columns(), place.columns()).isIn(row, headingRow);
        boolean notParted = row.width() == 1
                && headingRow.width() > 2
                && OTHER_SEPARATORS.matcher(last.text()).matches();
        return filledBeyond
                || notParted
                || row.width() > headingRow.width() && headingRow.width() > 0 && row.holdsHalvesOfANumber();
    }

    public TablePlace place() {
        return place;
    }

    public boolean has(String heading) {
        return place.columns().containsKey(heading);
    }

    public Optional<RawCell> cell(RawRow row, String heading) {
        Integer column = place.columns().get(heading);
        if (column == null) {
            return Optional.empty();
        }
        return column == NO_COLUMN
                ? Optional.of(RawCell.text(
                        NO_COLUMN, constants.get(heading).replace(OwnListFeed.ROW_NUMBER, String.valueOf(row.row()))))
                : row.cell(column);
    }

    /** False for what holds for all rows and for a heading that the table lacks. */
    public boolean isColumn(String heading) {
        return place.columns().getOrDefault(heading, NO_COLUMN) != NO_COLUMN;
    }

    /** Unit in the heading, if it names one. */
    public Optional<Unit> unit(String heading) {
        return units.of(heading);
    }

    /** True where the heading names another unit than the unit column does for a number; this was reported. */
    public boolean contradicts(SchemaColumn column, Unit beside, FindingLog log) {
        return units.contradicts(column, beside, log);
    }

    /** False if the heading names a unit that is none of the column; this was reported. */
    public boolean unitIsReadable(String heading) {
        return units.isReadable(heading);
    }

    /** Key headings that the table lacks. */
    public List<String> missing(Table table) {
        return table.keyHeadings().stream().filter(heading -> !has(heading)).toList();
    }
}
