package workuptally.book.cells;

import java.util.List;
import java.util.regex.Matcher;

/** Whether dates with slashes put the day or the month first, as far as that can be told. */
public enum DayOrder {
    /** Not told. */
    OPEN,
    /** {@code 13/03/2026}. */
    DAY_FIRST,
    /** {@code 03/13/2026}. */
    MONTH_FIRST;

    private static final int MONTHS = 12;

    /** As the dates of one column tell that can be read in one way only; not told where these disagree. */
    public static DayOrder of(List<String> column) {
        boolean dayFirst = false;
        boolean monthFirst = false;
        for (String typed : column) {
            Matcher match = DateText.SLASHES.matcher(DateText.dateOf(typed));
            if (match.matches() && DateText.parse(typed) instanceof DateText.Day) {
                int first = Integer.parseInt(match.group(1));
                int second = Integer.parseInt(match.group(3));
                dayFirst |= first > MONTHS && second <= MONTHS && match.group(4).length() == 4;
                monthFirst |=
                        second > MONTHS && first <= MONTHS && match.group(4).length() == 4;
            }
        }
        return dayFirst == monthFirst ? OPEN : dayFirst ? DAY_FIRST : MONTH_FIRST;
    }
}
