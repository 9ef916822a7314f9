package workuptally.cli;

import java.util.Locale;
import java.util.Optional;
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

    @Option(
            names = "--locale",
            paramLabel = "MARK",
            defaultValue = "point",
            description =
                    "Decimal mark of PDF, terminal and the sentences of the workbook: point or comma; without it ${DEFAULT-VALUE}."
                            + " JSON and CSV always have a point.")
    private PdfOptions.DecimalMark decimalMark;

    PdfOptions.Paper paper() {
        return paper;
    }

    PdfOptions.DecimalMark decimalMark() {
        return decimalMark;
    }

    /** The decimal mark in sentences. */
    char mark() {
        return decimalMark.mark();
    }

    /** The locale of the decimal mark, for the terminal. */
    Locale locale() {
        return decimalMark == PdfOptions.DecimalMark.COMMA ? Locale.GERMANY : Locale.ROOT;
    }

    PdfOptions with(Optional<PdfAttachment> attachment) {
        return new PdfOptions(paper, decimalMark, attachment);
    }
}
