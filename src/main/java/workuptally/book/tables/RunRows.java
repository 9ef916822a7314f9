package workuptally.book.tables;

import java.util.List;
import java.util.Optional;
import workuptally.book.words.NumberWords;
import workuptally.book.words.TotalRow;
import workuptally.book.words.TypedText;
import workuptally.model.FindingCode;
import workuptally.model.Run;
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
        Optional<RunParts> earlier = runs.findSame(id);
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
        Run head = new Run(
                id,
                row.date("Date"),
                row.text("Chemist"),
                row.text("Reaction"),
                row.choice("Kind", Run.Kind.values()).orElse(Run.Kind.REACTION),
                runs.series(row.text("Series")),
                status.orElse(Run.Status.PLANNED),
                row.number("Conversion"),
                row.text("Notes"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                row.place());
        boolean blank = NumberWords.meanNothing(TypedText.plain(row.text("Status")));
        RunParts.StatusEntry entry = blank ? RunParts.StatusEntry.BLANK : RunParts.StatusEntry.UNREAD;
        runs.add(new RunParts(head, status.isPresent() ? RunParts.StatusEntry.TYPED : entry));
    }
}
