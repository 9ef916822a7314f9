package workuptally.book.cells;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.book.files.RawCell;
import workuptally.book.files.ShownAs;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TypedText;
import workuptally.model.FindingCode;

/** A date as a person writes it, or as a spreadsheet stores it. */
public sealed interface DateText {
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
    record Fault(FindingCode code, String expected) implements DateText {}

    /** Code of a date whose day and month cannot be told apart. */
    FindingCode AMBIGUOUS = FindingCode.DATE_AMBIGUOUS;

    Pattern YEAR_FIRST = Pattern.compile("(\\d{4})([-./])(\\d{1,2})\\2(\\d{1,2})");
    Pattern EIGHT_DIGITS = Pattern.compile("((?:19|20)\\d{2})(\\d{2})(\\d{2})");
    Pattern DAY_FIRST_DOTS = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4}|\\d{2})");
    Pattern SLASHES = Pattern.compile("(\\d{1,2})([/-])(\\d{1,2})\\2(\\d{4}|\\d{2})");
    Pattern MONTH_SECOND = Pattern.compile(
            "(\\d{1,2})(?:st|nd|rd|th|er|\\.)?[- .]{0,2}(\\p{L}{3,9})\\.?[-, ]{0,2}(\\d{4}|(?<=[-. ])\\d{2})");
    Pattern MONTH_FIRST = Pattern.compile("(\\p{L}{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})");
    Pattern YEAR_MONTH_DAY = Pattern.compile("(\\d{4})[- ](\\p{L}{3,9})\\.?[- ](\\d{1,2})");

    /** A weekday before the date and a time behind it say nothing more about the day. */
    Pattern AROUND = Pattern.compile(
            "(?:(?:mon?|tue?s?|wed(?:nes)?|thu?r?s?|fri?|sat(?:ur)?|sun?)(?:day)?|di|mi|do|sa|so|(?:mon|diens|donners|frei|sams|sonn)tag|mittwoch"
                    + "|lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche|lun|mer|jeu|ven|sam|dim)?\\.?,? ?(?<date>\\d.*?|\\p{L}{3,9}\\.? \\d.*?)(?:[T ,]+\\d{1,2}:\\d{2}(?::\\d{2}.*)?(?: ?(?:h|Uhr|am|pm))?)?(?: \\(\\p{L}{2,10}\\.?\\))?",
            Pattern.CASE_INSENSITIVE);

    /** Names of the months in English, German and French, loosely spelled, with their usual short forms. */
    List<Set<String>> MONTHS = List.of(
            Set.of("jan", "january", "januar", "jänner", "janvier", "janv"),
            Set.of("feb", "february", "februar", "février", "fevrier", "févr", "fév"),
            Set.of("mar", "march", "märz", "maerz", "mär", "mrz", "mars"),
            Set.of("apr", "april", "avril", "avr"),
            Set.of("may", "mai"),
            Set.of("jun", "june", "juni", "juin"),
            Set.of("jul", "july", "juli", "juillet", "juil"),
            Set.of("aug", "august", "août", "aout"),
            Set.of("sep", "sept", "september", "septembre"),
            Set.of("oct", "october", "oktober", "okt", "octobre"),
            Set.of("nov", "november", "novembre"),
            Set.of("dec", "december", "dezember", "dez", "décembre", "déc"));

    Pattern IS_SERIAL = Pattern.compile("-?\\d{1,6}(\\.\\d{0,20})?");
    int FIRST_YEAR = 1950;
    int LAST_YEAR = 2150;

    /** Reads a text of a column that does not tell whether it puts the day first. */
    static DateText parse(String typed) {
        return parse(typed, DayOrder.OPEN);
    }

    /**
     * Reads a text.
     *
     * @param order what its column or book puts first
     */
    static DateText parse(String typed, DayOrder order) {
        String whole = TypedText.plain(typed);
        if (NumberWords.meanNothing(whole)) {
            return new Nothing();
        }
        String text = dateOf(typed);
        Matcher match = YEAR_FIRST.matcher(text);
        if (match.matches()) {
            return day(match.group(1), match.group(3), match.group(4));
        }
        match = EIGHT_DIGITS.matcher(text);
        if (match.matches()) {
            return day(match.group(1), match.group(2), match.group(3));
        }
        match = DAY_FIRST_DOTS.matcher(text);
        if (match.matches()) {
            return day(year(match.group(3)), match.group(2), match.group(1));
        }
        match = SLASHES.matcher(text);
        if (match.matches()) {
            return slashes(match, order);
        }
        return named(text);
    }

    /** A text without a weekday before and a time behind. */
    static String dateOf(String typed) {
        String whole = TypedText.plain(typed);
        Matcher around = AROUND.matcher(whole);
        return around.matches() ? around.group("date") : whole;
    }

    private static DateText named(String text) {
        Matcher match = MONTH_SECOND.matcher(text);
        if (match.matches()) {
            return inMonth(year(match.group(3)), match.group(2), match.group(1));
        }
        match = MONTH_FIRST.matcher(text);
        if (match.matches()) {
            return inMonth(match.group(3), match.group(1), match.group(2));
        }
        match = YEAR_MONTH_DAY.matcher(text);
        return match.matches() ? inMonth(match.group(1), match.group(2), match.group(3)) : unreadable();
    }

    private static DateText inMonth(String year, String month, String day) {
        String name = month.toLowerCase(Locale.ROOT);
        for (int i = 0; i < MONTHS.size(); i++) {
            if (MONTHS.get(i).contains(name)) {
                return day(year, Integer.toString(i + 1), day);
            }
        }
        return unreadable();
    }

    private static Fault unreadable() {
        return new Fault(FindingCode.DATE_UNREADABLE, "a date such as 2026-03-06");
    }

    /** Two digits are a year of this century, or one of the end of the last. */
    private static String year(String typed) {
        return typed.length() == 4 ? typed : (Integer.parseInt(typed) < 80 ? "20" : "19") + typed;
    }

    private static DateText slashes(Matcher match, DayOrder order) {
        int first = Integer.parseInt(match.group(1));
        int second = Integer.parseInt(match.group(3));
        String year = year(match.group(4));
        boolean yearMayStandFirst =
                match.group(4).length() == 2 && match.group(2).equals("-");
        boolean open = first <= 12 && second <= 12 && first != second && order == DayOrder.OPEN;
        if (open || yearMayStandFirst) {
            return new Fault(AMBIGUOUS, "a date that can be read in one way only, such as 2026-03-06");
        }
        return first > 12 || order == DayOrder.DAY_FIRST && second <= 12
                ? day(year, match.group(3), match.group(1))
                : day(year, match.group(1), match.group(3));
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
                FindingCode.DATE_IMPOSSIBLE,
                "a day of the calendar between the years " + FIRST_YEAR + " and " + LAST_YEAR);
    }

    /** Reads a stored cell; see {@link #parse(String, DayOrder)}. */
    static DateText read(RawCell cell, DayOrder order) {
        return switch (cell.type()) {
            case TEXT -> parse(cell.text(), order);
            case NUMBER, COMPUTED_NUMBER ->
                cell.shownAs().isDate() && IS_SERIAL.matcher(cell.text()).matches()
                        ? inRange(moment(cell).toLocalDate())
                        : new Fault(FindingCode.DATE_UNREADABLE, "a date such as 2026-03-06; a bare number is none");
            case ERROR -> new Fault(FindingCode.FORMULA_ERROR, "a date such as 2026-03-06");
            case NOT_CALCULATED -> new Fault(FindingCode.FORMULA_NOT_CALCULATED, "a formula with its result");
            case MERGED -> new Fault(FindingCode.MERGED_CELLS, "");
            case STRUCK -> new Fault(FindingCode.STRUCK_OUT, "");
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
