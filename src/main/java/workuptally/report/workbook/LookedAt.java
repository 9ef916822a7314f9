package workuptally.report.workbook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.model.Place;
import workuptally.report.view.tables.LiveSheets;

/**
 * The columns of result tables from which other rows take numbers. Expressions are asked for their value only to see at which cells they
 * look; there are no numbers here to be had.
 */
final class LookedAt implements LiveSheets {
    private final Map<String, Set<String>> columns = new HashMap<>();

    /** Whether any expression that was asked looks at that column. */
    boolean has(String table, String column) {
        return columns.getOrDefault(table, Set.of()).contains(column);
    }

    /** Notes a column. */
    void add(String table, String column) {
        columns.computeIfAbsent(table, name -> new HashSet<>()).add(column);
    }

    @Override
    public OptionalDouble value(String table, int row, String column) {
        add(table, column);
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble value(Place entry) {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble value(String column) {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble named(String name) {
        return OptionalDouble.empty();
    }

    @Override
    public double sumWhere(String table, String column, String keyColumn, String ownKeyColumn) {
        return 0;
    }

    @Override
    public String address(Place entry) {
        return "";
    }

    @Override
    public String address(String column) {
        return "";
    }

    @Override
    public String address(String table, int row, String column) {
        return "";
    }

    @Override
    public String range(String table, String column) {
        return "";
    }

    @Override
    public String nameOf(String name) {
        return "";
    }
}
