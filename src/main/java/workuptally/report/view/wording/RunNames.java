package workuptally.report.view.wording;

import java.util.ArrayList;
import java.util.List;

/**
 * Many runs in few words: {@code R26-041 to 053}, {@code R26-041, 045, 049}. What the name before had in front of its number is not said
 * again, and three or more that follow each other are a range.
 */
public final class RunNames {
    private static final int LEAST_OF_A_RANGE = 3;
    private static final int LEAST_DIGITS_ALONE = 3;
    /** Longer numbers are dates or bar codes: they are said whole. */
    private static final int MOST_DIGITS = 9;

    private RunNames() {}

    /**
     * All the names.
     *
     * @param runs ids in order of the book
     */
    public static String listed(List<String> runs) {
        return String.join(", ", parts(runs));
    }

    /**
     * As many of the names as there is room for, but at least three; the others are counted.
     *
     * @param most characters
     */
    public static String listed(List<String> runs, int most) {
        String names = listed(runs);
        for (int shown = runs.size() - 1; names.length() > most && shown >= LEAST_OF_A_RANGE; shown--) {
            names = listed(runs.subList(0, shown)) + " and " + Words.count(runs.size() - shown, "more run");
        }
        return names;
    }

    /**
     * Each name by itself, without what the one before had in front of its number, unless the number is so short that it would read as a
     * count of what stands behind it.
     */
    public static List<String> each(List<String> runs) {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Name name = Name.of(runs.get(i));
            boolean shown =
                    i > 0 && name.digits().length() >= LEAST_DIGITS_ALONE && name.isLike(Name.of(runs.get(i - 1)));
            each.add(shown ? name.digits() : name.whole());
        }
        return each;
    }

    /** The names as parts that a list can be made of, each a run or a range. */
    private static List<String> parts(List<String> runs) {
        List<Name> names = runs.stream().map(Name::of).toList();
        List<String> parts = new ArrayList<>();
        int from = 0;
        while (from < names.size()) {
            int end = from + 1;
            while (end < names.size() && names.get(end).follows(names.get(end - 1))) {
                end++;
            }
            if (end - from < LEAST_OF_A_RANGE) {
                end = from + 1;
            }
            Name first = names.get(from);
            String name = from > 0 && first.isLike(names.get(from - 1)) ? first.digits() : first.whole();
            parts.add(
                    end - from == 1
                            ? name
                            : name + "\u00A0to\u00A0" + names.get(end - 1).digits());
            from = end;
        }
        return parts;
    }

    /**
     * A name, parted before the number that it ends with.
     *
     * @param start what stands before it
     * @param digits the number as written; empty where it ends with none
     */
    private record Name(String start, String digits) {
        static Name of(String run) {
            int at = run.length();
            while (at > 0 && run.charAt(at - 1) >= '0' && run.charAt(at - 1) <= '9') {
                at--;
            }
            return run.length() - at > MOST_DIGITS
                    ? new Name(run, "")
                    : new Name(run.substring(0, at), run.substring(at));
        }

        String whole() {
            return start + digits;
        }

        /** True where the number alone tells this name behind the other one. */
        boolean isLike(Name other) {
            return !digits.isEmpty() && start.equals(other.start) && digits.length() == other.digits.length();
        }

        boolean follows(Name other) {
            return isLike(other) && Integer.parseInt(digits) == Integer.parseInt(other.digits) + 1;
        }
    }
}
