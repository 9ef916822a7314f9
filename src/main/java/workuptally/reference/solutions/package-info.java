/** Solutes, solutions in water by strength, and how a compound parts between two phases. Start with {@link workuptally.reference.solutions.Solutions}. */
package workuptally.reference.solutions;
