package workuptally.book.headings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;

/**
 * What one table of the form takes from each row of a laboratory's own list; several feeds of one table make several rows of it.
 *
 * @param table the table
 * @param columns headings of the list by column of the form; where there are several, a row takes the first that it fills
 * @param units unit that the headings file gives for a column, where the heading of the list names none
 * @param constants what the list leaves out, by column of the form; {@code {row}} stands for the number of the row
 */
public record OwnListFeed(
        Table table,
        Map<SchemaColumn, List<String>> columns,
        Map<SchemaColumn, String> units,
        Map<SchemaColumn, String> constants) {
    public static final String ROW_NUMBER = "{row}";

    /** Keeps the order. */
    public OwnListFeed {
        columns = new LinkedHashMap<>(columns);
        columns.replaceAll((column, own) -> List.copyOf(own));
        units = Map.copyOf(units);
        constants = new LinkedHashMap<>(constants);
    }

    /** The same with one heading of the list for each column: one for each alternative, in the order in which they are tried. */
    public List<OwnListFeed> alternatives() {
        Optional<Map.Entry<SchemaColumn, List<String>>> several = columns.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .findFirst();
        if (several.isEmpty()) {
            return List.of(this);
        }
        List<OwnListFeed> feeds = new ArrayList<>();
        for (String own : several.get().getValue()) {
            Map<SchemaColumn, List<String>> one = new LinkedHashMap<>(columns);
            one.put(several.get().getKey(), List.of(own));
            feeds.addAll(new OwnListFeed(table, one, units, constants).alternatives());
        }
        return feeds;
    }

    /** The column of the form that has alternatives, if one has. */
    public Optional<SchemaColumn> withAlternatives() {
        return columns.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** True for a column of the form that the list or a constant fills. */
    public boolean fills(String heading) {
        return table.column(BookWords.loose(heading))
                .filter(column -> columns.containsKey(column) || constants.containsKey(column))
                .isPresent();
    }
}
