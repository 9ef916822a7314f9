package workuptally.book.headings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
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
            if (cell.type() != RawCell.Type.TEXT || cell.isBlank() || matched) {
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
        List<RawCell> below = raw.rows().stream()
                .filter(row -> row.row() > candidate.row().row())
                .flatMap(row -> row.cell(column).stream())
                .filter(cell -> !cell.isBlank())
                .toList();
        boolean numbers = below.stream().anyMatch(cell -> CellNumber.read(cell) instanceof NumberText.Number);
        List<String> headed =
                candidate.first().keySet().stream().map(SchemaColumn::heading).toList();
        boolean weighed = headed.contains("Gross") && headed.contains("Tare");
        return lacking.stream()
                .filter(c -> isNumber(c) ? numbers : !numbers && !below.isEmpty())
                .filter(c -> !(weighed && c.heading().equals("Net")))
                .toList();
    }

    private static boolean isNumber(SchemaColumn column) {
        return column.kind() == SchemaColumn.Kind.NUMBER || column.kind() == SchemaColumn.Kind.NUMBER_WITH_UNIT;
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

    /** A column without a heading, between others that have one, whose numbers may be those of a column that is lacking. */
    private void nameUnheaded(List<SchemaColumn> lacking) {
        boolean numberLacks = lacking.stream().anyMatch(column -> column.unit().isPresent());
        if (!numberLacks || candidate.first().size() < 2) {
            return;
        }
        for (int column = candidate.row().cells().get(0).column(); column < candidate.lastColumn(); column++) {
            int at = column;
            boolean headed =
                    candidate.row().cell(at).filter(cell -> !cell.isBlank()).isPresent();
            Optional<RawCell> number = headed
                    ? Optional.empty()
                    : raw.rows().stream()
                            .filter(row -> row.row() > candidate.row().row())
                            .flatMap(row -> row.cell(at).stream())
                            .filter(cell -> CellNumber.read(cell) instanceof NumberText.Number)
                            .findFirst();
            number.ifPresent(cell -> log.add(
                    FindingCode.HEADING_NEAR_MISS,
                    Severity.CHECK,
                    "",
                    new Place(raw.file(), raw.sheet(), candidate.row().row(), -1, ""),
                    OwnListHeader.nameOf(at) + " without a heading, whose numbers, such as '"
                            + BookWords.tidy(CellNumber.shown(cell)) + "', were not read",
                    "a heading over each column; " + form.name() + " lacks "
                            + lacking.stream()
                                    .filter(c -> c.unit().isPresent())
                                    .map(SchemaColumn::heading)
                                    .limit(MOST_LACKING)
                                    .collect(Collectors.joining(", ")),
                    "Write the heading that is meant and run again; give a column of your own a name."));
        }
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
