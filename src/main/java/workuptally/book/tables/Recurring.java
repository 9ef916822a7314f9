package workuptally.book.tables;

import java.util.HashMap;
import java.util.Map;

/**
 * Values of a table that recur from row to row, such as numbers, days, choices and labels: equal ones become one object, since a large book
 * has a million of them.
 */
final class Recurring {
    private final Map<Object, Object> values = new HashMap<>();

    /**
     * The object that stands for all values equal to a given one.
     *
     * @param value a value that cannot be changed
     */
    @SuppressWarnings("unchecked") // equal values of these kinds are of one type
    <T> T one(T value) {
        return (T) values.computeIfAbsent(value, first -> first);
    }
}
