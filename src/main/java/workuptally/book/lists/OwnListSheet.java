package workuptally.book.lists;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.tables.RunIndex;
import workuptally.book.tables.TableRows;
import workuptally.book.words.BookWords;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/** One sheet of a laboratory's own list: its headings, which of its rows are runs, and what its feeds give to the tables of the form. */
public final class OwnListSheet {
    private static final int MOST_NAMED = 12;

    /** Headings of the form of which one gives an amount or a weight. */
    private static final List<String> AMOUNTS =
            List.of("Actual amount", "Planned amount", "Amount of substance", "Net", "Gross");

    private final RawTable raw;
    private final OwnListLayout layout;
    private final OwnListHeader header;
    private final MatchedHeadings.Reading reading;
    private final FindingLog log;
    private final Set<Integer> leftOut = new HashSet<>();

    private OwnListSheet(RawTable raw, OwnListLayout layout, OwnListHeader header, MatchedHeadings.Reading reading) {
        this.raw = raw;
        this.layout = layout;
        this.header = header;
        this.reading = reading;
        this.log = reading.log();
    }

    /**
     * A sheet laid out as the headings file says.
     *
     * @param beside layouts of other lists that stand beside it on the sheet
     * @throws UnreadableBookException if the headings are not found, or that of the run's id is missing
     */
    public static OwnListSheet of(
            RawTable raw, OwnListLayout layout, List<OwnListLayout> beside, MatchedHeadings.Reading reading)
            throws UnreadableBookException {
        Set<String> named = layout.feeds().stream()
                .flatMap(feed -> feed.columns().values().stream())
                .flatMap(List::stream)
                .collect(Collectors.toSet());
        Optional<OwnListHeader> header = layout.headingRows().isEmpty()
                ? OwnListHeader.best(raw, candidate -> (int) named.stream()
                        .filter(name -> candidate.heading(name).isPresent())
                        .count())
                : OwnListHeader.at(raw, layout.headingRows());
        if (header.isEmpty()) {
            throw new UnreadableBookException("The list " + raw.sheet() + " in " + raw.file()
                    + " has none of the headings that the headings file names: correct one of the two and run again.");
        }
        Set<Integer> ofOthers = columns(header.get(), beside);
        ofOthers.removeAll(columns(header.get(), List.of(layout)));
        OwnListHeader own = ofOthers.isEmpty() ? header.get() : header.get().without(ofOthers);
        RawTable cells = OwnListCells.without(OwnListCells.of(raw, own, reading.log()), ofOthers);
        OwnListSheet sheet = new OwnListSheet(cells, layout, own, reading);
        sheet.requireRun();
        sheet.leaveOutRows();
        sheet.leaveOutSecondTable();
        ShiftedRows.leaveOut(cells, layout, own, sheet.leftOut, reading.log());
        sheet.reportHeadings();
        sheet.reportNoAmounts();
        new OwnListBlanks(cells, own, sheet.leftOut, reading.log()).report(layout);
        return sheet;
    }

    private static Set<Integer> columns(OwnListHeader header, List<OwnListLayout> layouts) {
        return layouts.stream()
                .flatMap(layout -> layout.names().stream())
                .flatMap(name -> header.heading(name).stream())
                .map(OwnListHeader.Heading::column)
                .collect(Collectors.toCollection(HashSet::new));
    }

    private OwnListFeed runs() {
        return layout.feeds().stream()
                .filter(feed -> feed.table() == Schema.RUNS)
                .findFirst()
                .orElseThrow(); // the headings file was refused without
    }

    private static SchemaColumn run() {
        return Schema.RUNS.columns().get(0);
    }

    /** Headings that the list has for the run's id; none where a constant names it. */
    private List<String> runHeadings() {
        return runs().columns().getOrDefault(run(), List.of());
    }

    private void requireRun() throws UnreadableBookException {
        for (String name : runHeadings()) {
            if (header.heading(name).isEmpty()) {
                throw new UnreadableBookException("The list " + raw.sheet() + " in " + raw.file()
                        + " lacks the heading '" + name + "', which the headings file names for the run: correct one of"
                        + " the two and run again.");
            }
        }
    }

    /** Leaves out titles (rows with one entry), repeated headings, totals and means, and what the headings file names. */
    private void leaveOutRows() {
        OwnListRow kind = new OwnListRow(header, runHeadings(), layout.leaveOut());
        List<String> named = new ArrayList<>();
        leftOut.addAll(new ChangedHeadings(raw, header, runHeadings()).leaveOut(log));
        for (RawRow row : raw.rows()) {
            if (row.row() > header.lastRow().row() && !leftOut.contains(row.row()) && kind.isNoRun(row)) {
                leftOut.add(row.row());
                named.add(row.row() + " ('"
                        + FindingLog.shortened(CellNumber.shown(row.cells().get(0)), 24) + "')");
            }
        }
        if (!named.isEmpty()) {
            log.add(
                    FindingCode.LIST_ROWS_LEFT_OUT,
                    Severity.NOTE,
                    "",
                    new Place(raw.file(), raw.sheet(), 0, -1, ""),
                    (named.size() == 1 ? "row " : "rows ") + shortened(named),
                    "a row for each run; titles, repeated headings, totals and means are none",
                    "Look whether one of them is a run; name others under \"leave out\" in the headings file.");
        }
    }

