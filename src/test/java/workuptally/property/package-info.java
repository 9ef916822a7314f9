/** Properties that hold for every book, whatever its figures: tried on the demo week changed in a known way, and on random books of printed seeds. */
package workuptally.property;
