package workuptally.book.headings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;
import workuptally.model.TablePlace;

/**
 * The headings of a laboratory's own list. A heading over two lines is written {@code upper: lower}; an upper one counts for every column
 * that its merged cells span, or without merged cells for the columns right of it that have a lower heading alone. A heading that stands
 * again is {@code heading #2}; a column without one is {@code column F}. A row of units right below belongs to the headings.
 */
public final class OwnListHeader {
    /** Rows from the top within which the headings must stand. */
    public static final int DEEPEST_ROW = 20;

    private final List<RawRow> rows;
    private final RawRow last;
    private final List<Heading> headings;
    private final Map<String, Heading> byKey = new HashMap<>();

    /**
     * One heading.
     *
     * @param column column from 0
     * @param text its text, both lines of it, and the unit that a row of units below gives it
     * @param key how the headings file names it
     */
    public record Heading(int column, String text, String key) {}

    private OwnListHeader(List<RawRow> rows, RawRow last, List<Heading> headings) {
        this.rows = rows;
        this.last = last;
        this.headings = headings;
        headings.forEach(heading -> byKey.put(BookWords.loose(heading.key()), heading));
    }

    /** The headings in one row or two rows of a table. */
    static OwnListHeader of(RawTable raw, List<RawRow> rows) {
        Map<Integer, String> texts = texts(rows.get(0));
        if (rows.size() > 1) {
            texts = joined(spread(raw, rows.get(0), texts(rows.get(1))), texts(rows.get(1)));
        }
        Map<String, Integer> count = new HashMap<>();
        List<Heading> headings = new ArrayList<>();
        new TreeMap<>(texts).forEach((column, text) -> {
            int occurrence = count.merge(BookWords.loose(text), 1, Integer::sum);
            headings.add(new Heading(column, text, occurrence == 1 ? text : text + " #" + occurrence));
        });
        RawRow lowest = rows.get(rows.size() - 1);
        Optional<RawRow> units = raw.rows().stream()
                .filter(row -> row.row() > lowest.row() && row.row() <= lowest.row() + 2)
                .findFirst()
                .filter(row -> !HeadingUnits.isRowOfUnits(lowest) && HeadingUnits.isRowOfUnits(row))
                .filter(row -> headings.stream()
                        .anyMatch(heading -> !unitBelow(row, heading).isEmpty()))
                .filter(row -> headings.stream().noneMatch(heading -> contradicts(row, heading)));
        return new OwnListHeader(
                List.copyOf(rows),
                units.orElse(lowest),
                headings.stream()
                        .map(heading -> units.map(row -> withUnit(row, heading)).orElse(heading))
                        .toList());
    }

    private static String unitBelow(RawRow units, Heading heading) {
        return units.cell(heading.column())
                .map(cell -> HeadingUnits.bare(cell.text()))
                .filter(unit -> !unit.equals("-"))
                .orElse("");
    }

    /** A row of units that says another one than a heading is none of the headings: it is left to be found among the rows. */
    private static boolean contradicts(RawRow units, Heading heading) {
        String below = unitBelow(units, heading);
        return !below.isEmpty()
                && OwnHeadingUnit.of(heading.text())
                        .filter(own -> !Unit.named(below).equals(Optional.of(own.unit())))
                        .isPresent();
    }

    private static Heading withUnit(RawRow units, Heading heading) {
        String below = unitBelow(units, heading);
        boolean needed = !below.isEmpty() && OwnHeadingUnit.of(heading.text()).isEmpty();
        return needed ? new Heading(heading.column(), heading.text() + " (" + below + ")", heading.key()) : heading;
    }

    /** The same without some columns: those of another list on the sheet. */
    public OwnListHeader without(Set<Integer> columns) {
        return new OwnListHeader(
                rows,
                last,
                headings.stream()
                        .filter(heading -> !columns.contains(heading.column()))
                        .toList());
    }

    /** The headings in rows of given numbers; nothing if such a row is empty. */
    public static Optional<OwnListHeader> at(RawTable raw, List<Integer> rowNumbers) {
        List<RawRow> rows = raw.rows().stream()
                .filter(row -> rowNumbers.contains(row.row()))
                .toList();
        return rows.isEmpty() || rows.size() != rowNumbers.size() ? Optional.empty() : Optional.of(of(raw, rows));
    }

