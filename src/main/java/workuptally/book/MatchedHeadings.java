package workuptally.book;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.model.TablePlace;

/** The headings of a table of the book, matched with those of the form. */
final class MatchedHeadings {
    /** Rows from the top within which the headings must stand. */
    private static final int DEEPEST_HEADING_ROW = 20;

    /** Three digits behind a point, which are thousands where decimals stand behind commas. */
    private static final Pattern THREE_BEHIND_A_POINT = Pattern.compile(".*[1-9]\\d{0,2}\\.\\d{3}(?!\\d).*");

    /** Column of what stands in no cell of a list but holds for all its rows. */
    private static final int NO_COLUMN = -1;

    private final RawRow headingRow;
    private final HeadingAliases aliases;
    private final BookMarks marks;
    private final String table;
    private final Map<Column, NumberSymbols> symbols = new HashMap<>();
    private final TablePlace place;
    private final Map<String, Unit> units = new HashMap<>();
    private final Set<String> withoutReadableUnit = new HashSet<>();

    private final RawTable raw;
    private final Map<String, String> constants;
    private final boolean ofList;

    /** What a reading of headings goes by. */
    record Reading(HeadingAliases aliases, BookMarks marks, FindingLog log) {}

    private MatchedHeadings(
            RawTable raw,
            Table table,
            Candidate candidate,
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
        candidate.first().forEach((column, typed) -> readUnit(column, typed, log));
        if (!isList) {
            nameOthers(table, candidate, log);
        }
        candidate
                .repeated()
                .forEach((column, typed) ->
                        reportRepeated(column, candidate.first().get(column).cell(), typed.cell(), log));
    }

    /**
     * A typed heading.
     *
     * @param heading the form's heading for it with the unit as typed, where the laboratory has its own; else what was typed
     */
    private record Typed(RawCell cell, String heading) {}

    /**
     * A row that may be that of the headings.
     *
     * @param first the first cell for each column of the form, in the order of the row
     * @param repeated a second cell for the same column
     */
    private record Candidate(RawRow row, Map<Column, Typed> first, Map<Column, Typed> repeated) {
        static Candidate of(RawRow row, Table table, HeadingAliases aliases) {
            Candidate candidate = new Candidate(row, new LinkedHashMap<>(), new LinkedHashMap<>());
            for (RawCell cell : row.cells()) {
                if (cell.type() == RawCell.Type.TEXT && !cell.isBlank()) {
                    Typed typed = new Typed(cell, ownHeading(table, cell.text(), aliases));
                    columnOf(table, typed.heading()).ifPresent(column -> candidate.add(column, typed));
                }
            }
            return candidate;
        }

        private void add(Column column, Typed typed) {
            (first.containsKey(column) ? repeated : first).putIfAbsent(column, typed);
        }

        boolean holds(List<String> keyHeadings) {
            return first.keySet().stream().map(Column::heading).toList().containsAll(keyHeadings);
        }
    }

