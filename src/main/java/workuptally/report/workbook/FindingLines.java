package workuptally.report.workbook;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.model.Finding;
import workuptally.report.view.sheets.FindingsSection;
import workuptally.report.view.wording.Wording;

/** Where each finding stands on the sheet of findings, in words. */
final class FindingLines {
    private final Map<Finding, Integer> rows = new IdentityHashMap<>();
    private final Optional<ResultSheet> sheet;
    private final Wording wording;

    /**
     * Lines of findings.
     *
     * @param findings the findings in the order of their table
     * @param sheets the result sheets
     * @param wording how sentences are put
     */
    FindingLines(List<Finding> findings, List<ResultSheet> sheets, Wording wording) {
        this.wording = wording;
        this.sheet = sheets.stream()
                .filter(s -> s.view().title().equals(FindingsSection.TITLE))
                .findFirst();
        for (int i = 0; i < findings.size(); i++) {
            rows.put(findings.get(i), i);
        }
    }

    /** The line of a finding, for example {@code See sheet Findings, row 12.}, counted as a spreadsheet counts. */
    Optional<String> of(Finding finding) {
        Optional<Integer> row = Optional.ofNullable(rows.get(finding));
        return sheet.flatMap(s -> row.map(r -> "See sheet " + s.sheetName() + ", row " + (s.firstRow() + r + 1) + "."));
    }

    /** How sentences are put. */
    Wording wording() {
        return wording;
    }
}
