/**
 * Hazard notes by material and operation; each defers to the safety data sheet and local rules. Start with {@link workuptally.judgement.hazards.HazardNoteAccount}.
 */
package workuptally.judgement.hazards;
