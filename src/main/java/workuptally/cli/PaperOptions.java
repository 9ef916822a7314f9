package workuptally.cli;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import workuptally.report.pdf.layout.PdfAttachment;
import workuptally.report.pdf.layout.PdfOptions;

/** How a document for people is set; shared by every command that writes a PDF. */
final class PaperOptions {
    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "A4",
            description = "Paper of the PDF: A4 or Letter; without it ${DEFAULT-VALUE}.")
    private PdfOptions.Paper paper;

    @Mixin
    private DecimalMarkOption mark;

    PdfOptions.Paper paper() {
        return paper;
    }

    DecimalMarkOption mark() {
        return mark;
    }

    PdfOptions with(Optional<PdfAttachment> attachment) {
        return new PdfOptions(paper, mark.decimalMark(), attachment);
    }
}
