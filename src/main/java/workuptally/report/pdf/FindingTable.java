package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.model.Finding;
import workuptally.model.Severity;

/** Findings with place, what was seen, what was expected and what to do. */
final class FindingTable {
    private final Look look;

    FindingTable(Look look) {
        this.look = look;
    }

    TaggedTable of(List<Finding> findings) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Finding finding : findings) {
            String where = finding.code() + " · " + finding.place().inWords();
            boolean note = finding.severity() == Severity.NOTE;
            rows.add(List.of(
                    TableCell.of(finding.severity()),
                    TableCell.of(finding.seen() + (note ? " · " : "\n" + expected(finding)) + where),
                    note ? TableCell.of(finding.action()) : TableCell.bold(finding.action())));
        }
        return new TaggedTable(
                look,
                List.of(
                        TableColumn.word("State"),
                        TableColumn.text("Seen, and what is expected (by) · code · place"),
                        TableColumn.text("What to do")),
                rows);
    }

    /** What a finding is measured against; for a note, which is read by who looks for it, it stands in the workbook. */
    private static String expected(Finding finding) {
        String source = finding.source().isBlank() ? "" : " (" + finding.source() + ")";
        return "Expected: " + finding.expected() + source + " · ";
    }
}
