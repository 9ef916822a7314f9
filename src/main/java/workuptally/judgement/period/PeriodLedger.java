package workuptally.judgement.period;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import workuptally.judgement.period.BookShare.ClassShare;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.BookShare.CorrectionShare;
import workuptally.judgement.period.PeriodReview.Before;
import workuptally.judgement.period.PeriodReview.BookLine;
import workuptally.judgement.period.PeriodReview.Comparison;
import workuptally.judgement.period.PeriodReview.Earlier;
import workuptally.judgement.period.PeriodReview.Line;
import workuptally.judgement.period.PeriodReview.NotCounted;
import workuptally.judgement.period.PeriodReview.Standing;
import workuptally.judgement.period.PeriodReview.Week;
import workuptally.judgement.totals.PeriodAccount;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.judgement.totals.RunShare;

/**
 * Collects books one after the other and gives the accounts of a period. A run id counts once, see {@link RunRegister}; a book with the same
 * content as an earlier one adds nothing and is named. A run without a date belongs to no period and is named too. Not safe for use by several
 * threads at once.
 */
public final class PeriodLedger {
    /** Spans, and weeks, before the period that are shown for comparison. */
    public static final int SPANS_BEFORE = 4;

    private static final int RUNS_NAMED = 6;

    private final Span span;
    private final List<Span> spansBefore;
    private final LocalDate firstMonday;
    private final LocalDate reach;
    private final RunRegister runs = new RunRegister();
    private final List<NotCounted> undated = new ArrayList<>();
    private final SettingsRegister settings = new SettingsRegister();
    private final Map<String, String> booksByContent = new HashMap<>();
    private final Map<String, ContainerShare> containers = new TreeMap<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final List<ClassShare> classes = new ArrayList<>();
    private final List<CorrectionShare> corrections = new ArrayList<>();
    private final List<BookLine> books = new ArrayList<>();
    private double coverageFactor;

    /**
     * A ledger for a period.
     *
     * @param span first and last day
     */
    public PeriodLedger(Span span) {
        this.span = span;
        this.spansBefore = span.before(SPANS_BEFORE);
        this.firstMonday = Span.monday(span.from()).minusWeeks(SPANS_BEFORE);
        LocalDate firstSpan = spansBefore.get(0).from();
        this.reach = firstSpan.isBefore(firstMonday) ? firstSpan : firstMonday;
    }

    /** Adds a book. */
    public void add(BookShare book) {
        String same = booksByContent.putIfAbsent(book.hashes(), book.book());
        if (same != null) {
            line(book, Optional.of("the same content as " + same + ", counted there"));
            return;
        }
        coverageFactor = Math.max(coverageFactor, book.coverageFactor());
        boolean concerned = false;
        for (RunShare run : book.runs()) {
            if (run.date().isEmpty()) {
                undated.add(new NotCounted(book.book(), run.run(), "has no date"));
                continue;
            }
            LocalDate date = run.date().get();
            concerned |= span.holds(date);
            if (!date.isBefore(reach) && !date.isAfter(span.to())) {
                runs.add(book.book(), run);
            }
        }
        for (ContainerShare container : book.containers()) {
            boolean openedLater =
                    container.open().since().filter(d -> d.isAfter(span.to())).isPresent();
            if (!openedLater) {
                containers.merge(container.container(), container, this::fitting);
            }
        }
        if (concerned) {
            places.addAll(book.places());
            classes.addAll(book.classes());
            corrections.addAll(book.corrections());
            settings.add(book);
        }
        line(book, Optional.empty());
    }

    private void line(BookShare book, Optional<String> remark) {
        books.add(new BookLine(
                book.book(), Standing.READ, book.files(), book.runs().size(), 0, remark.orElse("")));
    }

    /**
     * Names a book that could not be read, or was passed over.
     *
     * @param standing which of the two
     */
    public void leaveOut(String book, Standing standing, String because) {
        books.add(new BookLine(book, standing, List.of(), 0, 0, because));
    }

