package workuptally.book.tables;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import workuptally.book.words.SameName;
import workuptally.book.words.TotalRow;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** The runs of a book by id, in order of the Runs table; ids match without regard to case and spaces. */
public final class RunIndex {
    private final Map<String, RunAssembly> runs = new LinkedHashMap<>();

    /** Series as first spelled, by what counts of a name: a book may have as many as runs. */
    private final Map<String, String> series = new HashMap<>();

    private static String key(String id) {
        return id.replace(" ", "").toLowerCase(Locale.ROOT);
    }

    /** The run of an id, spelled otherwise if only one run can be meant. */
    public Optional<RunAssembly> find(String id) {
        return Optional.ofNullable(runs.get(key(id)))
                .or(() -> SameName.of(List.copyOf(runs.values()), RunAssembly::id, id));
    }

    /** The run of exactly this id, but for case and spaces. */
    Optional<RunAssembly> findSame(String id) {
        return Optional.ofNullable(runs.get(key(id)));
    }

    /** A series as it is spelled where it is named first. */
    String series(String typed) {
        return series.computeIfAbsent(SameName.key(typed), key -> typed);
    }

    void add(RunAssembly run) {
        runs.put(key(run.id()), run);
    }

    public Collection<RunAssembly> all() {
        return runs.values();
    }

    /** The run that a row of another table belongs to; nothing if the id is missing or unknown, which is reported. */
    Optional<RunAssembly> of(TableRow row) {
        Optional<String> id = row.key("Run");
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Optional<RunAssembly> run = find(id.get());
        if (run.isEmpty() && (TotalRow.isNamed(id.get()) || row.holdsOnly("Run"))) {
            return run; // a total or a remark records nothing
        }
        if (run.isPresent()) {
            row.belongsTo(run.get().id());
        } else {
            reportUnknown(row, id.get());
        }
        return run;
    }

    static void reportUnknown(TableRow row, String id) {
        row.report(
                FindingCode.RUN_UNKNOWN,
                Severity.STOP,
                "Run",
                "read '" + id + "'",
                "a run of the Runs table",
                "Correct the run or add it to Runs, then run again; the row was left out.");
    }
}
