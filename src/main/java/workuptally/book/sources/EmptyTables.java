package workuptally.book.sources;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.model.Limit;

/** The rows of an empty book: headings, and in Limits the fixed names with what holds where nothing is entered. */
public final class EmptyTables {
    private EmptyTables() {}

    public static RawTable of(Table table) {
        List<RawRow> rows = new ArrayList<>();
        List<String> headings = new ArrayList<>(
                table.columns().stream().map(SchemaColumn::headingWithUnit).toList());
        if (table == Schema.LIMITS) {
            headings.addAll(List.of("Default", "Origin of the default"));
        }
        rows.add(row(1, headings));
        if (table == Schema.LIMITS) {
            for (Limit limit : Limit.values()) {
                rows.add(row(rows.size() + 1, limitRow(limit)));
            }
        }
        return new RawTable(table.csvFileName(), table.name(), false, rows);
    }

    private static List<String> limitRow(Limit limit) {
        String value =
                limit.defaultValue().isPresent() ? shown(limit.defaultValue().getAsDouble()) : "";
        return Arrays.asList(limit.title(), "", limit.unit(), limit.meaning(), value, limit.origin());
    }

    /** A default as a person reads it: up to four significant decimals, without trailing zeros. */
    private static String shown(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static RawRow row(int row, List<String> texts) {
        List<RawCell> cells = IntStream.range(0, texts.size())
                .filter(column -> !texts.get(column).isEmpty())
                .mapToObj(column -> RawCell.text(column, texts.get(column)))
                .toList();
        return new RawRow(row, row, cells);
    }
}
