package workuptally.report.view.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import workuptally.judgement.RunReview;
import workuptally.report.ExampleReview;

class RowIndexTest {
    private static final int QUESTIONS = 200_000;

    private final List<RunReview> runs = ExampleReview.of(3).runs();

    /** Rows of a run by its place in the list: 1, 2, 3 rows, each named by the run and its number. */
    private List<List<String>> rows(RunReview run) {
        return IntStream.rangeClosed(0, runs.indexOf(run))
                .mapToObj(i -> List.of(run.id(), Integer.toString(i)))
                .toList();
    }

    @Test
    void rowsAreCountedOnFromRunToRun() {
        RowIndex index = new RowIndex(runs, this::rows);
        assertEquals(OptionalInt.of(0), index.of(runs.get(0), runs.get(0).id()));
        assertEquals(OptionalInt.of(2), index.of(runs.get(1), runs.get(1).id(), "1"));
        assertEquals(OptionalInt.of(5), index.of(runs.get(2), runs.get(2).id(), "2"));
        assertEquals(OptionalInt.empty(), index.of(runs.get(0), runs.get(1).id()));
    }

    @Test
    void severalThreadsFindTheRowsOfTheirRuns() {
        RowIndex index = new RowIndex(runs, this::rows);
        long wrong = IntStream.range(0, QUESTIONS)
                .parallel()
                .filter(i -> {
                    RunReview run = runs.get(i % 3);
                    int last = i % 3;
                    int first = last * (last + 1) / 2;
                    return !index.of(run, run.id(), Integer.toString(last)).equals(OptionalInt.of(first + last));
                })
                .count();
        assertEquals(0, wrong);
    }
}
