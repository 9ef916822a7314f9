package workuptally.book;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One table of a book. What is looked up for each heading of each book is worked out once. */
final class Table {
    private final String name;
    private final boolean required;
    private final String purpose;
    private final List<Column> columns;
    private final Map<String, Column> byHeading = new LinkedHashMap<>();
    private final Map<String, Column> byLooseHeading = new HashMap<>();
    private final List<String> keyHeadings;

    /**
     * A table.
     *
     * @param name sheet name
     * @param required true for one of the four from which theory and yield follow
     * @param purpose what it holds, one line
     * @param columns its columns in the order of the template
     */
    Table(String name, boolean required, String purpose, List<Column> columns) {
        this.name = name;
        this.required = required;
        this.purpose = purpose;
        this.columns = List.copyOf(columns);
        columns.forEach(column -> byHeading.put(column.heading(), column));
        columns.forEach(column -> byLooseHeading.put(Words.loose(column.heading()), column));
        this.keyHeadings = columns.stream()
                .filter(column -> column.need() == Need.KEY)
                .map(Column::heading)
                .toList();
    }

    String name() {
        return name;
    }

    boolean required() {
        return required;
    }

    String purpose() {
        return purpose;
    }

    List<Column> columns() {
        return columns;
    }

    /** Columns by heading, in order. */
    Map<String, Column> columnsByHeading() {
        return Collections.unmodifiableMap(byHeading);
    }

    /** The column that a loosely spelled heading without its unit means. */
    Optional<Column> column(String looseHeading) {
        return Optional.ofNullable(byLooseHeading.get(looseHeading));
    }

    /** Headings without which no row can be placed. */
    List<String> keyHeadings() {
        return keyHeadings;
    }

    /** The name of its CSV file: {@code nmr-assays.csv}. */
    String csvFileName() {
        return name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".csv";
    }
}
