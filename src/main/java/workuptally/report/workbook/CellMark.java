package workuptally.report.workbook;

import java.util.List;
import workuptally.model.Finding;
import workuptally.model.Severity;

/**
 * The mark of one cell.
 *
 * @param row row from 1
 * @param column column from 0
 * @param severity the most urgent severity found there
 * @param findings the findings, the most urgent first
 */
record CellMark(int row, int column, Severity severity, List<Finding> findings) {
    CellMark {
        findings = List.copyOf(findings);
    }

    /** Of the cell alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return 31 * row + column;
    }

    /** The cell as a reference, {@code D7}. */
    String reference() {
        return new org.apache.poi.ss.util.CellAddress(row - 1, column).formatAsString();
    }
}
