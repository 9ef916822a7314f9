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
            rows.add(List.of(
                    TableCell.of(finding.severity()),
                    TableCell.of(finding.seen() + "\n" + expected(finding) + finding.code() + " · "
                            + finding.place().inWords()),
                    TableCell.bold(finding.action())));
        }
        return new TaggedTable(
                look,
                List.of(
                        TableColumn.word("State"),
                        TableColumn.text("Seen, and what is expected (by) · code · place"),
                        TableColumn.text("What to do")),
                rows);
    }

    /** A note is read by who looks for it; what it is measured against stands with it in the workbook. */
    private static String expected(Finding finding) {
        if (finding.severity() == Severity.NOTE) {
            return "";
        }
        String source = finding.source().isBlank() ? "" : " (" + finding.source() + ")";
        return "Expected: " + finding.expected() + source + " · ";
    }
}
