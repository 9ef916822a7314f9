package workuptally.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import workuptally.book.cells.BookMarks;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.lists.OwnListLayout;
import workuptally.book.lists.OwnListSheet;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.NearMiss;
import workuptally.book.schema.Schema;
import workuptally.book.schema.Table;
import workuptally.book.schema.WorkupTables;
import workuptally.book.sources.TableSource;
import workuptally.book.sources.TablesAhead;
import workuptally.book.tables.AssayRows;
import workuptally.book.tables.ChargeRows;
import workuptally.book.tables.ContainerRows;
import workuptally.book.tables.LayerRows;
import workuptally.book.tables.LimitRows;
import workuptally.book.tables.LotRows;
import workuptally.book.tables.NmrAssayRows;
import workuptally.book.tables.ProductRows;
import workuptally.book.tables.RegisterRows;
import workuptally.book.tables.RunAssembly;
import workuptally.book.tables.RunIndex;
import workuptally.book.tables.RunRows;
import workuptally.book.tables.StepRows;
import workuptally.book.tables.TableRows;
import workuptally.book.tables.TransferRows;
import workuptally.book.template.ReadMeSheet;
import workuptally.book.words.BookWords;
import workuptally.model.Book;
import workuptally.model.Correction;
import workuptally.model.FindingCode;
import workuptally.model.HistoryPoint;
import workuptally.model.InputFile;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Transfer;
import workuptally.model.VesselTare;
import workuptally.reference.Reference;

/** Reads the tables of a book in the order in which one needs another, and ties their rows to runs. */
final class BookAssembly {
    private static final int MOST_NAMES = 30;

    /** Spreadsheet programs allow 31 characters. */
    private static final int LONGEST_NAME = 60;

    /** What a table that a book can lack would unlock, by its name. */
    private static final Map<String, String> MISSED = Map.of(
            "Products",
            "Add Products with the formula or molar mass of each product: it unlocks theory, yield and closure.",
            "Charges",
            "Add Charges with the amount of the substrate, its molar mass and a coefficient: it unlocks theory, yield,"
                    + " closure and the solvent account.",
            "Isolated",
            "Add Isolated with the weight of each product: it unlocks yield and closure.");

    private final TableSource source;
    private final HeadingAliases aliases;
    private final List<OwnListLayout> layouts;
    private final List<OwnListSheet> lists = new ArrayList<>();
    private final FindingLog log = new FindingLog();
    private final RunIndex runs = new RunIndex();

    private final BookMarks marks;
    private final Supplier<Reference> reference;

    /**
     * For one book.
     *
     * @param lists layouts of the laboratory's own lists in it
     * @param reference figures of the bench in force
     */
    BookAssembly(TableSource source, HeadingAliases aliases, List<OwnListLayout> lists, Supplier<Reference> reference) {
        this(source, aliases, lists, BookMarks.unknown(), reference);
    }

    private BookAssembly(
            TableSource source,
            HeadingAliases aliases,
            List<OwnListLayout> lists,
            BookMarks marks,
            Supplier<Reference> reference) {
        this.source = source;
        this.aliases = aliases;
        this.layouts = lists;
        this.marks = marks;
        this.reference = reference;
    }

