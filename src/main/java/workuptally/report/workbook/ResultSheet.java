package workuptally.report.workbook;

import workuptally.report.view.tables.TableView;

/**
 * A table and where it stands in the workbook.
 *
 * @param view the table
 * @param sheetName name of its sheet
 * @param headingRow row of the headings, from 0
 * @param survey what is known of its rows
 */
record ResultSheet(TableView view, String sheetName, int headingRow, TableSurvey survey) {

    /** A table of which the first rows are known. */
    ResultSheet(TableView view, String sheetName) {
        this(view, sheetName, (int) view.note().lines().count() + 2, new TableSurvey(view));
    }

    /** First row of values, from 0. */
    int firstRow() {
        return headingRow + 1;
    }

    /** Last row of values, from 0; a table without rows still has an empty one. */
    int lastRow() {
        return headingRow + Math.max(1, survey.rows());
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
