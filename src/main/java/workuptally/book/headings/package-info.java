/**
 * Headings are matched with the columns of a table, and their units with those expected. Start with {@link workuptally.book.headings.MatchedHeadings}.
 */
package workuptally.book.headings;
