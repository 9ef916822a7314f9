package workuptally.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a free text names of a book, the runs in {@code PC-3 CR1} or {@code R26-041 layer A1}: whole words only, capitals or not. It takes as
 * long for a large book as for a small one.
 *
 * @param <T> what has a name
 */
public final class NamedIn<T> {
    private final Map<String, T> byName = new HashMap<>();
    private final Map<String, Integer> order = new HashMap<>();
    private final Set<Integer> lengths = new HashSet<>();

    /**
     * What to look for.
     *
     * @param all in order of the book; without a name nothing can be named
     * @param name its name
     */
    public NamedIn(List<T> all, Function<T, String> name) {
        for (T one : all) {
            String folded = folded(name.apply(one));
            if (!folded.isBlank() && byName.putIfAbsent(folded, one) == null) {
                order.put(folded, order.size());
                lengths.add(folded.length());
            }
        }
    }

    /** What a text names, in order of the book; of {@code PC-1} and {@code PC-1-b} at one place the longer. */
    public List<T> in(String text) {
        return places(folded(text)).values().stream()
                .distinct()
                .sorted(Comparator.comparing(order::get))
                .map(byName::get)
                .toList();
    }

    /** What a text says behind each name up to the next one, as in {@code PC-1 ML1, ML2 + PC-2 ML1}; in order of the text. */
    public Map<T, String> behindNames(String text) {
        String folded = folded(text);
        Map<T, String> behind = new LinkedHashMap<>();
        List<Map.Entry<Integer, String>> places = List.copyOf(places(folded).entrySet());
        for (int i = 0; i < places.size(); i++) {
            String name = places.get(i).getValue();
            int from = places.get(i).getKey() + name.length();
            int to = i + 1 < places.size() ? places.get(i + 1).getKey() : folded.length();
            behind.merge(byName.get(name), from < to ? folded.substring(from, to) : "", (a, b) -> a + " " + b);
        }
        return behind;
    }

    /** Where names stand in a folded text, in its order. */
    private Map<Integer, String> places(String folded) {
        Map<Integer, String> longest = new TreeMap<>();
        for (int length : lengths) {
            for (int start = 0; start + length <= folded.length(); start++) {
                String word = folded.substring(start, start + length);
                if (byName.containsKey(word) && isWhole(folded, start, start + length)) {
                    longest.merge(start, word, (a, b) -> a.length() >= b.length() ? a : b);
                }
            }
        }
        return longest;
    }

    /** Of what a text names the first of the book. */
    public Optional<T> firstIn(String text) {
        return in(text).stream().findFirst();
    }

    /** Which of some labels a text names as whole words, in their order. */
    public static List<String> labelsIn(String text, List<String> labels) {
        String folded = folded(text);
        List<String> named = new ArrayList<>();
        for (String label : labels) {
            if (!label.isBlank() && names(folded, folded(label))) {
                named.add(label);
            }
        }
        return named;
    }

    private static boolean names(String text, String word) {
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
            if (isWhole(text, at, at + word.length())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWhole(String text, int start, int end) {
        return (start == 0 || !Character.isLetterOrDigit(text.charAt(start - 1)))
                && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)));
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
