package workuptally.book.tables;

import java.util.Optional;
import workuptally.book.words.NoteWords;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TotalRow;
import workuptally.book.words.TypedText;
import workuptally.model.FindingCode;
import workuptally.model.Run;
import workuptally.model.RunHead;
import workuptally.model.Severity;

/** Reads the Runs table. */
public final class RunRows {
    private RunRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        rows.forEach(row -> row.key("Run").ifPresent(id -> read(row, id, runs)));
    }

    private static void read(TableRow row, String id, RunIndex runs) {
        if (TotalRow.isNamed(id)) {
            return; // adds up others
        }
        row.belongsTo(id);
        Optional<RunAssembly> earlier = runs.findSame(id);
        if (earlier.isPresent()) {
            row.report(
                    FindingCode.RUN_DUPLICATE,
                    Severity.STOP,
                    "Run",
                    "read '" + id + "' a second time",
                    "each run once",
                    "Give the second run an id of its own and run again; only the first was read.");
            return;
        }
        Optional<Run.Status> status = row.choice("Status", Run.Status.values());
        RunHead head = new RunHead(
                id,
                row.date("Date"),
                row.text("Chemist"),
                row.text("Reaction"),
                row.choice("Kind", Run.Kind.values()).orElse(Run.Kind.REACTION),
                runs.series(row.text("Series")),
                status.orElse(Run.Status.PLANNED),
                row.number("Conversion"),
                NoteWords.read(row.text("Notes"), NoteWords.Of.RUN),
                row.place());
        boolean blank = NumberWords.meanNothing(TypedText.plain(row.text("Status")));
        RunAssembly.StatusEntry entry = blank ? RunAssembly.StatusEntry.BLANK : RunAssembly.StatusEntry.UNREAD;
        runs.add(new RunAssembly(
                head,
                status.isPresent() ? RunAssembly.StatusEntry.TYPED : entry,
                () -> row.report(
                        FindingCode.RUN_STATUS_CONTRADICTED,
                        Severity.HOLD,
                        "Status",
                        "read '" + row.text("Status") + "', but lots, layers or assays of the run are measured",
                        "planned for what was not begun; in workup or isolated for what was",
                        "Correct the status; until then the run counts as done.")));
    }
}