    /** Of all rows, and pairs of rows, near the top the one with the most; the fewer and upper rows where two have as much. */
    public static Optional<OwnListHeader> best(RawTable raw, ToIntFunction<OwnListHeader> score) {
        OwnListHeader best = null;
        int most = 0;
        List<RawRow> top =
                raw.rows().subList(0, Math.min(DEEPEST_ROW, raw.rows().size()));
        for (int i = 0; i < top.size(); i++) {
            List<OwnListHeader> candidates = new ArrayList<>(List.of(of(raw, top.subList(i, i + 1))));
            if (i + 1 < top.size()
                    && isAllText(top.get(i + 1))
                    && top.get(i + 1).row() == top.get(i).row() + 1) {
                candidates.add(of(raw, top.subList(i, i + 2)));
            }
            for (OwnListHeader candidate : candidates) {
                int points = score.applyAsInt(candidate);
                if (points > most) {
                    most = points;
                    best = candidate;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isAllText(RawRow row) {
        return row.cells().stream()
                .allMatch(cell -> cell.type() == RawCell.Type.TEXT
                        && !(NumberText.parse(cell.text()) instanceof NumberText.Number));
    }

    private static Map<Integer, String> texts(RawRow row) {
        Map<Integer, String> texts = new TreeMap<>();
        for (RawCell cell : row.cells()) {
            if (cell.type() == RawCell.Type.TEXT && !cell.isBlank()) {
                texts.put(cell.column(), BookWords.tidy(cell.text()));
            }
        }
        return texts;
    }

    /** The upper headings, each also over the other columns that it stands for. */
    private static Map<Integer, String> spread(RawTable raw, RawRow upper, Map<Integer, String> lower) {
        Map<Integer, String> own = texts(upper);
        Map<Integer, String> spread = new TreeMap<>(own);
        List<RawTable.MergedRegion> merged = raw.mergedRegions().stream()
                .filter(region -> region.firstRow() == upper.row() && region.lastColumn() > region.firstColumn())
                .toList();
        int to = lower.keySet().stream().mapToInt(column -> column).max().orElse(-1);
        for (RawTable.MergedRegion region : merged) {
            String text = own.get(region.firstColumn());
            int last = Math.min(region.lastColumn(), to);
            for (int column = region.firstColumn(); text != null && column <= last; column++) {
                spread.putIfAbsent(column, text);
            }
        }
        if (merged.isEmpty()) {
            String last = "";
            for (int column = 0; column <= to; column++) {
                if (own.containsKey(column)) {
                    last = lower.containsKey(column) ? own.get(column) : "";
                } else if (!last.isEmpty() && lower.containsKey(column)) {
                    spread.put(column, last);
                } else {
                    last = "";
                }
            }
        }
        return spread;
    }

    private static Map<Integer, String> joined(Map<Integer, String> upper, Map<Integer, String> lower) {
        Map<Integer, String> joined = new TreeMap<>(upper);
        lower.forEach((column, text) -> joined.merge(column, text, (above, below) -> above + ": " + below));
        return joined;
    }

    /** The headings from left to right. */
    public List<Heading> headings() {
        return headings;
    }

    /** The heading of a name in the headings file; {@code column F} is that column, whatever stands over it. */
    public Optional<Heading> heading(String name) {
        Optional<Heading> named = Optional.ofNullable(byKey.get(BookWords.loose(name)));
        return named.isPresent() ? named : column(name);
    }

    private static Optional<Heading> column(String name) {
        String loose = BookWords.loose(name);
        if (!loose.matches("column[a-z]{1,2}")) {
            return Optional.empty();
        }
        int column = loose.substring("column".length()).chars().reduce(0, (n, letter) -> n * 26 + letter - 'a' + 1) - 1;
        return Optional.of(new Heading(column, nameOf(column), nameOf(column)));
    }

    /** How a column without a heading is named. */
    static String nameOf(int column) {
        return "column " + TablePlace.columnLetters(column);
    }

    /** The last row that is of the headings: the lower one, or the row of units below it. */
    public RawRow lastRow() {
        return last;
    }

    /** True for a row that says the headings, a line of them or their units again. */
    public boolean isRepeatedBy(RawRow row) {
        return row.cells().size() > 1
                && Stream.concat(rows.stream(), Stream.of(last))
                        .anyMatch(own -> row.cells().stream()
                                .allMatch(cell -> own.cell(cell.column())
                                        .filter(heading ->
                                                BookWords.loose(heading.text()).equals(BookWords.loose(cell.text())))
                                        .isPresent()));
    }

    /** Numbers of the rows. */
    public List<Integer> rowNumbers() {
        return rows.stream().map(RawRow::row).toList();
    }
}
