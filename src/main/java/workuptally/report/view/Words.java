package workuptally.report.view;

import java.util.Locale;

/** Short words that several tables use. */
final class Words {
    private Words() {}

    /** The constant of an enumeration as words: {@code IN_WORKUP} is {@code in workup}. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Yes or no. */
    static Cell yesNo(boolean yes) {
        return Cell.of(yes ? "yes" : "no");
    }

    /** What a coverage factor means, for the note above a table. */
    static String coverage(double coverageFactor) {
        return "U is the expanded uncertainty, k = " + Figures.plain(coverageFactor, coverageFactor % 1 == 0 ? 0 : 2)
                + ".";
    }
}
