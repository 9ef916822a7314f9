package workuptally.judgement.measurements;

import java.util.List;

/**
 * A test of the few that tell most about the whole book.
 *
 * @param runs ids of the runs that it tells about, the one whose portion is tested first
 * @param test the test; of several runs, what it settles is named with the run
 */
public record WeekTest(List<String> runs, NextTest test) {
    /** Copies the list. */
    public WeekTest {
        runs = List.copyOf(runs);
    }
}
