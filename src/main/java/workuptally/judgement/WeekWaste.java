package workuptally.judgement;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import workuptally.judgement.totals.PeriodAccount;
import workuptally.judgement.totals.PeriodTotals.StreamTotal;
import workuptally.judgement.totals.RunShare;
import workuptally.model.Run;

/**
 * What the layers of one calendar week weigh, by stream. A week begins on Monday (ISO 8601) and has the runs of its dates.
 *
 * @param monday its first day
 * @param streams streams in order of the book
 */
public record WeekWaste(LocalDate monday, List<StreamTotal> streams) {
    /** Copies the list. */
    public WeekWaste {
        streams = List.copyOf(streams);
    }

    /** The weeks of a book that have runs, the earliest first; planned runs and runs without a date are in none. */
    public static List<WeekWaste> of(Review review) {
        Map<LocalDate, List<RunShare>> byWeek = new TreeMap<>();
        for (RunReview run : review.runs()) {
            Run entry = run.tally().run();
            if (entry.status() != Run.Status.PLANNED && entry.head().date().isPresent()) {
                LocalDate monday = entry.head().date().get().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
                byWeek.computeIfAbsent(monday, m -> new ArrayList<>())
                        .add(RunShare.of(run.tally(), review.book().limits()));
            }
        }
        List<WeekWaste> weeks = new ArrayList<>();
        byWeek.forEach((monday, runs) -> weeks.add(new WeekWaste(
                monday, PeriodAccount.of(review.period().coverageFactor(), runs).waste())));
        return weeks;
    }

    /** Mass of a stream, g; 0 where the week has none of it. */
    public double grams(String stream) {
        return streams.stream()
                .filter(s -> s.stream().equals(stream))
                .mapToDouble(StreamTotal::massGrams)
                .sum();
    }

    /** Mass of all streams, g. */
    public double grams() {
        return streams.stream().mapToDouble(StreamTotal::massGrams).sum();
    }
}
