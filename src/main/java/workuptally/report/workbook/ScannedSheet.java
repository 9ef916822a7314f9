package workuptally.report.workbook;

/**
 * What was noted about a sheet of the user's.
 *
 * @param styles style numbers that the marked cells have
 * @param numbers numbers that stand in its cells
 * @param selected whether it is open, or one of those that are
 */
record ScannedSheet(CellStyles styles, SheetNumbers numbers, boolean selected) {}
