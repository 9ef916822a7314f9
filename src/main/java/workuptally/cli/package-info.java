/**
 * The command line: one class per command, exit codes, and how the files of a review reach their place.
 *
 * <p>Start with {@link workuptally.cli.WorkupTally}. The package puts the others together and prints; it computes nothing, and knows
 * neither cells nor pages.
 */
package workuptally.cli;
