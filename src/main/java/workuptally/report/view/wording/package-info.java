/** Figures, names and sentences as a reader sees them: rounding, decimal mark, many names in few words. Start with {@link workuptally.report.view.wording.Wording}. */
package workuptally.report.view.wording;
