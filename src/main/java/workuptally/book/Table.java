package workuptally.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One table of a book.
 *
 * @param name sheet name
 * @param required true if a book without it cannot be read
 * @param purpose what it holds, one line
 * @param columns its columns in the order of the template
 */
record Table(String name, boolean required, String purpose, List<Column> columns) {
    Table {
        columns = List.copyOf(columns);
    }

    /** Columns by heading, in order. */
    Map<String, Column> columnsByHeading() {
        Map<String, Column> map = new LinkedHashMap<>();
        columns.forEach(column -> map.put(column.heading(), column));
        return map;
    }

    /** Headings without which no row can be placed. */
    List<String> keyHeadings() {
        return columns.stream()
                .filter(column -> column.need() == Need.KEY)
                .map(Column::heading)
                .toList();
    }

    /** The name of its CSV file: {@code nmr-assays.csv}. */
    String csvFileName() {
        return name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".csv";
    }
}
