package workuptally.reference;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The rows of a reference table in its order, found by their names; nothing but the table that builds it can change it.
 *
 * @param <T> what a row holds
 */
public final class NamedTable<T> extends AbstractList<T> {
    private final List<T> rows;
    private final UnaryOperator<String> spelling;
    private final Map<String, List<T>> byName = new HashMap<>();

    private NamedTable(List<T> rows, UnaryOperator<String> spelling) {
        this.rows = List.copyOf(rows);
        this.spelling = spelling;
    }

    /** Rows found by a key as it is written in the table. */
    static <T> NamedTable<T> keyed(List<T> rows, Function<T, String> key) {
        return new NamedTable<>(rows, UnaryOperator.identity()).by(key);
    }

    /** Rows found by names as people type them ({@link Names#plain}); which ones, the calls that follow say. */
    static <T> NamedTable<T> spelledFreely(List<T> rows) {
        return new NamedTable<>(rows, Names::plain);
    }

    /** Adds a name of every row; where rows share one, what was added earlier goes before. */
    NamedTable<T> by(Function<T, String> name) {
        rows.forEach(row -> add(name.apply(row), row));
        return this;
    }

    /** Adds other names of every row, after those added before. */
    NamedTable<T> byEach(Function<T, ? extends Collection<String>> names) {
        rows.forEach(row -> names.apply(row).forEach(name -> add(name, row)));
        return this;
    }

    /** Adds a name that another table knows for a row. */
    void add(String name, T row) {
        List<T> named = byName.computeIfAbsent(spelling.apply(name), n -> new ArrayList<>(1));
        if (named.stream().noneMatch(other -> other == row)) {
            named.add(row);
        }
    }

    /** The row with a name, the first of the table where several have it; empty where none has. */
    public Optional<T> find(String name) {
        return findAll(name).stream().findFirst();
    }

    /** All rows with a name, in order of the table; empty where none has it. */
    public List<T> findAll(String name) {
        return Collections.unmodifiableList(byName.getOrDefault(spelling.apply(name), List.of()));
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