    /**
     * Reads everything.
     *
     * @param headingsFile the headings file, if one was used
     * @throws UnreadableBookException if a needed table is missing or a file is damaged
     * @throws IOException if a file cannot be accessed
     */
    Book read(Optional<InputFile> headingsFile) throws UnreadableBookException, IOException {
        openLists();
        List<Table> missing = missingTables();
        Schema.TABLES.forEach(table -> source.sheetName(table).ifPresent(log::nextSheet));
        ContainerRows containers = new ContainerRows();
        List<Transfer> transfers = new ArrayList<>();
        List<VesselTare> vessels = new ArrayList<>();
        List<HistoryPoint> history = new ArrayList<>();
        List<Correction> corrections = new ArrayList<>();
        LimitRows limits = new LimitRows(runs);
        read(List.of(
                new Reading(Schema.RUNS, rows -> RunRows.read(rows, runs)),
                new Reading(Schema.CHARGES, rows -> ChargeRows.read(rows, runs)),
                new Reading(Schema.PRODUCTS, rows -> ProductRows.read(rows, runs)),
                new Reading(WorkupTables.LAYERS, rows -> LayerRows.read(rows, runs)),
                new Reading(Schema.ISOLATED, rows -> LotRows.read(rows, runs, reference)),
                new Reading(WorkupTables.WORKUP, rows -> StepRows.read(rows, runs)),
                new Reading(WorkupTables.ASSAYS, rows -> AssayRows.read(rows, runs)),
                new Reading(WorkupTables.NMR_ASSAYS, rows -> NmrAssayRows.read(rows, runs)),
                new Reading(Schema.CONTAINERS, containers::read),
                new Reading(Schema.TRANSFERS, rows -> transfers.addAll(TransferRows.read(rows, runs, containers))),
                new Reading(Schema.VESSELS, rows -> vessels.addAll(RegisterRows.vessels(rows))),
                new Reading(Schema.HISTORY, rows -> history.addAll(RegisterRows.history(rows, runs))),
                new Reading(Schema.CORRECTIONS, rows -> corrections.addAll(RegisterRows.corrections(rows))),
                new Reading(Schema.LIMITS, limits::read)));
        if (marks.decideMore()) {
            return new BookAssembly(source, aliases, layouts, marks.learnt(), reference).read(headingsFile);
        }
        List<Run> built = PortionsOfOtherRuns.settled(
                runs.all().stream().map(RunAssembly::build).toList());
        reportMissing(missing, built);
        reportNoRuns();
        nameOtherSheets();
        return new Book(
                source.bookName(),
                files(headingsFile),
                built,
                containers.all(),
                transfers,
                vessels,
                history,
                corrections,
                List.of(),
                limits.limits(),
                log.leftAlone(),
                log.inOrder());
    }

    private void openLists() throws UnreadableBookException, IOException {
        for (OwnListLayout layout : layouts) {
            List<String> sheets =
                    layout.sheets().isEmpty() ? source.names().stream().limit(1).toList() : layout.sheets();
            for (String name : sheets) {
                Optional<RawTable> raw = source.sheet(name, log);
                if (raw.isEmpty()) {
                    throw new UnreadableBookException(source.bookName() + " lacks the sheet '" + name
                            + "' that the headings file names (it has " + named()
                            + "): correct one of the two and run again.");
                }
                List<OwnListLayout> beside = layouts.stream()
                        .filter(other -> other != layout && namesSheet(other, name))
                        .toList();
                lists.add(OwnListSheet.of(raw.get(), layout, beside, new MatchedHeadings.Reading(aliases, marks, log)));
                log.nextSheet(raw.get().sheet());
            }
        }
    }

    private boolean namesSheet(OwnListLayout layout, String sheet) {
        List<String> sheets =
                layout.sheets().isEmpty() ? source.names().stream().limit(1).toList() : layout.sheets();
        return sheets.stream().anyMatch(name -> BookWords.loose(name).equals(BookWords.loose(sheet)));
    }

    private boolean isList(String sheet) {
        return lists.stream().anyMatch(list -> list.sheet().equals(sheet));
    }

    private List<Table> missingTables() throws UnreadableBookException {
        List<Table> missing = Schema.TABLES.stream()
                .filter(Table::required)
                .filter(table -> source.sheetName(table).isEmpty())
                .filter(table -> lists.stream().noneMatch(list -> list.feeds(table)))
                .toList();
        if (missing.contains(Schema.RUNS)) {
            String has = source.names().isEmpty() ? "it has none" : "it has " + named();
            throw new UnreadableBookException(source.bookName() + " lacks the table "
                    + Schema.RUNS.name() + " (" + has
                    + "): add it, or name the laboratory's own in a headings file; for a list with one row a run,"
                    + " 'workup-tally headings' proposes that file.");
        }
        return missing;
    }

