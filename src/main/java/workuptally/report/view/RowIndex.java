package workuptally.report.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** In which row of a table something stands, by texts that name it. */
final class RowIndex {
    private final Map<List<String>, Integer> rows = new HashMap<>();

    /** Notes a row, unless the same key has one already. */
    void put(int row, String... key) {
        rows.putIfAbsent(List.of(key), row);
    }

    /** The row of a key, from 0, if there is one. */
    OptionalInt of(String... key) {
        Integer row = rows.get(List.of(key));
        return row == null ? OptionalInt.empty() : OptionalInt.of(row);
    }
}
