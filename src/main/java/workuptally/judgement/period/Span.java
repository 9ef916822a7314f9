package workuptally.judgement.period;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A span of days.
 *
 * @param from first day
 * @param to last day
 */
public record Span(LocalDate from, LocalDate to) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the last day lies before the first
     */
    public Span {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(to + " lies before " + from);
        }
    }

    /** True for a day of the span. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /**
     * The spans before this one that it is compared with: weeks from Monday to Sunday where it lies inside one, as many months where it is made
     * of whole months, else as many days, each next to the other.
     *
     * @return the earliest first
     */
    List<Span> before(int count) {
        List<Span> spans = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            spans.add(before(this, i));
        }
        Collections.reverse(spans);
        return spans;
    }

    private static Span before(Span span, int times) {
        LocalDate monday = monday(span.from);
        if (!span.to.isAfter(monday.plusDays(6))) {
            LocalDate start = monday.minusWeeks(times);
            return new Span(start, start.plusDays(6));
        }
        YearMonth first = YearMonth.from(span.from);
        YearMonth last = YearMonth.from(span.to);
        if (span.from.equals(first.atDay(1)) && span.to.equals(last.atEndOfMonth())) {
            long months = ChronoUnit.MONTHS.between(first, last) + 1;
            return new Span(
                    first.minusMonths(times * months).atDay(1),
                    last.minusMonths(times * months).atEndOfMonth());
        }
        long days = ChronoUnit.DAYS.between(span.from, span.to) + 1;
        return new Span(span.from.minusDays(times * days), span.to.minusDays(times * days));
    }

    /** The Monday of the week of a day. */
    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
