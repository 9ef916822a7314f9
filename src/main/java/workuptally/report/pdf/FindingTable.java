package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import workuptally.model.Finding;

/** Findings with place, what was seen, what was expected and what to do. */
final class FindingTable {
    private final Look look;

    FindingTable(Look look) {
        this.look = look;
    }

    TaggedTable of(List<Finding> findings) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Finding finding : findings) {
            String expected = finding.source().isBlank()
                    ? finding.expected()
                    : finding.expected() + " (" + finding.source() + ")";
            rows.add(List.of(
                    TableCell.of(finding.severity()),
                    TableCell.of(finding.code() + "\n" + finding.place().inWords()),
                    TableCell.of(finding.seen()),
                    TableCell.of(expected),
                    TableCell.bold(finding.action())));
        }
        return new TaggedTable(
                look,
                List.of(
                        TableColumn.word("State"),
                        TableColumn.word("Code and place"),
                        TableColumn.text("Seen"),
                        TableColumn.text("Expected"),
                        TableColumn.text("What to do")),
                rows);
    }
}
