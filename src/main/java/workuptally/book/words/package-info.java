/**
 * Words and units as people type them: spellings, choices, units of a cell, dates in words. Start with {@link workuptally.book.words.BookWords}, then {@link workuptally.book.words.Unit}. Knows no file and no table.
 */
package workuptally.book.words;