    /** The accounts of what was added so far. */
    public PeriodReview review(String toolVersion) {
        List<Line> byDate = within(span);
        List<NotCounted> notCounted = new ArrayList<>(undated);
        notCounted.addAll(runs.repeats());
        return new PeriodReview(
                span,
                List.copyOf(places),
                totals(byDate),
                byDate,
                notCounted,
                List.copyOf(containers.values()),
                classes,
                new Before(weeks(), spansBefore.stream().map(this::earlier).toList(), lastFour()),
                bookLines(byDate, notCounted),
                corrections,
                settings.limits(),
                settings.basis(),
                toolVersion);
    }

    private List<Line> within(Span days) {
        return runs.lines().stream()
                .filter(l -> days.holds(day(l)))
                .sorted(Comparator.comparing(PeriodLedger::day))
                .toList();
    }

    private static LocalDate day(Line line) {
        return line.run().date().orElseThrow();
    }

    private PeriodTotals totals(List<Line> lines) {
        return PeriodAccount.of(coverageFactor, lines.stream().map(Line::run).toList());
    }

    private List<Week> weeks() {
        Map<LocalDate, List<Line>> weeks = runs.lines().stream()
                .filter(l -> day(l).isBefore(span.from()) && !day(l).isBefore(firstMonday))
                .collect(Collectors.groupingBy(l -> Span.monday(day(l)), TreeMap::new, Collectors.toList()));
        return weeks.entrySet().stream()
                .map(w -> new Week(w.getKey(), w.getValue().size(), totals(w.getValue())))
                .toList();
    }

    private Earlier earlier(Span days) {
        List<Line> lines = within(days);
        return new Earlier(days, lines.size(), totals(lines));
    }

    private Optional<Comparison> lastFour() {
        List<Line> all = new ArrayList<>();
        int held = 0;
        for (Span days : spansBefore) {
            List<Line> lines = within(days);
            held += lines.isEmpty() ? 0 : 1;
            all.addAll(lines);
        }
        if (held == 0) {
            return Optional.empty();
        }
        PeriodTotals totals = totals(all);
        return Optional.of(new Comparison(
                held, totals.solventInGrams() / held, totals.metrics().pmi()));
    }

    private List<BookLine> bookLines(List<Line> counted, List<NotCounted> notCounted) {
        Map<String, Long> counts = counted.stream().collect(Collectors.groupingBy(Line::book, Collectors.counting()));
        Map<String, List<NotCounted>> left = notCounted.stream().collect(Collectors.groupingBy(NotCounted::book));
        return books.stream()
                .map(b -> new BookLine(
                        b.book(),
                        b.standing(),
                        b.files(),
                        b.runs(),
                        counts.getOrDefault(b.book(), 0L).intValue(),
                        left.containsKey(b.book()) ? remark(left.get(b.book())) : b.remark()))
                .toList();
    }

    /** One clause a reason, the runs that it holds for named as far as they are few. */
    private static String remark(List<NotCounted> left) {
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        left.forEach(n ->
                reasons.computeIfAbsent(n.because(), r -> new ArrayList<>()).add(n.run()));
        return reasons.entrySet().stream()
                .map(r -> named(r.getValue()) + " " + r.getKey())
                .collect(Collectors.joining("; "));
    }

    private static String named(List<String> ids) {
        int more = ids.size() - RUNS_NAMED;
        List<String> shown = more > 1 ? ids.subList(0, RUNS_NAMED) : ids;
        return (ids.size() == 1 ? "run " : "each of the runs ")
                + String.join(", ", shown)
                + (more > 1 ? " and " + more + " more" : "");
    }

    /**
     * Of two records of a container the one that speaks for the later day inside the period or before it; one without a day gives way to it, and
     * one for a day after the period to both. Of two alike the one added later.
     */
    private ContainerShare fitting(ContainerShare first, ContainerShare second) {
        int byDay = rank(first).compareTo(rank(second));
        return byDay > 0 ? first : second;
    }

    private LocalDate rank(ContainerShare container) {
        LocalDate day = container.asOf().orElse(LocalDate.MIN.plusDays(1));
        return day.isAfter(span.to()) ? LocalDate.MIN : day;
    }
}
