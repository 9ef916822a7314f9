package workuptally.book;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A date as a person writes it, or as a spreadsheet stores it. */
sealed interface DateText {
    /**
     * A day, with the time where the text has one.
     *
     * @param day the day
     */
    record Day(LocalDate day) implements DateText {}

    /** No date. */
    record Nothing() implements DateText {}

    /**
     * Not understood.
     *
     * @param code code of the finding
     * @param expected what would be understood
     */
    record Fault(String code, String expected) implements DateText {}

    Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})(?:[T ]\\d{1,2}:\\d{2}.*)?");
    Pattern DAY_FIRST_DOTS = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4})(?: \\d{1,2}:\\d{2}.*)?");
    Pattern SLASHES = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4})(?: \\d{1,2}:\\d{2}.*)?");
    Pattern MONTH_NAME = Pattern.compile("(\\d{1,2})[-. ]{1,2}([A-Za-z]{3,9})\\.?[- ](\\d{4})");
    List<String> MONTHS = List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    Pattern IS_SERIAL = Pattern.compile("-?\\d{1,6}(\\.\\d{0,20})?");
    int FIRST_YEAR = 1950;
    int LAST_YEAR = 2150;

    /** Reads a text. */
    static DateText parse(String typed) {
        String text = Words.tidy(typed);
        if (NumberText.parse(text) instanceof NumberText.Nothing) {
            return new Nothing();
        }
        Matcher match = YEAR_FIRST.matcher(text);
        if (match.matches()) {
            return day(match.group(1), match.group(2), match.group(3));
        }
        match = DAY_FIRST_DOTS.matcher(text);
        if (match.matches()) {
            return day(match.group(3), match.group(2), match.group(1));
        }
        match = SLASHES.matcher(text);
        if (match.matches()) {
            return slashes(match);
        }
        match = MONTH_NAME.matcher(text);
        if (match.matches()) {
            int month = MONTHS.indexOf(match.group(2).substring(0, 3).toLowerCase(Locale.ROOT)) + 1;
            return day(match.group(3), Integer.toString(month), match.group(1));
        }
        return new Fault("date-unreadable", "a date such as 2026-03-06");
    }

    private static DateText slashes(Matcher match) {
        int first = Integer.parseInt(match.group(1));
        int second = Integer.parseInt(match.group(2));
        if (first <= 12 && second <= 12 && first != second) {
            return new Fault("date-ambiguous", "a date that can be read in one way only, such as 2026-03-06");
        }
        return first > 12
                ? day(match.group(3), match.group(2), match.group(1))
                : day(match.group(3), match.group(1), match.group(2));
    }

    private static DateText day(String year, String month, String day) {
        try {
            return inRange(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return impossible();
        }
    }

    private static DateText inRange(LocalDate day) {
        return day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR ? new Day(day) : impossible();
    }

    private static Fault impossible() {
        return new Fault(
                "date-impossible", "a day of the calendar between the years " + FIRST_YEAR + " and " + LAST_YEAR);
    }

    /** Reads a stored cell. */
    static DateText read(RawCell cell) {
        return switch (cell.type()) {
            case TEXT -> parse(cell.text());
            case NUMBER, COMPUTED_NUMBER ->
                cell.shownAs().isDate() && IS_SERIAL.matcher(cell.text()).matches()
                        ? inRange(moment(cell).toLocalDate())
                        : new Fault("date-unreadable", "a date such as 2026-03-06; a bare number is none");
            case ERROR -> new Fault("formula-error", "a date such as 2026-03-06");
            case NOT_CALCULATED -> new Fault("formula-not-calculated", "a formula with its result");
            case MERGED -> new Fault("merged-cells", "");
        };
    }

    /** The text of a date cell: the day, and the time where it is not midnight. */
    static String shown(RawCell cell) {
        if (!IS_SERIAL.matcher(cell.text()).matches()) {
            return cell.text();
        }
        LocalDateTime moment = moment(cell);
        return moment.toLocalTime().equals(LocalTime.MIDNIGHT)
                ? moment.toLocalDate().toString()
                : moment.toString();
    }

    /** The moment of a serial number. Day 60 of the count from 1900 never was; days before it are a day off and no date of a book. */
    private static LocalDateTime moment(RawCell cell) {
        LocalDate start = cell.shownAs().kind() == ShownAs.Kind.DATE_FROM_1904
                ? LocalDate.of(1904, 1, 1)
                : LocalDate.of(1899, 12, 30);
        double days = Double.parseDouble(cell.text());
        long whole = (long) Math.floor(days);
        long seconds = Math.round((days - whole) * 86_400);
        return start.plusDays(whole).atStartOfDay().plusSeconds(seconds);
    }
}
