package workuptally.reference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Answers given so far, since a book asks for the same few names again and again; limited, since one object serves many books. Safe for
 * use by several threads.
 *
 * @param <T> what is asked for, never null
 */
final class Answers<T> {
    private static final int MOST = 4096;
    private static final int LONGEST_NAME = 80;

    private final Map<String, T> given = new ConcurrentHashMap<>();

    /** The answer given before, or the one of this call. */
    T of(String name, Function<String, T> ask) {
        T before = given.get(name);
        if (before != null) {
            return before;
        }
        T answer = ask.apply(name);
        if (name.length() <= LONGEST_NAME && given.size() < MOST) {
            given.put(name, answer);
        }
        return answer;
    }
}
