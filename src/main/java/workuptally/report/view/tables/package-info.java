/** What a table is made of: columns with unit and decimals, cells, and how a figure follows from others. Start with {@link workuptally.report.view.tables.TableView}. */
package workuptally.report.view.tables;
