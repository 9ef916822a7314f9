/**
 * Checks against published work: each case stands in a data file with its citation, the expected figures, a tolerance and the reason for it.
 * Where the printed answer is wrong, the recomputed one is expected and the note says why.
 */
package workuptally.published;
