package workuptally.book.headings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.schema.NearMiss;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/** What a row of headings holds beside those of the form: near misses, columns without a heading, headings that stand twice, and the user's own. */
final class OtherHeadings {
    /** Headings named as lacking at most. */
    private static final int MOST_LACKING = 4;

    private final RawTable raw;
    private final Table form;
    private final HeadingRow candidate;
    private final FindingLog log;

    OtherHeadings(RawTable raw, Table form, HeadingRow candidate, FindingLog log) {
        this.raw = raw;
        this.form = form;
        this.candidate = candidate;
        this.log = log;
    }

    /**
     * Reports them.
     *
     * @param isList true for a laboratory's own list, whose other headings its headings file accounts for
     */
    void report(boolean isList) {
        if (!isList) {
            nameOthers();
        }
        candidate
                .repeated()
                .forEach((column, typed) ->
                        reportRepeated(column, candidate.first().get(column).cell(), typed.cell()));
    }

    /** Headings that match no column: near ones are asked about, the others are the user's own. */
    private void nameOthers() {
        List<SchemaColumn> lacking = form.columns().stream()
                .filter(column -> !candidate.first().containsKey(column))
                .toList();
        nameUnheaded(lacking);
        for (RawCell cell : candidate.row().cells()) {
            boolean matched = Stream.concat(candidate.first().values().stream(), candidate.repeated().values().stream())
                    .anyMatch(typed -> typed.cell() == cell);
            if (cell.isStruck()) {
                reportStruck(cell);
            }
            boolean number = CellNumber.read(cell) instanceof NumberText.Number;
            if (cell.type() != RawCell.Type.TEXT || cell.isBlank() || matched || number) {
                continue;
            }
            Optional<SchemaColumn> near = NearMiss.column(cell.text(), lacking);
            Optional<SchemaColumn> meant =
                    near.or(() -> NearMiss.everyday(cell.text(), missed(lacking, cell.column())));
            if (meant.isEmpty()) {
                log.leaveAlone(raw.sheet() + ": " + BookWords.tidy(cell.text()));
                continue;
            }
            log.add(
                    FindingCode.HEADING_NEAR_MISS,
                    Severity.CHECK,
                    "",
                    candidate.place(raw, cell),
                    "a heading '" + BookWords.tidy(cell.text()) + "', whose column was not read",
                    "the heading " + meant.get().heading() + ", if that is meant"
                            + (near.isPresent() || meant.get().help().isEmpty()
                                    ? ""
                                    : ": " + meant.get().help().toLowerCase(Locale.ROOT)),
                    "Write " + meant.get().heading() + " and run again; give a column of your own another name.");
        }
    }

    /** Of the columns that are lacking those that could take what stands in a column; no net where gross and tare stand. */
    private List<SchemaColumn> missed(List<SchemaColumn> lacking, int column) {
        List<RawCell> below = cellsBelow(column);
        boolean numbers = below.stream().anyMatch(cell -> CellNumber.read(cell) instanceof NumberText.Number);
        List<String> headed =
                candidate.first().keySet().stream().map(SchemaColumn::heading).toList();
        boolean weighed = headed.contains("Gross") && headed.contains("Tare");
        return lacking.stream()
                .filter(c -> isNumber(c) ? numbers : !numbers && !below.isEmpty())
                .filter(c -> !(weighed && c.heading().equals("Net")))
                .toList();
    }

    private void reportStruck(RawCell cell) {
        log.add(
                FindingCode.STRUCK_OUT,
                Severity.CHECK,
                "",
                candidate.place(raw, cell),
                "the heading '" + BookWords.tidy(CellNumber.shown(cell)) + "', struck out",
                "a heading that counts",
                "Take the strike off if the column counts, else remove it, and run again; the column was not read.");
    }

