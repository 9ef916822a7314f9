package workuptally.book.lists;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.book.cells.BookMarks;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.sources.CsvFile;
import workuptally.book.sources.OpenBook;

/**
 * A headings file proposed for a laboratory's own list, and what it rests on.
 *
 * @param json the file
 * @param lists what was understood of each layout, in the order of the sheets
 */
public record HeadingsProposal(String json, List<OfList> lists) {
    /** Headings that must be understood before a sheet is taken for a list. */
    private static final int LEAST_HEADINGS = 3;

    /**
     * One layout.
     *
     * @param sheets sheets laid out like this
     * @param headingRows rows of its headings
     * @param understood headings that feed a table
     * @param assumed what was taken for granted
     * @param open headings that could mean several things, each with the question
     * @param notUnderstood headings with a word that is not known
     * @param notUsed headings that were understood and feed no table
     */
    public record OfList(
            List<String> sheets,
            List<Integer> headingRows,
            List<Understood> understood,
            List<String> assumed,
            List<Open> open,
            List<String> notUnderstood,
            List<String> notUsed) {}

    /**
     * A heading that was understood.
     *
     * @param heading heading of the list
     * @param meaning what it means, in words
     * @param feeds tables and columns that take it
     */
    public record Understood(String heading, String meaning, String feeds) {}

    /**
     * A heading that could mean several things.
     *
     * @param heading heading of the list
     * @param question what is to be settled
     */
    public record Open(String heading, String question) {}

    /**
     * Proposes a headings file.
     *
     * @param list workbook, folder of CSV files or CSV file
     * @throws UnreadableBookException if it is none of these, or no sheet of it has headings that are understood
     * @throws IOException if it cannot be accessed
     */
    public static HeadingsProposal of(Path list) throws UnreadableBookException, IOException {
        ReadingOptions.SizeCaps caps = ReadingOptions.defaults().sizeCaps();
        HeadingWords words = new HeadingWords();
        Map<List<String>, OwnListReading> layouts = new LinkedHashMap<>();
        Map<List<String>, List<String>> sheets = new LinkedHashMap<>();
        try (OpenBook book = OpenBook.of(list, HeadingAliases.NONE, true, caps)) {
            for (String name : book.tables().names()) {
                Optional<RawTable> raw = book.tables()
                        .sheet(withoutEnding(name), new FindingLog())
                        .filter(table -> !isOfTheForm(table));
                Optional<OwnListReading> first = raw.flatMap(table -> best(table, words));
                List<OwnListReading> readings =
                        first.isPresent() ? sideBySide(raw.get(), first.get(), words) : List.of();
                for (OwnListReading reading : readings) {
                    List<String> key = key(reading);
                    layouts.putIfAbsent(key, reading);
                    sheets.computeIfAbsent(key, k -> new ArrayList<>())
                            .add(raw.get().sheet());
                }
            }
            if (layouts.isEmpty()) {
                throw new UnreadableBookException(book.tables().bookName()
                        + " has no list with one row a run whose headings are understood (tables of the form need none): a"
                        + " heading for the run, for what was"
                        + " charged and for what was isolated are looked for in the first " + OwnListHeader.DEEPEST_ROW
                        + " rows.");
            }
        }
        List<OwnListLayout> proposed = new ArrayList<>();
        List<OfList> told = new ArrayList<>();
        layouts.forEach((key, reading) -> {
            OwnListProposal proposal = new OwnListProposal(reading);
            OwnListLayout layout = proposal.layout(sheets.get(key));
            proposed.add(layout);
            told.add(new OfList(
                    layout.sheets(),
                    layout.headingRows(),
                    proposal.understood(),
                    proposal.assumed(),
                    layout.open().stream()
                            .map(open -> new Open(open.heading(), open.question()))
                            .toList(),
                    proposal.notUnderstood(),
                    proposal.withoutTable()));
        });
        return new HeadingsProposal(OwnListJson.of(proposed), List.copyOf(told));
    }

    private static String withoutEnding(String name) {
        return CsvFile.isOne(Path.of(name.replace('\0', ' '))) ? name.substring(0, name.length() - 4) : name;
    }

    /** True for a table of the form, which needs no mapping. */
    private static boolean isOfTheForm(RawTable raw) {
        return HeadingAliases.NONE
                .table(raw.sheet())
                .filter(table -> MatchedHeadings.find(
                                raw, table, HeadingAliases.NONE, BookMarks.unknown(), new FindingLog())
                        .filter(found -> found.missing(table).isEmpty())
                        .isPresent())
                .isPresent();
    }

    private static Optional<OwnListReading> best(RawTable raw, HeadingWords words) {
        return OwnListHeader.best(raw, header -> points(OwnListReading.of(raw, header, words)))
                .map(header -> OwnListReading.of(raw, header, words))
                .filter(reading -> points(reading) >= LEAST_HEADINGS);
    }

    /** Lists that stand beside each other under one row of headings, each read by itself. */
    private static List<OwnListReading> sideBySide(RawTable raw, OwnListReading whole, HeadingWords words) {
        List<OwnListReading> all = new ArrayList<>();
        OwnListReading rest = whole;
        while (!rest.beside().isEmpty()) {
            Set<Integer> others = columns(rest.beside());
            all.add(OwnListReading.of(raw, rest.header().without(others), words));
            Set<Integer> own = columns(rest.header().headings());
            own.removeAll(others);
            rest = OwnListReading.of(raw, rest.header().without(own), words);
        }
        all.add(rest);
        return all;
    }

    private static Set<Integer> columns(List<OwnListHeader.Heading> headings) {
        return headings.stream().map(OwnListHeader.Heading::column).collect(Collectors.toCollection(HashSet::new));
    }

    private static int points(OwnListReading reading) {
        boolean ofReaction = reading.understood().values().stream()
                .anyMatch(sense -> !sense.subject().equals("run"));
        return ofReaction ? reading.understood().size() : 0;
    }

    private static List<String> key(OwnListReading reading) {
        List<String> key = new ArrayList<>(reading.header().headings().stream()
                .map(OwnListHeader.Heading::key)
                .collect(Collectors.toList()));
        key.add(reading.header().rowNumbers().toString());
        return key;
    }
}
