package workuptally.report.pdf;

import java.util.List;
import workuptally.judgement.SafetyWording;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.LabelPages;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.labels.LabelText;

/** Sheets of labels, of portions that planned runs will give or of what is kept. */
final class LabelSheet {
    private static final String COMPARE = "; compare with the safety data sheets and local label rules. ";

    private LabelSheet() {}

    /**
     * The sheets.
     *
     * @param paper paper
     * @param level level of their title
     * @param title title
     * @param by what the words follow from
     */
    static LabelPages of(
            Look look, PdfOptions.Paper paper, Heading.Level level, String title, String by, List<LabelText> labels) {
        return new LabelPages(
                look,
                paper,
                level,
                title,
                by + COMPARE + SafetyWording.DEFERS,
                labels.stream()
                        .map(l -> new LabelPages.Label(
                                l.name(), l.contents(), l.hazards(), l.deferring(), l.made(), l.owner()))
                        .toList());
    }
}
