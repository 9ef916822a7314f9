/** Files of tables, their cells, and rows found by name: the same for every table. Start with {@link workuptally.reference.tables.TableFile}. */
package workuptally.reference.tables;
