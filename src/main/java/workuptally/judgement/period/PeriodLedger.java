package workuptally.judgement.period;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import workuptally.judgement.PeriodAccount;
import workuptally.judgement.RunShare;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.PeriodReview.BookLine;
import workuptally.judgement.period.PeriodReview.Line;
import workuptally.judgement.period.PeriodReview.Week;
import workuptally.model.InputFile;

/**
 * Collects books one after the other and gives the accounts of a period. A run id counts once: a run that a later book repeats is left out
 * there and named. A run without a date belongs to no period and is named too. Not safe for use by several threads at once.
 */
public final class PeriodLedger {
    /** Weeks before the period that are shown for comparison. */
    public static final int WEEKS_BEFORE = 8;

    private final LocalDate from;
    private final LocalDate to;
    private final LocalDate firstMonday;
    private final Map<String, String> booksByRun = new LinkedHashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final Map<LocalDate, List<RunShare>> weeks = new TreeMap<>();
    private final Map<String, ContainerShare> containers = new TreeMap<>();
    private final List<BookLine> books = new ArrayList<>();
    private double coverageFactor;

    /**
     * A ledger for a period.
     *
     * @param from first day
     * @param to last day, not before the first
     * @throws IllegalArgumentException if the last day lies before the first
     */
    public PeriodLedger(LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(to + " lies before " + from);
        }
        this.from = from;
        this.to = to;
        this.firstMonday =
                from.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(WEEKS_BEFORE);
    }

    /** Adds a book. */
    public void add(BookShare book) {
        List<String> remarks = new ArrayList<>();
        int counted = 0;
        coverageFactor = Math.max(coverageFactor, book.coverageFactor());
        for (RunShare run : book.runs()) {
            if (run.date().isEmpty()) {
                remarks.add("run " + run.run() + " has no date");
                continue;
            }
            String earlier = booksByRun.putIfAbsent(run.run(), book.book());
            if (earlier != null) {
                remarks.add("run " + run.run() + " stands in " + earlier + " already");
                continue;
            }
            LocalDate date = run.date().get();
            if (!date.isBefore(from) && !date.isAfter(to)) {
                lines.add(new Line(book.book(), run));
                counted++;
            } else if (date.isBefore(from) && !date.isBefore(firstMonday)) {
                LocalDate monday = date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
                weeks.computeIfAbsent(monday, m -> new ArrayList<>()).add(run);
            }
        }
        for (ContainerShare container : book.containers()) {
            containers.merge(container.container(), container, PeriodLedger::later);
        }
        books.add(new BookLine(
                book.book(),
                book.files().stream().map(InputFile::sha256).collect(Collectors.joining(" ")),
                counted,
                String.join("; ", remarks)));
    }

    /** Names a book that could not be read, or was passed over. */
    public void leaveOut(String book, String because) {
        books.add(new BookLine(book, "", 0, because));
    }

    /** The accounts of what was added so far. */
    public PeriodReview review(String toolVersion) {
        List<Line> byDate = lines.stream()
                .sorted(Comparator.comparing(l -> l.run().date().orElseThrow()))
                .toList();
        List<Week> before = weeks.entrySet().stream()
                .map(w -> new Week(w.getKey(), w.getValue().size(), PeriodAccount.of(coverageFactor, w.getValue())))
                .toList();
        return new PeriodReview(
                from,
                to,
                PeriodAccount.of(coverageFactor, byDate.stream().map(Line::run).toList()),
                byDate,
                List.copyOf(containers.values()),
                before,
                books,
                toolVersion);
    }

    /** The one whose book speaks for the later day; of two alike the one added later. */
    private static ContainerShare later(ContainerShare first, ContainerShare second) {
        Optional<LocalDate> day = first.asOf();
        boolean firstIsLater = day.isPresent()
                && second.asOf().map(other -> day.get().isAfter(other)).orElse(true);
        return firstIsLater ? first : second;
    }
}
