package workuptally.cli;

import java.util.Locale;
import picocli.CommandLine.Option;
import workuptally.measure.Rounding;
import workuptally.report.pdf.layout.PdfOptions.DecimalMark;
import workuptally.report.view.wording.Wording;

/** The decimal mark of what people read; shared by every command that shows or writes it. */
final class DecimalMarkOption {
    @Option(
            names = "--locale",
            paramLabel = "MARK",
            defaultValue = "point",
            description =
                    "Decimal mark of PDF, terminal and the sentences of the workbook: point or comma; without it ${DEFAULT-VALUE}."
                            + " JSON and CSV always have a point.")
    private DecimalMark decimalMark;

    DecimalMark decimalMark() {
        return decimalMark;
    }

    /** Sentences with this mark. */
    Wording wording() {
        return new Wording(decimalMark.mark());
    }

    /** Figures with this mark, for the terminal. */
    Rounding rounding() {
        return Rounding.in(decimalMark == DecimalMark.COMMA ? Locale.GERMANY : Locale.ROOT);
    }
}
