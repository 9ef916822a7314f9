package workuptally.judgement;

import java.util.List;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/** Corrections of the record, shown with both values. */
final class RecordCorrected implements BookRule {
    static final String CODE = "record-corrected";

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        return book.corrections().stream()
                .map(c -> new Finding(
                        CODE,
                        Severity.NOTE,
                        book.runs().stream()
                                .map(Run::id)
                                .filter(id -> !id.isBlank() && c.record().contains(id))
                                .findFirst()
                                .orElse(""),
                        c.row().at("Record"),
                        c.record() + ": " + c.oldValue() + " became " + c.newValue() + " (" + c.who() + ", " + c.when()
                                + ")",
                        c.reason().isBlank() ? "a reason for the correction" : "reason given: " + c.reason(),
                        "entries of Corrections",
                        c.reason().isBlank() ? "Enter the reason." : "Both values stay visible; nothing to do."))
                .toList();
    }
}
