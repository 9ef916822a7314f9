package workuptally.judgement.period;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.period.PeriodReview.Line;
import workuptally.judgement.period.PeriodReview.NotCounted;
import workuptally.judgement.totals.RunShare;
import workuptally.model.Run.Status;

/**
 * The runs of all books, each id once. Where several books hold a run, the record that is furthest on counts, of two alike the one read first;
 * the others are named.
 */
final class RunRegister {
    private static final Comparator<RunShare> HOW_FAR =
            Comparator.comparing(run -> List.of(Status.PLANNED, Status.IN_WORKUP, Status.ISOLATED, Status.FAILED)
                    .indexOf(run.status()));

    private final Map<String, Line> lines = new LinkedHashMap<>();
    private final List<Repeat> repeats = new ArrayList<>();

    void add(String book, RunShare run) {
        Line second = new Line(book, run);
        Line first = lines.putIfAbsent(run.run(), second);
        if (first != null) {
            boolean further = HOW_FAR.compare(run, first.run()) > 0;
            if (further) {
                lines.put(run.run(), second);
            }
            repeats.add(new Repeat(further ? first.book() : book, run.run(), run.equals(first.run())));
        }
    }

    Collection<Line> lines() {
        return lines.values();
    }

    /** The records that do not count because another one of the same run does. */
    List<NotCounted> repeats() {
        return repeats.stream().map(this::notCounted).toList();
    }

    private NotCounted notCounted(Repeat repeat) {
        String counting = lines.get(repeat.run()).book();
        String where = counting.equals(repeat.book()) ? "stands there twice" : "counts in " + counting;
        return new NotCounted(
                repeat.book(), repeat.run(), repeat.same() ? where : where + ", where its entries differ");
    }

    private record Repeat(String book, String run, boolean same) {}
}