    /** Leaves out what stands below a second row of headings, under a blank row. */
    private void leaveOutSecondTable() {
        SecondTable.below(raw, header).ifPresent(second -> {
            raw.rows().stream()
                    .map(RawRow::row)
                    .filter(row -> row >= second.firstRow() && row <= second.lastRow())
                    .forEach(leftOut::add);
            log.add(
                    FindingCode.LIST_ROWS_LEFT_OUT,
                    Severity.CHECK,
                    "",
                    new Place(raw.file(), raw.sheet(), second.firstRow(), -1, ""),
                    "a second table under the list, rows " + second.firstRow() + " to " + second.lastRow()
                            + ", with the headings " + second.headings(),
                    "one list on a sheet",
                    "Nothing, if its rows are no runs; else repeat the headings of the list above them and run again.");
        });
    }

    /** Says which headings still wait for an answer, and which no table takes. */
    private void reportHeadings() {
        for (OwnListLayout.OpenHeading open : layout.open()) {
            log.add(
                    FindingCode.LIST_HEADING_OPEN,
                    Severity.CHECK,
                    "",
                    new Place(raw.file(), raw.sheet(), header.lastRow().row(), -1, ""),
                    "the heading '" + open.heading() + "' could mean several things: " + open.question(),
                    "an answer in the headings file",
                    "Map the heading, or move it to \"not used\", and run again; its column was not read.");
        }
        Set<String> known = new HashSet<>();
        layout.feeds()
                .forEach(feed -> feed.columns()
                        .values()
                        .forEach(names -> names.stream()
                                .flatMap(name -> header.heading(name).stream())
                                .forEach(heading -> known.add(heading.key()))));
        Set<String> named = new HashSet<>();
        layout.notUsed().forEach(name -> named.add(BookWords.loose(name)));
        layout.open().forEach(open -> named.add(BookWords.loose(open.heading())));
        List<String> unread = header.headings().stream()
                .map(OwnListHeader.Heading::key)
                .filter(key -> !known.contains(key) && !named.contains(BookWords.loose(key)))
                .toList();
        if (!unread.isEmpty()) {
            log.add(
                    FindingCode.LIST_HEADING_UNREAD,
                    Severity.CHECK,
                    "",
                    new Place(raw.file(), raw.sheet(), header.lastRow().row(), -1, ""),
                    "the headings file says nothing of '" + String.join("', '", unread) + "'",
                    "each heading of the list mapped, or under \"not used\"",
                    "Add " + (unread.size() == 1 ? "it" : "them") + " to the headings file and run again; until then "
                            + (unread.size() == 1 ? "its column counts" : "their columns count") + " as your own.");
        }
    }

    /** Without a charge and without a weight nothing can be tallied; the rows alone would look like a week without faults. */
    private void reportNoAmounts() {
        boolean any = layout.feeds().stream().anyMatch(feed -> AMOUNTS.stream().anyMatch(feed::fills));
        if (!any) {
            log.add(
                    FindingCode.LIST_AMOUNTS_MISSING,
                    Severity.STOP,
                    "",
                    new Place(raw.file(), raw.sheet(), header.lastRow().row(), -1, ""),
                    "no heading of the list gives an amount charged or a weight of product",
                    "at least one of them, in the headings file",
                    "Name under Charges the headings of Material and Actual amount, under Isolated those of Product and"
                            + " Net, and run again; nothing was tallied.");
        }
    }

    private static String shortened(List<String> named) {
        String first = named.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        return named.size() > MOST_NAMED ? first + " and " + (named.size() - MOST_NAMED) + " more" : first;
    }

    /** True for a sheet that feeds a table. */
    public boolean feeds(Table table) {
        return layout.feeds().stream().anyMatch(feed -> feed.table() == table);
    }

    /**
     * Hands the rows for a table over, feed by feed.
     *
     * @param runs the runs read so far
     * @throws UnreadableBookException if the list has too many merged cells
     */
    public void read(Table table, RunIndex runs, Consumer<TableRows> reader) throws UnreadableBookException {
        for (OwnListFeed feed : layout.feeds()) {
            if (feed.table() == table) {
                Optional<LotSource> source = LotSource.of(layout, feed);
                Predicate<RawRow> named =
                        row -> source.isEmpty() || source.get().isIn(row, header);
                read(withRun(feed), runs, named, reader);
                if (raw.rows().stream().anyMatch(named.negate())) {
                    read(withRun(LotSource.unnamed(feed)), runs, named.negate(), reader);
                }
            }
        }
    }

