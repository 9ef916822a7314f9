package workuptally.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The runs of a book that a free text names, {@code PC-3 CR1} or {@code R26-041 layer A1}: whole words only, capitals or not. It takes as
 * long for a large book as for a small one.
 */
public final class NamedRuns {
    private final Map<String, Run> byId = new HashMap<>();
    private final Map<String, Integer> order = new HashMap<>();
    private final Set<Integer> lengths = new HashSet<>();

    /** The runs to look for; those without a name cannot be named. */
    public NamedRuns(List<Run> runs) {
        for (Run run : runs) {
            String id = folded(run.id());
            if (!id.isBlank() && byId.putIfAbsent(id, run) == null) {
                order.put(id, order.size());
                lengths.add(id.length());
            }
        }
    }

    /** The runs that a text names, in order of the book; of {@code PC-1} and {@code PC-1-b} at one place the longer. */
    public List<Run> in(String text) {
        String folded = folded(text);
        Map<Integer, String> longest = new HashMap<>();
        for (int length : lengths) {
            for (int start = 0; start + length <= folded.length(); start++) {
                String word = folded.substring(start, start + length);
                if (byId.containsKey(word) && isWhole(folded, start, start + length)) {
                    longest.merge(start, word, (a, b) -> a.length() >= b.length() ? a : b);
                }
            }
        }
        return longest.values().stream()
                .distinct()
                .sorted(Comparator.comparing(order::get))
                .map(byId::get)
                .toList();
    }

    /** Of the runs that a text names the first of the book. */
    public Optional<Run> firstIn(String text) {
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
