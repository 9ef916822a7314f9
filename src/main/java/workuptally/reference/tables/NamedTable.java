package workuptally.reference.tables;

import java.util.AbstractList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The rows of a reference table in its order, found by their names; immutable.
 *
 * @param <T> what a row holds
 */
public final class NamedTable<T> extends AbstractList<T> {
    private final List<T> rows;
    private final UnaryOperator<String> spelling;
    private final Map<String, List<T>> byName;

    private NamedTable(List<T> rows, UnaryOperator<String> spelling, Map<String, List<T>> byName) {
        this.rows = rows;
        this.spelling = spelling;
        this.byName = byName;
    }

    /** Rows found by a key as it is written in the table. */
    public static <T> NamedTable<T> keyed(List<T> rows, Function<T, String> key) {
        return new NamedTable<>(List.copyOf(rows), UnaryOperator.identity(), Map.of()).by(key);
    }

    /** Rows found by names as people type them ({@link Names#plain}); which ones, the calls that follow say. */
    public static <T> NamedTable<T> spelledFreely(List<T> rows) {
        return new NamedTable<>(List.copyOf(rows), Names::plain, Map.of());
    }

    /** The table with a name more of every row; where rows share one, what was named earlier goes before. */
    public NamedTable<T> by(Function<T, String> name) {
        return byEach(row -> List.of(name.apply(row)));
    }

    /** The table with other names of every row, after those from before. */
    public NamedTable<T> byEach(Function<T, ? extends Collection<String>> names) {
        Map<String, List<T>> named = new HashMap<>(byName);
        for (T row : rows) {
            for (String name : names.apply(row)) {
                named.merge(spelling.apply(name), List.of(row), NamedTable::both);
            }
        }
        return new NamedTable<>(rows, spelling, named);
    }

    private static <T> List<T> both(List<T> earlier, List<T> later) {
        return earlier.stream().anyMatch(row -> row == later.get(0))
                ? earlier
                : Stream.concat(earlier.stream(), later.stream()).toList();
    }

    /** The row with a name, the first of the table where several have it; empty where none has. */
    public Optional<T> find(String name) {
        List<T> found = findAll(name);
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
    }

    /** All rows with a name, in order of the table; empty where none has it. */
    public List<T> findAll(String name) {
        return byName.getOrDefault(spelling.apply(name), List.of());
    }

    @Override
    public T get(int index) {
        return rows.get(index);
    }

    @Override
    public int size() {
        return rows.size();
    }
}
