package workuptally.report.view.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;

/** All findings, the most urgent first, each linked to its cell. */
public final class FindingsSection {
    /** Title of the table. */
    public static final String TITLE = "Findings";

    private FindingsSection() {}

    /** The table of a review. */
    public static TableView of(Review review, Wording wording) {
        return TableView.of(
                TITLE,
                "stop: the record contradicts itself, a needed figure is missing, or a proposal is hazardous. "
                        + "hold: the evidence of a kept layer does not support letting it go."
                        + "\ncheck: a number to settle before it is reported. note: for information. "
                        + "Where a cell is marked, its place is a link.",
                List.of(
                        Column.text("Severity", 9),
                        Column.text("Code", 26),
                        Column.text("Run", 14),
                        Column.text("Place", 20),
                        Column.text("Seen", 44),
                        Column.text("Expected", 44),
                        Column.text("Action", 44),
                        Column.text("Source", 30)),
                review.findings(),
                finding -> Stream.of(row(finding, wording)));
    }

    /** Row, from 0, of the first finding of each run that has one. */
    static Map<String, Integer> firstRows(Review review) {
        Map<String, Integer> rows = new HashMap<>();
        for (int i = 0; i < review.findings().size(); i++) {
            rows.putIfAbsent(review.findings().get(i).run(), i);
        }
        return rows;
    }

    private static TableView.Row row(Finding finding, Wording wording) {
        return new TableView.Row(
                List.of(
                        Cell.of(finding.severity().word()),
                        Cell.of(finding.code().word()),
                        Cell.of(finding.run()),
                        new Cell.Link(finding.place().inWords(), finding.place()),
                        Cell.of(wording.of(finding.seen())),
                        Cell.of(wording.of(finding.expected())),
                        Cell.of(wording.of(finding.action())),
                        Cell.of(finding.source())),
                Optional.of(finding.severity()));
    }
}
