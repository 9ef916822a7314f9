package workuptally.report.view.wording;

import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/** Short words that several tables use. */
public final class Words {
    private Words() {}

    /** The constant of an enumeration as words: {@code IN_WORKUP} is {@code in workup}. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A number of things: {@code 1 run}, {@code 2 runs}. */
    public static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    /**
     * Parts in a row, as many as there is room for; the others are counted, never cut.
     *
     * @param parts parts
     * @param between what stands between them
     * @param most characters that the whole may have
     * @param others how so many that are left are told of
     */
    public static String listed(List<String> parts, String between, int most, IntFunction<String> others) {
        String all = String.join(between, parts);
        for (int shown = parts.size() - 1; all.length() > most && shown > 0; shown--) {
            all = String.join(between, parts.subList(0, shown)) + between + others.apply(parts.size() - shown);
        }
        return all.length() > most && !parts.isEmpty() ? others.apply(parts.size()) : all;
    }
}