    /**
     * Columns without a heading, or with a bare number for one: asked about where their cells may be those of a column that is lacking, else
     * named with the user's own. What stands behind a blank column, further aside, is a side calculation and only named.
     */
    private void nameUnheaded(List<SchemaColumn> lacking) {
        if (candidate.first().size() < 2) {
            return;
        }
        int next = candidate.lastColumn() + 1;
        for (Map.Entry<Integer, List<RawCell>> unheaded : cellsWithoutHeading().entrySet()) {
            int column = unheaded.getKey();
            List<RawCell> cells = unheaded.getValue();
            boolean aside = column > next;
            next = column == next ? column + 1 : next;
            Optional<RawCell> number = cells.stream()
                    .filter(cell -> CellNumber.read(cell) instanceof NumberText.Number)
                    .findFirst();
            List<SchemaColumn> meant = lacking.stream()
                    .filter(c -> !aside && (number.isPresent() ? isNumber(c) : isChoiceOf(c, cells)))
                    .toList();
            if (meant.isEmpty()) {
                log.leaveAlone(raw.sheet() + ": " + OwnListHeader.nameOf(column) + ", which has no heading");
            } else {
                ask(column, number.orElse(cells.get(0)), number.isPresent() ? "numbers" : "words", meant);
            }
        }
    }

    private void ask(int column, RawCell example, String what, List<SchemaColumn> meant) {
        log.add(
                FindingCode.HEADING_NEAR_MISS,
                Severity.CHECK,
                "",
                new Place(raw.file(), raw.sheet(), candidate.row().row(), -1, ""),
                OwnListHeader.nameOf(column) + " without a heading, whose " + what + ", such as '"
                        + BookWords.tidy(CellNumber.shown(example)) + "', were not read",
                "a heading over each column; " + form.name() + " lacks "
                        + meant.stream()
                                .map(SchemaColumn::heading)
                                .limit(MOST_LACKING)
                                .collect(Collectors.joining(", ")),
                "Write the heading that is meant and run again; give a column of your own a name.");
    }

    /**
     * Cells below columns that have no heading, by their columns from the left; a bare number is no heading. A line of a CSV file that goes
     * on behind the line of its headings is a shifted one, and told elsewhere.
     */
    private Map<Integer, List<RawCell>> cellsWithoutHeading() {
        Set<Integer> headed = candidate.row().cells().stream()
                .filter(cell -> !cell.isBlank() && !(CellNumber.read(cell) instanceof NumberText.Number))
                .map(RawCell::column)
                .collect(Collectors.toSet());
        int first = candidate.row().cells().get(0).column();
        int last = raw.spreadsheet()
                ? Integer.MAX_VALUE
                : Math.max(candidate.lastColumn(), candidate.row().width() - 1);
        Map<Integer, List<RawCell>> cells = new TreeMap<>();
        for (RawRow row : raw.rows()) {
            if (row.row() <= candidate.row().row()) {
                continue;
            }
            for (RawCell cell : row.cells()) {
                int column = cell.column();
                if (column >= first && column <= last && !headed.contains(column) && !cell.isBlank()) {
                    cells.computeIfAbsent(column, c -> new ArrayList<>()).add(cell);
                }
            }
        }
        return cells;
    }

    private List<RawCell> cellsBelow(int column) {
        return raw.rows().stream()
                .filter(row -> row.row() > candidate.row().row())
                .flatMap(row -> row.cell(column).stream())
                .filter(cell -> !cell.isBlank())
                .toList();
    }

    private static boolean isNumber(SchemaColumn column) {
        return column.kind() == SchemaColumn.Kind.NUMBER || column.kind() == SchemaColumn.Kind.NUMBER_WITH_UNIT;
    }

    private static boolean isChoiceOf(SchemaColumn column, List<RawCell> cells) {
        return !column.choices().isEmpty()
                && cells.stream()
                        .allMatch(cell -> column.choices().stream()
                                .anyMatch(word -> BookWords.loose(word).equals(BookWords.loose(cell.text()))));
    }

    private void reportRepeated(SchemaColumn column, RawCell first, RawCell second) {
        log.add(
                FindingCode.HEADING_DUPLICATE,
                column.need().severity(),
                "",
                candidate.place(raw, second),
                "read the heading '" + BookWords.tidy(second.text()) + "', which also stands at "
                        + candidate.place(raw, first).inWords(),
                "each heading once",
                "Rename one of the two columns and run again; only the first was read.");
    }
}
