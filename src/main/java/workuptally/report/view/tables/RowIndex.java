package workuptally.report.view.tables;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import workuptally.judgement.RunReview;

/** In which row of a table something of a run stands, by texts that name it. */
public final class RowIndex {
    private final Map<RunReview, Integer> firstRows = new IdentityHashMap<>();
    private final Function<RunReview, List<List<String>>> namesOfRows;

    /**
     * Tables go from run to run: the names of one are kept until another is asked for. One object, so that several threads, each writing a
     * table, find names and run that belong together.
     */
    private volatile NamesOfRun last = new NamesOfRun(null, List.of());

    private record NamesOfRun(RunReview run, List<List<String>> rows) {}

    /**
     * An index of a table.
     *
     * @param runs the runs in the order of the table
     * @param namesOfRows the names of each row of a run
     */
    public RowIndex(List<RunReview> runs, Function<RunReview, List<List<String>>> namesOfRows) {
        this.namesOfRows = namesOfRows;
        int row = 0;
        for (RunReview run : runs) {
            firstRows.put(run, row);
            row += namesOfRows.apply(run).size();
        }
    }

    /** The first row, from 0, of a run whose names begin with these, if there is one. */
    public OptionalInt of(RunReview run, String... beginning) {
        NamesOfRun names = last;
        if (names.run() != run) {
            names = new NamesOfRun(run, namesOfRows.apply(run));
            last = names;
        }
        for (int i = 0; i < names.rows().size(); i++) {
            if (begins(names.rows().get(i), beginning)) {
                return OptionalInt.of(firstRows.get(run) + i);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean begins(List<String> names, String... beginning) {
        if (names.size() < beginning.length) {
            return false;
        }
        for (int i = 0; i < beginning.length; i++) {
            if (!names.get(i).equals(beginning[i])) {
                return false;
            }
        }
        return true;
    }
}
