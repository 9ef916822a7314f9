/**
 * Empty books to start from. Start with {@link workuptally.book.template.Template}.
 */
package workuptally.book.template;