    /** Of runs that are all still to be made no weight is missing. */
    private void reportMissing(List<Table> missing, List<Run> built) {
        boolean planned = !built.isEmpty() && built.stream().allMatch(run -> run.status() == Run.Status.PLANNED);
        missing.stream().filter(table -> !planned || table != Schema.ISOLATED).forEach(this::reportMissing);
    }

    private void reportMissing(Table table) {
        log.add(
                FindingCode.TABLE_MISSING,
                lists.isEmpty() ? Severity.CHECK : Severity.NOTE,
                "",
                Place.ofFile(
                        source.files().isEmpty()
                                ? source.bookName()
                                : source.files().get(0).name()),
                "nothing that feeds the table " + table.name(),
                table.purpose().toLowerCase(java.util.Locale.ROOT),
                MISSED.get(table.name()));
    }

    /** Names of the tables that the book has; of many the first. */
    private String named() {
        List<String> names = source.names();
        String first = names.stream()
                .limit(MOST_NAMES)
                .map(name -> FindingLog.shortened(BookWords.tidy(name), LONGEST_NAME))
                .collect(Collectors.joining(", "));
        return names.size() > MOST_NAMES ? first + " and " + (names.size() - MOST_NAMES) + " more" : first;
    }

    private record Reading(Table table, Consumer<TableRows> rows) {}

    private void read(List<Reading> readings) throws UnreadableBookException, IOException {
        List<Table> inOrder = readings.stream().map(Reading::table).toList();
        try (TablesAhead ahead = new TablesAhead(source, inOrder)) {
            for (Reading reading : readings) {
                Optional<RawTable> raw = ahead.next(log);
                if (raw.isPresent() && !isList(raw.get().sheet())) {
                    TableRows.of(raw.get(), reading.table(), aliases, marks, log)
                            .ifPresent(reading.rows());
                }
                for (OwnListSheet list : lists) {
                    list.read(reading.table(), runs, reading.rows());
                }
            }
        }
    }

    /** A sheet whose name only nearly is that of a table is asked about; others are the user's own. */
    private void nameOtherSheets() {
        List<Table> lacking = Schema.TABLES.stream()
                .filter(table -> source.sheetName(table).isEmpty())
                .filter(table -> lists.stream().noneMatch(list -> list.feeds(table)))
                .toList();
        for (String sheet : source.names()) {
            String name = source.ownName(sheet);
            if (aliases.table(name).isPresent() || isList(sheet) || isList(name) || ReadMeSheet.NAME.equals(name)) {
                continue;
            }
            Optional<Table> meant = NearMiss.table(name).or(() -> NearMiss.everydayTable(name, lacking));
            if (meant.isEmpty()) {
                log.leaveAlone("sheet " + BookWords.tidy(sheet));
                continue;
            }
            String file = source.files().isEmpty()
                    ? source.bookName()
                    : source.files().get(0).name();
            log.add(
                    FindingCode.SHEET_NEAR_MISS,
                    Severity.CHECK,
                    "",
                    new Place(file, sheet, 0, -1, ""),
                    "a sheet '" + BookWords.tidy(sheet) + "', which was not read",
                    "the name " + meant.get().name() + ", if that is meant",
                    "Rename it to " + meant.get().name()
                            + ", or put its rows there, and run again; give a sheet of your" + " own another name.");
        }
    }

    private void reportNoRuns() {
        if (runs.all().isEmpty()) {
            String sheet = source.sheetName(Schema.RUNS).orElse(Schema.RUNS.name());
            String file = source.files().isEmpty()
                    ? source.bookName()
                    : source.files().get(0).name();
            log.add(
                    FindingCode.RUNS_EMPTY,
                    Severity.CHECK,
                    "",
                    new Place(file, sheet, 0, -1, ""),
                    "no run",
                    "a row for each run",
                    "Enter the runs and run again.");
        }
    }

    private List<InputFile> files(Optional<InputFile> headingsFile) {
        List<InputFile> files = new ArrayList<>(source.files());
        headingsFile.ifPresent(files::add);
        files.sort(Comparator.comparing(InputFile::name));
        return files;
    }
}
