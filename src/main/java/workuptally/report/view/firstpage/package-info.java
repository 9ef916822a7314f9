/** What page one says first: actions, measurements to make next, top figures, layers by outcome. Start with {@link workuptally.report.view.firstpage.UrgentAction}. */
package workuptally.report.view.firstpage;
