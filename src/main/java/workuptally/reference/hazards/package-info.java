/** Hazards, their statements by strength, and what happens where materials meet. Start with {@link workuptally.reference.hazards.HazardTables}. */
package workuptally.reference.hazards;
