package workuptally.book;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import workuptally.model.Place;
import workuptally.model.TablePlace;

/** The headings of a table of the book, matched with those of the form. */
final class MatchedHeadings {
    /** Rows from the top within which the headings must stand. */
    private static final int DEEPEST_HEADING_ROW = 20;

    private static final Pattern DECIMAL_POINT = Pattern.compile("\\d\\.\\d");

    private final RawRow headingRow;
    private final RawTable raw;
    private Optional<Boolean> decimalCommas = Optional.empty();
    private final TablePlace place;
    private final Map<String, Unit> units = new HashMap<>();
    private final Set<String> withoutReadableUnit = new HashSet<>();

    private MatchedHeadings(RawTable raw, Table table, RawRow headingRow, HeadingAliases aliases, FindingLog log) {
        this.headingRow = headingRow;
        this.raw = raw;
        Map<String, Column> byName = new HashMap<>();
        table.columns().forEach(column -> byName.put(Words.loose(column.heading()), column));
        Map<String, RawCell> cells = new LinkedHashMap<>();
        Map<String, RawCell> repeated = new LinkedHashMap<>();
        for (RawCell cell : headingRow.cells()) {
            Optional<Column> column = columnOf(table, cell, aliases, byName);
            column.ifPresent(c -> (cells.containsKey(c.heading()) ? repeated : cells).putIfAbsent(c.heading(), cell));
        }
        Map<String, Integer> columns = new HashMap<>();
        cells.forEach((heading, cell) -> columns.put(heading, cell.column()));
        this.place = new TablePlace(raw.file(), raw.sheet(), raw.spreadsheet(), columns);
        Map<String, Column> byHeading = table.columnsByHeading();
        cells.forEach((heading, cell) -> readUnit(byHeading.get(heading), cell, table, aliases, log));
        repeated.forEach((heading, cell) -> reportRepeated(byHeading.get(heading), cells.get(heading), cell, log));
    }

    /** Looks for the row that holds the headings; the first row with all key headings wins, else the one with most headings. */
    static Optional<MatchedHeadings> find(RawTable raw, Table table, HeadingAliases aliases, FindingLog log) {
        Map<String, Column> byName = new HashMap<>();
        table.columns().forEach(column -> byName.put(Words.loose(column.heading()), column));
        Set<String> keys = new HashSet<>(table.keyHeadings());
        RawRow best = null;
        int most = 0;
        for (RawRow row :
                raw.rows().subList(0, Math.min(DEEPEST_HEADING_ROW, raw.rows().size()))) {
            Set<String> found = new HashSet<>();
            row.cells()
                    .forEach(cell ->
                            columnOf(table, cell, aliases, byName).ifPresent(column -> found.add(column.heading())));
            if (found.size() > most) {
                best = row;
                most = found.size();
            }
            if (!keys.isEmpty() && found.containsAll(keys)) {
                break;
            }
        }
        return best == null ? Optional.empty() : Optional.of(new MatchedHeadings(raw, table, best, aliases, log));
    }

    private static Optional<Column> columnOf(
            Table table, RawCell cell, HeadingAliases aliases, Map<String, Column> byName) {
        if (cell.type() != RawCell.Type.TEXT || cell.isBlank()) {
            return Optional.empty();
        }
        String heading = ownHeading(table, cell.text(), aliases);
        Column whole = byName.get(Words.loose(heading));
        return Optional.ofNullable(
                whole != null ? whole : byName.get(HeadingText.of(heading).name()));
    }

    /** The form's heading for a typed one, tried whole and then without its unit, which is kept. */
    private static String ownHeading(Table table, String typed, HeadingAliases aliases) {
        String whole = aliases.heading(table, typed);
        if (!whole.equals(typed)) {
            return whole;
        }
        HeadingText parts = HeadingText.of(typed);
        String bare = aliases.heading(table, parts.name());
        return bare.equals(parts.name()) || parts.unitText().isEmpty() ? typed : bare + " (" + parts.unitText() + ")";
    }

    private void readUnit(Column column, RawCell cell, Table table, HeadingAliases aliases, FindingLog log) {
        String unitText =
                HeadingText.of(ownHeading(table, cell.text(), aliases)).unitText();
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
                unit.isPresent() ? "unit-wrong" : "unit-unknown",
                column.need().severity(),
                "",
                cellPlace(cell),
                "read the heading '" + Words.tidy(cell.text()) + "'",
                "a unit for " + column.expected(),
                "Correct the unit in the heading and run again; the numbers of this column were not used.");
    }

    private void reportRepeated(Column column, RawCell first, RawCell second, FindingLog log) {
        log.add(
                "heading-duplicate",
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

    /**
     * True where all numbers of the table are typed as text, some with a decimal comma and none with a decimal point. Looked up only when
     * asked.
     */
    boolean writesDecimalCommas() {
        if (decimalCommas.isEmpty()) {
            List<RawCell> numbers = raw.rows().stream()
                    .flatMap(row -> row.cells().stream())
                    .filter(cell -> CellNumber.read(cell) instanceof NumberText.Number)
                    .toList();
            decimalCommas = Optional.of(numbers.stream()
                            .anyMatch(cell -> cell.text().indexOf(',') >= 0)
                    && numbers.stream()
                            .noneMatch(cell -> cell.isNumber()
                                    || DECIMAL_POINT.matcher(cell.text()).find()));
        }
        return decimalCommas.get();
    }

    int row() {
        return headingRow.row();
    }

    TablePlace place() {
        return place;
    }

    boolean has(String heading) {
        return place.columns().containsKey(heading);
    }

    Optional<RawCell> cell(RawRow row, String heading) {
        Integer column = place.columns().get(heading);
        return column == null ? Optional.empty() : row.cell(column);
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
