/** The words of labels: what a portion or a container holds, and its hazards. Start with {@link workuptally.report.view.labels.LabelText}. */
package workuptally.report.view.labels;
