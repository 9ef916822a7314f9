package workuptally.judgement.period;

import java.time.LocalDate;
import java.util.List;
import workuptally.judgement.PeriodTotals;
import workuptally.judgement.RunShare;
import workuptally.judgement.period.BookShare.ContainerShare;

/**
 * The accounts of a period over many books. It names no chemist.
 *
 * @param from first day
 * @param to last day
 * @param totals totals over the runs of the period
 * @param lines the runs of the period with the book each stands in, by date, then in order of the books
 * @param containers each container as the last book that lists it leaves it, by id
 * @param weeks the weeks from Monday to Sunday before the period, the earliest first, only those with runs
 * @param books what was read and what was not, in order of their names
 * @param toolVersion version of the tool
 */
public record PeriodReview(
        LocalDate from,
        LocalDate to,
        PeriodTotals totals,
        List<Line> lines,
        List<ContainerShare> containers,
        List<Week> weeks,
        List<BookLine> books,
        String toolVersion) {
    /** Copies the lists. */
    public PeriodReview {
        lines = List.copyOf(lines);
        containers = List.copyOf(containers);
        weeks = List.copyOf(weeks);
        books = List.copyOf(books);
    }

    /**
     * A run of the period.
     *
     * @param book name of its book
     * @param run what it adds
     */
    public record Line(String book, RunShare run) {}

    /**
     * A week before the period.
     *
     * @param monday its first day
     * @param runs number of runs
     * @param totals totals over them
     */
    public record Week(LocalDate monday, int runs, PeriodTotals totals) {}

    /**
     * A book.
     *
     * @param book file or folder name
     * @param sha256 hashes of its files, joined by blanks; empty where it could not be read
     * @param runsCounted runs of the period that count
     * @param remark why it, or a run of it, was left out; empty where there is nothing to say
     */
    public record BookLine(String book, String sha256, int runsCounted, String remark) {}
}
