/**
 * A laboratory's own list: the headings file ({@link workuptally.book.lists.HeadingsFile}), its proposal ({@link workuptally.book.lists.HeadingsProposal}), and the rows it feeds to the tables ({@link workuptally.book.lists.OwnListSheet}).
 */
package workuptally.book.lists;
