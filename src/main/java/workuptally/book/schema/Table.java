package workuptally.book.schema;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.book.words.BookWords;

/** One table of a book. What is looked up for each heading of each book is worked out once. */
public final class Table {
    private final String name;
    private final boolean required;
    private final String purpose;
    private final List<SchemaColumn> columns;
    private final Map<String, SchemaColumn> byHeading = new LinkedHashMap<>();
    private final Map<String, SchemaColumn> byLooseHeading = new HashMap<>();
    private final List<String> keyHeadings;

    /**
     * A table.
     *
     * @param name sheet name
     * @param required true for one of the four from which theory and yield follow
     * @param purpose what it holds, one line
     * @param columns its columns in the order of the template
     */
    Table(String name, boolean required, String purpose, List<SchemaColumn> columns) {
        this.name = name;
        this.required = required;
        this.purpose = purpose;
        this.columns = List.copyOf(columns);
        columns.forEach(column -> byHeading.put(column.heading(), column));
        columns.forEach(column -> byLooseHeading.put(BookWords.loose(column.heading()), column));
        this.keyHeadings = columns.stream()
                .filter(column -> column.need() == Need.KEY)
                .map(SchemaColumn::heading)
                .toList();
    }

    public String name() {
        return name;
    }

    public boolean required() {
        return required;
    }

    public String purpose() {
        return purpose;
    }

    public List<SchemaColumn> columns() {
        return columns;
    }

    /** Columns by heading, in order. */
    public Map<String, SchemaColumn> columnsByHeading() {
        return Collections.unmodifiableMap(byHeading);
    }

    /** The column that a loosely spelled heading without its unit means. */
    public Optional<SchemaColumn> column(String looseHeading) {
        return Optional.ofNullable(byLooseHeading.get(looseHeading));
    }

    /** Headings without which no row can be placed. */
    public List<String> keyHeadings() {
        return keyHeadings;
    }

    /** The name of its CSV file: {@code nmr-assays.csv}. */
    public String csvFileName() {
        return name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".csv";
    }
}