    /** Every feed takes the run's id from where Runs takes it. */
    private OwnListFeed withRun(OwnListFeed feed) {
        SchemaColumn key = feed.table().columns().get(0);
        if (feed.table() == Schema.RUNS || !key.heading().equals(run().heading()) || feed.fills(key.heading())) {
            return feed;
        }
        Map<SchemaColumn, List<String>> columns = new LinkedHashMap<>(feed.columns());
        Map<SchemaColumn, String> constants = new LinkedHashMap<>(feed.constants());
        Optional.ofNullable(runs().columns().get(run())).ifPresent(own -> columns.put(key, own));
        Optional.ofNullable(runs().constants().get(run())).ifPresent(text -> constants.put(key, text));
        return new OwnListFeed(feed.table(), columns, feed.units(), constants);
    }

    private void read(OwnListFeed feed, RunIndex runs, Predicate<RawRow> which, Consumer<TableRows> reader)
            throws UnreadableBookException {
        List<MatchedHeadings> before = new ArrayList<>();
        List<OwnListFeed> alternatives = feed.alternatives();
        Optional<String> tried = feed.withAlternatives().map(SchemaColumn::heading);
        for (int i = 0; i < alternatives.size(); i++) {
            MatchedHeadings matched = MatchedHeadings.ofList(raw, alternatives.get(i), header, reading);
            List<MatchedHeadings> earlier = List.copyOf(before);
            boolean first = i == 0;
            BiPredicate<RawRow, MatchedHeadings> wanted = (row, own) -> !leftOut.contains(row.row())
                    && which.test(row)
                    && (feed.table() == Schema.RUNS || isOfRun(row, own, runs))
                    && holdsSomething(feed, alternatives, row, own)
                    && (tried.isEmpty() || takes(tried.get(), row, own, earlier, first, alternatives));
            reader.accept(TableRows.ofList(raw, alternatives.get(i), matched, wanted, log));
            before.add(matched);
        }
    }

    /** True for a row that gave a run; one without an id, or with that of an earlier run, was reported with Runs. */
    private boolean isOfRun(RawRow row, MatchedHeadings own, RunIndex runs) {
        return own.cell(row, run().heading())
                .flatMap(cell -> runs.find(CellNumber.shown(cell)))
                .filter(run -> run.standsAt(raw.sheet(), row.row()))
                .isPresent();
    }

    /** The first alternative that a row fills is taken; the first of all where it fills none. */
    private boolean takes(
            String heading,
            RawRow row,
            MatchedHeadings own,
            List<MatchedHeadings> earlier,
            boolean first,
            List<OwnListFeed> alternatives) {
        if (earlier.stream().anyMatch(other -> isFilled(other, row, heading))) {
            return false;
        }
        return isFilled(own, row, heading) || first && noneFilled(row, heading, alternatives);
    }

    private boolean noneFilled(RawRow row, String heading, List<OwnListFeed> alternatives) {
        return alternatives.stream()
                .flatMap(feed -> feed.columns().entrySet().stream())
                .filter(entry -> entry.getKey().heading().equals(heading))
                .flatMap(entry -> header.heading(entry.getValue().get(0)).stream())
                .noneMatch(own -> row.cell(own.column())
                        .filter(OwnListSheet::holdsSomething)
                        .isPresent());
    }

    /** True where a row of the table is meant: an isolated product needs a weight or a yield, others any entry beside the run's id. */
    private static boolean holdsSomething(
            OwnListFeed feed, List<OwnListFeed> alternatives, RawRow row, MatchedHeadings own) {
        if (feed.table() == Schema.RUNS) {
            return true;
        }
        Set<String> headings = alternatives.get(0).columns().keySet().stream()
                .map(SchemaColumn::heading)
                .filter(heading -> !heading.equals(run().heading()))
                .filter(heading -> feed.table() != Schema.ISOLATED || Schema.WEIGHT_OR_YIELD.contains(heading))
                .collect(Collectors.toSet());
        return headings.isEmpty() || headings.stream().anyMatch(heading -> isFilled(own, row, heading));
    }

    private static boolean isFilled(MatchedHeadings own, RawRow row, String heading) {
        return own.isColumn(heading)
                && own.cell(row, heading).filter(OwnListSheet::holdsSomething).isPresent();
    }

    private static boolean holdsSomething(RawCell cell) {
        return !cell.isBlank() && !(CellNumber.read(cell) instanceof NumberText.Nothing);
    }

    /** Name of the sheet. */
    public String sheet() {
        return raw.sheet();
    }
}
