package workuptally.book.headings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.words.Unit;
import workuptally.book.words.Words;
import workuptally.model.TablePlace;

/**
 * The headings of a laboratory's own list. A heading over two lines is written {@code upper: lower}; an upper one counts for every column
 * that its merged cells span, or without merged cells for the columns right of it that have a lower heading alone. A heading that stands
 * again is {@code heading #2}; a column without one is {@code column F}.
 */
public final class OwnListHeader {
    /** Rows from the top within which the headings must stand. */
    public static final int DEEPEST_ROW = 20;

    /** A unit in a row of its own, {@code mg}, {@code [mg]}, {@code in mg}. */
    private static final Pattern BARE_UNIT = Pattern.compile("(?i)(?:in )?[(\\[]?(?<unit>[^()\\[\\]]*?)[)\\]]?");

    private final List<RawRow> rows;
    private final Optional<RawRow> unitRow;
    private final List<Heading> headings;
    private final Map<String, Heading> byKey = new HashMap<>();

    /**
     * One heading.
     *
     * @param column column from 0
     * @param text its text, both lines of it, with the unit that stands in a row of units below
     * @param key how the headings file names it
     */
    public record Heading(int column, String text, String key) {}

    private OwnListHeader(List<RawRow> rows, Optional<RawRow> unitRow, List<Heading> headings) {
        this.rows = rows;
        this.unitRow = unitRow;
        this.headings = headings;
        headings.forEach(heading -> byKey.put(Words.loose(heading.key()), heading));
    }

    /** The headings in one row or two rows of a table. */
    static OwnListHeader of(RawTable raw, List<RawRow> rows) {
        Map<Integer, String> texts = texts(rows.get(0));
        if (rows.size() > 1) {
            texts = joined(spread(raw, rows.get(0), texts(rows.get(1))), texts(rows.get(1)));
        }
        Map<String, Integer> count = new HashMap<>();
        List<Heading> headings = new ArrayList<>();
        Optional<RawRow> units = unitsBelow(raw, rows.get(rows.size() - 1));
        new TreeMap<>(texts).forEach((column, text) -> {
            int occurrence = count.merge(Words.loose(text), 1, Integer::sum);
            String unit = units.flatMap(row -> row.cell(column))
                    .map(cell -> bareUnit(cell.text()))
                    .filter(typed -> typed.matches(".*[\\p{L}%].*"))
                    .map(typed -> " (" + typed + ")")
                    .orElse("");
            headings.add(new Heading(column, text + unit, occurrence == 1 ? text : text + " #" + occurrence));
        });
        return new OwnListHeader(List.copyOf(rows), units, List.copyOf(headings));
    }

    /** A row right below the headings that holds nothing but units. */
    private static Optional<RawRow> unitsBelow(RawTable raw, RawRow headings) {
        return raw.rows().stream()
                .filter(row -> row.row() > headings.row() && row.row() <= headings.row() + 2)
                .findFirst()
                .filter(row -> row.cells().stream()
                        .allMatch(cell -> cell.type() == RawCell.Type.TEXT && isUnit(bareUnit(cell.text()))))
                .filter(row -> row.cells().stream()
                        .anyMatch(cell -> Unit.named(bareUnit(cell.text())).isPresent()));
    }

    private static boolean isUnit(String typed) {
        return typed.isEmpty() || typed.equals("-") || Unit.named(typed).isPresent();
    }

    private static String bareUnit(String typed) {
        Matcher bare = BARE_UNIT.matcher(Words.tidy(typed));
        return bare.matches() ? bare.group("unit").strip() : Words.tidy(typed);
    }

    /** The row below the headings that holds nothing but their units, if there is one. */
    public Optional<RawRow> unitRow() {
        return unitRow;
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
                    && candidates.get(0).unitRow().isEmpty()
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
                texts.put(cell.column(), Words.tidy(cell.text()));
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
        Optional<Heading> named = Optional.ofNullable(byKey.get(Words.loose(name)));
        return named.isPresent() ? named : column(name);
    }

    private static Optional<Heading> column(String name) {
        String loose = Words.loose(name);
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

    /** The row with the (lower) headings. */
    public RawRow lastRow() {
        return rows.get(rows.size() - 1);
    }

    /** Numbers of the rows. */
    public List<Integer> rowNumbers() {
        return rows.stream().map(RawRow::row).toList();
    }
}
