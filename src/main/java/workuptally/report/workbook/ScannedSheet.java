package workuptally.report.workbook;

/**
 * What was noted about a sheet of the user's.
 *
 * @param styles style numbers that the marked cells have
 * @param numbers numbers that stand in its cells
 */
record ScannedSheet(CellStyles styles, SheetNumbers numbers) {}
