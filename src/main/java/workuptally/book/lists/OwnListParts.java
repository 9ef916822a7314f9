package workuptally.book.lists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.headings.HeadingText;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.book.words.Unit;

/**
 * Reads the part {@code lists} of a headings file:
 *
 * <pre>{"lists": [{"sheets": ["2024"], "heading rows": [2, 3], "leave out": ["Total"],
 *   "Runs": [{"Run": "Exp."}], "Charges": [{"Material": "Edukt", "Role": "= substrate", "Actual amount": ["mg", "mL"]}],
 *   "not used": ["Page"], "open": [{"heading": "Menge", "question": "mass or volume?"}]}]}</pre>
 *
 * <p>Each table maps headings of the form to those of the list; {@code = text} is a constant.
 */
final class OwnListParts {
    private static final String CONSTANT = "=";

    private final String file;

    OwnListParts(String file) {
        this.file = file;
    }

    /**
     * All lists.
     *
     * @param lists the value of {@code lists}
     * @throws UnreadableBookException if it has another form, or names a table, heading or unit that the form lacks
     */
    List<OwnListLayout> read(Object lists) throws UnreadableBookException {
        List<OwnListLayout> layouts = new ArrayList<>();
        for (Object list : array(lists, "lists")) {
            layouts.add(layout(object(list, "lists")));
        }
        return layouts;
    }

    private OwnListLayout layout(Map<?, ?> list) throws UnreadableBookException {
        List<String> sheets = List.of();
        List<Integer> headingRows = List.of();
        List<String> leaveOut = List.of();
        List<String> notUsed = List.of();
        List<OwnListLayout.OpenHeading> open = List.of();
        List<OwnListFeed> feeds = new ArrayList<>();
        for (Map.Entry<?, ?> part : list.entrySet()) {
            String name = String.valueOf(part.getKey());
            switch (BookWords.loose(name)) {
                case "sheets" -> sheets = texts(part.getValue(), name);
                case "headingrows" -> headingRows = rows(texts(part.getValue(), name));
                case "leaveout" -> leaveOut = texts(part.getValue(), name);
                case "notused" -> notUsed = texts(part.getValue(), name);
                case "open" -> open = open(array(part.getValue(), name));
                default -> feeds.addAll(feeds(name, part.getValue()));
            }
        }
        if (feeds.stream()
                .noneMatch(feed -> feed.table() == Schema.RUNS
                        && feed.fills(Schema.RUNS.keyHeadings().get(0)))) {
            throw new UnreadableBookException("The headings file " + file
                    + " has a list without \"Runs\": [{\"Run\": …}]: name the heading of the run's id, or \"= row "
                    + OwnListFeed.ROW_NUMBER + "\" where there is none, and run again.");
        }
        return new OwnListLayout(sheets, headingRows, leaveOut, feeds, notUsed, open);
    }

    private List<OwnListFeed> feeds(String name, Object value) throws UnreadableBookException {
        Table table = HeadingAliases.NONE.table(name).orElseThrow(() -> HeadingsFile.unknown(file, "table", name));
        List<OwnListFeed> feeds = new ArrayList<>();
        for (Object feed : array(value, name)) {
            Map<SchemaColumn, List<String>> columns = new LinkedHashMap<>();
            Map<SchemaColumn, String> units = new HashMap<>();
            Map<SchemaColumn, String> constants = new LinkedHashMap<>();
            for (Map.Entry<?, ?> entry : object(feed, name).entrySet()) {
                String heading = String.valueOf(entry.getKey());
                SchemaColumn column = column(table, heading);
                String unit = HeadingText.of(heading).unitText();
                if (!unit.isEmpty()) {
                    Unit.named(unit).orElseThrow(() -> HeadingsFile.unknown(file, "unit", unit));
                    units.put(column, unit);
                }
                List<String> own = texts(entry.getValue(), name);
                if (own.size() == 1 && own.get(0).startsWith(CONSTANT)) {
                    constants.put(
                            column, own.get(0).substring(CONSTANT.length()).strip());
                } else {
                    columns.put(column, own);
                }
            }
            feeds.add(withKeys(new OwnListFeed(table, columns, units, constants)));
        }
        return feeds;
    }

    private SchemaColumn column(Table table, String heading) throws UnreadableBookException {
        Optional<SchemaColumn> column = table.column(BookWords.loose(heading))
                .or(() -> table.column(HeadingText.of(heading).name()));
        return column.orElseThrow(() -> HeadingsFile.unknown(file, "heading of " + table.name(), heading));
    }

    /** A row of the table needs its keys: all but the run, which every feed takes from where Runs has it. */
    private OwnListFeed withKeys(OwnListFeed feed) throws UnreadableBookException {
        for (String key : feed.table().keyHeadings()) {
            if (!key.equals("Run") && !feed.fills(key)) {
                throw new UnreadableBookException(
                        "The headings file " + file + " feeds " + feed.table().name() + " without " + key
                                + ": name its heading, or a constant such as \"= product\", and run again.");
            }
        }
        return feed;
    }

    private List<Integer> rows(List<String> texts) throws UnreadableBookException {
        List<Integer> rows = new ArrayList<>();
        for (String text : texts) {
            if (!text.matches("[1-9]\\d{0,6}")) {
                throw wrongForm("heading rows");
            }
            rows.add(Integer.valueOf(text));
        }
        return rows;
    }

    private List<OwnListLayout.OpenHeading> open(List<?> entries) throws UnreadableBookException {
        List<OwnListLayout.OpenHeading> open = new ArrayList<>();
        for (Object entry : entries) {
            Map<?, ?> heading = object(entry, "open");
            open.add(new OwnListLayout.OpenHeading(text(heading.get("heading")), text(heading.get("question"))));
        }
        return open;
    }

    private static String text(Object value) {
        return value instanceof String text ? text : "";
    }

    private List<String> texts(Object value, String part) throws UnreadableBookException {
        List<String> texts = new ArrayList<>();
        for (Object entry : value instanceof List<?> several ? several : List.of(value)) {
            if (!(entry instanceof String text)) {
                throw wrongForm(part);
            }
            texts.add(text);
        }
        return texts;
    }

    private List<?> array(Object value, String part) throws UnreadableBookException {
        if (value instanceof List<?> several) {
            return several;
        }
        throw wrongForm(part);
    }

    private Map<?, ?> object(Object value, String part) throws UnreadableBookException {
        if (value instanceof Map<?, ?> object) {
            return object;
        }
        throw wrongForm(part);
    }

    private UnreadableBookException wrongForm(String part) {
        return new UnreadableBookException("The headings file " + file + " has '" + part
                + "' in another form than a list needs: 'workup-tally headings LIST' writes one to start from.");
    }
}
