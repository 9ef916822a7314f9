package workuptally.report.workbook;

import workuptally.report.view.TableView;

/**
 * Where a table stands in the workbook.
 *
 * @param view the table
 * @param sheetName name of its sheet
 * @param headingRow row of the headings, from 0
 */
record ResultSheet(TableView view, String sheetName, int headingRow) {

    /** First row of values, from 0. */
    int firstRow() {
        return headingRow + 1;
    }

    /** Last row of values, from 0; a table without rows still has an empty one. */
    int lastRow() {
        return headingRow + Math.max(1, view.rows().size());
    }

    /** Column number of a heading, from 0. */
    int column(String name) {
        for (int i = 0; i < view.columns().size(); i++) {
            if (view.columns().get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(view.title() + " has no column " + name);
    }

    /** The sheet name as formulas and links want it. */
    static String quoted(String sheetName) {
        return "'" + sheetName.replace("'", "''") + "'";
    }
}
