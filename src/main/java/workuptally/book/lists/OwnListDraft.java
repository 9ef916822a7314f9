package workuptally.book.lists;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;

/** A feed while it is put together. */
final class OwnListDraft {
    private final Table table;
    private final Map<OwnListHeader.Heading, String> used;
    private final Map<SchemaColumn, List<String>> columns = new LinkedHashMap<>();
    private final Map<SchemaColumn, String> constants = new LinkedHashMap<>();

    /**
     * For one table.
     *
     * @param used where each heading of the list goes; what this feed takes is added
     */
    OwnListDraft(Table table, Map<OwnListHeader.Heading, String> used) {
        this.table = table;
        this.used = used;
    }

    SchemaColumn column(String heading) {
        return table.column(BookWords.loose(heading)).orElseThrow();
    }

    void take(String form, Optional<OwnListHeader.Heading> own) {
        own.ifPresent(heading -> take(form, List.of(heading)));
    }

    void take(String form, List<OwnListHeader.Heading> own) {
        if (!own.isEmpty()) {
            columns.put(
                    column(form), own.stream().map(OwnListHeader.Heading::key).toList());
            own.forEach(heading ->
                    used.merge(heading, table.name() + ", " + form, (a, b) -> a.contains(b) ? a : a + "; " + b));
        }
    }

    void constant(String form, String text) {
        constants.put(column(form), text);
    }

    boolean has(String form) {
        return columns.containsKey(column(form));
    }

    Map<SchemaColumn, List<String>> columns() {
        return columns;
    }

    Map<SchemaColumn, String> constants() {
        return constants;
    }

    OwnListFeed feed() {
        return new OwnListFeed(table, columns, new HashMap<>(), constants);
    }
}
