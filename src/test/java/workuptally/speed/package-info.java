/**
 * How fast the program is: books of any size, the spreadsheet library alone for comparison, and the table of both.
 *
 * <p>Start with {@link workuptally.speed.SpeedTable}; {@link workuptally.speed.GrowthTest} is the part that every build runs.
 */
package workuptally.speed;
