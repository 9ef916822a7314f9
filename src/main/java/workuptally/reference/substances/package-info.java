/** What is charged, made or met, and the words for it. Start with {@link workuptally.reference.substances.SubstanceTables}. */
package workuptally.reference.substances;