    /** Looks for the row that holds the headings; the first row with all key headings wins, else the one with most headings. */
    static Optional<MatchedHeadings> find(
            RawTable raw, Table table, HeadingAliases aliases, BookMarks marks, FindingLog log) {
        Candidate best = null;
        for (RawRow row :
                raw.rows().subList(0, Math.min(DEEPEST_HEADING_ROW, raw.rows().size()))) {
            Candidate candidate = Candidate.of(row, table, aliases);
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
    Optional<MatchedHeadings> repeatedIn(RawRow row, RawTable raw, Table form, FindingLog log) {
        if (form.keyHeadings().isEmpty() || !row.cells().stream().allMatch(cell -> cell.type() == RawCell.Type.TEXT)) {
            return Optional.empty();
        }
        String firstKey = form.keyHeadings().get(0);
        boolean mayBe = cell(row, firstKey)
                        .filter(c -> Words.loose(c.text()).equals(Words.loose(firstKey)))
                        .isPresent()
                || row.cells().stream().anyMatch(c -> Words.loose(c.text()).equals(Words.loose(firstKey)));
        if (!mayBe) {
            return Optional.empty();
        }
        Candidate candidate = Candidate.of(row, form, aliases);
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
    boolean takeUnits(RawRow row, Table form, FindingLog log) {
        if (row.row() > headingRow.row() + 2
                || !row.cells().stream().allMatch(c -> c.type() == RawCell.Type.TEXT && isUnit(c.text()))) {
            return false;
        }
        for (Column column : form.columns()) {
            cell(row, column.heading())
                    .filter(cell -> !Words.loose(cell.text()).isEmpty())
                    .ifPresent(cell ->
                            readUnit(column, new Typed(cell, column.heading() + " (" + bare(cell.text()) + ")"), log));
        }
        return true;
    }

    private static boolean isUnit(String typed) {
        String text = bare(typed);
        return text.isEmpty()
                || text.equals("-")
                || text.equals("%")
                || Unit.named(text).isPresent();
    }

    private static String bare(String typed) {
        return TypedText.plain(typed)
                .replaceAll("^[(\\[]|[)\\]]$", "")
                .replaceFirst("^(?i:in) ", "")
                .strip();
    }

    /** The headings of a laboratory's own list, as a feed of a table matches them; what the list lacks is reported. */
    static MatchedHeadings ofList(RawTable raw, OwnListFeed feed, OwnListHeader header, Reading reading) {
        FindingLog log = reading.log();
        Candidate candidate = new Candidate(header.lastRow(), new LinkedHashMap<>(), new LinkedHashMap<>());
        feed.columns().forEach((column, names) -> {
            Optional<OwnListHeader.Heading> own = header.heading(names.get(0));
            if (own.isPresent()) {
                String unit = Optional.ofNullable(feed.units().get(column))
                        .or(() -> OwnHeadingUnit.of(own.get().text()).map(OwnHeadingUnit::text))
                        .orElse("");
                candidate.add(
                        column,
                        new Typed(
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
        candidate.first().forEach((column, typed) -> matched.requireUnit(column, typed, log));
        return matched;
    }

    /** In a list of its own a laboratory uses units of its own: a mass or volume without any is not taken to be in that of the form. */
    private void requireUnit(Column column, Typed typed, FindingLog log) {
        boolean sized = column.unit()
                .map(Unit::quantity)
                .filter(q -> q == Quantity.MASS || q == Quantity.VOLUME || q == Quantity.AMOUNT)
                .isPresent();
        if (!sized || units.containsKey(column.heading()) || withoutReadableUnit.contains(column.heading())) {
            return;
        }
        boolean bare = raw.rows().stream()
                .filter(row -> row.row() > headingRow.row())
                .flatMap(row -> row.cell(typed.cell().column()).stream())
                .anyMatch(cell -> CellNumber.read(cell) instanceof NumberText.Number number
                        && number.unit().isEmpty());
        if (bare) {
            withoutReadableUnit.add(column.heading());
            log.add(
                    FindingCode.UNIT_MISSING,
                    column.need().severity(),
                    "",
                    cellPlace(typed.cell()),
                    "read the heading '" + typed.cell().text() + "' without a unit over numbers without one",
                    "a unit for " + column.expected(),
                    "Write the unit in the headings file, such as \"" + column.heading() + " (mg)\", and run again; the"
                            + " numbers of this column were not used.");
        }
    }

    private static Optional<Column> columnOf(Table table, String heading) {
        return table.column(Words.loose(heading))
                .or(() -> table.column(HeadingText.of(heading).name()));
    }

    /** The form's heading for a typed one, tried whole and then without its unit, which is kept. */
    private static String ownHeading(Table table, String typed, HeadingAliases aliases) {
        if (!aliases.renames(table)) {
            return typed;
        }
        String whole = aliases.heading(table, typed);
        if (!whole.equals(typed)) {
            return whole;
        }
        HeadingText parts = HeadingText.of(typed);
        String bare = aliases.heading(table, parts.name());
        return bare.equals(parts.name()) || parts.unitText().isEmpty() ? typed : bare + " (" + parts.unitText() + ")";
    }

    private void readUnit(Column column, Typed typed, FindingLog log) {
        String unitText = HeadingText.of(typed.heading()).unitText();
        if (unitText.isEmpty()) {
            return;
        }
        Optional<Unit> unit = Unit.named(unitText);
        if (column.kind() == Column.Kind.NUMBER_WITH_UNIT) {
            unit.ifPresent(u -> units.put(column.heading(), u));
        }
        if (column.kind() != Column.Kind.NUMBER) {
            return;
        }
        Unit own = column.unit().orElse(Unit.ONE);
        if (unit.isPresent() && unit.get().quantity() == own.quantity()) {
            units.put(column.heading(), unit.get());
            return;
        }
        if (own == Unit.ONE && unit.isEmpty()) {
            return;
        }
        withoutReadableUnit.add(column.heading());
        log.add(
                unit.isPresent() ? FindingCode.UNIT_WRONG : FindingCode.UNIT_UNKNOWN,
                column.need().severity(),
                "",
                cellPlace(typed.cell()),
                "read the heading '" + Words.tidy(typed.cell().text()) + "'",
                "a unit for " + column.expected(),
                "Correct the unit in the heading and run again; the numbers of this column were not used.");
    }

    /** Headings that match no column: near ones are asked about, the others are the user's own. */
    private void nameOthers(Table form, Candidate candidate, FindingLog log) {
        List<Column> lacking = form.columns().stream()
                .filter(column -> !candidate.first().containsKey(column))
                .toList();
        for (RawCell cell : headingRow.cells()) {
            boolean matched = Stream.concat(candidate.first().values().stream(), candidate.repeated().values().stream())
                    .anyMatch(typed -> typed.cell() == cell);
            if (cell.type() != RawCell.Type.TEXT || cell.isBlank() || matched) {
                continue;
            }
            Optional<Column> meant = NearMiss.column(cell.text(), lacking);
            if (meant.isEmpty()) {
                log.leaveAlone(raw.sheet() + ": " + Words.tidy(cell.text()));
                continue;
            }
            log.add(
                    FindingCode.HEADING_NEAR_MISS,
                    Severity.CHECK,
                    "",
                    cellPlace(cell),
                    "a heading '" + Words.tidy(cell.text()) + "', whose column was not read",
                    "the heading " + meant.get().heading() + ", if that is meant",
                    "Write " + meant.get().heading() + " and run again; give a column of your own another name.");
        }
    }

    private void reportRepeated(Column column, RawCell first, RawCell second, FindingLog log) {
        log.add(
                FindingCode.HEADING_DUPLICATE,
                column.need().severity(),
                "",
                cellPlace(second),
                "read the heading '" + Words.tidy(second.text()) + "', which also stands at "
                        + cellPlace(first).inWords(),
                "each heading once",
                "Rename one of the two columns and run again; only the first was read.");
    }

    private Place cellPlace(RawCell cell) {
        TablePlace one = new TablePlace(
                place.file(), place.sheet(), place.spreadsheet(), Map.of(Words.tidy(cell.text()), cell.column()));
        return new workuptally.model.RowPlace(one, headingRow.row(), headingRow.line()).at(Words.tidy(cell.text()));
    }

    /** Reads a cell of a column by the marks of the table. */
    NumberText read(Column column, RawCell cell) {
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

    /** True where the book writes as those do who put the day before the month. */
    boolean putsDayFirst() {
        return marks.of(table) == NumberText.Marks.COMMA;
    }

    /** Says that a date stayed open which the marks of the book may decide. */
    void leaveDateOpen() {
        marks.leaveOpen();
    }

    /** The word of the form for a word of a choice. */
    String word(String typed) {
        return aliases.word(typed);
    }

    int row() {
        return headingRow.row();
    }

    /** True for the headings of a laboratory's own list. */
    boolean isOfList() {
        return ofList;
    }

    /** The last column that has a heading, from 0. */
    int lastColumn() {
        return headingRow.cells().get(headingRow.cells().size() - 1).column();
    }

    TablePlace place() {
        return place;
    }

    boolean has(String heading) {
        return place.columns().containsKey(heading);
    }

    Optional<RawCell> cell(RawRow row, String heading) {
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
    boolean isColumn(String heading) {
        return place.columns().getOrDefault(heading, NO_COLUMN) != NO_COLUMN;
    }

    /** Unit in the heading, if it names one. */
    Optional<Unit> unit(String heading) {
        return Optional.ofNullable(units.get(heading));
    }

    /** False if the heading names a unit that is none of the column; this was reported. */
    boolean unitIsReadable(String heading) {
        return !withoutReadableUnit.contains(heading);
    }

    /** Key headings that the table lacks. */
    List<String> missing(Table table) {
        return table.keyHeadings().stream().filter(heading -> !has(heading)).toList();
    }
}
